/** What holds of every rig and pose. Rigs and poses come from seeds that fast-check chooses and shrinks. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BonePose,
  createState,
  evaluate,
  evaluateBatch,
  type Link,
  type Pose,
  packPose,
  type Quat,
  type Rig,
  readFlags,
  solve,
} from '../../../src/solver/index.ts';
import { seeded, shuffled } from '../../support/random.ts';
import { randomPose, randomRig } from '../../support/rigs.ts';
import { programFor, solveRig } from '../solveRig.ts';

const RUNS = { numRuns: 300, seed: 20240611 };
const seeds = fc.integer({ min: 0, max: 2 ** 30 });

function drawn(seed: number): { rig: Rig; pose: Pose } {
  const random = seeded(seed);
  const rig = randomRig(random);
  return { rig, pose: randomPose(random, rig) };
}

const holds = (property: (rig: Rig, pose: Pose, seed: number) => void) =>
  fc.assert(
    fc.property(seeds, (seed) => {
      const { rig, pose } = drawn(seed);
      property(rig, pose, seed);
    }),
    RUNS,
  );

const withBones = (rig: Rig, change: (bone: Rig['bones'][number]) => Rig['bones'][number]): Rig => ({
  ...rig,
  bones: rig.bones.map(change),
});

test('finite in, finite out', () => {
  holds((rig, pose) => {
    const result = solveRig(rig, pose);
    for (const { matrix } of Object.values(result.bones)) expect(matrix.every(Number.isFinite)).toBe(true);
    for (const weight of Object.values(result.weights)) expect(weight >= 0 && weight <= 1).toBe(true);
  });
});

describe('to the bit', () => {
  test('the same twice, and input left as it was', () => {
    holds((rig, pose) => {
      const before = JSON.stringify([rig, pose]);
      const program = programFor(rig);
      const first = solve(program, pose);
      expect(solve(program, pose)).toEqual(first);
      expect(JSON.stringify([rig, pose])).toBe(before);
    });
  });

  test('whatever was evaluated before in the same state', () => {
    holds((rig, pose, seed) => {
      const program = programFor(rig);
      const state = createState(program);
      const packed = packPose(program, pose);
      evaluate(program, state, packPose(program, randomPose(seeded(seed + 1), rig)));
      evaluate(program, state, packed);
      const fresh = createState(program);
      evaluate(program, fresh, packed);
      expect(state.machine.flags).toEqual(fresh.machine.flags);
      expect(state.world).toEqual(fresh.world);
      expect(state.weights).toEqual(fresh.weights);
      expect(state.switches).toEqual(fresh.switches);
    });
  });

  test('in a batch as one by one', () => {
    holds((rig, _, seed) => {
      const program = programFor(rig);
      const random = seeded(seed + 2);
      const poses = Array.from({ length: 4 }, () => packPose(program, randomPose(random, rig)));
      const state = createState(program);
      const worlds = new Float64Array(4 * state.world.length);
      evaluateBatch(program, state, Float64Array.from(poses.flatMap((pose) => [...pose])), 4, worlds);
      const single = createState(program);
      poses.forEach((pose, i) => {
        evaluate(program, single, pose);
        expect(worlds.slice(i * single.world.length, (i + 1) * single.world.length)).toEqual(single.world);
      });
      expect(readFlags(program, state)).toEqual(readFlags(program, single));
    });
  });

  test('in whatever order bones and drivers stand', () => {
    holds((rig, pose, seed) => {
      const random = seeded(seed + 3);
      const other: Rig = { ...rig, bones: shuffled(random, rig.bones) };
      if (rig.drivers) other.drivers = shuffled(random, rig.drivers);
      const [a, b] = [solveRig(rig, pose), solveRig(other, pose)];
      expect(b.bones).toEqual(a.bones);
      expect(b.weights).toEqual(a.weights);
      expect(new Set(b.flags.map((flag) => JSON.stringify(flag)))).toEqual(
        new Set(a.flags.map((flag) => JSON.stringify(flag))),
      );
    });
  });

  test('with q or −q', () => {
    const negated = (own: BonePose): BonePose =>
      own.turn && !('angles' in own.turn) ? { ...own, turn: own.turn.map((x) => -x) as unknown as Quat } : own;
    holds((rig, pose) => {
      const bones = Object.fromEntries(Object.entries(pose.bones ?? {}).map(([name, own]) => [name, negated(own)]));
      const flipped = withBones(rig, (bone) => ({
        ...bone,
        rest: { ...bone.rest, turn: bone.rest.turn.map((x) => -x) as unknown as Quat },
      }));
      expect(asNumbers(solveRig(flipped, { ...pose, bones }))).toEqual(asNumbers(solveRig(rig, pose)));
    });
  });

  test('a link of weight 0 is as no link', () => {
    const off = (link: Link): Link => ({ ...link, weight: 0 });
    const alone = (rig: Rig): Rig => ({ format: rig.format, version: rig.version, bones: rig.bones });
    holds((rig, pose) => {
      const still = withBones(alone(rig), ({ links, ...bone }) => ({
        ...bone,
        ...(links && { links: links.map(off) }),
      }));
      const bare = withBones(alone(rig), ({ links: _, ...bone }) => bone);
      const [a, b] = [solveRig(still, pose), solveRig(bare, pose)];
      expect(a.bones).toEqual(b.bones);
      expect(a.flags).toEqual([]);
    });
  });

  test('a driven weight of 0 too', () => {
    holds((rig, pose) => {
      const bones = rig.bones.map(({ links, ...bone }) => ({ ...bone, ...(links && { links }) }));
      const drivers = bones.flatMap((bone) =>
        (bone.links ?? []).map((link, i) => ({
          name: `still_${bone.name}_${i}`,
          inputs: [{ from: { switch: 'quay.still' } }],
          map: {
            keys: [
              [0, 0],
              [1, 1],
            ] as const,
          },
          output: { bone: bone.name, link: link.name, field: 'weight' as const },
        })),
      );
      const quay: Rig['bones'][number] = {
        name: 'quay',
        parent: null,
        role: 'control',
        rest: { base: [0, 0, 0], turn: [0, 0, 0, 1], length: 1 },
        switches: [{ name: 'still', min: 0, max: 1, default: 0 }],
      };
      const result = solveRig({ format: rig.format, version: rig.version, bones: [...bones, quay], drivers }, pose);
      const bare = solveRig(
        { format: rig.format, version: rig.version, bones: bones.map(({ links: _, ...bone }) => bone) },
        pose,
      );
      const { quay: __, ...others } = result.bones;
      expect({ ...others }).toEqual({ ...bare.bones });
      expect(result.flags).toEqual([]);
    });
  });
});

/** −0 and 0 are one number here. */
const asNumbers = ({ bones, weights, flags }: ReturnType<typeof solveRig>) => ({
  bones: Object.entries(bones).map(([name, { matrix }]) => [name, matrix.map((x) => x + 0)]),
  weights,
  flags,
});
