import { type KeyboardEvent, useCallback, useEffect, useId, useMemo, useState } from 'react';
import type { Exercise } from '../grader/exercise/definition.ts';
import type { Desk } from './desk/desk.ts';
import { KeepingLine } from './keep/KeepingLine.tsx';
import { BenchPlate } from './plate/BenchPlate.tsx';
import { ProofSheet } from './proof/ProofSheet.tsx';
import { BenchContext, type Bench as BenchValue } from './state/bench.ts';
import { useSession } from './state/useSession.ts';
import { useSolved } from './state/useSolved.ts';
import { Work } from './Work.tsx';

interface Props {
  first: Exercise;
  desk: Desk;
  /** Opens another variant of the exercise. */
  open: (seed: number) => Promise<Exercise>;
}

/** One exercise on the bench: plate, mechanism or try-out, proof sheet. */
export function Bench({ first, desk, open }: Props) {
  const [exercise, setExercise] = useState(first);
  const { store, session, keeping, keeper } = useSession(exercise);
  const { solved, cycle } = useSolved(session.history.document.rig, session.pose);
  const [goal, setGoal] = useState<string | null>(null);
  const prefix = useId();
  // A kind that redraws may have been left at another drawing than the page begins with.
  const isBehind = session.seed !== exercise.seed;
  useEffect(() => {
    if (isBehind) void open(session.seed).then(setExercise);
  }, [isBehind, session.seed, open]);

  const redraw = useCallback(async () => {
    const next = await open(store.get().seed + 1);
    setExercise(next);
    store.dispatch({ do: 'redraw', draft: { rig: next.start, parts: {} }, seed: next.seed });
  }, [open, store]);

  const bench = useMemo((): BenchValue => {
    const { dispatch } = store;
    return {
      exercise,
      desk,
      session,
      cycle,
      redraw,
      flags: solved?.flags ?? [],
      dispatch,
      edit: (edit, slot) => dispatch({ do: 'edit', edit, slot, when: Date.now() }),
      goTo: setGoal,
      idOf: (slot) => idIn(prefix, slot),
    };
  }, [exercise, desk, session, cycle, solved, store, prefix, redraw]);

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

  if (keeping.is === 'opening' || isBehind) return <p className="wb-note">Opening your work …</p>;
  return (
    <BenchContext value={bench}>
      {/* Undo and redo by key, from anywhere within; the buttons do the same. */}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: see above */}
      <div onKeyDown={onKeyDown}>
        <BenchPlate solved={solved} />
        <Work />
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
