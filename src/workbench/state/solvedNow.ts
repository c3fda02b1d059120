import { createContext, useContext } from 'react';
import type { Solved } from '../pose/solved.ts';

/** The rig in the pose on the plate; null where it never could be evaluated. */
export const SolvedContext = createContext<Solved | null>(null);
/** The walk of the rig's cycle, by links ("bone.link"), drivers and bones; empty where it can be evaluated. */
export const CycleContext = createContext<readonly string[]>([]);

export function useSolvedNow(): Solved | null {
  return useContext(SolvedContext);
}

export function useCycle(): readonly string[] {
  return useContext(CycleContext);
}
