import { NumberWord } from '../words/NumberWord.tsx';

interface Props {
  /** "move x of wind_left" */
  label: string;
  /** What stands before it on the page, where the bone's name is above. */
  short: string;
  value: number;
  unit: string;
  least: number;
  most: number;
  step: number;
  put: (value: number) => void;
}

/** A slider with − and + and a number: each does all that the others do. */
export function Slider({ label, short, value, unit, least, most, step, put }: Props) {
  const set = (next: number) => put(Math.min(most, Math.max(least, Number(next.toPrecision(9)))));
  return (
    <div className="wb-slider">
      <span aria-hidden="true">{short}</span>
      <button type="button" aria-label={`Less ${label}`} disabled={value <= least} onClick={() => set(value - step)}>
        −
      </button>
      <input
        type="range"
        aria-label={label}
        aria-valuetext={`${value} ${unit === '°' ? 'degrees' : unit}`.trim()}
        min={least}
        max={most}
        step={step}
        value={value}
        onChange={(event) => set(event.target.valueAsNumber)}
      />
      <button type="button" aria-label={`More ${label}`} disabled={value >= most} onClick={() => set(value + step)}>
        +
      </button>
      <NumberWord
        label={unit ? label : `${label}, as a number`}
        value={value}
        unit={unit}
        step={step}
        least={least}
        most={most}
        put={set}
      />
    </div>
  );
}
