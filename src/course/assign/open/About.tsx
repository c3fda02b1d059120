import type { Assignment } from '../../../delivery/assignment/assignment.ts';
import { thumbprintText } from '../../../delivery/assignment/keys.ts';
import type { OpenedAssignment } from '../../../delivery/assignment/readAssignment.ts';
import { millisecondsOf } from '../../../delivery/assignment/time.ts';
import { percentText as percent } from '../../../delivery/percentText.ts';
import { saveFile } from '../../../workbench/keep/saveFile.ts';
import { asSet, inZone } from '../time/time-words.ts';
import { ownZone } from '../time/zoned-time.ts';

/** Who set it, by when, and how it counts. */
export function About({ assignment, signedBy }: OpenedAssignment) {
  const { key, opens, due, late, passMark, attempts, house, id } = assignment;
  return (
    <dl className="asked-of">
      <dt>Signed by</dt>
      {signedBy && key ? (
        <>
          <dd>
            <code className="thumbprint">{thumbprintText(key)}</code>
          </dd>
          <dd>Compare it once with the one your instructor gave you by another way.</dd>
        </>
      ) : (
        <dd>Nobody. Anyone may have made or changed it; work on it is marked with the flag unsigned.</dd>
      )}
      {opens && <Time name="Opens" written={opens} isAhead />}
      {due && <Time name="Due" written={due} />}
      {due && <Late late={late} />}
      <dt>Passed</dt>
      <dd>From {percent(passMark)} of the marks on.</dd>
      <dt>Attempts</dt>
      <dd>{attemptWords(attempts)}</dd>
      {house !== undefined && (
        <>
          <dt>House sheet</dt>
          <dd>
            <button type="button" onClick={() => saveFile(`${id}-house.json`, house)}>
              Save it to a file
            </button>
          </dd>
        </>
      )}
    </dl>
  );
}

function Time({ name, written, isAhead = false }: { name: string; written: string; isAhead?: boolean }) {
  const isWaiting = isAhead && Date.now() < millisecondsOf(written);
  return (
    <>
      <dt>{name}</dt>
      <dd>
        {asSet(written)}. On your clock: {inZone(written, ownZone())}.
        {isWaiting && ' It is not open yet: what is collected before then is flagged as early.'}
      </dd>
    </>
  );
}

function Late({ late }: { late: Assignment['late'] }) {
  if (!late) return null;
  const { perDay, until } = late;
  return (
    <>
      <dt>Late</dt>
      <dd>
        {perDay > 0 && `Each day begun after that takes ${percent(perDay)} of the full mark. `}
        {until && `Nothing counts after ${asSet(until)}. `}
        What counts is when your work is collected.
      </dd>
    </>
  );
}

function attemptWords(attempts: number | undefined): string {
  if (attempts === undefined) return 'Any number. The best answer to each exercise counts.';
  const first = attempts === 1 ? 'The first proof' : `The first ${attempts} proofs`;
  return `${first} of each exercise ${attempts === 1 ? 'counts' : 'count, and the best of them is the mark'}. This browser counts them; it cannot keep you from more, and the mark book leaves out what is beyond.`;
}
