import { describe, expect, test } from 'vitest';
import { meshVolume } from '../../src/grader/measure/volume.ts';
import type { Bone, Pose, Rig, SpanLink } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { exerciseFor } from '../support/exercises.ts';
import { posedPoints } from './posedPoints.ts';
import { moved, rigOf, solved } from './solved.ts';

const folder = 'content/lessons/4.3-volume-kept-or-not';
const bellows = rigOf(`${folder}/bellows.json`);
const bags = rigOf(`${folder}/two-bags.json`);
const board = rigOf(`${folder}/bag-and-board.json`);

/** The posed mesh: its volume in cm³, and its largest x in centimetres. */
function meshOf(rig: Rig, pose: Pose) {
  const points = posedPoints(rig, pose);
  const across = [...points].filter((_, i) => i % 3 === 0);
  return { volume: 1e6 * meshVolume(points, rig.mesh!.triangles), wide: 100 * Math.max(...across) };
}

const belly = (rig: Rig, change: Partial<Bone>): Rig => ({
  ...rig,
  bones: rig.bones.map((bone) => (bone.name === 'belly' ? { ...bone, ...change } : bone)),
});
const fill = (change: Partial<SpanLink>): Partial<Bone> => ({
  links: [{ name: 'fill', kind: 'span', target: { bone: 'lid' }, sides: 'volume', ...change }],
});
const size = (rig: Rig, pose: Pose) =>
  (['x', 'y', 'z'] as const).map((letter) => Math.hypot(...solved(rig, pose).axis('belly', letter)));
const up = (y: number) => moved('lid', 0, y);

// Check values: the arithmetic on the page, worked by hand; 1/√λ is that of the neo-Hookean solid in uniaxial extension.
describe('lesson 4.3 says what the solver does', () => {
  test('the box counted out', () => {
    expectClose(meshOf(bellows, {}).volume, 23040, 1e-6);
    const pulled = meshOf(bellows, up(0.176));
    expectClose([pulled.volume, pulled.wide], [23040, 10], 1e-6);
    const pushed = meshOf(bellows, up(-0.144));
    expectClose([pushed.volume, pushed.wide], [23040, 15], 1e-6);
    expectClose(meshOf(belly(bellows, fill({ sides: 'free' })), up(0.176)).volume, 33177.6, 1e-6);
  });

  test('thickness at 2, 4, a half and a twenty-fifth', () => {
    const thick = [0.4, 1.2, -0.2, -0.384].map((y) => size(bellows, up(y))[0]!);
    expectClose(thick, [Math.SQRT1_2, 0.5, Math.SQRT2, 5], 1e-9);
  });

  test('the ribs of the plate: one bag gets thin, one does not', () => {
    const { axis } = solved(bags, moved('lath', 0, 0.176));
    expectClose(Math.hypot(...axis('kept_rib_1a', 'z')), 1 / 1.2, 1e-9);
    expectClose(Math.hypot(...axis('free_rib_1a', 'z')), 1, 1e-9);
  });

  test('at half weight and four times the length 41 % too much', () => {
    const half = belly(bellows, fill({ weight: 0.5 }));
    expectClose(size(half, up(1.2)), [0.75, 0.75, 2.5], 1e-9);
    expectClose(meshOf(half, up(1.2)).volume / 23040, 1.40625, 1e-9);
  });

  test('a bound takes both sizes from the bounded ratio; at distance 0 nothing is done', () => {
    expectClose(size(belly(bellows, fill({ least: 0.64 })), up(-0.3)), [1.25, 1.25, 0.64], 1e-9);
    const gone = up(-0.4);
    expectClose(size(bellows, gone), [1, 1, 1], 1e-12);
    expect(solved(bellows, gone).flags).toEqual(['aim-undefined']);
  });

  test('a mirrored size turns the mesh inside out, and a span puts its own in its place', () => {
    const mirrored: Pose = { bones: { stand: { size: [-1, 1, 1] } } };
    expectClose(meshOf(belly(bellows, { links: [] }), mirrored).volume, -23040, 1e-6);
    expectClose(meshOf(bellows, mirrored).volume, 23040, 1e-6);
  });

  test('at the seam with the board it is the mean of both', () => {
    const seam = { ...board, mesh: { positions: [0.1, 0.4, 0, 0.1, 0.4, 0, 0.1, 0.4, 0], triangles: [0, 1, 2] } };
    expectClose(meshOf(seam, up(0.176)).wide, 10 * (0.5 / 1.2 + 0.5), 1e-9);
  });

  test('of the exercise’s belly, 2.4 % more with volume kept and 38 % with sides free', () => {
    const exercise = exerciseFor('same-sawdust');
    const answers = [exercise.references.find(({ id }) => id === 'spanned')!, exercise.wrongTurns[0]!];
    const more = answers.map(({ rig }) => meshOf(rig, up(0.15)).volume / meshOf(rig, {}).volume - 1);
    expectClose(more, [0.024, 0.377], 5e-4);
  });

  test('at twice the size: all inherited, eight times as much; the turn alone, as much as before', () => {
    const big: Pose = { bones: { stand: { size: [2, 2, 2] } } };
    expectClose(size(bellows, big), [2, 2, 2], 1e-9);
    expectClose(meshOf(bellows, big).volume, 8 * 23040, 1e-6);
    const starved = belly(bellows, { inherits: 'turn' });
    expectClose(size(starved, big), [Math.SQRT1_2, Math.SQRT1_2, 2], 1e-9);
    expectClose(meshOf(starved, big).volume, 23040, 1e-6);
  });

  test('so does a bone without a parent whose base is drawn along', () => {
    const drawn = belly(bellows, {
      parent: null,
      links: [{ name: 'with', kind: 'follow', source: 'stand', channels: ['move'] }, ...fill({}).links!],
    });
    expectClose(size(drawn, { bones: { stand: { size: [2, 2, 2] } } })[0]!, Math.SQRT1_2, 1e-9);
  });

  test('the throat of the Heron', () => {
    expectClose(4 * size(bellows, up(0.4 * (19.2 / 30 - 1)))[0]!, 5, 1e-9);
    const least = 1 / 1.6 ** 2;
    expectClose([least, 30 * least], [0.39, 11.7], 0.02);
    expectClose(4 * size(bellows, up(0.4 * (least - 1)))[0]!, 6.4, 1e-9);
    const half = belly(bellows, fill({ weight: 0.5 }));
    const [x, y, z] = size(half, up(0.4 * (least - 1)));
    expectClose(x! * y! * z!, 1.17, 0.006);
  });
});
