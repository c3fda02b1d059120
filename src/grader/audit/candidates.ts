import type { Rig } from '../../solver/document/rig.ts';
import { readRig } from '../../solver/index.ts';
import { sideOf } from '../../solver/mirror/sides.ts';
import type { Exercise } from '../exercise/exercise.ts';
import { responseKindOf, type Work } from '../responses/response.ts';
import { EQUIVALENTS, renameFree } from './equivalents/table.ts';
import { MUTATIONS } from './mutants/table.ts';
import { equalAnswers, type WorkVariation, wrongAnswers } from './responses.ts';
import type { Scope, Variation } from './variation.ts';

/** What is to be graded: a rig with the parts that are not bound by their names, or what is answered beside it. */
export interface Candidate extends Work {
  says: string;
  parts: Readonly<Record<string, string>>;
  /** Of a mutant: what of its reference it changes. */
  changed: readonly { bone: string; field: string }[];
}

type Built = Exercise['references'][number] | Exercise['wrongTurns'][number];

export function asWritten(built: Built): Candidate {
  return { ...built, says: built.id, parts: built.parts ?? {}, changed: [] };
}

/** The reference and every other way of writing it. */
export function rightOnes(exercise: Exercise, reference: Exercise['references'][number]): Candidate[] {
  if (responseKindOf(exercise.kind)) {
    return [asWritten(reference), ...answersLike(reference, equalAnswers(exercise, reference))];
  }
  const variations = [
    ...renameFree(reference.rig, fixedNames(exercise, reference.rig)),
    ...Object.values(EQUIVALENTS).flatMap((vary) => vary(reference.rig, scopeOf(exercise, reference))),
  ];
  return [asWritten(reference), ...readable(exercise, reference, variations)];
}

const ABOUT_NAMES: ReadonlySet<string> = new Set(['name', 'pair-complete', 'mirrors']);

/** Names that are not the learner's to choose: those given and, where names or sides are asked about, the task's and those with a side word. */
function fixedNames({ start, parts, requirements }: Exercise, rig: Rig): ReadonlySet<string> {
  const given = start.bones.map(({ name }) => name);
  if (!requirements.some(({ kind }) => ABOUT_NAMES.has(kind))) return new Set(given);
  const sided = rig.bones.map(({ name }) => name).filter((name) => sideOf(name) !== null);
  return new Set([...given, ...parts.map(({ name }) => name), ...sided]);
}

/** Every mistake made in the reference that can still be read. */
export function mutantsOf(exercise: Exercise, reference: Exercise['references'][number]): Candidate[] {
  if (responseKindOf(exercise.kind) && exercise.kind !== 'shape') {
    return answersLike(reference, wrongAnswers(exercise, reference));
  }
  const variations = Object.values(MUTATIONS).flatMap((vary) => vary(reference.rig, scopeOf(exercise, reference)));
  const mutants = readable(exercise, reference, variations);
  return exercise.kind === 'shape' ? mutants.filter(({ rig }) => isMapAlone(exercise, reference.rig, rig)) : mutants;
}

function answersLike(reference: Built, variations: readonly WorkVariation[]): Candidate[] {
  return variations.map(([says, work]) => ({ ...asWritten(reference), ...work, says: `${reference.id}, ${says}` }));
}

/** Whether nothing but the map that is asked for differs. */
function isMapAlone({ shape }: Exercise, before: Rig, after: Rig): boolean {
  const withoutMap = (rig: Rig) =>
    JSON.stringify(rig, (_, value) => (value?.name === shape ? { ...value, map: null } : value));
  return withoutMap(before) === withoutMap(after);
}

/** What the exercise speaks of in a reference. */
function scopeOf(exercise: Exercise, { parts = {} }: Built): Scope {
  const bound = exercise.parts.map(({ id, name }) => (parts[id] ?? name).split('.')[0]!);
  return {
    spoken: new Set([...exercise.start.bones.map(({ name }) => name), ...bound]),
    sizes: exercise.inputs.some(({ channel }) => channel?.startsWith('size')),
  };
}

/** Rigs that look different and that the author calls right. */
export function freeOnes(exercise: Exercise): Candidate[] {
  return exercise.freeChoices.flatMap((choice) => {
    if (!('rig' in choice)) return [];
    const parts = exercise.references.find(({ id }) => id === choice.from)?.parts ?? {};
    return [{ says: choice.says, rig: choice.rig, parts, changed: [] }];
  });
}

/** Whether all that a mutant changes is left open by the task. */
export function isLeftOpen(exercise: Exercise, { changed, parts }: Candidate): boolean {
  const given = new Set(exercise.start.bones.map(({ name }) => name));
  return (
    changed.length > 0 &&
    changed.every(({ bone, field }) => exercise.freeChoices.some((choice) => opens(choice, bone, field)))
  );

  function opens(choice: Exercise['freeChoices'][number], bone: string, field: string): boolean {
    if (!('fields' in choice) || !choice.fields.includes(field)) return false;
    return choice.bone === '*' ? !given.has(bone) : (parts[choice.bone] ?? choice.bone) === bone;
  }
}

/** Fields of bones in which two rigs differ; a driver counts as one under its own name. */
function changesBetween(before: Rig, after: Rig): { bone: string; field: string }[] {
  const bones = new Map(before.bones.map((bone) => [bone.name, bone]));
  const inBones = after.bones.flatMap((bone) => {
    const was = bones.get(bone.name);
    const fields = [...new Set([...Object.keys(bone), ...Object.keys(was ?? {})])] as (keyof typeof bone)[];
    return fields
      .filter((field) => JSON.stringify(bone[field]) !== JSON.stringify(was?.[field]))
      .map((field) => ({ bone: bone.name, field: field as string }));
  });
  const same = JSON.stringify(before.drivers ?? []) === JSON.stringify(after.drivers ?? []);
  return same ? inBones : [...inBones, { bone: '', field: 'drivers' }];
}

function readable(exercise: Exercise, built: Built, variations: readonly Variation[]): Candidate[] {
  const seen = new Set([JSON.stringify(built.rig)]);
  return variations.flatMap(({ says, rig, renamed }) => {
    const reading = readRig(rig);
    if (!reading.ok) return [];
    const text = JSON.stringify(reading.value);
    if (seen.has(text)) return [];
    seen.add(text);
    const parts = boundAnew(exercise, built, renamed);
    return [
      { says: `${built.id}, ${says}`, rig: reading.value, parts, changed: changesBetween(built.rig, reading.value) },
    ];
  });
}

/** Parts by the names they have after renaming. */
function boundAnew(exercise: Exercise, built: Built, renamed: ReadonlyMap<string, string> = new Map()) {
  const bound = exercise.parts.map((part) => {
    const [bone, own] = (built.parts?.[part.id] ?? part.name).split('.') as [string, string?];
    const name = renamed.get(bone) ?? bone;
    return [part.id, own === undefined ? name : `${name}.${own}`];
  });
  return Object.fromEntries(bound) as Record<string, string>;
}
