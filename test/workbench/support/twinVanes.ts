import type { Rig } from '../../../src/solver/index.ts';
import type { Draft } from '../../../src/workbench/edit/draft.ts';

/** Two weather vanes on a quay; the left one watches a target of its own and lets go of it by a switch. */
export const TWIN_VANES: Rig = {
  format: 'counterpose/rig',
  version: 1,
  title: 'Twin vanes',
  bones: [
    {
      name: 'post',
      parent: null,
      role: 'helper',
      rest: { base: [0, 0, 0], turn: [-Math.SQRT1_2, 0, 0, Math.SQRT1_2], length: 1.5 },
    },
    {
      name: 'wind',
      parent: null,
      role: 'control',
      rest: { base: [0, 1.5, 0.6], turn: [0, 0, 0, 1], length: 0.05 },
      switches: [{ name: 'together', min: 0, max: 1, default: 0, sliding: true }],
    },
    {
      name: 'wind_left',
      parent: 'wind',
      role: 'control',
      rest: { base: [0.1, 1.5, 0.6], turn: [0, 0, 0, 1], length: 0.05 },
    },
    {
      name: 'vane_left',
      parent: 'post',
      role: 'skin',
      rest: { base: [0.1, 1.5, 0], turn: [0, 0, 0, 1], length: 0.3 },
      links: [
        { name: 'watch', kind: 'aim', target: { bone: 'wind_left' } },
        { name: 'hold', kind: 'limit', yaw: [-80, 80] },
      ],
    },
    {
      name: 'vane_right',
      parent: 'post',
      role: 'skin',
      rest: { base: [-0.1, 1.5, 0], turn: [0, 0, 0, 1], length: 0.3 },
      links: [{ name: 'twin', kind: 'follow', source: 'vane_left', channels: ['turn'] }],
    },
    {
      name: 'tail_right',
      parent: 'vane_right',
      role: 'skin',
      attach: 'tip',
      rest: { base: [-0.1, 1.5, 0.3], turn: [0, 0, 0, 1], length: 0.1 },
      links: [{ name: 'lean', kind: 'share', source: 'vane_left', fraction: 0.5 }],
    },
  ],
  drivers: [
    {
      name: 'let_go',
      inputs: [
        { from: { switch: 'wind.together' } },
        { from: { gap: [{ bone: 'wind' }, { bone: 'wind_left' }] }, times: 0.5 },
      ],
      map: {
        keys: [
          [0, 1],
          [1, 0],
        ],
      },
      output: { bone: 'vane_left', link: 'watch', field: 'weight' },
    },
  ],
};

export const DRAFT: Draft = { rig: TWIN_VANES, parts: { target: 'wind_left', switch: 'wind.together' } };
