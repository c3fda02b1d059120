import { amountText } from '../../../grader/words/amount.ts';
import type { Offer, OfferedExercise } from '../offered.ts';
import { Field } from '../parts/Field.tsx';
import type { ChosenExercise } from './plan-form.ts';

interface Props {
  offer: Offer;
  chosen: readonly ChosenExercise[];
  onChange: (chosen: readonly ChosenExercise[]) => void;
  onTakeOut: (id: string) => void;
}

/** What was chosen: how much each weighs, and what is allowed in it. */
export function ChosenExercises({ offer, chosen, onChange, onTakeOut }: Props) {
  const change = (id: string, part: Partial<ChosenExercise>) =>
    onChange(chosen.map((one) => (one.id === id ? { ...one, ...part } : one)));
  const known = chosen.flatMap((one) => {
    const exercise = offer.exercises.find(({ id }) => id === one.id);
    return exercise ? [{ one, exercise }] : [];
  });
  if (known.length === 0) return <p>None yet.</p>;
  const minutes = known.reduce((sum, { exercise }) => sum + exercise.minutes, 0);
  return (
    <>
      {known.map(({ one, exercise }) => (
        <div className="chosen" key={one.id}>
          <h3>{exercise.title}</h3>
          <p>
            <button type="button" aria-label={`Take it out: ${exercise.title}`} onClick={() => onTakeOut(one.id)}>
              Take it out
            </button>
          </p>
          <Field
            label={`Weight of ${exercise.title}`}
            type="number"
            min="0"
            value={one.weight}
            onChange={(weight) => change(one.id, { weight })}
          />
          <Tolerances {...{ one, exercise }} onChange={(tolerances) => change(one.id, { tolerances })} />
        </div>
      ))}
      <p>
        {known.length === 1 ? 'One exercise' : `${known.length} exercises`}, about {minutes} minutes for a practised
        hand. Learners need longer.
      </p>
    </>
  );
}

interface TolerancesProps {
  one: ChosenExercise;
  exercise: OfferedExercise;
  onChange: (tolerances: Readonly<Record<string, string>>) => void;
}

function Tolerances({ one, exercise, onChange }: TolerancesProps) {
  if (exercise.tolerances.length === 0) return null;
  const changed = Object.values(one.tolerances).filter((typed) => typed.trim() !== '').length;
  return (
    <details>
      <summary>
        Tolerances of {exercise.title}
        {changed > 0 ? `: ${changed} changed` : ', as authored'}
      </summary>
      <p className="small">
        Leave a field empty to keep what the exercise allows. What you change is audited before the assignment is saved.
      </p>
      {exercise.tolerances.map(({ id, says, allowed, unit, atLeast }) => (
        <Field
          key={id}
          label={says}
          note={`${id}: ${atLeast ? 'at least' : 'at most'} ${amountText(allowed, unit)} as authored; in ${unit}`}
          type="number"
          min="0"
          value={one.tolerances[id] ?? ''}
          onChange={(typed) => onChange({ ...one.tolerances, [id]: typed })}
        />
      ))}
    </details>
  );
}
