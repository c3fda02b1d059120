import type { BonePose, Pose } from '../../solver/document/rig.ts';
import type { Subject } from '../subject.ts';
import { settable } from './boundInput.ts';

type Triple = [number, number, number];
interface Open {
  move?: Triple;
  turn?: { angles: Triple };
  size?: Triple;
}

/** The pose document with the inputs at these values, as an animator would set them; what is at rest is left out. */
export function poseOf(subject: Subject, values: Float64Array): Pose {
  const bones = new Map<string, Open>();
  const switches = new Map<string, number>();
  subject.inputs.forEach((input, index) => {
    const value = settable(input, values[index]!);
    if (input.stuck || value === input.rest) return;
    if (input.switch !== null) switches.set(input.switch, value);
    else tripleOf(bones, input.bone!, input.channel as 'move' | 'turn' | 'size')[input.component] = value;
  });
  const pose: { bones?: Record<string, BonePose>; switches?: Record<string, number> } = {};
  if (bones.size) pose.bones = Object.fromEntries(bones);
  if (switches.size) pose.switches = Object.fromEntries(switches);
  return pose;
}

function tripleOf(bones: Map<string, Open>, name: string, channel: 'move' | 'turn' | 'size'): Triple {
  const bone = bones.get(name) ?? {};
  bones.set(name, bone);
  if (channel === 'turn') {
    bone.turn ??= { angles: [0, 0, 0] };
    return bone.turn.angles;
  }
  bone[channel] ??= channel === 'size' ? [1, 1, 1] : [0, 0, 0];
  return bone[channel];
}

/** How many channels and switches a pose moves. */
export function channelsOffRest({ bones = {}, switches = {} }: Pose): number {
  const channels = Object.values(bones).flatMap(({ move, turn, size }) => [
    ...(move ?? []).filter((value) => value !== 0),
    ...(turn && 'angles' in turn ? turn.angles.filter((value) => value !== 0) : []),
    ...(size ?? []).filter((value) => value !== 1),
  ]);
  return channels.length + Object.keys(switches).length;
}
