import { useCallback, useEffect, useRef, useState } from 'react';
import type { Pose } from '../../solver/document/rig.ts';
import { useBench } from '../state/bench.ts';
import { draftOf } from '../state/session.ts';
import { poseAt, type Strip } from './strip.ts';

export interface Player {
  /** Where along the strip: 0 is the first pose. */
  readonly place: number;
  readonly isPlaying: boolean;
  readonly play: () => void;
  readonly pause: () => void;
  /** Goes to a place and stays there. */
  readonly goTo: (place: number) => void;
}

/**
 * Plays a strip on the plate. It stops at the end, when the workbench leaves the window, and when somebody else poses
 * the rig. Where less motion is asked for, only the poses themselves are shown.
 */
export function usePlayer(strip: Strip, speed: number): Player {
  const { store, dispatch } = useBench();
  const [place, setPlace] = useState(0);
  const [isPlaying, setPlaying] = useState(false);
  const now = useRef(0);
  const shown = useRef<Pose | null>(null);
  const last = strip.poses.length - 1;

  const show = useCallback(
    (to: number) => {
      now.current = to;
      setPlace(to);
      shown.current = poseAt(strip, to, draftOf(store.get()).rig);
      dispatch({ do: 'pose', pose: shown.current });
    },
    [strip, store, dispatch],
  );

  useEffect(() => {
    if (!isPlaying) return;
    const asksForLess = matchMedia('(prefers-reduced-motion: reduce)').matches;
    let before = performance.now();
    let frame = requestAnimationFrame(step);
    return () => cancelAnimationFrame(frame);

    function step(at: number) {
      if (shown.current && store.get().pose !== shown.current) return setPlaying(false);
      const on = ((at - before) / 1000 / strip.seconds) * speed;
      const next = Math.min(now.current + on, last);
      const isDue = asksForLess || !strip.moves ? Math.floor(next) > Math.floor(now.current) : true;
      before = at;
      if (isDue) show(asksForLess || !strip.moves ? Math.floor(next) : next);
      now.current = next;
      if (next >= last) setPlaying(false);
      else frame = requestAnimationFrame(step);
    }
  }, [isPlaying, strip, speed, last, show, store]);

  const pause = useCallback(() => setPlaying(false), []);
  return {
    place,
    isPlaying,
    play: () => {
      show(now.current >= last ? 0 : now.current);
      setPlaying(true);
    },
    pause,
    goTo: (to) => {
      setPlaying(false);
      show(Math.min(Math.max(to, 0), last));
    },
  };
}
