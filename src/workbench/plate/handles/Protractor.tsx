import type { KeyboardEvent } from 'react';
import type { Vec3 } from '../../../solver/document/rig.ts';
import { numberText } from '../../sentence/piece.ts';
import { cross, dot, plus, scaled, unit } from '../vector.ts';
import type { View } from '../view.ts';
import { keySteps } from './keySteps.ts';
import { REACH } from './places.ts';
import { useDrag } from './useDrag.ts';

interface Props {
  /** "turn x of wind_left, on the plate" */
  label: string;
  letter: string;
  /** Degrees. */
  value: number;
  /** Rig space, unit: what the angle turns about. */
  axis: Vec3;
  view: View;
  put: (value: number) => void;
}

/** One protractor about a chosen axis: a ring of degrees with a bead, and a read-out. */
export function Protractor({ label, letter, value, axis, view, put }: Props) {
  const [across, upright] = spokes(axis, view);
  const at = (degrees: number, radius: number) => {
    const angle = (degrees * Math.PI) / 180;
    const spoke = plus(scaled(across, Math.cos(angle) * radius), scaled(upright, Math.sin(angle) * radius));
    return [dot(spoke, view.right), -dot(spoke, view.up)] as const;
  };
  const bead = at(value, REACH);
  const drag = useDrag(
    () => ({ value, bead, tangent: tangentOf(at, value) }),
    (held, dx, dy) => put(dragged(held, dx, dy)),
  );

  function dragged(
    held: { value: number; bead: readonly [number, number]; tangent: readonly [number, number] },
    dx: number,
    dy: number,
  ) {
    const flat = Math.abs(dot(axis, view.toward));
    if (flat > 0.25) {
      const angle = angleAt(held.bead[0] + dx, held.bead[1] + dy);
      return nearest(Math.round(angle), held.value);
    }
    // Seen nearly edge-on the ring is a line: the pointer's way along it counts.
    const along = (dx * held.tangent[0] + dy * held.tangent[1]) / REACH;
    return Math.round(held.value + (along * 180) / Math.PI);
  }

  /** The angle on the ring under a pixel, by undoing the ring's foreshortening. */
  function angleAt(x: number, y: number): number {
    const [ax, ay] = [dot(across, view.right), -dot(across, view.up)];
    const [ux, uy] = [dot(upright, view.right), -dot(upright, view.up)];
    const area = ax * uy - ay * ux;
    return (Math.atan2((ax * y - ay * x) / area, (x * uy - y * ux) / area) * 180) / Math.PI;
  }

  function onKeyDown(event: KeyboardEvent) {
    const steps = keySteps(event);
    if (steps === null) return;
    event.preventDefault();
    if (steps === 'least') put(-180);
    else if (steps === 'most') put(180);
    else put(Math.min(180, Math.max(-180, Math.round(value + steps))));
  }

  const ring = Array.from({ length: 73 }, (_, i) => at(i * 5, REACH));
  const ticks = Array.from({ length: 24 }, (_, i) => [at(i * 15, REACH), at(i * 15, REACH - (i % 6 === 0 ? 9 : 5))]);
  return (
    <g
      className="wb-protractor"
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-valuenow={value}
      aria-valuemin={-180}
      aria-valuemax={180}
      aria-valuetext={`${numberText(value)} degrees`}
      onKeyDown={onKeyDown}
      {...drag}
    >
      <path className="dial" d={`${pathThrough(ring)}${ticks.map(pathThrough).join('')}`} />
      <path className="rail" d={pathThrough([at(0, REACH), [0, 0], bead])} />
      <circle className="ring" cx={bead[0]} cy={bead[1]} r="15" />
      <circle className="face" cx={bead[0]} cy={bead[1]} r="11" />
      <text x={bead[0]} y={bead[1] + 4.5} textAnchor="middle">
        {letter}
      </text>
      <text className="read-out" y={REACH + 24} textAnchor="middle">
        {numberText(value)}°
      </text>
    </g>
  );
}

/** Two unit directions across the axis: the angle 0 lies as far to the right in the view as it can. */
function spokes(axis: Vec3, view: View): [Vec3, Vec3] {
  const flat = plus(view.right, scaled(axis, -dot(view.right, axis)));
  const across = unit(flat, view.up);
  return [across, cross(axis, across)];
}

function tangentOf(at: (degrees: number, radius: number) => readonly [number, number], value: number) {
  const [before, after] = [at(value - 1, REACH), at(value + 1, REACH)];
  const [x, y] = [after[0] - before[0], after[1] - before[1]];
  const length = Math.hypot(x, y) || 1;
  return [x / length, y / length] as const;
}

/** The same angle, by whole turns as near as may be to what it was, within ±180. */
function nearest(angle: number, was: number): number {
  const turned = angle + 360 * Math.round((was - angle) / 360);
  return Math.min(180, Math.max(-180, turned));
}

function pathThrough(points: readonly (readonly [number, number])[]): string {
  return points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('');
}
