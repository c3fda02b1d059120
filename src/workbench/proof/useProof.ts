import { useState } from 'react';
import { answerOf } from '../answer/answerOf.ts';
import { keepAttempts } from '../keep/attempts.ts';
import { useBench } from '../state/bench.ts';
import type { Session } from '../state/session.ts';
import { attemptOf } from './attempt.ts';
import { type ProofRecord, stampOf } from './record.ts';
import { verdict } from './verdict.ts';

/** Proves the work as it stands, keeps what came of it, and tells it. */
export function useProof(): { prove: () => Promise<void>; proving: 'no' | 'yes' | 'failed' } {
  const { store, exercise, desk, dispatch, proved } = useBench();
  const [proving, setProving] = useState<'no' | 'yes' | 'failed'>('no');
  const say = (said: string) => dispatch({ do: 'say', said });

  async function prove() {
    if (proving === 'yes') return;
    const session = store.get();
    const stamp = stampOf(session, exercise);
    setProving('yes');
    say('Proving …');
    try {
      const answer = answerOf(session, exercise);
      const { result, messages } = await desk.ask({ ask: 'prove', exercise, answer });
      const proof = { when: Date.now(), result, messages, stamp, guess: session.guess };
      dispatch({ do: 'prove', proof });
      count(session, proof);
      proved?.(answer, result);
      say(`Proof done. ${verdict(result)}`);
      setProving('no');
    } catch (error) {
      setProving('failed');
      say('The proof could not be made.');
      throw error;
    }
  }

  function count(before: Session, proof: ProofRecord) {
    const attempt = attemptOf(before, proof, exercise);
    // Where nothing can be stored, the line below the proof sheet says so.
    if (attempt) keepAttempts([attempt]).catch(() => {});
  }

  return { prove, proving };
}
