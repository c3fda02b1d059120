import { useState } from 'react';
import { answerOf } from '../answer/answerOf.ts';
import { useBench } from '../state/bench.ts';
import { stampOf } from './record.ts';
import { verdict } from './verdict.ts';

/** Proves the work as it stands, keeps what came of it, and tells it. */
export function useProof(): { prove: () => Promise<void>; proving: 'no' | 'yes' | 'failed' } {
  const { store, exercise, desk, dispatch } = useBench();
  const [proving, setProving] = useState<'no' | 'yes' | 'failed'>('no');
  const say = (said: string) => dispatch({ do: 'say', said });

  async function prove() {
    if (proving === 'yes') return;
    const session = store.get();
    const stamp = stampOf(session, exercise);
    setProving('yes');
    say('Proving …');
    try {
      const { result, messages } = await desk.ask({ ask: 'prove', exercise, answer: answerOf(session, exercise) });
      dispatch({ do: 'prove', proof: { when: Date.now(), result, messages, stamp, guess: session.guess } });
      say(`Proof done. ${verdict(result)}`);
      setProving('no');
    } catch (error) {
      setProving('failed');
      say('The proof could not be made.');
      throw error;
    }
  }

  return { prove, proving };
}
