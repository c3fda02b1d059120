/** Otter from the waist up, reaching and looking: 30 bones, 10 links, 4 drivers. */
import type { Bone, Driver, Link, Quat, Rig, Switch, Vec3 } from '../../src/solver/index.ts';

const AHEAD: Quat = [0, 0, 0, 1];
const UP: Quat = [-Math.SQRT1_2, 0, 0, Math.SQRT1_2];
const LEFT: Quat = [0, Math.SQRT1_2, 0, Math.SQRT1_2];
const RIGHT: Quat = [0, -Math.SQRT1_2, 0, Math.SQRT1_2];

interface More {
  length?: number;
  links?: readonly Link[];
  switches?: readonly Switch[];
}

const bone = (
  name: string,
  parent: string | null,
  base: Vec3,
  turn: Quat,
  { length = 0.1, ...more }: More = {},
): Bone => ({
  name,
  parent,
  role: 'skin',
  rest: { base, turn, length },
  ...more,
});

const sliding = (name: string): Switch => ({ name, min: 0, max: 1, default: 0, sliding: true });
const watch = (target: string): Link => ({
  name: 'watch',
  kind: 'aim',
  target: { bone: target },
  up: { axis: '+y', toward: { bone: 'skull', axis: '+z' } },
});
const follow = (source: string): Link => ({ name: 'tie', kind: 'follow', source, channels: ['turn'], offset: 'keep' });

const BONES: readonly Bone[] = [
  bone('root', null, [0, 0, 0], AHEAD),
  bone('hip', 'root', [0, 0.4, 0], UP),
  bone('spine', 'hip', [0, 0.55, 0], UP, { length: 0.15 }),
  bone('chest', 'spine', [0, 0.7, 0], UP, { length: 0.2 }),
  bone('neck', 'chest', [0, 0.9, 0], UP),
  bone('skull', 'neck', [0, 1, 0], UP, {
    length: 0.25,
    links: [{ name: 'hold', kind: 'limit', yaw: [-70, 70], pitch: [-40, 40], twist: [-60, 60] }],
  }),
  bone('holder', 'root', [0, 1.1, 0.8], AHEAD, { switches: [sliding('together'), sliding('converge')] }),
  bone('target_left', 'holder', [0.03, 1.1, 0.8], AHEAD),
  bone('target_right', 'holder', [-0.03, 1.1, 0.8], AHEAD),
  bone('gaze_left', 'skull', [0.03, 1.1, 0.08], AHEAD, { links: [watch('target_left')] }),
  bone('gaze_right', 'skull', [-0.03, 1.1, 0.08], AHEAD, { links: [watch('target_right')] }),
  bone('eye_left', 'skull', [0.03, 1.1, 0.08], AHEAD, { length: 0.02, links: [follow('gaze_left')] }),
  bone('eye_right', 'skull', [-0.03, 1.1, 0.08], AHEAD, { length: 0.02, links: [follow('gaze_right')] }),
  bone('lid_left', 'skull', [0.03, 1.1, 0.08], AHEAD, {
    links: [{ name: 'trail', kind: 'aim', target: { bone: 'target_left' }, weight: 0.5 }],
  }),
  bone('lid_right', 'skull', [-0.03, 1.1, 0.08], AHEAD),
  bone('brow_left', 'skull', [0.03, 1.14, 0.09], AHEAD),
  bone('brow_right', 'skull', [-0.03, 1.14, 0.09], AHEAD),
  bone('indicator', 'skull', [0, 1.1, 0.08], AHEAD, {
    length: 0.3,
    links: [{ name: 'span', kind: 'span', target: { bone: 'holder' }, sides: 'volume' }],
  }),
  bone('shoulder_left', 'chest', [0.05, 0.85, 0], LEFT),
  bone('upper_left', 'shoulder_left', [0.15, 0.85, 0], LEFT, { length: 0.3 }),
  bone('lower_left', 'upper_left', [0.45, 0.85, 0], LEFT, {
    length: 0.25,
    links: [{ name: 'reach', kind: 'reach', target: { bone: 'grip_left' }, pole: { bone: 'pole_left' } }],
  }),
  bone('hand_left', 'lower_left', [0.7, 0.85, 0], LEFT),
  bone('roll_left', 'upper_left', [0.3, 0.85, 0], LEFT, {
    links: [{ name: 'roll', kind: 'share', source: 'hand_left', fraction: 0.5 }],
  }),
  bone('grip_left', 'root', [0.5, 0.8, 0.3], AHEAD),
  bone('pole_left', 'root', [0.4, 0.6, -0.6], AHEAD),
  bone('shoulder_right', 'chest', [-0.05, 0.85, 0], RIGHT),
  bone('upper_right', 'shoulder_right', [-0.15, 0.85, 0], RIGHT, { length: 0.3 }),
  bone('lower_right', 'upper_right', [-0.45, 0.85, 0], RIGHT, { length: 0.25 }),
  bone('hand_right', 'lower_right', [-0.7, 0.85, 0], RIGHT),
  bone('rudder', 'hip', [0, 0.4, -0.1], AHEAD, { links: [{ name: 'wag', kind: 'aim', target: { bone: 'holder' } }] }),
];

const fade = (side: string): Driver => ({
  name: `let_go_${side}`,
  inputs: [{ from: { switch: 'holder.together' } }],
  map: {
    keys: [
      [0, 1],
      [1, 0],
    ],
  },
  output: { bone: `gaze_${side}`, link: 'watch', field: 'weight' },
});

const DRIVERS: readonly Driver[] = [
  fade('left'),
  fade('right'),
  {
    name: 'converge',
    inputs: [{ from: { switch: 'holder.converge' } }],
    map: {
      keys: [
        [0, 0],
        [1, -0.03],
      ],
    },
    output: { bone: 'target_left', channel: 'move.x' },
  },
  {
    name: 'frown',
    inputs: [{ from: { turn: { bone: 'skull', axis: 'x' } } }],
    map: {
      keys: [
        [-40, 20],
        [40, -20],
      ],
    },
    output: { bone: 'brow_left', channel: 'turn.x' },
  },
];

export const OTTER: Rig = { format: 'counterpose/rig', version: 1, title: 'Otter', bones: BONES, drivers: DRIVERS };
