import { useMemo } from 'react';
import { actualFor, expectedFor } from '../proof/expected.ts';
import { useBench, useSession } from '../state/bench.ts';
import { draftOf } from '../state/session.ts';
import type { Drawing } from './drawing.ts';
import { ghostDrawing } from './rigDrawing.ts';

export interface ExpectedNow {
  /** The requirement whose pose is shown; null where none is. */
  readonly shown: string | null;
  /** The learner's own bone that it speaks of. */
  readonly actual: string | null;
  /** Draws where that bone should be, given metres a pixel and the rig's size. */
  readonly over: ((pixel: number, size: number) => Drawing) | null;
}

/** What a proof shows on the plate: expected and actual together. */
export function useExpected(): ExpectedNow {
  const { exercise } = useBench();
  const draft = useSession(draftOf);
  const pose = useSession((session) => session.pose);
  const shown = useSession((session) => session.shown);
  return useMemo(() => {
    if (shown === null) return { shown, actual: null, over: null };
    const expected = expectedFor(exercise, shown, draft, pose);
    const over = (pixel: number, size: number) =>
      ghostDrawing(expected!.solved, expected!.bones, {
        pixel,
        size,
        chosen: false,
        ghost: 'verdigris',
        says: 'expected',
      });
    return { shown, actual: actualFor(exercise, shown, draft), over: expected && over };
  }, [exercise, shown, draft, pose]);
}
