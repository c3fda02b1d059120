import { useBench, useSession } from '../state/bench.ts';
import { type Readiness, readiness } from './readiness.ts';

/** How things stand with the proof. It is told piece by piece, so that a pose that changes does not draw the sheet anew. */
export function useReadiness(): Readiness {
  const { exercise } = useBench();
  return {
    proof: useSession((session) => readiness(session, exercise).proof),
    stale: useSession((session) => readiness(session, exercise).stale),
    waits: useSession((session) => readiness(session, exercise).waits),
    answered: useSession((session) => readiness(session, exercise).answered),
  };
}
