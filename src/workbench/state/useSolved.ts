import { useMemo, useRef } from 'react';
import type { Pose, Rig } from '../../solver/document/rig.ts';
import { type Ready, ready, type Solved, solved } from '../pose/solved.ts';

/** The rig in its pose; where it has a cycle, the last state that could be evaluated, with the cycle's walk. */
export function useSolved(rig: Rig, pose: Pose): { solved: Solved | null; cycle: readonly string[] } {
  const last = useRef<Ready | null>(null);
  const made = useMemo(() => ready(rig), [rig]);
  if (made.ok) last.current = made.ready;
  const working = made.ok ? made.ready : last.current;
  const result = useMemo(() => working && solved(working, pose), [working, pose]);
  return { solved: result, cycle: made.ok ? NONE : made.cycle };
}

const NONE: readonly string[] = [];
