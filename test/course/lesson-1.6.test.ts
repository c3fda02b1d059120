import { describe, expect, test } from 'vitest';
import { type Quat, type Rig, reflect, reflectPose, sideOf } from '../../src/solver/index.ts';
import { reflectTurn } from '../../src/solver/mirror/values.ts';
import { orderCode, turnByAngles } from '../../src/solver/pose/turnByAngles.ts';
import { expectClose, expectSameTurn } from '../support/close.ts';
import { rigOf, solved } from './solved.ts';

const folder = 'content/lessons/1.6-names-and-sides';
const ears = rigOf(`${folder}/dog-ears.json`);
const wing = rigOf(`${folder}/heron-wing.json`);

const byAngles = (x: number, y: number, z: number): Quat => {
  const out = new Float64Array([0, 0, 0, 1, x, y, z]);
  turnByAngles(out, 0, 4, orderCode('xyz'));
  return [out[0]!, out[1]!, out[2]!, out[3]!];
};
const tipOf = (rig: Rig, name: string, pose: Parameters<typeof solved>[1]) => {
  const { base, axis } = solved(rig, pose);
  const { length } = rig.bones.find((one) => one.name === name)!.rest;
  return base(name).map((x, i) => x + length * axis(name, 'z')[i]!);
};
const turned = (x: number, y: number) => ({ turn: { angles: [x, y, 0] as const } });

describe('lesson 1.6 says what the solver does', () => {
  // SciPy, documentation of scipy.spatial.transform.Rotation (seen): extrinsic z 45°, y 60°, x 30°.
  test('the horn’s rest turn and its mirror image are those of the table', () => {
    expectSameTurn(byAngles(30, 60, 45), [0.39190384, 0.36042341, 0.43967974, 0.72331741], 1e-8);
    expectSameTurn(reflectTurn(byAngles(30, 60, 45)), byAngles(30, -60, -45), 1e-15);
    expectSameTurn(byAngles(30, -60, -45), [0.39190384, -0.36042341, -0.43967974, 0.72331741], 1e-8);
    const pose = { bones: { horn_left: { move: [0.04, 0, 0], turn: { angles: [10, -20, 5] } } } } as const;
    expect(reflectPose(pose).bones).toEqual({ horn_right: { move: [-0.04, 0, 0], turn: { angles: [10, 20, -5] } } });
  });

  test('the ears are mirrored, with x the other way', () => {
    const { axis } = solved(ears, {});
    const mirrored = ([x, y, z]: number[]) => [0 - x!, y!, z!];
    expectClose(axis('ear_right', 'z'), mirrored(axis('ear_left', 'z')), 1e-15);
    expectClose(axis('ear_right', 'y'), mirrored(axis('ear_left', 'y')), 1e-15);
    expectClose(
      axis('ear_right', 'x'),
      mirrored(axis('ear_left', 'x')).map((v) => 0 - v),
      1e-15,
    );
    // Plate 1: the left ear's x goes away from whoever looks from the front.
    expectClose(axis('ear_left', 'x'), [0, 0, -1], 1e-15);
  });

  test('equal about x and opposite about y is the same face', () => {
    const [x, y, z] = tipOf(ears, 'ear_left', { bones: { ear_left: turned(20, 30) } });
    expectClose(tipOf(ears, 'ear_right', { bones: { ear_right: turned(20, -30) } }), [0 - x!, y!, z!], 1e-14);
    const same = tipOf(ears, 'ear_right', { bones: { ear_right: turned(20, 30) } });
    expect(Math.abs(same[2]! - z!)).toBeGreaterThan(0.1);
  });

  // Householder 1958, from memory; the arithmetic worked by hand.
  test('a mirror across (1, 1, 1) takes (1, 2, 3) to (−3, −2, −1)', () => {
    const along = (2 * (1 + 2 + 3)) / 3;
    expect([1 - along, 2 - along, 3 - along]).toEqual([-3, -2, -1]);
  });

  // Eyeballs of the H-Anim figure “Joe”, after ISO/IEC 19774 (seen).
  test('the eyes of the published figure are no pair', () => {
    const eye = (name: string, base: readonly [number, number, number]) =>
      ({ name, parent: null, role: 'skin', rest: { base, turn: [0, 0, 0, 1], length: 0.02 } }) as const;
    const joe: Rig = { format: 'counterpose/rig', version: 1, bones: [eye('eye_left', [0.0336, 1.6332, 0.0502])] };
    const there = solved(reflect(joe), {}).base('eye_right');
    expectClose(there, [-0.0336, 1.6332, 0.0502], 1e-15);
    expectClose(-0.0236 - there[0]!, 0.01, 1e-15);
  });

  test('the Heron’s other wing is as the answer says', () => {
    const other = reflect(wing).bones.find(({ name }) => name === 'wing_right')!;
    expect(other.rest).toMatchObject({ base: [-0.12, 0.85, -0.05], turn: [0.5, -0.5, 0.5, 0.5] });
    expect(other.links).toMatchObject([{ axis: '-x', target: { bone: 'fish_right' } }, { yaw: [-60, 10] }]);
    const pose = reflectPose({ bones: { wing_left: { turn: { angles: [10, -25, 40] } } } });
    expect(pose.bones).toEqual({ wing_right: { turn: { angles: [10, 25, -40] } } });
  });

  test('which names have a side', () => {
    expect(['leftover', 'tail_left_2', 'left_foot', 'ear_rigth', 'ear'].map((name) => sideOf(name))).toEqual([
      null,
      null,
      null,
      null,
      null,
    ]);
    expect(sideOf('lid_upper_left')).toBe('left');
  });
});
