import { describe, expect, test } from 'vitest';
import type { Rig } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { moved, rigOf, solved } from './solved.ts';

const folder = 'content/lessons/3.2-in-line-at-rest';
const inLine = rigOf(`${folder}/eye-in-line.json`);
const aboutTheBack = rigOf(`${folder}/about-the-back.json`);
const DEG = Math.PI / 180;

/** The eye with its star moved, and awake slid. */
const woken = (awake: number, ...move: [number, number, number]) =>
  solved(inLine, { bones: { star: { move } }, switches: { 'star.awake': awake } });
/** Degrees between the eye's line and straight ahead. */
const flinchDeg = (awake: number, ...move: [number, number, number]) => {
  const [x, y, z] = woken(awake, ...move).axis('eye', 'z') as [number, number, number];
  return Math.atan2(Math.hypot(x, y), z) / DEG;
};

// Check values: the arithmetic on the page, worked by hand from right triangles; a chord is 2·r·sin(half the angle).
describe('lesson 3.2 says what the solver does', () => {
  test.each([0, -0.4, 2.4])('a star in line, %d m off its rest along the line, moves nothing at any weight', (z) => {
    for (const awake of [0, 0.25, 0.5, 1]) expect(woken(awake, 0, 0, z).axis('eye', 'z')).toEqual([0, 0, 1]);
  });

  test('the star hung by eye makes the eye flinch by 4.76°, the pupil by 5 mm, half of it at half weight', () => {
    const whole = Math.atan2(0.05, 0.6) / DEG;
    expectClose(flinchDeg(1, 0.04, 0.03, 0), whole, 1e-10);
    expectClose(whole, 4.76, 5e-3);
    expectClose(flinchDeg(0.5, 0.04, 0.03, 0), whole / 2, 1e-10);
    expectClose(whole / 2, 2.38, 5e-3);
    const [x, y, z] = woken(1, 0.04, 0.03, 0)
      .axis('eye', 'z')
      .map((cosine) => 6 * cosine) as [number, number, number];
    expectClose(Math.hypot(x, y, z - 6), 0.5, 5e-3);
  });

  test('pushed along its own way the flinch stays, pushed straight ahead a fifth is left', () => {
    const near = flinchDeg(1, 0.05, 0, 0);
    expectClose(flinchDeg(1, 0.25, 0, 2.4), near, 1e-10);
    expectClose(flinchDeg(1, 0.05, 0, 2.4) / near, 0.2, 1e-3);
  });

  test('a pivot 6 cm behind the middle slides the ball by 3.1 cm at 30°', () => {
    const { base, aside } = solved(aboutTheBack, moved('star', 0.6 * Math.tan(30 * DEG)));
    expectClose(aside('ball'), 30, 1e-10);
    const slide = Math.hypot(...base('ball'));
    expectClose(slide, 2 * 0.06 * Math.sin(15 * DEG), 1e-15);
    expectClose(100 * slide, 3.1, 0.01);
  });

  test('Toad’s star is where the answer says, and its pivot as far off', () => {
    const toad: Rig = {
      ...inLine,
      bones: inLine.bones.map((bone) => {
        const isEye = bone.name === 'eye';
        const turn = isEye ? ([0, 1 / Math.sqrt(10), 0, 3 / Math.sqrt(10)] as const) : bone.rest.turn;
        return { ...bone, rest: { ...bone.rest, turn, base: isEye ? [0.15, 1.5, 0] : [0.25, 1.5, 0.5] } };
      }),
    };
    const rest = solved(toad, {}).aside('eye');
    const awake = (x: number, z: number) =>
      solved(toad, { bones: { star: { move: [x, 0, z] } }, switches: { 'star.awake': 1 } }).aside('eye');
    expectClose(rest - awake(0, 0), 25.56, 5e-3);
    expectClose(awake(0, 0), 11.31, 5e-3);
    expectClose(awake(0.426 - 0.25, 0.368 - 0.5), rest, 1e-10);
    expectClose(8 / (2 * Math.sin(20 * DEG)), 11.7, 0.01);
  });
});
