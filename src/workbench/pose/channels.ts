import type { Bone, Pose, Vec3 } from '../../solver/document/rig.ts';
import { anglesOf } from './angles.ts';

export type Channel = 'move' | 'turn' | 'size';
export type AxisIndex = 0 | 1 | 2;

/** One number of a bone's pose: metres of move, degrees of turn in the bone's own order, a factor of size. */
export interface ChannelRef {
  readonly bone: string;
  readonly channel: Channel;
  readonly axis: AxisIndex;
}

export const UNITS: Readonly<Record<Channel, string>> = { move: 'm', turn: '°', size: '' };
export const STEPS: Readonly<Record<Channel, number>> = { move: 0.01, turn: 1, size: 0.05 };

/** "move.x" taken apart. */
export function channelOf(channel: string): [channel: Channel, axis: AxisIndex] {
  const [name, letter] = channel.split('.') as [Channel, string];
  return [name, 'xyz'.indexOf(letter) as AxisIndex];
}

export function restOf(channel: Channel): number {
  return channel === 'size' ? 1 : 0;
}

/** All three numbers of a channel as the pose has them. */
export function valuesOf(pose: Pose, bone: Bone, channel: Channel): Vec3 {
  const own = pose.bones?.[bone.name];
  const rest = restOf(channel);
  if (channel === 'move') return own?.move ?? [rest, rest, rest];
  if (channel === 'size') return own?.size ?? [rest, rest, rest];
  if (!own?.turn) return [0, 0, 0];
  return 'angles' in own.turn ? own.turn.angles : anglesOf(own.turn, bone.turnOrder ?? 'xyz');
}

/** The pose with a channel of a bone set; what is at rest is not written. */
export function withValues(pose: Pose, bone: Bone, channel: Channel, values: Vec3): Pose {
  const { [channel]: _, ...others } = pose.bones?.[bone.name] ?? {};
  const atRest = values.every((value) => value === restOf(channel));
  const written = channel === 'turn' ? { turn: { angles: values } } : { [channel]: values };
  const own = atRest ? others : { ...others, ...written };
  const { [bone.name]: __, ...rest } = pose.bones ?? {};
  const bones = Object.keys(own).length === 0 ? rest : { ...rest, [bone.name]: own };
  return { ...pose, bones };
}

export function withValue(pose: Pose, bone: Bone, channel: Channel, axis: AxisIndex, value: number): Pose {
  const values = valuesOf(pose, bone, channel).with(axis, value) as unknown as Vec3;
  return withValues(pose, bone, channel, values);
}

/** The pose with a switch set; at its default it is not written. */
export function withSwitch(pose: Pose, name: string, value: number, first: number): Pose {
  const { [name]: _, ...rest } = pose.switches ?? {};
  return { ...pose, switches: value === first ? rest : { ...rest, [name]: value } };
}

export function isLocked(bone: Bone, channel: Channel, axis: AxisIndex): boolean {
  return bone.locks?.[channel]?.[axis] ?? false;
}
