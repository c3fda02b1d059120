/** Small rigs and readings of results for the degenerate cases, with both readings of the format to put them to. */
import type { Bone, Driver, Pose, Quat, Rig, Vec3 } from '../../../src/solver/document/rig.ts';
import type { SolveResult } from '../../../src/solver/program.ts';
import { oracleSolve } from '../../oracle/solve.ts';
import { accepted, programOf, solved } from '../../oracle/subject.ts';

export type Solve = (rig: Rig, pose?: Pose) => SolveResult;

export const SOLVERS: readonly (readonly [string, Solve])[] = [
  ['oracle', (rig, pose = {}) => oracleSolve(accepted(rig), pose)],
  ['solver', (rig, pose = {}) => solved(programOf(rig), pose)],
];

const HALF = Math.sqrt(0.5);
/** Quarter turns, positive about each axis. */
export const QUARTER = {
  x: [HALF, 0, 0, HALF],
  y: [0, HALF, 0, HALF],
  z: [0, 0, HALF, HALF],
} as const satisfies Record<string, Quat>;
export const HALF_TURN = {
  x: [1, 0, 0, 0],
  y: [0, 1, 0, 0],
  z: [0, 0, 1, 0],
} as const satisfies Record<string, Quat>;

type Given = Omit<Partial<Bone>, 'name' | 'rest'> & { at?: Vec3; turned?: Quat; length?: number };

/** A bone at the origin, pointing along +z, half a metre long and without a parent, where not said otherwise. */
export function bone(name: string, { at, turned, length, ...rest }: Given = {}): Bone {
  return {
    name,
    parent: null,
    role: 'helper',
    rest: { base: at ?? [0, 0, 0], turn: turned ?? [0, 0, 0, 1], length: length ?? 0.5 },
    ...rest,
  };
}

export const rigOf = (bones: readonly Bone[], drivers: readonly Driver[] = []): Rig => ({
  format: 'counterpose/rig',
  version: 1,
  bones,
  ...(drivers.length > 0 && { drivers }),
});

export const posed = (bones: NonNullable<Pose['bones']>, switches: Record<string, number> = {}): Pose => ({
  bones,
  switches,
});

/** One axis of a bone in rig space, with the bone's size along it. */
export function column(result: SolveResult, name: string, axis: 'x' | 'y' | 'z'): number[] {
  const start = { x: 0, y: 4, z: 8 }[axis];
  return result.bones[name].matrix.slice(start, start + 3);
}

export const columns = (result: SolveResult, name: string): number[] => [
  ...column(result, name, 'x'),
  ...column(result, name, 'y'),
  ...column(result, name, 'z'),
];

export const baseOf = (result: SolveResult, name: string): number[] => result.bones[name].matrix.slice(12, 15);

export function tipOf(result: SolveResult, name: string, length = 0.5): number[] {
  const along = column(result, name, 'z');
  return baseOf(result, name).map((x, i) => x + length * along[i]);
}

/** "flag bone.link" each, in the order given. */
export const flagsOf = (result: SolveResult): string[] =>
  result.flags.map(({ flag, bone: owner, link }) => (link === null ? `${flag} ${owner}` : `${flag} ${owner}.${link}`));
