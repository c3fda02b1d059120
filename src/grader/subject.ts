import type { Bone, Pose, Rig, Role } from '../solver/document/rig.ts';
import { compile, createState, evaluate, type Program, packPose, type State } from '../solver/index.ts';
import { type Binding, bindParts, boneOf } from './bind.ts';
import type { Exercise } from './exercise/exercise.ts';
import type { Skin } from './measure/skin.ts';
import type { Across } from './probe/across.ts';
import { type BoundInput, bindInputs } from './probe/boundInput.ts';
import { type Packer, packerFor } from './probe/packValues.ts';
import { Stands } from './stands.ts';

/** A built rig ready to be probed: compiled, its parts bound, the exercise's inputs tied to its channels. */
export interface Subject {
  readonly exercise: Exercise;
  readonly rig: Rig;
  readonly program: Program;
  readonly binding: Binding;
  readonly inputs: readonly BoundInput[];
  readonly inputIndex: ReadonlyMap<string, number>;
  readonly packer: Packer;
  readonly stands: Stands;
  /** For poses that are not made of input values. */
  readonly aside: State;
  /** Of the pose last asked for. */
  state: State;
  /** The mesh, and the poses across, once something asks for them. */
  skin: Skin | null;
  across: Across | null;
  /** How often the rig was asked for a pose, and how often for the mesh in one. */
  evaluations: number;
  skinnings: number;
}

export type Prepared = { ok: true; subject: Subject } | { ok: false; binding: Binding; cycle: string[] };

export function subjectOf(exercise: Exercise, rig: Rig, parts: Readonly<Record<string, string>> = {}): Prepared {
  const binding = bindParts(exercise.parts, rig, parts);
  const compiled = compile(rig);
  if (!compiled.ok) return { ok: false, binding, cycle: compiled.cycle };
  const { program } = compiled;
  const inputs = bindInputs(exercise.inputs, rig, binding);
  const inputIndex = new Map(inputs.map((input, index) => [input.id, index]));
  const aside = createState(program);
  const packer = packerFor(program, inputs);
  const stands = new Stands(program, packer);
  return {
    ok: true,
    subject: {
      exercise,
      rig,
      program,
      binding,
      inputs,
      inputIndex,
      packer,
      stands,
      aside,
      state: aside,
      skin: null,
      across: null,
      evaluations: 0,
      skinnings: 0,
    },
  };
}

/**
 * World transforms (12 doubles a bone) with the inputs at these values; what an animator cannot set is
 * left at rest. The array is the subject's own and is overwritten by a later call.
 */
export function worldAt(subject: Subject, values: Float64Array): Float64Array {
  subject.evaluations++;
  subject.state = subject.stands.at(values);
  return subject.state.world;
}

/** The same for any pose. */
export function worldOf(subject: Subject, pose: Pose): Float64Array {
  return worldOfPacked(subject, packPose(subject.program, pose));
}

/** The same for a packed pose, which leaves what `worldAt` gave last as it is. */
export function worldOfPacked(subject: Subject, packed: Float64Array): Float64Array {
  subject.evaluations++;
  subject.state = subject.aside;
  evaluate(subject.program, subject.aside, packed);
  return subject.aside.world;
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
  return builtBone(subject, spoken).rest.length;
}

export function roleOf(subject: Subject, spoken: string): Role {
  return builtBone(subject, spoken).role;
}

const builtBone = (subject: Subject, spoken: string): Bone => subject.rig.bones[worldOffset(subject, spoken) / 12]!;
