import { reading } from '../../solver/document/reader.ts';
import type { Reading } from '../../solver/document/refusal.ts';
import type { Rig } from '../../solver/document/rig.ts';
import { readRig } from '../../solver/index.ts';
import { type Requirement, readRequirement } from '../requirements/table.ts';
import type { ExerciseDefinition } from './definition.ts';
import { editRig } from './editRig.ts';
import type { Exercise } from './exercise.ts';
import type { FreeEdit, RigEdit } from './works.ts';

/** An exercise whose names are filled in; its rigs are still edits of the start. */
export type Named = Omit<ExerciseDefinition, 'structures' | 'sizes' | 'draw' | 'format' | 'version'>;
/** The same with every rig written out. */
export type Drawn = Omit<Exercise, 'edition' | 'seed' | 'structure' | 'size'>;

/** Reads the start and the requirements and writes out the rig of every reference and wrong turn. */
export function resolve(named: Named): Drawn {
  const start = valueOrThrow(readRig(named.start), 'the rig of the start');
  const requirements = named.requirements.map(readRequirementAt);
  const references = named.references.map((reference) => ({
    ...reference,
    rig: editedRig(start, reference.edit, `reference ${reference.id}`),
  }));
  const wrongTurns = named.wrongTurns.map((wrong) => ({
    ...wrong,
    rig: editedRig(originOf(`wrong turn ${wrong.id}`, wrong.from), wrong.edit, `wrong turn ${wrong.id}`),
  }));
  const freeChoices = named.freeChoices.map((choice) => ('edit' in choice ? withRig(choice) : choice));
  return { ...named, start, requirements, references, wrongTurns, freeChoices };

  function withRig(choice: FreeEdit): FreeEdit & { rig: Rig } {
    const what = `the free choice "${choice.says}"`;
    return { ...choice, rig: editedRig(originOf(what, choice.from), choice.edit, what) };
  }

  function originOf(what: string, from: string | undefined): Rig {
    if (from === undefined) return start;
    const origin = references.find(({ id }) => id === from);
    if (origin) return origin.rig;
    throw new Error(`${named.id}: ${what} starts from ${from}, which is no reference`);
  }

  function editedRig(origin: Rig, edit: RigEdit | undefined, what: string): Rig {
    return edit ? valueOrThrow(readRig(editRig(origin, edit)), `the rig of ${what}`) : origin;
  }

  function readRequirementAt(value: unknown, index: number): Requirement {
    const read = reading(() => readRequirement(value, null));
    return valueOrThrow(read, `requirement ${index + 1}`);
  }

  function valueOrThrow<T>(read: Reading<T>, what: string): T {
    if (read.ok) return read.value;
    const { place, found, expected } = read.refusal;
    throw new Error(`${named.id}: ${what}, at "${place}": found ${found}, expected ${expected}`);
  }
}
