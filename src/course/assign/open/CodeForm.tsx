import { type FormEvent, useState } from 'react';
import { learnerCode } from '../../../delivery/submission/readSubmission.ts';
import { reading } from '../../../solver/document/reader.ts';
import { Alarm, Field } from '../parts/Field.tsx';

interface Props {
  first: string;
  onCode: (code: string) => void;
}

/** Asks for the learner's code. */
export function CodeForm({ first, onCode }: Props) {
  const [typed, setTyped] = useState(first);
  const [refusal, setRefusal] = useState('');

  function take(event: FormEvent) {
    event.preventDefault();
    const read = reading(() => learnerCode(typed.trim(), null));
    setRefusal(read.ok ? '' : `Expected ${read.refusal.expected}.`);
    if (read.ok) onCode(read.value);
  }

  return (
    <form onSubmit={take}>
      <Field
        label="Your code"
        note="Exactly as your instructor has it in the list of the class. Your variants follow from it, and so does the mark."
        value={typed}
        onChange={setTyped}
      />
      <p>
        <button type="submit">Work under this code</button>
      </p>
      <Alarm>{refusal}</Alarm>
    </form>
  );
}
