import type { InputChannel } from '../../grader/exercise/definition.ts';
import type { Pose, Rig } from '../../solver/document/rig.ts';
import { channelOf, restOf, withSwitch, withValue } from '../pose/channels.ts';

/** A slider of a lesson's figure: one channel of a bone, or one switch ("bone.switch"). */
export interface SliderAsked {
  readonly label: string;
  readonly bone?: string;
  readonly switch?: string;
  /** Of a bone: metres, degrees or a factor. */
  readonly channel?: InputChannel;
  readonly min: number;
  readonly max: number;
  /** Where it stands at first; rest where it is not said. */
  readonly value?: number;
}

export function valuesAtFirst(sliders: readonly SliderAsked[]): number[] {
  return sliders.map(({ value, channel, min, max }) => {
    const rest = channel ? restOf(channelOf(channel)[0]) : 0;
    return value ?? Math.min(max, Math.max(min, rest));
  });
}

/** The pose that the sliders make of the rig. */
export function poseOf(rig: Rig, sliders: readonly SliderAsked[], values: readonly number[]): Pose {
  return sliders.reduce<Pose>((pose, slider, i) => {
    const value = values[i]!;
    // No value counts as the first one: what a slider says is always written.
    if (slider.switch) return withSwitch(pose, slider.switch, value, Number.NaN);
    const bone = rig.bones.find(({ name }) => name === slider.bone);
    if (!bone || !slider.channel) return pose;
    return withValue(pose, bone, ...channelOf(slider.channel), value);
  }, {});
}
