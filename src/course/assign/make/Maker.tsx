import { useEffect, useRef, useState } from 'react';
import type { KeyPair } from '../../../delivery/assignment/assignment.ts';
import { makeKey } from '../../../delivery/assignment/keys.ts';
import type { Offer } from '../offered.ts';
import { Alarm, Field } from '../parts/Field.tsx';
import { ChooseExercises } from './ChooseExercises.tsx';
import { ChosenExercises } from './ChosenExercises.tsx';
import { KeySection } from './KeySection.tsx';
import { keepKey, keptKey } from './key-store.ts';
import { type Made, makeSigned } from './make-signed.ts';
import { Preview } from './Preview.tsx';
import { idOf, newForm, type PlanForm, planOf } from './plan-form.ts';
import { keepForm, keptForm } from './plan-store.ts';
import { Rules } from './Rules.tsx';
import { SaveSection } from './SaveSection.tsx';
import { useFiles } from './useFiles.ts';

const FORBIDDEN =
  'This browser does not let the page store anything. You can make an assignment all the same: save the key to a file before you leave, or the next one is signed by another.';

/** The page on which an assignment is made. */
export function Maker({ offer }: { offer: Offer }) {
  const [form, setForm] = useState<PlanForm>(() => newForm());
  const [pair, setPair] = useState<KeyPair | null>(null);
  const [isForbidden, setForbidden] = useState(false);
  const [cleared, setCleared] = useState<PlanForm | null>(null);
  const files = useFiles(form.chosen.map(({ id }) => id));
  const [isBack, setBack] = useState(false);
  const chosenHeading = useRef<HTMLHeadingElement>(null);

  useEffect(() => {
    Promise.all([keptForm(), keptKey()])
      .then(([kept, key]) => {
        if (kept) setForm(kept);
        if (key) setPair(key);
      })
      .catch(() => setForbidden(true))
      .finally(() => setBack(true));
  }, []);

  function change(part: Partial<PlanForm>) {
    const next = { ...form, ...part };
    setForm(next);
    if (!isForbidden) keepForm(next).catch(() => setForbidden(true));
  }

  function takePair(next: KeyPair) {
    setPair(next);
    keepKey(next).catch(() => setForbidden(true));
  }

  function toggle(id: string) {
    const isIn = form.chosen.some((one) => one.id === id);
    const rest = form.chosen.filter((one) => one.id !== id);
    change({ chosen: isIn ? rest : inOrder(offer, [...rest, { id, weight: '1', tolerances: {} }]) });
  }

  /** The button goes with what it took out, so the focus goes to the heading. */
  function takeOut(id: string) {
    change({ chosen: form.chosen.filter((one) => one.id !== id) });
    chosenHeading.current?.focus();
  }

  function clear() {
    setCleared(form);
    change(newForm());
  }

  function bringBack(before: PlanForm) {
    setCleared(null);
    change(before);
  }

  async function make(tell: (words: string) => void, signal: AbortSignal): Promise<Made> {
    const read = planOf(form);
    if ('faults' in read) return read;
    const key = pair ?? makeKey();
    if (!pair) takePair(key);
    const made = await makeSigned(read.plan, key, tell, signal);
    if ('text' in made) change({ id: read.plan.id });
    return made;
  }

  // Before that, a key made here would take the place of one that is kept.
  if (!isBack) return <p>Opening …</p>;
  return (
    <>
      {isForbidden && <Alarm>{FORBIDDEN}</Alarm>}
      <Field label="Title" value={form.title} onChange={(title) => change({ title })} />
      <h2 id="exercises">Exercises</h2>
      <ChooseExercises offer={offer} chosen={new Set(form.chosen.map(({ id }) => id))} onToggle={toggle} />
      <h2 id="chosen" tabIndex={-1} ref={chosenHeading}>
        Chosen, and what they weigh
      </h2>
      <ChosenExercises
        offer={offer}
        chosen={form.chosen}
        onChange={(chosen) => change({ chosen })}
        onTakeOut={takeOut}
      />
      <h2 id="rules">Times and marks</h2>
      <Rules form={form} change={change} />
      <h2 id="preview">What a learner gets</h2>
      <p>
        Each learner’s variants follow from the code and the id of the assignment, <code>{idOf(form)}</code>.
        {form.id === null
          ? ' The id is settled when you first save it.'
          : ' It stays, and the variants with it, when you change the title or save again.'}
      </p>
      <Preview id={idOf(form)} files={files} />
      <h2 id="key">Your key</h2>
      <p>
        An assignment is signed, so that learners and markers can see that it is yours: compare the thumbprint with them
        once, by another way than the file. Whoever has the key can sign as you; markers who share the work may share
        it.
      </p>
      <KeySection pair={pair} onPair={takePair} />
      <h2 id="save">Save it</h2>
      <SaveSection name={`${idOf(form)}.jws`} make={make} />
      <p>
        <button type="button" onClick={clear}>
          Begin another assignment
        </button>{' '}
        {cleared ? (
          <button type="button" onClick={() => bringBack(cleared)}>
            Bring back the one before
          </button>
        ) : (
          <span className="small">What stands on this page is cleared. The key stays.</span>
        )}
      </p>
    </>
  );
}

function inOrder({ exercises }: Offer, chosen: PlanForm['chosen']): PlanForm['chosen'] {
  const place = (id: string) => exercises.findIndex((one) => one.id === id);
  return chosen.toSorted((a, b) => place(a.id) - place(b.id));
}
