import { useMemo, useState } from 'react';
import { seedAttempt, seedOf } from '../../../delivery/variant/seed.ts';
import { openExercise } from '../../../grader/exercise/open.ts';
import { queryFor } from '../../site/seed-in-address.ts';
import { courseAddress } from '../course-root.ts';
import type { ExerciseFile } from '../exercise-file.ts';
import { Field } from '../parts/Field.tsx';

interface Props {
  /** Of the assignment. */
  id: string;
  files: readonly ExerciseFile[];
}

/** Which variants a learner would get. */
export function Preview({ id, files }: Props) {
  const [learner, setLearner] = useState('');
  const code = learner.trim();
  return (
    <>
      <Field label="A learner’s code" value={learner} onChange={setLearner} />
      <p className="small">The pages that open allow what the exercises allow as authored.</p>
      {code !== '' && (
        <ul>
          {files.map((file) => (
            <Variant key={file.definition.id} {...{ id, code, file }} />
          ))}
        </ul>
      )}
    </>
  );
}

function Variant({ id, code, file }: { id: string; code: string; file: ExerciseFile }) {
  const { definition, edition } = file;
  const seed = seedOf(id, code, definition.id, 1);
  const opened = useMemo(() => openExercise(definition, { edition, seed }), [definition, edition, seed]);
  const says = definition.structures.find((one) => one.id === opened.structure)?.says ?? opened.structure;
  const isRedrawn = seedAttempt(definition.kind, 2) === 2;
  return (
    <li>
      <a
        href={`${courseAddress(`exercises/${definition.id}/index.html`)}${queryFor(seed)}`}
        target="_blank"
        rel="noopener"
      >
        {opened.title}
      </a>
      . {says} {opened.size === 1 ? 'As large as drawn' : `${opened.size} times as large as drawn`}
      {isRedrawn && '; drawn anew at each attempt'}.
    </li>
  );
}
