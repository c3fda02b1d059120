import '../workbench/workbench.css';
import '../workbench/words/words.css';
import '../workbench/plate/plate.css';
import { useEffect, useState } from 'react';
import type { HandedIn } from '../delivery/book/book.ts';
import { AssignmentGrader } from '../delivery/mark/gradeAnswer.ts';
import type { GradedMark } from '../delivery/mark/markedAnswer.ts';
import { readJson } from '../solver/document/json.ts';
import type { Pose, Rig } from '../solver/document/rig.ts';
import { fieldOf } from '../solver/document/structures.ts';
import { readRig } from '../solver/index.ts';
import { Plate } from '../workbench/plate/Plate.tsx';
import { ready, solved } from '../workbench/pose/solved.ts';
import type { Desk } from './desk.ts';
import { textAt } from './droppedFiles.ts';

interface Props {
  desk: Desk;
  handedIn: HandedIn;
  answer: GradedMark;
  pose: Pose;
  close: () => void;
}

type Found = { is: 'looking' } | { is: 'rig'; rig: Rig; says: string } | { is: 'not'; why: string };

/** A learner's own rig in a pose, from the file it was handed in with. */
export default function AnswerPlate({ desk, handedIn, answer, pose, close }: Props) {
  const [found, setFound] = useState<Found>({ is: 'looking' });
  const { path } = handedIn;
  useEffect(() => {
    let isGone = false;
    rigIn(desk, path, answer).then((next) => {
      if (!isGone) setFound(next);
    });
    return () => {
      isGone = true;
    };
  }, [desk, path, answer]);

  if (found.is === 'looking') return <p>Opening the file …</p>;
  if (found.is === 'not') return <p role="status">{found.why}</p>;
  const made = ready(found.rig);
  return (
    <div className="wb">
      {made.ok ? (
        <figure className="wb-figure">
          <Plate solved={solved(made.ready, pose)} label={`${answer.exercise}: the rig that was handed in`} />
        </figure>
      ) : (
        <p>The rig cannot be evaluated: {made.cycle.join(' → ')}.</p>
      )}
      {found.says && <p>{found.says}</p>}
      <p>
        <button type="button" onClick={close}>
          Put it away
        </button>
      </p>
    </div>
  );
}

async function rigIn(desk: Desk, path: string, { exercise, seed, attempt }: GradedMark): Promise<Found> {
  const text = await textAt(desk.files, path);
  if (text === null) return { is: 'not', why: `The plate needs the file ${path}: choose the folder or zip again.` };
  const json = readJson(text);
  const value = json.ok ? json.value : null;
  const answers = (fieldOf(value, 'answers') ?? [value]) as readonly unknown[];
  const own = answers.find((one) => {
    return (
      fieldOf(one, 'exercise') === exercise &&
      fieldOf(one, 'seed') === seed &&
      (fieldOf(one, 'attempt') ?? 1) === attempt
    );
  });
  const rig = fieldOf(own, 'rig');
  if (rig === undefined) return givenRig(desk, exercise, seed, fieldOf(own, 'response'));
  const read = readRig(rig);
  return read.ok ? { is: 'rig', rig: read.value, says: '' } : { is: 'not', why: 'The rig cannot be read.' };
}

/** An answer that is no rig is shown beside the rig it speaks of. */
function givenRig(desk: Desk, exercise: string, seed: number, response: unknown): Found {
  const given = desk.opened && new AssignmentGrader(desk.opened).exerciseOf(exercise, seed);
  if (!given) return { is: 'not', why: 'The assignment is needed to show what was asked: open it above.' };
  return { is: 'rig', rig: given.start, says: `Answered: ${JSON.stringify(response)}` };
}
