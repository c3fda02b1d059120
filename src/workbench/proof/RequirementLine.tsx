import type { Exercise } from '../../grader/exercise/exercise.ts';
import type { RequirementResult } from '../../grader/result.ts';
import { poseText } from '../../grader/words/poseText.ts';
import type { Pose } from '../../solver/document/rig.ts';
import { useBench, useSession } from '../state/bench.ts';
import { measuredWords } from './measuredWords.ts';

interface Props {
  requirement: Exercise['requirements'][number];
  result: RequirementResult | undefined;
  /** What is said of it where it is not met. */
  message: string;
}

const WORDS = { met: 'met', missed: 'missed', 'not-checked': 'not checked' } as const;

/** One requirement: its mark and word, what was asked, measured and allowed, and the pose that shows it. */
export function RequirementLine({ requirement, result, message }: Props) {
  const status = result?.status ?? 'unproved';
  return (
    <li className={`wb-requirement ${status}`}>
      <span className="wb-status">
        <StatusMark status={status} /> {result ? WORDS[result.status] : 'not proved yet'}
      </span>
      <div>
        <p>{requirement.says}</p>
        {result && result.status !== 'met' && <Missed result={result} message={message} />}
        {result && requirement.kind !== 'value' && <Measured result={result} />}
        {result && requirement.kind === 'value' && <ShowPose id={requirement.id} pose={requirement.pose ?? {}} />}
      </div>
    </li>
  );
}

/** ✓, ✗ and – drawn, not lettered: the word beside it says the same. */
function StatusMark({ status }: { status: string }) {
  return (
    <svg viewBox="0 0 16 16" aria-hidden="true">
      <path d={MARKS[status] ?? 'M4 8h8'} />
    </svg>
  );
}

const MARKS: Readonly<Record<string, string>> = {
  met: 'M2.5 8.5 6.5 12.5 13.5 3.5',
  missed: 'M3 3 13 13M13 3 3 13',
};

function Missed({ result, message }: { result: RequirementResult; message: string }) {
  const { counterpose } = result;
  return (
    <>
      <p className="wb-message">{message}</p>
      {counterpose && (
        <p className="wb-counterpose">
          Counterpose: {poseText(counterpose)}. <ShowPose id={result.id} pose={counterpose} />
        </p>
      )}
    </>
  );
}

/** Loads the pose that shows it into Try. */
function ShowPose({ id, pose }: { id: string; pose: Pose }) {
  const { dispatch } = useBench();
  const isShown = useSession((now) => now.shown === id);
  return (
    <button type="button" aria-pressed={isShown} onClick={() => dispatch({ do: 'show', requirement: id, pose })}>
      Show this pose
    </button>
  );
}

/** Units of what is only counted: that none was found is said by "met". */
const COUNTED: ReadonlySet<string> = new Set(['bones', 'fields', 'cycles', 'things', 'names', 'links']);

function Measured({ result }: { result: RequirementResult }) {
  if (result.measured === null || (result.status === 'met' && COUNTED.has(result.unit))) return null;
  return (
    <p className="wb-measured">
      {measuredWords(result.measured, result)}
      {result.gate && result.status === 'missed'
        ? '. It held at the start, and nothing counts until it holds again'
        : ''}
      .
    </p>
  );
}
