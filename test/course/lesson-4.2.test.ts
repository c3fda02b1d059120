import { describe, test } from 'vitest';
import type { Pose, Rig } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { moved, rigOf, solved } from './solved.ts';

const folder = 'content/lessons/4.2-ratio-rest-length-read-out';
const tape = rigOf(`${folder}/tape.json`);
const bounded = rigOf(`${folder}/bounded.json`);
const stillLeaps = rigOf(`${folder}/still-leaps.json`);
const slack = rigOf(`${folder}/slack-rope.json`);
type V = readonly number[];

const lengthOf = (v: V) => Math.hypot(...v);
const apart = (a: V, b: V) => lengthOf(a.map((part, i) => part - b[i]!));
const boneOf = (rig: Rig, name: string) => rig.bones.find((bone) => bone.name === name)!;

/** Size along a bone, its length and its tip, in metres. */
function drawn(rig: Rig, bone: string, pose: Pose) {
  const { axis, base } = solved(rig, pose);
  const { length } = boneOf(rig, bone).rest;
  const column = axis(bone, 'z');
  const tip = base(bone).map((part, i) => part + column[i]! * length);
  return { size: lengthOf(column), length: lengthOf(column) * length, tip, base: base(bone) };
}

/** The perch at a place counted from the end of the skull, which is 0.9 m up. */
const perchAt = (rig: Rig, ahead: number, up: number): Pose => {
  const [, y, z] = boneOf(rig, 'perch').rest.base;
  return moved('perch', 0, 0.9 + up - y, ahead - z);
};

/** The same rig with other fields in the link of one bone; undefined takes one away. */
function withSpan(rig: Rig, name: string, fields: object): Rig {
  const change = (bone: Rig['bones'][number]) => ({
    ...bone,
    links: bone.links!.map((link) => ({ ...link, ...fields })),
  });
  return { ...rig, bones: rig.bones.map((bone) => (bone.name === name ? change(bone) : bone)) };
}

// All numbers are arithmetic on the page; the meaning of ratio, bounds and size is the rig format's.
describe('lesson 4.2 says what the solver does', () => {
  test.each([
    [0.64, -0.48, 0.8, 1.6, 0.32],
    [0.2, -0.48, 0.52, 1.04, 0.208],
    [0.4, 0, 0.4, 0.8, 0.16],
  ])('the perch at (%d, %d): %d m, ratio %d, the mark at %d m', (ahead, up, length, ratio, mark) => {
    const pose = perchAt(tape, ahead, up);
    const { base } = solved(tape, pose);
    const shown = drawn(tape, 'tape', pose);
    expectClose([shown.length, shown.size], [length, ratio], 1e-14);
    expectClose(apart(base('mark'), base('tape')), mark, 1e-14);
    expectClose(drawn(tape, 'laid', pose).tip, [0, 0.2, length], 1e-14);
    expectClose(base('laid_mark'), [0, 0.2, mark], 1e-14);
  });

  test('at rest nothing moves', () => {
    const { tip, size } = drawn(tape, 'tape', {});
    expectClose([...tip, size], [0, 0.6, 0.4, 1], 1e-15);
  });

  test('without bounds the rest length does not show, also where it is 50', () => {
    const pose = perchAt(tape, 0.2, -0.48);
    for (const restLength of [0.3, 1, 50]) {
      expectClose(drawn(withSpan(tape, 'tape', { restLength }), 'tape', pose).tip, [0, 0.42, 0.2], 1e-13);
    }
  });

  test('bounded, the tape is between 30 and 75 cm long and reaches where it can', () => {
    for (let metres = 0.1; metres < 1.2; metres += 0.05) {
      const pose = perchAt(bounded, 0.8 * metres, -0.6 * metres);
      const { tip, length } = drawn(bounded, 'tape', pose);
      const wanted = Math.min(0.75, Math.max(0.3, metres));
      expectClose(length, wanted, 1e-14);
      expectClose(tip, [0, 0.9 - 0.6 * wanted, 0.8 * wanted], 1e-14);
    }
  });

  test('a tape drawn too short leaps by 12.5 cm whatever its rest length', () => {
    const shown = (weight: number): Pose => ({ switches: { 'perch.shown': weight } });
    const ofTheBone = withSpan(stillLeaps, 'tape', { restLength: 0.5 });
    for (const rig of [stillLeaps, ofTheBone]) {
      expectClose(drawn(rig, 'tape', shown(0)).length, 0.5, 1e-15);
      const { size, length, tip } = drawn(rig, 'tape', shown(1));
      expectClose([size, length], [1.25, 0.625], 1e-14);
      expectClose(tip, [0, 0.525, 0.5], 1e-14);
    }
  });

  test('50 for 50 cm makes a tape of 30 m', () => {
    expectClose(drawn(withSpan(bounded, 'tape', { restLength: 50 }), 'tape', {}).length, 30, 1e-12);
  });

  test.each([1, 2])('the slack rope is as the answer says, at %d times its size', (g) => {
    const bones = { crane: { size: [g, g, g] as const } };
    const at = (metres: number): Pose => ({ bones: { ...bones, hook: { move: [0, 1.5 - metres, 0] } } });
    const knot = ({ length }: { length: number }) => (length * 0.6) / 1.5;
    const near = drawn(slack, 'rope', at(2.1));
    expectClose([near.length, near.size, knot(near)], [2.1 * g, 1.4 * g, 0.84 * g], 1e-13);
    const far = drawn(slack, 'rope', at(2.7));
    expectClose([far.length, far.size, knot(far)], [2.4 * g, 1.6 * g, 0.96 * g], 1e-13);
    expectClose(apart(far.tip, solved(slack, at(2.7)).base('hook')), 0.3 * g, 1e-13);
  });

  test('the rope drawn slack does not move as the rig opens', () => {
    expectClose(drawn(slack, 'rope', {}).length, 1.5, 1e-15);
  });
});
