import { expect, test } from 'vitest';
import { compile, createState, evaluate, packPose, readFlags, solve } from '../../../src/solver/index.ts';
import { bone, rigOf } from '../degenerate/build.ts';
import { programFor, solveRig } from '../solveRig.ts';

test('names that trip over prototypes are plain names', () => {
  const rig = rigOf([
    bone('__proto__', { switches: [{ name: '__proto__', min: 0, max: 1, default: 0 }] }),
    bone('constructor', {
      parent: '__proto__',
      links: [{ name: 'toString', kind: 'follow', source: '__proto__', weight: 0.5 }],
    }),
  ]);
  const pose = JSON.parse('{"bones":{"__proto__":{"move":[1,0,0]}},"switches":{"__proto__.__proto__":1}}');
  const result = JSON.parse(JSON.stringify(solveRig(rig, pose)));
  expect(Object.keys(result.bones)).toEqual(['__proto__', 'constructor']);
  expect(Object.entries(result.bones)[0][1]).toEqual({ matrix: [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 1, 0, 0, 1] });
  expect(result.weights).toEqual({ 'constructor.toString': 0.5 });
  const empty = solveRig(rig);
  expect(Object.entries(empty.bones)[0][1].matrix[12]).toBe(0);
});

test('weights are all there, driven ones as they came out', () => {
  const rig = rigOf(
    [
      bone('kite', { at: [0, 1, 1], switches: [{ name: 'let_go', min: 0, max: 1, default: 1, sliding: true }] }),
      bone('vane', {
        links: [
          { name: 'watch', kind: 'aim', target: { bone: 'kite' }, weight: 123 },
          { name: 'hold', kind: 'limit', cone: 10, weight: 0 },
          { name: 'tie', kind: 'follow', source: 'kite', channels: ['size'] },
        ],
      }),
    ],
    [
      {
        name: 'let_go',
        inputs: [{ from: { switch: 'kite.let_go' }, times: 0.75 }],
        map: {
          keys: [
            [0, 1],
            [1, 0],
          ],
        },
        output: { bone: 'vane', link: 'watch', field: 'weight' },
      },
    ],
  );
  expect({ ...solveRig(rig).weights }).toEqual({ 'vane.watch': 0.25, 'vane.hold': 0, 'vane.tie': 1 });
});

test('flags stand in document order, and go when their cause goes', () => {
  const rig = rigOf([
    bone('far', { at: [0, 0, 1] }),
    bone('vane', {
      links: [
        { name: 'b', kind: 'aim', target: { bone: 'kite' }, up: { axis: '+y', toward: { bone: 'far' } } },
        { name: 'a', kind: 'aim', target: { bone: 'far' }, up: { axis: '+y', toward: { direction: [0, 0, 2] } } },
      ],
    }),
    bone('kite', { at: [0, 0, 0] }),
  ]);
  const program = programFor(rig);
  const state = createState(program);
  const shear = { bones: { vane: { size: [1, 0, 0] } } } as const;
  evaluate(program, state, packPose(program, shear));
  expect(readFlags(program, state)).toEqual([
    { flag: 'aim-undefined', bone: 'vane', link: 'b' },
    { flag: 'flat', bone: 'vane', link: 'a' },
    { flag: 'up-undefined', bone: 'vane', link: 'a' },
  ]);
  evaluate(program, state, packPose(program, { bones: { kite: { move: [1, 1, 1] } } }));
  expect(readFlags(program, state)).toEqual([{ flag: 'up-undefined', bone: 'vane', link: 'a' }]);
});

test('programs, states and rest worlds are numbered in document order', () => {
  const rig = rigOf([
    bone('tip', { parent: 'root', at: [0, 1, 0.5] }),
    bone('root', { at: [0, 1, 0], switches: [{ name: 'on', min: 0, max: 1, default: 1 }] }),
  ]);
  const program = programFor(rig);
  expect(program.boneNames).toEqual(['tip', 'root']);
  expect(program.boneIndex.get('root')).toBe(1);
  expect(program.switchNames).toEqual(['root.on']);
  expect(program.poseLength).toBe(21);
  expect([...program.restWorld.subarray(9, 12)]).toEqual([0, 1, 0.5]);
  const state = createState(program);
  evaluate(program, state, packPose(program, {}));
  expect([...state.world]).toEqual([...program.restWorld]);
  expect([...state.switches]).toEqual([1]);
  expect(solve(program, {}).bones.tip.matrix.slice(12)).toEqual([0, 1, 0.5, 1]);
});

test('a cycle is walked by name, the first repeated', () => {
  const watch = (target: string) => [{ name: 'watch', kind: 'aim', target: { bone: target } }] as const;
  const rig = rigOf([
    bone('vane_left', { links: watch('wind_left') }),
    bone('wind_left', { parent: 'vane_right' }),
    bone('vane_right', { links: watch('vane_left') }),
  ]);
  expect(compile(rig)).toEqual({
    ok: false,
    cycle: ['vane_left.watch', 'wind_left', 'vane_right', 'vane_right.watch', 'vane_left', 'vane_left.watch'],
  });
});
