import { useId, useMemo, useState } from 'react';
import { readJson } from '../../../solver/document/json.ts';
import { Alarm, Field } from '../parts/Field.tsx';
import { FileButton } from '../parts/FileButton.tsx';
import { refusalWords } from '../refusal-words.ts';
import { zones } from '../time/zoned-time.ts';
import type { PlanForm } from './plan-form.ts';

interface Props {
  form: PlanForm;
  change: (part: Partial<PlanForm>) => void;
}

type TextField = 'passPercent' | 'attempts' | 'opens' | 'due' | 'latePercent' | 'lateUntil';

/** Pass mark, attempts, times, what late work costs, house sheet. */
export function Rules({ form, change }: Props) {
  /** What a field of the form has, and where it goes. */
  const bound = (name: TextField) => ({
    value: form[name],
    onChange: (value: string) => change({ [name]: value }),
  });
  return (
    <>
      <Field label="Pass mark, in per cent" type="number" min="0" {...bound('passPercent')} />
      <Field
        label="Attempts that count"
        note="Leave it empty for any number. Each proof is one attempt, and the best of them counts. A browser cannot enforce it: the mark book leaves out what is beyond."
        type="number"
        min="1"
        step="1"
        {...bound('attempts')}
      />
      <Field label="Opens" note="Leave it empty to open at once." type="datetime-local" {...bound('opens')} />
      <Field label="Due" note="Leave it empty and nothing is late." type="datetime-local" {...bound('due')} />
      <Zone zone={form.zone} onChange={(zone) => change({ zone })} />
      {form.due !== '' && (
        <>
          <Field
            label="Taken for each day late, in per cent of the full mark"
            note="Late is measured by when you collect the work, not by what a file says."
            type="number"
            min="0"
            {...bound('latePercent')}
          />
          <Field label="Nothing counts after" note="May be left empty." type="datetime-local" {...bound('lateUntil')} />
        </>
      )}
      <House {...{ form, change }} />
    </>
  );
}

function Zone({ zone, onChange }: { zone: string; onChange: (zone: string) => void }) {
  const id = useId();
  const all = useMemo(() => zones(zone), [zone]);
  return (
    <p className="field">
      <label htmlFor={id}>Time zone of these times</label>
      <select id={id} value={zone} onChange={(event) => onChange(event.target.value)}>
        {all.map((one) => (
          <option key={one}>{one}</option>
        ))}
      </select>
    </p>
  );
}

function House({ form: { house }, change }: Props) {
  const [refusal, setRefusal] = useState('');
  function take(text: string, name: string) {
    const read = readJson(text);
    setRefusal(read.ok ? '' : `${name} is no JSON. ${refusalWords(read.refusal)}`);
    if (read.ok) change({ house: { name, value: read.value } });
  }
  return (
    <div className="files-line">
      <p>
        House sheet: {house ? house.name : 'none'}{' '}
        <FileButton words="Take one from a file" accept=".json,application/json" onText={take} />{' '}
        {house && (
          <button type="button" onClick={() => change({ house: null })}>
            Leave it out
          </button>
        )}
      </p>
      <Alarm>{refusal}</Alarm>
    </div>
  );
}
