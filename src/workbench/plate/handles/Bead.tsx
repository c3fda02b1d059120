import type { KeyboardEvent } from 'react';
import { numberText } from '../../sentence/piece.ts';
import type { Pixel } from '../placeLabels.ts';
import { keySteps } from './keySteps.ts';
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
  /** Pixels: which way the rail runs, as long as one unit of the value. */
  run: Pixel;
  /** Pixels from the bone to the bead; null where the rail points at the reader. */
  from: Pixel | null;
  put: (value: number) => void;
}

/** A rail with a lettered bead: the bead slides along the rail, by pointer or by arrow keys. */
export function Bead({ label, letter, value, unit, step, least, most, run, from, put }: Props) {
  const length = Math.hypot(run[0], run[1]);
  const along = length > 1e-6 ? [run[0] / length, run[1] / length] : null;
  const drag = useDrag(
    () => value,
    (held, dx, dy) => {
      if (!along || length < 6) return;
      set(held + (dx * along[0]! + dy * along[1]!) / length);
    },
  );
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
      <path className="rail" d={`M${-dx * 0.35} ${-dy * 0.35}L${dx} ${dy}`} />
      <circle className="ring" cx={dx} cy={dy} r="15" />
      <circle className="face" cx={dx} cy={dy} r="11" />
      <text x={dx} y={dy + 4.5} textAnchor="middle">
        {letter}
      </text>
    </g>
  );
}
