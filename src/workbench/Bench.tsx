import { type KeyboardEvent, useEffect, useId, useMemo, useState } from 'react';
import type { Exercise } from '../grader/exercise/definition.ts';
import type { Desk } from './desk/desk.ts';
import { KeepingLine } from './keep/KeepingLine.tsx';
import { Mechanism } from './mechanism/Mechanism.tsx';
import { BenchPlate } from './plate/BenchPlate.tsx';
import { ProofSheet } from './proof/ProofSheet.tsx';
import { BenchContext, type Bench as BenchValue } from './state/bench.ts';
import { useSession } from './state/useSession.ts';
import { useSolved } from './state/useSolved.ts';
import { TryOut } from './tryout/TryOut.tsx';
import { ViewSwitch } from './ViewSwitch.tsx';

/** One exercise on the bench: plate, mechanism or try-out, proof sheet. */
export function Bench({ exercise, desk }: { exercise: Exercise; desk: Desk }) {
  const { store, session, keeping, keeper } = useSession(exercise);
  const { solved, cycle } = useSolved(session.history.document.rig, session.pose);
  const [goal, setGoal] = useState<string | null>(null);
  const prefix = useId();
  const bench = useMemo((): BenchValue => {
    const { dispatch } = store;
    return {
      exercise,
      desk,
      session,
      cycle,
      flags: solved?.flags ?? [],
      dispatch,
      edit: (edit, slot) => dispatch({ do: 'edit', edit, slot, when: Date.now() }),
      goTo: setGoal,
      idOf: (slot) => idIn(prefix, slot),
    };
  }, [exercise, desk, session, cycle, solved, store, prefix]);

  useEffect(() => {
    if (goal === null) return;
    setGoal(null);
    const place = document.getElementById(idIn(prefix, goal));
    place?.scrollIntoView({ block: 'nearest' });
    place?.querySelector<HTMLElement>('select, input, button')?.focus();
  }, [goal, prefix]);

  function onKeyDown(event: KeyboardEvent) {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || event.key.toLowerCase() !== 'z') return;
    event.preventDefault();
    store.dispatch({ do: event.shiftKey ? 'redo' : 'undo' });
  }

  if (keeping.is === 'opening') return <p className="wb-note">Opening your work …</p>;
  return (
    <BenchContext value={bench}>
      {/* Undo and redo by key, from anywhere within; the buttons do the same. */}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: see above */}
      <div onKeyDown={onKeyDown}>
        <BenchPlate solved={solved} />
        <ViewSwitch />
        {session.view === 'build' ? <Mechanism /> : <TryOut />}
        <ProofSheet />
        <KeepingLine keeping={keeping} keeper={keeper} />
        <p className="unseen" role="status" aria-live="polite">
          {session.said}
        </p>
      </div>
    </BenchContext>
  );
}

function idIn(prefix: string, slot: string): string {
  return `${prefix}${slot.replaceAll(/[^A-Za-z0-9_-]/g, '.')}`;
}
