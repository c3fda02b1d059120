import type { Pose, Rig } from '../solver/document/rig.ts';
import { compile, createState, evaluate, type Program, packPose, type State } from '../solver/index.ts';
import { type Binding, bindParts, boneOf } from './bind.ts';
import type { Exercise } from './exercise/definition.ts';
import { type BoundInput, bindInputs } from './probe/boundInput.ts';
import { type Packer, packerFor } from './probe/packValues.ts';

/** A built rig ready to be probed: compiled, its parts bound, the exercise's inputs tied to its channels. */
export interface Subject {
  readonly exercise: Exercise;
  readonly rig: Rig;
  readonly program: Program;
  readonly state: State;
  readonly binding: Binding;
  readonly inputs: readonly BoundInput[];
  readonly inputIndex: ReadonlyMap<string, number>;
  readonly packer: Packer;
  /** The input values of the pose last evaluated, if it was one of values. */
  readonly last: Float64Array;
  isLastOfValues: boolean;
  /** How often the rig was asked for a pose. */
  evaluations: number;
}

export type Prepared = { ok: true; subject: Subject } | { ok: false; binding: Binding; cycle: string[] };

export function subjectOf(exercise: Exercise, rig: Rig, parts: Readonly<Record<string, string>> = {}): Prepared {
  const binding = bindParts(exercise.parts, rig, parts);
  const compiled = compile(rig);
  if (!compiled.ok) return { ok: false, binding, cycle: compiled.cycle };
  const { program } = compiled;
  const inputs = bindInputs(exercise.inputs, rig, binding);
  const inputIndex = new Map(inputs.map((input, index) => [input.id, index]));
  const state = createState(program);
  const packer = packerFor(program, inputs);
  return {
    ok: true,
    subject: {
      exercise,
      rig,
      program,
      state,
      binding,
      inputs,
      inputIndex,
      packer,
      last: new Float64Array(inputs.length),
      isLastOfValues: false,
      evaluations: 0,
    },
  };
}

/**
 * World transforms (12 doubles a bone) with the inputs at these values; what an animator cannot set is
 * left at rest. The array is the subject's own and is overwritten by the next call.
 */
export function worldAt(subject: Subject, values: Float64Array): Float64Array {
  subject.evaluations++;
  if (isLast(subject, values)) return subject.state.world;
  const { program, state, packer } = subject;
  packer.pack(values);
  evaluate(program, state, packer.packed);
  subject.last.set(values);
  subject.isLastOfValues = true;
  return state.world;
}

/** Several requirements measure the same pose one after the other; it is evaluated once. */
function isLast({ last, isLastOfValues }: Subject, values: Float64Array): boolean {
  for (let i = 0; i < last.length; i++) if (values[i] !== last[i]) return false;
  return isLastOfValues;
}

/** The same for any pose. */
export function worldOf(subject: Subject, pose: Pose): Float64Array {
  return worldOfPacked(subject, packPose(subject.program, pose));
}

/** The same for a packed pose. */
export function worldOfPacked(subject: Subject, packed: Float64Array): Float64Array {
  subject.evaluations++;
  subject.isLastOfValues = false;
  evaluate(subject.program, subject.state, packed);
  return subject.state.world;
}

/** Where a bone's transform starts in the world array; the bone is a part or one of the rig by name. */
export function worldOffset(subject: Subject, spoken: string): number {
  const name = boneOf(spoken, subject.binding);
  const index = name === null ? undefined : subject.program.boneIndex.get(name);
  if (index === undefined) throw new Error(`no bone stands for ${spoken}`);
  return index * 12;
}

/** The rest length of a bone, metres. */
export function lengthOf(subject: Subject, spoken: string): number {
  return subject.rig.bones[worldOffset(subject, spoken) / 12]!.rest.length;
}
