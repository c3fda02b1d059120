import { describe, expect, test } from 'vitest';
import type { Driver, Link, Pose } from '../../../src/solver/index.ts';
import { readRig, reflect, reflectPose } from '../../../src/solver/index.ts';
import { reflectTurn, reflectVector } from '../../../src/solver/mirror/values.ts';
import { expectClose } from '../../support/close.ts';
import { seeded } from '../../support/random.ts';
import { randomVector } from '../../support/randomVectors.ts';
import { randomPose, randomRig } from '../../support/rigs.ts';
import { ARM_TURN, quay } from './quay.ts';

const mirrored = reflect(quay);
const vane = mirrored.bones[1]!;
const link = (name: string) => vane.links!.find((one) => one.name === name)!;
const source = (name: string): Link => quay.bones[1]!.links!.find((one) => one.name === name)!;
const driver = (name: string): Driver => mirrored.drivers!.find((one) => one.name === name)!;

/** I − 2·n·nᵀ, the reflection in the plane through the origin with unit normal n (A. Householder 1958, from memory). */
const householder = (n: readonly number[]): number[][] =>
  n.map((a, i) => n.map((b, j) => (i === j ? 1 : 0) - 2 * a * b));
const times = (m: number[][], v: readonly number[]): number[] =>
  m.map((row) => row.reduce((sum, x, i) => sum + x * v[i]!, 0));

describe('vectors and turns across x = 0', () => {
  /** Analytic, and as a linear algebra and a graphics library have it. */
  test('the reflection that ours is held against is right in the plane of normal (1, 1, 1)/√3', () => {
    const third = 1 / Math.sqrt(3);
    const h = householder([third, third, third]);
    expectClose(h.flat(), [1 / 3, -2 / 3, -2 / 3, -2 / 3, 1 / 3, -2 / 3, -2 / 3, -2 / 3, 1 / 3], 1e-12);
    expectClose(times(h, [1, 2, 3]), [-3, -2, -1], 1e-12);
  });

  test('a vector is reflected as in the plane of normal x', () => {
    const random = seeded(1);
    for (let i = 0; i < 100; i++) {
      const v = randomVector(random, 2);
      expectClose(reflectVector(v), times(householder([1, 0, 0]), v), 0);
    }
  });

  /** The rotation is the one in SciPy's docstring of Rotation, extrinsic z 45°, y 60°, x 30°; its mirror S·R·S is analytic. */
  test('a rotation by (x, y, z, w) becomes (x, −y, −z, w)', () => {
    const turn = reflectTurn([0.39190384, 0.36042341, 0.43967974, 0.72331741]);
    expectClose(turn, [0.39190384, -0.36042341, -0.43967974, 0.72331741], 1e-8);
  });

  test('what lies on the plane stays, without a sign on its zeros', () => {
    expect(Object.is(reflectVector([0, 1, 2])[0], 0)).toBe(true);
  });

  /** Eye joint centres of the example figure in the H-Anim hierarchy lists, after ISO/IEC 19774-1:2019 §4.9.6. */
  test('a skeleton that is nearly symmetric is not taken for symmetric', () => {
    const [left, right] = [
      [0.0336, 1.6332, 0.0502],
      [-0.0236, 1.6331, 0.051],
    ] as const;
    const off = reflectVector(left).map((x, i) => x - right[i]!);
    expectClose(off, [-0.01, 0.0001, -0.0008], 1e-12);
  });
});

describe('bones', () => {
  test('swap sides in names and references, also where the other side does not exist', () => {
    expect(mirrored.bones.map(({ name, parent }) => [name, parent])).toEqual([
      ['mast', null],
      ['vane_right', 'mast'],
      ['feather_right', 'vane_right'],
      ['kite_right', null],
    ]);
    expect(mirrored.bones[0]!.links![0]).toMatchObject({ source: 'kite_right' });
  });

  test('rest: base (−x, y, z), turn (x, −y, −z, w)', () => {
    const [x, y, z, w] = ARM_TURN;
    expect(vane.rest).toEqual({ base: [-0.3, 1, 0.2], turn: [x, -y, -z, w], length: 0.1 });
  });

  test('keep inheriting, order of turning, locks and switches', () => {
    const { inherits, turnOrder, locks, switches, role } = quay.bones[1]!;
    expect(vane).toMatchObject({ inherits, turnOrder, locks, switches, role });
    expect(mirrored.bones[0]!.switches).toEqual(quay.bones[0]!.switches);
  });

  test('keep the title', () => {
    expect(mirrored.title).toBe('The left vane');
  });
});

describe('links', () => {
  test('keep their names, kinds and weights', () => {
    expect(vane.links!.map(({ name, kind, weight }) => [name, kind, weight])).toEqual(
      quay.bones[1]!.links!.map(({ name, kind, weight }) => [name, kind, weight]),
    );
  });

  test('aim: axes, axis vectors and the up direction negate x', () => {
    expect(link('watch_left')).toEqual({
      ...source('watch_left'),
      target: { bone: 'kite_right', at: 0.5 },
      axis: '-x',
      up: { axis: [0, 0.6, 0.8], toward: { direction: [-1, 2, 3] } },
    });
    expect(link('roll')).toMatchObject({ up: { axis: '+x', toward: { bone: 'kite_right', axis: '+x' } } });
    expect(link('tilt')).toMatchObject({ up: { axis: '+y', toward: { bone: 'kite_right', at: 1 } } });
  });

  test('share: the fraction stays', () => {
    expect(link('half')).toEqual({ ...source('half'), source: 'kite_right' });
  });

  test('limit: move in x, yaw and twist [a, b] → [−b, −a]; pitch and cone stay', () => {
    expect(link('keep')).toEqual({
      name: 'keep',
      kind: 'limit',
      move: { min: [-0.4, -0.2, -0.3], max: [0.1, 0.5, 0.6] },
      yaw: [-20, 10],
      pitch: [-30, 40],
      twist: [-60, 50],
      cone: 70,
    });
  });

  test('span and reach name the other side', () => {
    expect(link('gauge')).toEqual({ ...source('gauge'), target: { bone: 'kite_right' } });
    expect(mirrored.bones[2]!.links![0]).toMatchObject({
      target: { bone: 'kite_right' },
      pole: { bone: 'mast', at: 1 },
    });
  });
});

describe('drivers', () => {
  test('swap sides in their names', () => {
    expect(mirrored.drivers!.map(({ name }) => name)).toEqual(['let_go', 'swing_right', 'sway_right']);
  });

  test('inputs: turn about y and z and shift along x negate times', () => {
    expect(driver('let_go').inputs).toEqual([
      { from: { switch: 'mast.wind_left' }, times: 2 },
      { from: { turn: { bone: 'kite_right', axis: 'x' } }, times: 2 },
      { from: { turn: { bone: 'kite_right', axis: 'y' } }, times: -2 },
      { from: { turn: { bone: 'mast', axis: 'z' } }, times: -2 },
      { from: { shift: { bone: 'kite_right', axis: 'x' } }, times: -2 },
      { from: { shift: { bone: 'kite_right', axis: 'y' } }, times: 2 },
      { from: { gap: [{ bone: 'kite_right', at: 1 }, { bone: 'mast' }] }, times: 2 },
    ]);
  });

  test('times left out is 1, so −1 when negated', () => {
    const inputs = [{ from: { turn: { bone: 'mast', axis: 'y' } } }] as const;
    const drivers = [{ ...quay.drivers![0]!, inputs }];
    expect(reflect({ ...quay, drivers }).drivers![0]!.inputs).toEqual([{ ...inputs[0], times: -1 }]);
  });

  test.each([
    ['move.x', -1],
    ['move.y', 1],
    ['move.z', 1],
    ['turn.x', 1],
    ['turn.y', -1],
    ['turn.z', -1],
  ] as const)('output %s: the map is times %i', (channel, sign) => {
    const drivers = [{ ...quay.drivers![1]!, output: { bone: 'feather_left', channel } }];
    const [reflected] = reflect({ ...quay, drivers }).drivers!;
    expect(reflected!.output).toEqual({ bone: 'feather_right', channel });
    expect(reflected!.map).toEqual({
      keys: [
        [0, sign],
        [1, 3 * sign],
      ],
    });
  });

  test('output to a link or a switch: the map stays, the bone is renamed', () => {
    expect(driver('let_go')).toMatchObject({
      map: quay.drivers![0]!.map,
      output: { bone: 'vane_right', link: 'watch_left', field: 'weight' },
    });
    const drivers = [{ ...quay.drivers![1]!, output: { switch: 'vane_left.open' } }];
    expect(reflect({ ...quay, drivers }).drivers![0]).toMatchObject({
      map: quay.drivers![1]!.map,
      output: { switch: 'vane_right.open' },
    });
  });
});

test('mesh: x negates, and triangles wind the other way round', () => {
  expect(mirrored.mesh).toEqual({ positions: [-1, 2, 3, 4, 5, 6, 0, 7, 8], triangles: [0, 2, 1, 2, 1, 0] });
});

test('a pose: moves, turns and angles; sizes and switch values stay', () => {
  const pose: Pose = {
    bones: {
      kite_left: { move: [1, 2, 3], turn: ARM_TURN, size: [1, 2, 3] },
      mast: { turn: { angles: [10, 20, 30] } },
    },
    switches: { 'vane_left.open': 1, 'mast.wind_left': 0.5 },
  };
  const [x, y, z, w] = ARM_TURN;
  expect(reflectPose(pose)).toEqual({
    bones: {
      kite_right: { move: [-1, 2, 3], turn: [x, -y, -z, w], size: [1, 2, 3] },
      mast: { turn: { angles: [10, -20, -30] } },
    },
    switches: { 'vane_right.open': 1, 'mast.wind_left': 0.5 },
  });
  expect(reflectPose({})).toEqual({});
});

describe('twice', () => {
  test('is the identity to the bit, in the same order of fields', () => {
    for (let seed = 0; seed < 500; seed++) {
      const random = seeded(seed);
      const rig = withTimes(randomRig(random, { mesh: true, oddNames: seed % 2 === 0 }));
      expect(JSON.stringify(reflect(reflect(rig)))).toBe(JSON.stringify(rig));
      expect(reflect(reflect(rig))).toEqual(rig);
      const pose = randomPose(random, rig);
      expect(JSON.stringify(reflectPose(reflectPose(pose)))).toBe(JSON.stringify(pose));
    }
  });

  test('is a readable rig after once', () => {
    for (let seed = 0; seed < 500; seed++) {
      const rig = reflect(randomRig(seeded(seed), { mesh: true }));
      expect(readRig(rig)).toEqual({ ok: true, value: rig });
    }
  });
});

/** With `times` written out: left out, it comes back as 1. */
const withTimes = (rig: ReturnType<typeof randomRig>): typeof rig => ({
  ...rig,
  ...(rig.drivers && {
    drivers: rig.drivers.map((one) => ({
      ...one,
      inputs: one.inputs.map(({ from, times = 1 }) => ({ from, times })),
    })),
  }),
});
