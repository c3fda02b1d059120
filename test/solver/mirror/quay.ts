import type { Rig } from '../../../src/solver/index.ts';
import { readRig } from '../../../src/solver/index.ts';

export const ARM_TURN = [0.1, 0.3, -0.5, Math.sqrt(1 - 0.35)] as const;

/** One vane of a pair, its target, and a middle mast: every field that a mirror changes, and the ones it does not. */
const document = {
  format: 'counterpose/rig',
  version: 1,
  title: 'The left vane',
  bones: [
    {
      name: 'mast',
      parent: null,
      role: 'skin',
      rest: { base: [0, 0, 0], turn: [0, 0, 0, 1], length: 1 },
      switches: [{ name: 'wind_left', min: 0, max: 1, default: 0, sliding: true }],
      links: [{ name: 'hold', kind: 'follow', source: 'kite_left', weight: 0 }],
    },
    {
      name: 'vane_left',
      parent: 'mast',
      role: 'helper',
      rest: { base: [0.3, 1, 0.2], turn: ARM_TURN, length: 0.1 },
      inherits: 'uniform',
      turnOrder: 'yzx',
      locks: { move: [true, false, false] },
      switches: [{ name: 'open', min: 0, max: 1, default: 1 }],
      links: [
        {
          name: 'watch_left',
          kind: 'aim',
          target: { bone: 'kite_left', at: 0.5 },
          axis: '+x',
          up: { axis: [0, 0.6, 0.8], toward: { direction: [1, 2, 3] } },
          weight: 0.5,
        },
        {
          name: 'roll',
          kind: 'aim',
          target: { bone: 'mast' },
          up: { axis: '-x', toward: { bone: 'kite_left', axis: '-x' } },
        },
        {
          name: 'tilt',
          kind: 'aim',
          target: { bone: 'mast' },
          up: { axis: '+y', toward: { bone: 'kite_left', at: 1 } },
        },
        { name: 'half', kind: 'share', source: 'kite_left', fraction: 0.5 },
        {
          name: 'keep',
          kind: 'limit',
          move: { min: [-0.1, -0.2, -0.3], max: [0.4, 0.5, 0.6] },
          yaw: [-10, 20],
          pitch: [-30, 40],
          twist: [-50, 60],
          cone: 70,
        },
        { name: 'gauge', kind: 'span', target: { bone: 'kite_left' }, sides: 'volume' },
      ],
    },
    {
      name: 'feather_left',
      parent: 'vane_left',
      role: 'skin',
      rest: { base: [0.5, 1, 0], turn: [0, 0, 0, 1], length: 0.1 },
      links: [{ name: 'fetch', kind: 'reach', target: { bone: 'kite_left' }, pole: { bone: 'mast', at: 1 } }],
    },
    { name: 'kite_left', parent: null, role: 'control', rest: { base: [0.3, 1, 2], turn: [0, 0, 0, 1], length: 0.1 } },
  ],
  drivers: [
    {
      name: 'let_go',
      inputs: [
        { from: { switch: 'mast.wind_left' }, times: 2 },
        { from: { turn: { bone: 'kite_left', axis: 'x' } }, times: 2 },
        { from: { turn: { bone: 'kite_left', axis: 'y' } }, times: 2 },
        { from: { turn: { bone: 'mast', axis: 'z' } }, times: 2 },
        { from: { shift: { bone: 'kite_left', axis: 'x' } }, times: 2 },
        { from: { shift: { bone: 'kite_left', axis: 'y' } }, times: 2 },
        { from: { gap: [{ bone: 'kite_left', at: 1 }, { bone: 'mast' }] }, times: 2 },
      ],
      map: {
        keys: [
          [0, 1],
          [1, 0],
        ],
        shape: { bezier: [0.1, 0.2, 0.3, 0.4] },
      },
      output: { bone: 'vane_left', link: 'watch_left', field: 'weight' },
    },
    {
      name: 'swing_left',
      inputs: [{ from: { switch: 'vane_left.open' } }],
      map: {
        keys: [
          [0, 1],
          [1, 3],
        ],
      },
      output: { bone: 'feather_left', channel: 'turn.y' },
    },
    {
      name: 'sway_left',
      inputs: [{ from: { switch: 'mast.wind_left' } }],
      map: {
        keys: [
          [0, 1],
          [1, 3],
        ],
      },
      output: { bone: 'mast', channel: 'move.y' },
    },
  ],
  mesh: { positions: [1, 2, 3, -4, 5, 6, 0, 7, 8], triangles: [0, 1, 2, 2, 0, 1] },
};

function read(value: unknown): Rig {
  const reading = readRig(value);
  if (!reading.ok) throw new Error(JSON.stringify(reading.refusal));
  return reading.value;
}

export const quay = read(document);
