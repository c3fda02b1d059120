import { expect, test } from 'vitest';
import type { Bone, Pose, Rig } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { moved, rigOf, solved } from './solved.ts';

const folder = 'content/lessons/2.7-locks';
const open = rigOf(`${folder}/crane-open.json`);
const crane = rigOf(`${folder}/crane.json`);

const CHANNELS = ['move', 'turn', 'size'] as const;

function openChannels({ name, locks }: Bone): string[] {
  return CHANNELS.flatMap((channel) =>
    [...'xyz'].filter((_, n) => !locks?.[channel]?.[n]).map((letter) => `${name}.${channel}.${letter}`),
  );
}

const turned = (angleDeg: number, watched: number): Pose => ({
  bones: { lamp_helper: { turn: { angles: [angleDeg, 0, 0] } } },
  switches: { 'spot.watched': watched },
});

/** Degrees by which the lamp points down. */
function tilt(rig: Rig, pose: Pose): number {
  const [, y, z] = solved(rig, pose).axis('lamp', 'z') as [number, number, number];
  return (Math.atan2(-y, z) * 180) / Math.PI;
}

// Check values: the arithmetic on the page.
test('45 channels, of which the locks leave the four of the page open', () => {
  expect(open.bones.flatMap(openChannels)).toHaveLength(45);
  expect(crane.bones.flatMap(openChannels)).toEqual(['boom.turn.x', 'spot.move.x', 'spot.move.y', 'spot.move.z']);
});

test.each([
  [1, 0],
  [0.75, 5],
  [0.5, 10],
  [0, 20],
])('a forgotten turn of 20° at weight %d is seen as %d°', (watched, angleDeg) => {
  expectClose(tilt(open, turned(20, watched)), angleDeg, 1e-9);
});

test('of 30° at weight 0.6, 12° are seen', () => {
  expectClose(tilt(open, turned(30, 0.6)), 12, 1e-9);
});

test('a forgotten move of 5 cm turns the lamp by 2.39°, and it still points at the spot', () => {
  const { aside, axis, base } = solved(open, moved('lamp_helper', 0.05));
  expectClose(Math.abs(aside('lamp')), 2.39, 5e-3);
  const [x, , z] = axis('lamp', 'z') as [number, number, number];
  expectClose(base('lamp')[0]! + (x / z) * 1.2, 0, 1e-12);
});

test('locks bind hands, not the solver', () => {
  const pose = turned(20, 0.5);
  expectClose(tilt(crane, pose), tilt(open, pose), 1e-15);
});
