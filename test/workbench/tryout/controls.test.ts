import { expect, test } from 'vitest';
import { setLock } from '../../../src/workbench/edit/setBone.ts';
import { channelOf, valuesOf, withSwitch, withValue } from '../../../src/workbench/pose/channels.ts';
import { within } from '../../../src/workbench/pose/solved.ts';
import { controlsOf, reachOf } from '../../../src/workbench/tryout/controls.ts';
import { flagWords } from '../../../src/workbench/tryout/Flags.tsx';
import { DRAFT, TWIN_VANES } from '../support/twinVanes.ts';

const parts = [{ id: 'target', is: 'bone', name: 'kite', given: false, says: 'the left target' } as const];
const inputs = [
  { id: 'aside', part: 'target', channel: 'move.x', min: 0.1, max: 0.6 } as const,
  { id: 'tilt', bone: 'vane_right', channel: 'turn.z', min: -20, max: 20 } as const,
];

test('Try shows the controls, what else the exercise moves, and every switch', () => {
  const { bones, switches } = controlsOf(DRAFT, { kind: 'build', parts, inputs });
  expect(bones.map(({ bone }) => bone.name)).toEqual(['wind', 'wind_left', 'vane_right']);
  expect(switches.map(({ reference, driver }) => [reference, driver])).toEqual([['wind.together', undefined]]);
});

test('what the exercise moves stands first, in its range, rest always within', () => {
  const { bones } = controlsOf(DRAFT, { kind: 'build', parts, inputs });
  expect(bones[1]!.first).toMatchObject([{ channel: 'move', axis: 0, least: 0, most: 0.6 }]);
  expect(bones[1]!.more).toHaveLength(8);
  expect(bones[0]!.first).toHaveLength(6);
});

test('where a pose is the answer, only what counts in it can be moved', () => {
  const { bones, switches } = controlsOf(DRAFT, { kind: 'pose', parts, inputs });
  expect(bones.map(({ bone, first, more }) => [bone.name, first.length, more.length])).toEqual([
    ['wind_left', 1, 0],
    ['vane_right', 1, 0],
  ]);
  expect(switches).toEqual([]);
  const switched = [...inputs, { id: 'together', switch: 'wind.together', min: 0, max: 1 }];
  expect(controlsOf(DRAFT, { kind: 'pose', parts, inputs: switched }).switches).toHaveLength(1);
});

test('locked channels have no slider and are named', () => {
  const locked = setLock('wind', 'turn', 2, true).apply(setLock('wind', 'size', 0, true).apply(DRAFT));
  const [wind] = controlsOf(locked, { kind: 'build', parts: [], inputs: [] }).bones;
  expect(wind!.locked).toEqual(['turn z', 'size x']);
  expect([...wind!.first, ...wind!.more]).toHaveLength(7);
});

test('a control slides about as far as the rig is large', () => {
  expect(reachOf(TWIN_VANES)).toBe(1);
});

test('a pose holds what is off rest and nothing else', () => {
  const wind = TWIN_VANES.bones[1]!;
  const moved = withValue(withValue({}, wind, 'move', 1, 0.5), wind, 'turn', 0, 30);
  expect(moved.bones).toEqual({ wind: { move: [0, 0.5, 0], turn: { angles: [30, 0, 0] } } });
  expect(valuesOf(moved, wind, 'size')).toEqual([1, 1, 1]);
  expect(withValue(withValue(moved, wind, 'move', 1, 0), wind, 'turn', 0, 0).bones).toEqual({});
  expect(withSwitch(withSwitch({}, 'wind.together', 1, 0), 'wind.together', 0, 0).switches).toEqual({});
  expect(channelOf('turn.z')).toEqual(['turn', 2]);
});

test('a turn told as a quaternion is read as angles in the bone’s own order', () => {
  const bone = { ...TWIN_VANES.bones[1]!, turnOrder: 'zyx' } as const;
  const half = Math.sin(Math.PI / 12);
  const pose = { bones: { wind: { turn: [half, 0, 0, Math.sqrt(1 - half * half)] as const } } };
  expect(valuesOf(pose, bone, 'turn').map((angle) => Number(angle.toFixed(6)))).toEqual([30, 0, 0]);
});

test('what a pose says of a rig that has changed is left out or brought within range', () => {
  const pose = {
    bones: { wind: { move: [1, 0, 0] as const }, gull: { move: [1, 0, 0] as const } },
    switches: { 'wind.together': 3, 'wind.gone': 1 },
  };
  expect(within(TWIN_VANES, pose)).toEqual({
    bones: { wind: { move: [1, 0, 0] } },
    switches: { 'wind.together': 1 },
  });
});

test('what the solver could not do is told in words', () => {
  expect(flagWords({ flag: 'aim-undefined', bone: 'vane_left', link: 'watch' })).toBe(
    'watch on vane_left: the target lies on the base, so that there is no direction to aim in.',
  );
  expect(flagWords({ flag: 'switch-clamped', bone: 'wind', link: null })).toMatch(/^wind: /);
});
