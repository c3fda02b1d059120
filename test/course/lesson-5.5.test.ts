import { describe, expect, test } from 'vitest';
import type { Bone, Driver, Rig } from '../../src/solver/index.ts';
import { copyAcross } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { rigOf, solved } from './solved.ts';

const folder = 'content/lessons/5.5-one-driver-both-sides';
const shutters = rigOf(`${folder}/shutters.json`);
const sameSign = rigOf(`${folder}/same-sign.json`);
const twoSwitches = rigOf(`${folder}/two-switches.json`);

/** Metres to the left of the middle at which the edges of the two shutters stand. */
function edges(rig: Rig, shut: number): [number, number] {
  const { base, axis } = solved(rig, { switches: { 'cord.shut': shut } });
  return ['left', 'right'].map((side) => base(`shutter_${side}`)[0]! + 0.5 * axis(`shutter_${side}`, 'z')[0]!) as [
    number,
    number,
  ];
}

// Check values: the arithmetic on the page.
describe('lesson 5.5 says what the solver does', () => {
  test.each([
    [0, 0.6],
    [0.5, 0.313],
    [1, 0.13],
  ])('the table: shut %d, %d m to either side', (shut, edge) => {
    expectClose(edges(shutters, shut), [edge, -edge], 5e-4);
    const [left, right] = edges(shutters, shut);
    expectClose(left + right, 0, 1e-12);
  });

  test('a map copied as it stood swings both the same way', () => {
    const [left, right] = edges(sameSign, 1);
    expectClose([left, right], [0.13, -0.6 - 0.47], 5e-4);
  });

  test('with a switch for each the right one stays', () => {
    expectClose(edges(twoSwitches, 0.6)[1], -0.6, 1e-12);
  });

  test('the solver’s own copy across has the input as it was and the map turned round', () => {
    const copied = copyAcross({ ...shutters, drivers: shutters.drivers!.slice(0, 1) }, 'left');
    const rig = 'ok' in copied ? (copied as { value: Rig }).value : (copied as unknown as Rig);
    const right = rig.drivers!.find(({ name }) => name === 'shut_right')!;
    expect(right.inputs).toEqual(shutters.drivers![0]!.inputs);
    expect(right.map.keys).toEqual([
      [0, 0],
      [1, 70],
    ]);
  });

  test('an input times −1 is no mirror: the map holds', () => {
    const [left, right] = shutters.drivers!;
    const turned: Driver = { ...right!, inputs: [{ ...left!.inputs[0]!, times: -1 }], map: left!.map };
    expectClose(edges({ ...shutters, drivers: [left!, turned] }, 1)[1], -0.6, 1e-12);
  });

  test('a switch on the left bone would be read on the right one, which has none', () => {
    const [front, left, right, cord] = shutters.bones as [Bone, Bone, Bone, Bone];
    const own = { ...left, switches: cord.switches! };
    const driver = { ...shutters.drivers![0]!, inputs: [{ from: { switch: 'shutter_left.shut' } }] };
    const copied = copyAcross(
      { ...shutters, bones: [front, own, right, { ...cord, switches: [] }], drivers: [driver] },
      'left',
    );
    const rig = 'ok' in copied ? (copied as { value: Rig }).value : (copied as unknown as Rig);
    const across = rig.drivers!.find(({ name }) => name === 'shut_right')!;
    expect(across.inputs).toEqual([{ from: { switch: 'shutter_right.shut' } }]);
  });
});
