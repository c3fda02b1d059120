import { renameInRig } from '../../../solver/document/renaming.ts';
import type { FollowLink, Link, Rig } from '../../../solver/document/rig.ts';
import { type Variation, type Vary, varyBones, varyDrivers, withBone } from '../variation.ts';
import { followForParent, interpose, parentForFollow } from './parents.ts';
import { axisByVector, negateTurn, spellOut, swapIndependent } from './writing.ts';

/** Bones that the exercise does not fix by name: `fixed` holds those that must keep theirs. */
export function renameFree(rig: Rig, fixed: ReadonlySet<string>): Variation[] {
  const free = rig.bones.map(({ name }) => name).filter((name) => !fixed.has(name));
  if (free.length === 0) return [];
  const renamed = new Map(free.map((name, i) => [name, `other_name_${i + 1}`]));
  return [{ says: 'free names changed', rig: renameInRig(rig, (name) => renamed.get(name) ?? name), renamed }];
}

/** A bone that nothing reads. */
const addIdleBone: Vary = (rig) => [
  {
    says: 'a bone that nothing reads',
    rig: {
      ...rig,
      bones: [
        ...rig.bones,
        {
          name: 'idle_extra',
          parent: rig.bones[0]!.name,
          role: 'helper',
          rest: { base: [0.1, 0.2, 0.3], turn: [0, 0, 0, 1], length: 0.1 },
        },
      ],
    },
  },
];

/** Bones and drivers in another order of writing. */
const reorder: Vary = (rig) => [
  {
    says: 'bones and drivers written in another order',
    rig: { ...rig, bones: [...rig.bones].reverse(), ...(rig.drivers && { drivers: [...rig.drivers].reverse() }) },
  },
];

/** A follow at full, undriven weight taken apart: one link a channel does the same. */
const splitFollow: Vary = (rig) =>
  rig.bones.flatMap((bone) =>
    (bone.links ?? []).flatMap((link, at) => {
      if (link.kind !== 'follow' || (link.weight ?? 1) !== 1 || isDriven(rig, bone.name, link.name)) return [];
      const channels = link.channels ?? (['move', 'turn', 'size'] as const);
      if (channels.length < 2) return [];
      const parts = channels.map(
        (channel): FollowLink => ({ ...link, name: `${link.name}_${channel}`, channels: [channel] }),
      );
      const links: Link[] = [...bone.links!.slice(0, at), ...parts, ...bone.links!.slice(at + 1)];
      return [{ says: `${bone.name}.${link.name} taken apart by channels`, rig: withBone(rig, { ...bone, links }) }];
    }),
  );

function isDriven(rig: Rig, bone: string, link: string): boolean {
  return (rig.drivers ?? []).some(({ output }) => 'link' in output && output.bone === bone && output.link === link);
}

/** A straight map with one more key on the way, which changes nothing. */
const addKey: Vary = (rig) =>
  varyDrivers(rig, (driver) => {
    const { keys, shape = 'straight' } = driver.map;
    if (shape !== 'straight') return [];
    const [[x0, y0], [x1, y1]] = [keys[0]!, keys[1]!];
    const middle = [(x0 + x1) / 2, (y0 + y1) / 2] as const;
    return [
      ['one more key on the way', { ...driver, map: { ...driver.map, keys: [keys[0]!, middle, ...keys.slice(1)] } }],
    ];
  });

/** An input summed from two halves. */
const splitInput: Vary = (rig) =>
  varyDrivers(rig, (driver) => {
    const inputs = driver.inputs.flatMap((input) => {
      const half = { ...input, times: (input.times ?? 1) / 2 };
      return [half, half];
    });
    return inputs.length > 32 ? [] : [['inputs summed from halves', { ...driver, inputs }]];
  });

/** An input counted twice as much, over a map twice as wide. */
const widenMap: Vary = (rig) =>
  varyDrivers(rig, (driver) => [
    [
      'input doubled, map twice as wide',
      {
        ...driver,
        inputs: driver.inputs.map((input) => ({ ...input, times: (input.times ?? 1) * 2 })),
        map: { ...driver.map, keys: driver.map.keys.map(([x, y]) => [2 * x, y] as const) },
      },
    ],
  ]);

/** A link of no weight at the end changes nothing. */
const addIdleLink: Vary = (rig) =>
  varyBones(rig, (bone) => {
    if (bone.parent === null || (bone.links ?? []).length === 0) return [];
    const idle: Link = { name: 'idle_extra', kind: 'follow', source: bone.parent, weight: 0 };
    return [['a link of no weight', { ...bone, links: [...bone.links!, idle] }]];
  });

/** Other ways of writing the same rig. */
export const EQUIVALENTS: Readonly<Record<string, Vary>> = {
  addIdleBone,
  reorder,
  splitFollow,
  addKey,
  splitInput,
  widenMap,
  addIdleLink,
  parentForFollow,
  followForParent,
  interpose,
  spellOut,
  axisByVector,
  negateTurn,
  swapIndependent,
};
