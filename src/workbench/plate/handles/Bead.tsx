import type { KeyboardEvent } from 'react';
import { numberText } from '../../sentence/piece.ts';
import type { View } from '../view.ts';
import { keySteps } from './keySteps.ts';
import { beadFrom } from './places.ts';
import { useDrag } from './useDrag.ts';

interface Props {
  /** "move x of wind_left, on the plate" */
  label: string;
  letter: string;
  value: number;
  unit: string;
  step: number;
  least: number;
  most: number;
  /** Pixels: where the handles' bone is, and which way the rail runs, as long as one unit of the value. */
  origin: readonly [number, number];
  run: readonly [number, number];
  view: View;
  put: (value: number) => void;
}

/** A rail with a lettered bead: the bead slides along the rail, by pointer or by arrow keys. */
export function Bead({ label, letter, value, unit, step, least, most, origin, run, view, put }: Props) {
  const length = Math.hypot(run[0], run[1]);
  const along = length > 1e-6 ? [run[0] / length, run[1] / length] : null;
  const drag = useDrag(
    () => value,
    (held, dx, dy) => {
      if (!along || length < 6) return;
      set(held + (dx * along[0]! + dy * along[1]!) / length);
    },
  );
  const from = beadFrom(run, origin, view);
  if (!from) return null;
  const [dx, dy] = from;

  function set(next: number) {
    const whole = Number((Math.round(next / step) * step).toPrecision(9));
    const bounded = Math.min(most, Math.max(least, whole));
    if (bounded !== value) put(bounded);
  }

  function onKeyDown(event: KeyboardEvent) {
    const steps = keySteps(event);
    if (steps === null) return;
    event.preventDefault();
    if (steps === 'least') set(least);
    else if (steps === 'most') set(most);
    else set(value + steps * step);
  }

  return (
    <g
      className="wb-bead"
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-valuenow={value}
      aria-valuemin={least}
      aria-valuemax={most}
      aria-valuetext={`${numberText(value)} ${unit}`}
      onKeyDown={onKeyDown}
      {...drag}
    >
      <path
        className="rail"
        d={`M${origin[0] - dx * 0.35} ${origin[1] - dy * 0.35}L${origin[0] + dx} ${origin[1] + dy}`}
      />
      <circle className="ring" cx={origin[0] + dx} cy={origin[1] + dy} r="15" />
      <circle className="face" cx={origin[0] + dx} cy={origin[1] + dy} r="11" />
      <text x={origin[0] + dx} y={origin[1] + dy + 4.5} textAnchor="middle">
        {letter}
      </text>
    </g>
  );
}
