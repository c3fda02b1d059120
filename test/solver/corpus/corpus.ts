/** Forty rigs with twenty-five poses each, the same in every engine: what the results of two engines are compared over. */
import type { Pose, Rig } from '../../../src/solver/document/rig.ts';
import { drawPose } from './drawPose.ts';
import { drawRig } from './drawRig.ts';

const FIRST_SEED = 40;
const RIGS = 40;
const POSES = 25;

export interface CorpusEntry {
  rig: Rig;
  poses: readonly Pose[];
}

const entry = (seed: number): CorpusEntry => {
  const rig = drawRig(seed);
  return { rig, poses: Array.from({ length: POSES }, (_, i) => drawPose(rig, seed * POSES + i)) };
};

/** Without cycles, in a fixed order. */
export const corpus = (): CorpusEntry[] => Array.from({ length: RIGS }, (_, i) => entry(FIRST_SEED + i));
