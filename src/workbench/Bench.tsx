import { type KeyboardEvent, memo, useCallback, useEffect, useId, useMemo, useRef, useState } from 'react';
import type { Exercise } from '../grader/exercise/exercise.ts';
import type { Desk } from './desk/desk.ts';
import { KeepingLine } from './keep/KeepingLine.tsx';
import { BenchPlate } from './plate/BenchPlate.tsx';
import { ProofSheet } from './proof/ProofSheet.tsx';
import { SolvedNow } from './SolvedNow.tsx';
import type { Setting } from './setting.ts';
import { BenchContext, type Bench as BenchValue, useSession } from './state/bench.ts';
import { drawn, useAskedDrawing } from './state/useAskedDrawing.ts';
import { useFocusGoal } from './state/useFocusGoal.ts';
import { useFocusKept } from './state/useFocusKept.ts';
import { useKept } from './state/useKept.ts';
import { Work } from './Work.tsx';

interface Props {
  first: Exercise;
  desk: Desk;
  /** Opens another variant of the exercise. */
  open: (seed: number) => Promise<Exercise>;
  setting?: Setting | undefined;
}

/** One exercise on the bench: plate, mechanism or try-out, proof sheet. */
export function Bench({ first, desk, open, setting }: Props) {
  const [exercise, setExercise] = useState(first);
  const { store, work, seed, keeping, keeper } = useKept(exercise, setting?.keptUnder);
  const prefix = useId();
  const idOf = useCallback((slot: string) => `${prefix}${slot.replaceAll(/[^A-Za-z0-9_-]/g, '.')}`, [prefix]);
  const goTo = useFocusGoal(idOf);
  useAskedDrawing(first, store, keeping.is !== 'opening');
  // A kind that redraws may have been left at another drawing than the page begins with.
  const isBehind = seed !== exercise.seed;
  useEffect(() => {
    if (isBehind && store.get().seed === seed) void open(seed).then(setExercise);
  }, [isBehind, store, seed, open]);

  const bench = useMemo((): BenchValue => {
    const { dispatch } = store;
    return {
      exercise,
      desk,
      store,
      dispatch,
      edit: (edit, slot) => dispatch({ do: 'edit', edit, slot, when: Date.now() }),
      goTo,
      idOf,
      told: first.seed,
      proved: setting?.proved,
      redraw: async () => {
        const { seed } = store.get();
        const next = await open(setting ? setting.nextSeed(seed) : seed + 1);
        setExercise(next);
        dispatch(drawn(next));
      },
    };
  }, [first.seed, exercise, desk, store, open, setting, goTo, idOf]);

  function onKeyDown(event: KeyboardEvent) {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || event.key.toLowerCase() !== 'z') return;
    event.preventDefault();
    store.dispatch({ do: event.shiftKey ? 'redo' : 'undo' });
  }

  const whole = useRef<HTMLDivElement>(null);
  const isOpen = keeping.is !== 'opening' && !isBehind;
  useFocusKept(whole, isOpen);

  if (!isOpen) return <p className="wb-note">Opening your work …</p>;
  return (
    <BenchContext value={bench}>
      {/* Undo and redo by key, from anywhere within; the buttons do the same. */}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: see above */}
      <div ref={whole} onKeyDown={onKeyDown}>
        <SolvedNow>
          <Sheets />
        </SolvedNow>
        <KeepingLine work={work} keeping={keeping} keeper={keeper} />
        <Said />
      </div>
    </BenchContext>
  );
}

/** Apart, so that a pose that changes draws anew only what shows it. */
const Sheets = memo(function Sheets() {
  return (
    <>
      <BenchPlate />
      <Work />
      <ProofSheet />
    </>
  );
});

/** For screen readers: what has just happened. */
function Said() {
  const said = useSession((session) => session.said);
  return (
    <p className="unseen" role="status" aria-live="polite">
      {said}
    </p>
  );
}
