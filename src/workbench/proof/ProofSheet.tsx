import { useMemo, useState } from 'react';
import { useBench } from '../state/bench.ts';
import { Heading } from '../words/Heading.tsx';
import { Attempts } from './Attempts.tsx';
import { answerOf } from './answerOf.ts';
import { FaultGuess } from './FaultGuess.tsx';
import { Hints } from './Hints.tsx';
import { RequirementLine } from './RequirementLine.tsx';
import { stampOf } from './record.ts';
import { verdict } from './verdict.ts';

/** The proof sheet: what was asked, what was measured, in which pose, and one button to see it. */
export function ProofSheet() {
  const { session, exercise, desk, dispatch } = useBench();
  const [proving, setProving] = useState<'no' | 'yes' | 'failed'>('no');
  const proof = session.proofs.at(-1);
  const stale = proof !== undefined && proof.stamp !== stampOf(session.history);
  const mustGuess = exercise.kind === 'repair' && session.guess === null;
  const results = useMemo(() => new Map(proof?.result.requirements.map((each) => [each.id, each])), [proof]);

  async function prove() {
    const proved = session;
    setProving('yes');
    dispatch({ do: 'say', said: 'Proving …' });
    try {
      const { result, messages } = await desk.ask({
        ask: 'prove',
        exercise,
        answer: answerOf(proved, exercise),
      });
      const stamp = stampOf(proved.history);
      dispatch({ do: 'prove', proof: { when: Date.now(), result, messages, stamp, guess: proved.guess } });
      dispatch({ do: 'say', said: `Proof done. ${verdict(result)}` });
      setProving('no');
    } catch (error) {
      setProving('failed');
      dispatch({ do: 'say', said: 'The proof could not be made.' });
      throw error;
    }
  }

  return (
    <section className="wb-proof" aria-label="Proof sheet">
      <Heading rank={1}>Proof sheet</Heading>
      {exercise.kind === 'repair' && <FaultGuess />}
      <p className="wb-prove">
        <button
          type="button"
          className="wb-main"
          disabled={proving === 'yes' || mustGuess}
          onClick={() => void prove()}
        >
          Prove it
        </button>{' '}
        <span className="wb-note">
          {proving === 'yes' ? 'Proving …' : noteFor(mustGuess, proof !== undefined, stale)}
        </span>
      </p>
      {proving === 'failed' && <p className="wb-refusal">The proof could not be made. Your work is as it was.</p>}
      {proof && (
        <p className="wb-verdict">
          {verdict(proof.result)} {stale && 'The rig has changed since.'}
        </p>
      )}
      <ol className={stale ? 'wb-requirements stale' : 'wb-requirements'}>
        {exercise.requirements.map((requirement) => (
          <RequirementLine
            key={requirement.id}
            requirement={requirement}
            result={results.get(requirement.id)}
            message={proof?.messages[requirement.id] ?? ''}
          />
        ))}
      </ol>
      <Hints />
      <Attempts />
    </section>
  );
}

function noteFor(mustGuess: boolean, proved: boolean, stale: boolean): string {
  if (mustGuess) return 'Say first what the fault is.';
  if (!proved) return 'It moves what an animator may move, in every way asked, and measures.';
  return stale ? 'The sheet below is of an earlier state.' : 'The sheet below is of the rig as it stands.';
}
