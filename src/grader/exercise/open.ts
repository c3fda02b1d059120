import { reflect } from '../../solver/index.ts';
import { answered } from './answered.ts';
import { crossCheck } from './crossCheck.ts';
import type { ExerciseDefinition, Structure } from './definition.ts';
import { drawNumbers } from './draw.ts';
import type { Exercise } from './exercise.ts';
import { fill } from './fill.ts';
import { reflectInput, reflectRequirement, reflectResponse, reflectSlip, swapSidesIn } from './reflect.ts';
import { type Drawn, type Named, resolve } from './resolve.ts';
import { scaleKeepOut, scaleProofInput, scaleRequirement, scaleResponse, scaleRig } from './scale.ts';
import { scaleLengthsIn } from './scaleLengths.ts';

/**
 * The exercise for one seed. The seed chooses the structure (seed mod their number), then the size, and the
 * numbers that are drawn; so seed 0 is the exercise as drawn. Throws, naming the place, where the content is
 * at fault.
 */
export function openExercise(definition: ExerciseDefinition, about: { edition: string; seed: number }): Exercise {
  const { structures, sizes, draw, format: _format, version: _version, ...body } = definition;
  const structure = structures[about.seed % structures.length]!;
  const size = sizes[Math.floor(about.seed / structures.length) % sizes.length]!;
  const names = { ...structure.let, ...drawNumbers(draw ?? [], about.seed) };
  const drawn = resolve(fill(body, names, structure.id) as Named);
  crossCheck(drawn);
  const sided = structure.reflect ? reflectExercise(drawn) : drawn;
  return answered({ ...scaleExercise(sided, size), ...about, structure: structure.id, size });
}

/** How many different exercises the seeds give, drawn numbers left aside. */
export function variantCount(definition: { structures: readonly Structure[]; sizes: readonly number[] }): number {
  return definition.structures.length * definition.sizes.length;
}

type Built = Drawn['references'][number] | Drawn['wrongTurns'][number];

function reflectExercise(drawn: Drawn): Drawn {
  const { id, start, references, wrongTurns, freeChoices, ...texts } = drawn;
  const sided = swapSidesIn(texts);
  const reflectBuilt = <T extends Built>({ rig, ...about }: T): T => {
    const built = swapSidesIn(about);
    return { ...built, rig: reflect(rig), response: reflectResponse(built.response, sided.inputs) } as unknown as T;
  };
  return {
    ...sided,
    id,
    start: reflect(start),
    inputs: sided.inputs.map(reflectInput),
    requirements: sided.requirements.map((requirement) => reflectRequirement(requirement, sided.inputs)),
    references: references.map(reflectBuilt),
    wrongTurns: wrongTurns.map((wrong) => ({
      ...reflectBuilt(wrong),
      ...(wrong.slip && { slip: reflectSlip(wrong.slip) }),
    })),
    freeChoices: freeChoices.map((choice) => {
      return 'rig' in choice ? { ...choice, rig: reflect(choice.rig) } : swapSidesIn(choice);
    }),
  };
}

/** The same exercise with every length in it `factor` times as long, those in its texts too. */
export function scaleExercise<T extends Drawn>(drawn: T, factor: number): T {
  if (factor === 1) return drawn;
  const { start, references, wrongTurns, freeChoices, ...others } = drawn;
  const said = scaleLengthsIn(others, factor);
  const scaleBuilt = <T extends Built>({ rig, ...about }: T): T => {
    const built = scaleLengthsIn(about, factor);
    const response = scaleResponse(built.response, drawn.inputs, factor);
    return { ...built, rig: scaleRig(rig, factor), response } as unknown as T;
  };
  return {
    ...drawn,
    ...said,
    start: scaleRig(start, factor),
    inputs: said.inputs.map((input) => scaleProofInput(input, factor)),
    keepOut: said.keepOut.map((zone) => scaleKeepOut(zone, factor)),
    requirements: said.requirements.map((requirement) => scaleRequirement(requirement, drawn.inputs, factor)),
    references: references.map(scaleBuilt),
    wrongTurns: wrongTurns.map(scaleBuilt),
    freeChoices: freeChoices.map((choice) => {
      return 'rig' in choice ? { ...choice, rig: scaleRig(choice.rig, factor) } : choice;
    }),
  };
}
