import { reading } from '../../solver/document/reader.ts';
import type { Reading } from '../../solver/document/refusal.ts';
import type { Rig } from '../../solver/document/rig.ts';
import { readRig, reflect } from '../../solver/index.ts';
import { type Requirement, readRequirement } from '../requirements/table.ts';
import { crossCheck } from './crossCheck.ts';
import type { Exercise, ExerciseDefinition, Reference, RigEdit, Structure, WrongTurn } from './definition.ts';
import { editRig } from './editRig.ts';
import { fill } from './fill.ts';
import { reflectInput, reflectRequirement, swapSidesIn } from './reflect.ts';
import { scaleKeepOut, scaleProofInput, scaleRequirement, scaleRig } from './scale.ts';

/**
 * The exercise for one seed. The seed chooses the structure (seed mod their number) and then the size,
 * so that seed 0 is the exercise as drawn. Throws, naming the place, where the content is at fault.
 */
export function openExercise(definition: ExerciseDefinition, about: { edition: string; seed: number }): Exercise {
  const { structures, sizes, format: _format, version: _version, ...body } = definition;
  const structure = structures[about.seed % structures.length]!;
  const size = sizes[Math.floor(about.seed / structures.length) % sizes.length]!;
  const named = fill(body, structure.let ?? {}, structure.id) as typeof body;
  const drawn = withRigs(named);
  crossCheck(drawn);
  const sided = structure.reflect ? reflectExercise(drawn) : drawn;
  return { ...scaleExercise(sided, size), ...about, structure: structure.id, size };
}

/** How many different exercises the seeds give. */
export function variantCount(definition: { structures: readonly Structure[]; sizes: readonly number[] }): number {
  return definition.structures.length * definition.sizes.length;
}

type Drawn = Omit<Exercise, 'edition' | 'seed' | 'structure' | 'size'>;
type Named = Omit<ExerciseDefinition, 'structures' | 'sizes' | 'format' | 'version'>;

function withRigs(named: Named): Drawn {
  const start = readable(named.start, 'start');
  const requirements = named.requirements.map(readableRequirement);
  const references = named.references.map((reference) => ({
    ...reference,
    rig: editedRig(start, reference.edit, `reference ${reference.id}`),
  }));
  const originOf = (wrong: WrongTurn): Rig => {
    if (wrong.from === undefined) return start;
    const origin = references.find((reference: Reference) => reference.id === wrong.from);
    if (!origin)
      throw new Error(`${named.id}: wrong turn ${wrong.id} starts from ${wrong.from}, which is no reference`);
    return origin.rig;
  };
  const wrongTurns = named.wrongTurns.map((wrong) => ({
    ...wrong,
    rig: editedRig(originOf(wrong), wrong.edit, `wrong turn ${wrong.id}`),
  }));
  return { ...named, start, requirements, references, wrongTurns };

  function editedRig(origin: Rig, edit: RigEdit, what: string): Rig {
    return readable(editRig(origin, edit), what);
  }
  function readable(value: unknown, what: string): Rig {
    return valueOrThrow(readRig(value), `the rig of ${what}`);
  }
  function readableRequirement(value: unknown, index: number): Requirement {
    return valueOrThrow(
      reading(() => readRequirement(value, null)),
      `requirement ${index + 1}`,
    );
  }
  function valueOrThrow<T>(read: Reading<T>, what: string): T {
    if (read.ok) return read.value;
    const { place, found, expected } = read.refusal;
    throw new Error(`${named.id}: ${what}, at "${place}": found ${found}, expected ${expected}`);
  }
}

function reflectExercise(drawn: Drawn): Drawn {
  const { id, start, references, wrongTurns, ...texts } = drawn;
  const sided = swapSidesIn(texts);
  const reflectBuilt = <T extends { rig: Rig }>({ rig, ...about }: T): T => {
    return { ...swapSidesIn(about), rig: reflect(rig) } as unknown as T;
  };
  return {
    ...sided,
    id,
    start: reflect(start),
    inputs: sided.inputs.map(reflectInput),
    requirements: sided.requirements.map((requirement) => reflectRequirement(requirement, sided.inputs)),
    references: references.map(reflectBuilt),
    wrongTurns: wrongTurns.map(reflectBuilt),
  };
}

function scaleExercise(drawn: Drawn, factor: number): Drawn {
  if (factor === 1) return drawn;
  const scaleBuilt = <T extends { rig: Rig }>(built: T): T => ({ ...built, rig: scaleRig(built.rig, factor) });
  return {
    ...drawn,
    start: scaleRig(drawn.start, factor),
    inputs: drawn.inputs.map((input) => scaleProofInput(input, factor)),
    keepOut: drawn.keepOut.map((zone) => scaleKeepOut(zone, factor)),
    requirements: drawn.requirements.map((requirement) => scaleRequirement(requirement, drawn.inputs, factor)),
    references: drawn.references.map(scaleBuilt),
    wrongTurns: drawn.wrongTurns.map(scaleBuilt),
  };
}
