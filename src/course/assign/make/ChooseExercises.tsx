import { useId } from 'react';
import { KIND_WORDS } from '../kind-words.ts';
import type { AuditRow, Offer, OfferedExercise } from '../offered.ts';

interface Props {
  offer: Offer;
  chosen: ReadonlySet<string>;
  onToggle: (id: string) => void;
}

/** Every exercise that may be set, under its lesson, with what one chooses by. */
export function ChooseExercises({ offer, chosen, onToggle }: Props) {
  const { exercises, audited, isAuditCurrent } = offer;
  const numbers = [...new Set(exercises.map(({ lesson }) => lesson.number))];
  return (
    <>
      {audited !== null && (
        <p className="small">
          Right and wrong rigs are counted as in the published audit of {audited}
          {isAuditCurrent ? '.' : '; some exercises have changed since, and the figures do not hold for those.'}
        </p>
      )}
      {numbers.map((number) => {
        const own = exercises.filter(({ lesson }) => lesson.number === number);
        return (
          <fieldset key={number}>
            <legend>
              {number} {own[0]!.lesson.title}
            </legend>
            {own.map((exercise) => (
              <Choice key={exercise.id} {...{ exercise, onToggle }} isChosen={chosen.has(exercise.id)} />
            ))}
          </fieldset>
        );
      })}
    </>
  );
}

interface ChoiceProps {
  exercise: OfferedExercise;
  isChosen: boolean;
  onToggle: (id: string) => void;
}

function Choice({ exercise, isChosen, onToggle }: ChoiceProps) {
  const id = useId();
  const { kind, minutes, skills, structures, sizes, audit } = exercise;
  return (
    <div className="choice">
      <input
        id={id}
        type="checkbox"
        checked={isChosen}
        aria-describedby={`${id}-about`}
        onChange={() => onToggle(exercise.id)}
      />
      <label htmlFor={id}>{exercise.title}</label>
      <p className="small" id={`${id}-about`}>
        {KIND_WORDS[kind]}, about {minutes} min, {structures * sizes} variants. {skills.join('; ')}. {auditWords(audit)}
      </p>
    </div>
  );
}

function auditWords(audit: AuditRow | null): string {
  if (!audit) return 'Not in the published audit.';
  const { rightTried, rightRefused, wrongTried, wrongPassed } = audit;
  return `Right rigs refused: ${rightRefused} of ${rightTried}; wrong ones passed: ${wrongPassed} of ${wrongTried}.`;
}
