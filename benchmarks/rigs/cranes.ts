import type { Bone, Rig, Vec3 } from '../../src/solver/index.ts';
import { WORLD_STRIDE } from '../../src/solver/program.ts';

export const BOOM = 0.5;
export const JIB = 0.4;
/** Where the hook of every crane is, in turn, seen from the crane: metres, within reach. */
const HOOKS: readonly Vec3[] = [
  [0.3, 0.5, 0.2],
  [-0.2, 0.4, 0.5],
];

/** Bent a little at rest, in the plane x = 0: sine and cosine of half the angle by which the boom leans up and the jib down. */
export const LEAN = Math.sin(0.1);
export const STAND = Math.cos(0.1);

/** Many cranes, boom and jib and hook each, the jib's tip reaching for the hook. Crane i is bones 3i to 3i + 2. */
export function cranes(count: number): Rig {
  const bones = Array.from({ length: count }, (_, i) => craneAt(i, [0.01 * i, 0, 0])).flat();
  return { format: 'counterpose/rig', version: 1, bones };
}

function craneAt(i: number, base: Vec3): Bone[] {
  const elbow: Vec3 = [base[0], base[1] + BOOM * 2 * LEAN * STAND, base[2] + BOOM * (1 - 2 * LEAN * LEAN)];
  const bone = (name: string, parent: string | null, at: Vec3, turn: Bone['rest']['turn'], length: number): Bone => ({
    name: `${name}_${i}`,
    parent,
    role: 'helper',
    rest: { base: at, turn, length },
  });
  const jib = bone('jib', `boom_${i}`, elbow, [LEAN, 0, 0, STAND], JIB);
  return [
    bone('boom', null, base, [-LEAN, 0, 0, STAND], BOOM),
    { ...jib, links: [{ name: 'lift', kind: 'reach', target: { bone: `hook_${i}` } }] },
    bone('hook', null, hookOf(base, 0), [0, 0, 0, 1], 0.1),
  ];
}

export const hookOf = (base: readonly number[], turn: number): Vec3 => {
  const [x, y, z] = HOOKS[turn % HOOKS.length];
  return [base[0] + x, base[1] + y, base[2] + z];
};

export const boomWorld = (i: number): number => WORLD_STRIDE * 3 * i;
export const jibWorld = (i: number): number => WORLD_STRIDE * (3 * i + 1);
export const hookWorld = (i: number): number => WORLD_STRIDE * (3 * i + 2);
