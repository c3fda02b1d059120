import { expect, test } from 'vitest';
import type { Bone, Pose, Rig } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { moved, rigOf, solved } from './solved.ts';

const folder = 'content/lessons/2.7-locks';
const open = rigOf(`${folder}/crane-open.json`);
const crane = rigOf(`${folder}/crane.json`);

const vanes = rigOf('content/lessons/3.4-two-eyes-one-holder/twin-vanes.json');

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

const NUDGED = {
  move: (n: number) => ({ move: triple(0, n, 0.1) }),
  turn: (n: number) => ({ turn: { angles: triple(0, n, 20) } }),
  size: (n: number) => ({ size: triple(1, n, 1.5) }),
};

/** Three times the same number, but for the nth. */
function triple(same: number, n: number, other: number): [number, number, number] {
  return [0, 1, 2].map((i) => (i === n ? other : same)) as [number, number, number];
}

/** A spot that lies askew at rest, with a child on its tip and one beside it. */
function spotWithChildren(): Rig {
  const base = [0.2, 1, 0.3] as const;
  const turn = [0, Math.SQRT1_2, 0, Math.SQRT1_2] as const;
  const bone = (name: string, parent: string | null, place: typeof base | [number, number, number]): Bone => ({
    name,
    parent,
    role: 'control',
    rest: { base: place, turn, length: 0.4 },
  });
  return {
    format: 'counterpose/rig',
    version: 1,
    bones: [bone('spot', null, base), bone('tip', 'spot', [0.6, 1, 0.3]), bone('beside', 'spot', [0.5, 1.2, 0.4])],
  };
}

/** The channels of the spot that move the base of another bone, each set by itself. */
function feltAt(bone: string): string[] {
  const rig = spotWithChildren();
  const rest = solved(rig, {}).base(bone);
  return CHANNELS.flatMap((channel) =>
    [0, 1, 2].flatMap((n) => {
      const now = solved(rig, { bones: { spot: NUDGED[channel](n) } }).base(bone);
      const way = Math.hypot(...now.map((value, i) => value - rest[i]!));
      return way > 1e-12 ? [`${channel}.${'xyz'[n]}`] : [];
    }),
  );
}

const MOVE = ['move.x', 'move.y', 'move.z'];

test('an aim at the base feels three channels, at the tip six, and a child all nine', () => {
  expect(feltAt('spot')).toEqual(MOVE);
  expect(feltAt('tip')).toEqual([...MOVE, 'turn.x', 'turn.y', 'size.z']);
  expect(feltAt('beside')).toEqual([...MOVE, 'turn.x', 'turn.y', 'turn.z', 'size.x', 'size.y', 'size.z']);
});

test('a holder sized to 1.1 carries its targets to 0.44 m, and each vane is off by 1.91° outward', () => {
  const { aside, base } = solved(vanes, { bones: { wind: { size: [1.1, 1.1, 1.1] } } });
  expectClose([base('wind_left')[0]!, base('wind_right')[0]!], [0.44, -0.44], 1e-12);
  expectClose([aside('vane_left'), aside('vane_right')], [1.91, -1.91], 5e-3);
});
