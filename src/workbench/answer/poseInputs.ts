import { bindParts } from '../../grader/bind.ts';
import type { Exercise } from '../../grader/exercise/exercise.ts';
import type { Input } from '../../grader/exercise/inputs.ts';
import type { Pose } from '../../solver/document/rig.ts';
import { boneOf, type Draft } from '../edit/draft.ts';
import { channelOf, valuesOf, withSwitch, withValue } from '../pose/channels.ts';

type About = Pick<Exercise, 'inputs' | 'parts'>;

/** A pose as the exercise's inputs tell it: input id to value. */
export function inputsOf(pose: Pose, draft: Draft, exercise: About): Record<string, number> {
  const values: Record<string, number> = {};
  for (const { input, bone, reference } of boundInputs(draft, exercise)) {
    const first = reference === undefined ? undefined : switchDefault(draft, reference);
    if (reference && first !== undefined) values[input.id] = pose.switches?.[reference] ?? first;
    const own = bone && boneOf(draft, bone);
    if (own && input.channel) {
      const [channel, axis] = channelOf(input.channel);
      values[input.id] = valuesOf(pose, own, channel)[axis];
    }
  }
  return values;
}

/** The pose that those values make. */
export function poseOfInputs(values: Readonly<Record<string, number>>, draft: Draft, exercise: About): Pose {
  let pose: Pose = {};
  for (const { input, bone, reference } of boundInputs(draft, exercise)) {
    const value = values[input.id];
    if (value === undefined) continue;
    const own = bone && boneOf(draft, bone);
    if (reference) pose = withSwitch(pose, reference, value, switchDefault(draft, reference) ?? 0);
    else if (own && input.channel) pose = withValue(pose, own, ...channelOf(input.channel), value);
  }
  return pose;
}

interface Bound {
  readonly input: Input;
  readonly bone: string | undefined;
  /** "bone.switch" */
  readonly reference: string | undefined;
}

function boundInputs(draft: Draft, exercise: About): Bound[] {
  const parts = bindParts(exercise.parts, draft.rig, draft.parts);
  return exercise.inputs.map((input) => {
    const part = input.part === undefined ? undefined : (parts.get(input.part) ?? undefined);
    if (input.channel) return { input, bone: input.bone ?? part, reference: undefined };
    return { input, bone: undefined, reference: input.switch ?? part };
  });
}

function switchDefault(draft: Draft, reference: string): number | undefined {
  for (const bone of draft.rig.bones) {
    const own = bone.switches?.find((each) => `${bone.name}.${each.name}` === reference);
    if (own) return own.default;
  }
  return undefined;
}
