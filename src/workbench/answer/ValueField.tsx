import { useId, useState } from 'react';

interface Props {
  /** The question. */
  says: string;
  unit: string;
  value: number | null;
  disabled: boolean;
  put: (value: number | null) => void;
}

/** A question and the number that answers it; empty until there is one. */
export function ValueField({ says, unit, value, disabled, put }: Props) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);

  function type(text: string) {
    setTyped(text);
    const number = Number(text);
    if (text.trim() === '') put(null);
    else if (Number.isFinite(number)) put(number);
  }

  return (
    <li className="wb-value">
      <label htmlFor={id}>{says}</label>{' '}
      <span className="wb-box">
        <input
          id={id}
          type="number"
          step="any"
          inputMode="decimal"
          value={typed ?? value ?? ''}
          disabled={disabled}
          onChange={(event) => type(event.target.value)}
          onBlur={() => setTyped(null)}
        />
        {unit && <span aria-hidden="true">{unit}</span>}
        {unit && <span className="unseen">{unit === 'cm' ? 'centimetres' : 'degrees'}</span>}
      </span>
    </li>
  );
}
