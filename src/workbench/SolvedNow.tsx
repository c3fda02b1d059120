import type { ReactNode } from 'react';
import { useSession } from './state/bench.ts';
import { draftOf } from './state/session.ts';
import { CycleContext, SolvedContext } from './state/solvedNow.ts';
import { useSolved } from './state/useSolved.ts';

/** Evaluates the rig whenever it or its pose changes, for all that shows it. */
export function SolvedNow({ children }: { children: ReactNode }) {
  const { rig } = useSession(draftOf);
  const pose = useSession((session) => session.pose);
  const { solved, cycle } = useSolved(rig, pose);
  return (
    <SolvedContext value={solved}>
      <CycleContext value={cycle}>{children}</CycleContext>
    </SolvedContext>
  );
}
