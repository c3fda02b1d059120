import { useState } from 'react';
import type { Option } from '../sentence/piece.ts';
import { Choice } from './Choice.tsx';

interface Props {
  label: string;
  text: string;
  options: readonly Option[];
  choose: (value: string) => void;
}

/** Something to be done with what is chosen: it is done when its button is pressed, not by choosing. */
export function Pick({ label, text, options, choose }: Props) {
  const [chosen, setChosen] = useState(options[0]?.value ?? '');
  const value = options.some((option) => option.value === chosen) ? chosen : (options[0]?.value ?? '');
  return (
    <span className="wb-pick">
      <button type="button" className="wb-aside" onClick={() => choose(value)}>
        {text}
      </button>{' '}
      <Choice label={label} value={value} options={options} choose={setChosen} />
    </span>
  );
}
