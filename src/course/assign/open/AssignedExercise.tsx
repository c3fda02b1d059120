import { useMemo } from 'react';
import type { CarriedExercise } from '../../../delivery/assignment/assignment.ts';
import { openExercise } from '../../../grader/exercise/open.ts';
import type { Setting } from '../../../workbench/setting.ts';
import { Workbench } from '../../../workbench/Workbench.tsx';
import { KIND_WORDS } from '../../kind-words.ts';
import { paragraphs } from '../../site/paragraphs.ts';
import type { ProvedAnswer } from './handing.ts';
import { standWords } from './stand-words.ts';

interface Props {
  carried: CarriedExercise;
  /** Of the learner's variant. */
  seed: number;
  /** Of all marks, from 0 to 1. */
  share: number;
  proved: readonly ProvedAnswer[];
  attempts: number | undefined;
  isOpen: boolean;
  onToggle: () => void;
  setting: Setting;
}

/** One exercise of an assignment: how it stands, and the bench when it is opened. */
export function AssignedExercise({ carried, seed, share, proved, attempts, isOpen, onToggle, setting }: Props) {
  const { definition, edition } = carried;
  const exercise = useMemo(() => openExercise(definition, { edition, seed }), [definition, edition, seed]);
  const { id, title, kind, task, why, requirements } = exercise;
  return (
    <section className="exercise" aria-labelledby={`assigned-${id}`}>
      <p className="caps">
        {KIND_WORDS[kind]} · {Math.round(share * 100)} % of the marks
      </p>
      <h3 id={`assigned-${id}`}>{title}</h3>
      <p>
        {standWords(proved, attempts)}{' '}
        <button
          type="button"
          aria-expanded={isOpen}
          aria-label={`${isOpen ? 'Close' : 'Open'} it: ${title}`}
          onClick={onToggle}
        >
          {isOpen ? 'Close it' : 'Open it'}
        </button>
      </p>
      {isOpen && (
        <>
          <div className="task">
            {paragraphs(task).map((text) => (
              <p key={text}>{text}</p>
            ))}
          </div>
          <p>{why}</p>
          <details>
            <summary>What the proof asks</summary>
            <ul className="asked">
              {requirements.map((requirement) => (
                <li key={requirement.id}>{requirement.says}</li>
              ))}
            </ul>
          </details>
          <Workbench exercise={id} seed={seed} setting={setting} />
        </>
      )}
    </section>
  );
}
