import { bindParts } from '../../grader/bind.ts';
import type { Exercise } from '../../grader/exercise/exercise.ts';
import type { Bone, Rig, Switch } from '../../solver/document/rig.ts';
import type { Draft } from '../edit/draft.ts';
import { extentOf, sizeOf } from '../plate/extent.ts';
import { type AxisIndex, type Channel, channelOf, isLocked, restOf, STEPS } from '../pose/channels.ts';

/** One channel of a control as a slider. */
export interface ChannelSlider {
  readonly channel: Channel;
  readonly axis: AxisIndex;
  readonly least: number;
  readonly most: number;
  readonly step: number;
}
export interface Control {
  readonly bone: Bone;
  /** What the exercise moves, or all that is free where it moves nothing of this bone. */
  readonly first: readonly ChannelSlider[];
  readonly more: readonly ChannelSlider[];
  /** "move x", "turn z" */
  readonly locked: readonly string[];
}
export interface SwitchControl extends Switch {
  /** "bone.switch" */
  readonly reference: string;
  /** The driver that sets it, if one does. */
  readonly driver: string | undefined;
}
type Range = { least: number; most: number };
type About = Pick<Exercise, 'kind' | 'inputs' | 'parts'>;

/** What an animator can set: the controls, whatever else the exercise moves, and every switch. */
export function controlsOf(draft: Draft, exercise: About): { bones: Control[]; switches: SwitchControl[] } {
  const ranges = inputRanges(draft, exercise);
  const moved = new Set([...ranges.keys()].map((key) => key.split(' ')[0]));
  const reach = reachOf(draft.rig);
  // Where a pose is the answer, what is no input would not be part of it.
  const asked = exercise.kind === 'pose';
  const shown = draft.rig.bones.filter((bone) => moved.has(bone.name) || (!asked && bone.role === 'control'));
  const bones = shown.map((bone) => controlOf(bone, ranges, reach));
  if (asked)
    return { bones: bones.map((control) => ({ ...control, more: [] })), switches: askedSwitches(draft, exercise) };
  return { bones, switches: switchesOf(draft.rig) };
}

/** How far a control may be slid: about the rig's own size, a round length. */
export function reachOf(rig: Rig): number {
  const size = sizeOf(extentOf({ ...rig, bones: rig.bones }));
  const power = 10 ** Math.floor(Math.log10(size));
  return ([1, 2, 5, 10].find((factor) => factor * power >= size) ?? 10) * power;
}

function controlOf(bone: Bone, ranges: ReadonlyMap<string, Range>, reach: number): Control {
  const all = (['move', 'turn', 'size'] as const).flatMap((channel) =>
    ([0, 1, 2] as const).map((axis) => ({ channel, axis })),
  );
  const attached = (channel: Channel) => channel === 'move' && bone.attach === 'tip';
  const free = all.filter(({ channel, axis }) => !isLocked(bone, channel, axis) && !attached(channel));
  const sliders = free.map(({ channel, axis }): ChannelSlider & { asked: boolean } => {
    const asked = ranges.get(keyOf(bone.name, channel, axis));
    return { channel, axis, step: STEPS[channel], ...(asked ?? usual(channel, reach)), asked: asked !== undefined };
  });
  const some = sliders.some(({ asked }) => asked);
  return {
    bone,
    first: sliders.filter(({ asked, channel }) => (some ? asked : channel !== 'size')),
    more: sliders.filter(({ asked, channel }) => (some ? !asked : channel === 'size')),
    locked: all
      .filter(({ channel, axis }) => isLocked(bone, channel, axis))
      .map(({ channel, axis }) => `${channel} ${'xyz'[axis]}`),
  };
}

function usual(channel: Channel, reach: number): Range {
  if (channel === 'move') return { least: -reach, most: reach };
  return channel === 'turn' ? { least: -180, most: 180 } : { least: 0.1, most: 3 };
}

/** The exercise's inputs by bone and channel, its parts as they are bound; rest always lies within. */
function inputRanges(draft: Draft, exercise: About): Map<string, Range> {
  const bound = bindParts(exercise.parts, draft.rig, draft.parts);
  const ranges = new Map<string, Range>();
  for (const input of exercise.inputs) {
    const bone = input.bone ?? (input.part ? bound.get(input.part) : null);
    if (!bone || !input.channel) continue;
    const [channel, axis] = channelOf(input.channel);
    const rest = restOf(channel);
    const key = keyOf(bone, channel, axis);
    ranges.set(key, { least: Math.min(rest, input.min), most: Math.max(rest, input.max) });
  }
  return ranges;
}

/** Switches that are among the exercise's inputs. */
function askedSwitches(draft: Draft, exercise: About): SwitchControl[] {
  const bound = bindParts(exercise.parts, draft.rig, draft.parts);
  const asked = new Set(exercise.inputs.map((input) => input.switch ?? (input.part ? bound.get(input.part) : null)));
  return switchesOf(draft.rig).filter(({ reference }) => asked.has(reference));
}

function keyOf(bone: string, channel: Channel, axis: AxisIndex): string {
  return `${bone} ${channel} ${axis}`;
}

function switchesOf(rig: Rig): SwitchControl[] {
  return rig.bones.flatMap((bone) =>
    (bone.switches ?? []).map((own) => {
      const reference = `${bone.name}.${own.name}`;
      const driver = rig.drivers?.find(({ output }) => 'switch' in output && output.switch === reference);
      return { ...own, reference, driver: driver?.name };
    }),
  );
}
