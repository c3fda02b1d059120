import { useId } from 'react';
import { KIND_WORDS } from '../../kind-words.ts';
import type { AuditRow, Offer, OfferedExercise } from '../offered.ts';

interface Props {
  offer: Offer;
  chosen: ReadonlySet<string>;
  onToggle: (id: string) => void;
}

/** Every exercise that may be set, by chapter and lesson, with what one chooses by. */
export function ChooseExercises({ offer, chosen, onToggle }: Props) {
  const { exercises, audited, isAuditCurrent } = offer;
  return (
    <>
      {audited !== null && (
        <p className="small">
          Right and wrong rigs are counted as in the published audit of {audited}
          {isAuditCurrent ? '.' : '; some exercises have changed since, and the figures do not hold for those.'}
        </p>
      )}
      {groupedBy(exercises, ({ chapter }) => `${chapter.number} ${chapter.title}`).map(([title, own]) => (
        <details key={title}>
          <summary>
            {title}: {countWords(own, chosen)}
          </summary>
          {groupedBy(own, ({ lesson }) => `${lesson.number} ${lesson.title}`).map(([lesson, ofLesson]) => (
            <fieldset key={lesson}>
              <legend>{lesson}</legend>
              {ofLesson.map((exercise) => (
                <Choice key={exercise.id} {...{ exercise, onToggle }} isChosen={chosen.has(exercise.id)} />
              ))}
            </fieldset>
          ))}
        </details>
      ))}
    </>
  );
}

function countWords(own: readonly OfferedExercise[], chosen: ReadonlySet<string>): string {
  const count = own.filter(({ id }) => chosen.has(id)).length;
  return `${own.length === 1 ? 'one exercise' : `${own.length} exercises`}${count > 0 ? `, ${count} chosen` : ''}`;
}

/** The groups in the order in which they first appear. */
function groupedBy(
  exercises: readonly OfferedExercise[],
  nameOf: (exercise: OfferedExercise) => string,
): [name: string, exercises: OfferedExercise[]][] {
  const groups = new Map<string, OfferedExercise[]>();
  for (const one of exercises) groups.set(nameOf(one), [...(groups.get(nameOf(one)) ?? []), one]);
  return [...groups];
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
