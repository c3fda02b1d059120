import { expect, test } from 'vitest';
import type { BonePose, Pose, Rig } from '../../../src/solver/index.ts';
import { bindMesh, compile, reflect, reflectPose, skinMesh, solve, swapSide } from '../../../src/solver/index.ts';
import { expectClose } from '../../support/close.ts';
import { between, type Random, seeded } from '../../support/random.ts';
import { randomPose, randomRig } from '../../support/rigs.ts';

/** Of the largest number in the result, or of 1 m where that is larger. */
const TOLERANCE = 1e-9;

/** S·M·S for S = diag(−1, 1, 1): which of the 16 numbers change sign. */
const SIGNS = [1, -1, -1, 1, -1, 1, 1, 1, -1, 1, 1, 1, -1, 1, 1, 1];

function solved(rig: Rig, pose: Pose) {
  const compiled = compile(rig);
  if (!compiled.ok) throw new Error(`a cycle: ${compiled.cycle.join(' → ')}`);
  return solve(compiled.program, pose);
}

/** How far the reflected rig's result in the reflected pose is from the reflected result, in parts of the largest number. */
function offBy(rig: Rig, pose: Pose): number {
  const result = solved(rig, pose);
  const mirrored = solved(reflect(rig), reflectPose(pose));
  let off = 0;
  let largest = 1;
  for (const [name, { matrix }] of Object.entries(result.bones)) {
    const other = mirrored.bones[swapSide(name)]!.matrix;
    for (const [i, value] of matrix.entries()) {
      off = Math.max(off, Math.abs(other[i]! - SIGNS[i]! * value));
      largest = Math.max(largest, Math.abs(value));
    }
  }
  expect(off).not.toBeNaN();
  return off / largest;
}

/** The pose with every bone turned and moved a little, away from exact half-turns. */
function nudged(random: Random, rig: Rig, pose: Pose): Pose {
  const little = () => between(random, -1e-3, 1e-3);
  const bones: Record<string, BonePose> = Object.create(null);
  for (const { name } of rig.bones) {
    const { turn = [0, 0, 0, 1], move = [0, 0, 0], ...rest } = pose.bones?.[name] ?? {};
    bones[name] = { ...rest, move: [move[0] + little(), move[1], move[2]], turn: nudgedTurn(turn, little) };
  }
  return { ...pose, bones };
}

function nudgedTurn(turn: NonNullable<BonePose['turn']>, little: () => number): NonNullable<BonePose['turn']> {
  if ('angles' in turn)
    return { angles: [turn.angles[0] + little(), turn.angles[1] + little(), turn.angles[2] + little()] };
  const q = [turn[0] + little(), turn[1] + little(), turn[2] + little(), turn[3]] as const;
  const length = Math.hypot(...q);
  return [q[0] / length, q[1] / length, q[2] / length, q[3] / length];
}

test('a reflected pose on a reflected rig gives the reflected result, except at exact half-turns and fallback axes', () => {
  const exceptions: number[] = [];
  const cases = 2000;
  for (let seed = 0; seed < cases; seed++) {
    const random = seeded(seed);
    const rig = randomRig(random, { roundTurns: false });
    const pose = randomPose(random, rig);
    if (offBy(rig, pose) <= TOLERANCE) continue;
    exceptions.push(seed);
    // At an exact half-turn one side is chosen, whichever way the rig faces; a little off it, the two agree.
    for (let i = 0; i < 5; i++) {
      expect(offBy(rig, nudged(random, rig, pose)), `seed ${seed}`).toBeLessThanOrEqual(TOLERANCE);
    }
  }
  expect(exceptions.length).toBeLessThan(cases / 100);
});

test('so does its mesh, linearly and with dual quaternions', () => {
  for (let seed = 0; seed < 300; seed++) {
    const random = seeded(seed);
    const rig = randomRig(random, { roundTurns: false, mesh: true, kinds: ['follow'] });
    const pose = randomPose(random, rig);
    const [plain, mirrored] = [skinned(rig, pose), skinned(reflect(rig), reflectPose(pose))];
    expectClose(
      mirrored,
      plain.map((value, i) => (i % 3 === 0 ? -value : value)),
      1e-9 * Math.max(1, ...plain.map(Math.abs)),
      `seed ${seed}`,
    );
  }
});

function skinned(rig: Rig, pose: Pose): Float64Array {
  const world = rig.bones.flatMap(({ name }) => {
    const { matrix } = solved(rig, pose).bones[name]!;
    return matrix.filter((_, i) => i % 4 < 3);
  });
  const binding = bindMesh(rig)!;
  const out = new Float64Array(binding.positions.length);
  skinMesh(binding, Float64Array.from(world), out);
  return out;
}
