import type { Bone, Rig, Switch } from '../../solver/document/rig.ts';
import { type Binding, boneOf } from '../bind.ts';
import type { Input } from '../exercise/inputs.ts';

/** An input tied to a channel or switch of one rig. */
export interface BoundInput {
  readonly id: string;
  readonly min: number;
  readonly max: number;
  /** Its value at rest. */
  readonly rest: number;
  /** The bone it moves, or null. */
  readonly bone: string | null;
  readonly channel: 'move' | 'turn' | 'size' | 'switch';
  /** 0 x, 1 y, 2 z. */
  readonly component: number;
  /** "bone.switch", or null. */
  readonly switch: string | null;
  readonly range: Switch | null;
  /** Why the proof cannot move it, or null. */
  readonly stuck: 'locked' | 'unbound' | null;
}

export function bindInputs(inputs: readonly Input[], rig: Rig, binding: Binding): BoundInput[] {
  const bones = new Map(rig.bones.map((bone) => [bone.name, bone]));
  return inputs.map((input) =>
    input.channel ? bindChannel(input, bones, binding) : bindSwitch(input, bones, binding),
  );
}

function bindChannel(input: Input, bones: ReadonlyMap<string, Bone>, binding: Binding): BoundInput {
  const bone = bones.get(boneOf(input.part ?? input.bone!, binding) ?? '');
  const [channel, letter] = input.channel!.split('.') as ['move' | 'turn' | 'size', string];
  const component = 'xyz'.indexOf(letter);
  const stuck = !bone ? 'unbound' : bone.locks?.[channel]?.[component] ? 'locked' : null;
  const rest = channel === 'size' ? 1 : 0;
  return { ...rangeOf(input), rest, bone: bone?.name ?? null, channel, component, switch: null, range: null, stuck };
}

function bindSwitch(input: Input, bones: ReadonlyMap<string, Bone>, binding: Binding): BoundInput {
  const name = input.part ? (binding.get(input.part) ?? null) : input.switch!;
  const [boneName, switchName] = name?.split('.') ?? [];
  const range = bones.get(boneName ?? '')?.switches?.find((own) => own.name === switchName) ?? null;
  const common = { ...rangeOf(input), bone: null, channel: 'switch', component: 0 } as const;
  if (!range) return { ...common, rest: 0, switch: null, range: null, stuck: 'unbound' };
  return { ...common, rest: range.default, switch: name, range, stuck: null };
}

const rangeOf = ({ id, min, max }: Input) => ({ id, min, max });

/** The value as this rig can take it: at rest where stuck, within the switch's own range, at an end if it does not slide. */
export function settable(input: BoundInput, value: number): number {
  if (input.stuck) return input.rest;
  if (!input.range) return value;
  const { min, max, sliding } = input.range;
  const within = Math.min(Math.max(value, min), max);
  if (sliding) return within;
  return within - min <= max - within ? min : max;
}

export function restValues(inputs: readonly BoundInput[]): Float64Array {
  return Float64Array.from(inputs, (input) => input.rest);
}
