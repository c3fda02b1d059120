import type { Bone } from '../../solver/document/rig.ts';
import { list, needed } from '../../solver/document/structures.ts';
import { oneOf } from '../../solver/document/values.ts';
import { boneOf } from '../bind.ts';
import type { InputChannel } from '../exercise/inputs.ts';
import type { StructureKind } from './kind.ts';
import { type RequirementBase, requirementReader, spoken } from './requirement.ts';

export interface LocksAsked extends RequirementBase {
  kind: 'locks';
  bone: string;
  locked: readonly InputChannel[];
  open: readonly InputChannel[];
}

const CHANNELS = (['move', 'turn', 'size'] as const).flatMap((channel) =>
  (['x', 'y', 'z'] as const).map((letter): InputChannel => `${channel}.${letter}`),
);
const channels = list('channels', oneOf(CHANNELS));

/** How many channels of a bone are locked that should be open, or open that should be locked. */
export const locks: StructureKind<LocksAsked> = {
  kind: 'locks',
  about: 'structure',
  read: requirementReader<LocksAsked>('locks', {
    bone: needed(spoken),
    locked: needed(channels),
    open: needed(channels),
  }),
  unit: () => 'channels',
  bones: ({ bone }) => [bone],
  inputs: () => [],
  missed: ({ bone }, { places, nameOf }) =>
    `Locks of ${nameOf(bone)}: ${places.map((place) => place.replace('.', ' ')).join(', ')}.`,
  inspect({ bone, locked, open }, { rig, binding }) {
    const built = rig.bones.find(({ name }) => name === boneOf(bone, binding));
    const places = [
      ...locked.filter((channel) => !isLocked(built, channel)).map((channel) => `${channel} is open`),
      ...open.filter((channel) => isLocked(built, channel)).map((channel) => `${channel} is locked`),
    ];
    return { measured: places.length, places };
  },
};

function isLocked(bone: Bone | undefined, channel: InputChannel): boolean {
  const [name, letter] = channel.split('.') as ['move' | 'turn' | 'size', string];
  return bone?.locks?.[name]?.['xyz'.indexOf(letter)] ?? false;
}
