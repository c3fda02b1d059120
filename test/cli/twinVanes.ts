import type { Bone, Rig } from '../../src/solver/index.ts';

const upright = [0, 0, 0, 1] as const;

const vane = (side: 'left' | 'right', x: number): Bone[] => [
  { name: `wind_${side}`, parent: 'wind', role: 'control', rest: { base: [x, 1.5, 0.6], turn: upright, length: 0.05 } },
  {
    name: `vane_${side}`,
    parent: 'post',
    role: 'helper',
    rest: { base: [x, 1.5, 0], turn: upright, length: 0.1 },
    links: [{ name: 'watch', kind: 'aim', target: { bone: `wind_${side}` } }],
  },
];

/** Two vanes on a post, each aiming at its own wind; one wind carries both, and a switch lets the left vane go. */
export const twinVanes: Rig = {
  format: 'counterpose/rig',
  version: 1,
  title: 'Twin vanes',
  bones: [
    { name: 'post', parent: null, role: 'skin', rest: { base: [0, 0, 0], turn: upright, length: 1.5 } },
    {
      name: 'wind',
      parent: null,
      role: 'control',
      rest: { base: [0, 1.5, 0.6], turn: upright, length: 0.05 },
      switches: [{ name: 'together', min: 0, max: 1, default: 0, sliding: true }],
    },
    ...vane('left', 0.03),
    ...vane('right', -0.03),
  ],
  drivers: [
    {
      name: 'let_go',
      inputs: [{ from: { switch: 'wind.together' } }],
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

/** The same, but the left wind hangs on the vane that aims at it. */
export const circlingVanes: Rig = {
  ...twinVanes,
  bones: twinVanes.bones.map((bone) => (bone.name === 'wind_left' ? { ...bone, parent: 'vane_left' } : bone)),
};
