import { checkVariant } from '../../grader/exercise/checkVariant.ts';
import { type ExerciseDefinition, markingOf, openExercise, variantCount } from '../../grader/index.ts';
import { readArguments } from '../arguments.ts';
import { Exercises } from '../content.ts';
import { print } from '../output.ts';
import { Unusable } from '../refusal.ts';
import type { ExitStatus, Verb } from '../verb.ts';

const OPTIONS = { content: { type: 'string' } } as const;

/** Opens every variant of every exercise and says what is at fault in it. */
export const checkContentVerb: Verb = {
  help: `
Usage: counterpose check-content [ID…] [--content DIR]

Opens every variant of the exercises and proves their start, references and wrong turns. Prints a line for each
fault and exits with 1 if there is any.

  --content DIR  check those of this folder of lessons and exercises too
`,
  async run(args): Promise<ExitStatus> {
    const { values, positionals } = readArguments(args, OPTIONS);
    const exercises = new Exercises(values.content);
    const ids = positionals.length > 0 ? positionals : exercises.ids();
    let faults = 0;
    for (const id of ids) {
      const found = faultsOf(exercises, id);
      faults += found.length;
      await print(found.length ? `${found.join('\n')}\n` : `${id}: sound\n`);
    }
    return faults > 0 ? 1 : 0;
  },
};

function faultsOf(exercises: Exercises, id: string): string[] {
  const file = exercises.get(id);
  if (!file) throw new Unusable(`there is no exercise "${id}"; counterpose exercise --list names them`);
  const { definition, edition } = file;
  const shortages = shortagesOf(definition);
  const variants = Array.from({ length: variantCount(definition) }, (_, seed) => {
    try {
      return checkVariant(markingOf(openExercise(definition, { edition, seed })));
    } catch (error) {
      return [`${id} (seed ${seed}): ${(error as Error).message}`];
    }
  });
  return [...shortages, ...variants.flat()];
}

/** What an exercise must have, and more where an instructor may set it. */
function shortagesOf({ id, kind, graded, references, wrongTurns, structures }: ExerciseDefinition): string[] {
  const isBuilt = kind !== 'predict' && kind !== 'order';
  const wanted: [string, readonly unknown[], number][] = [
    ['references', references, isBuilt ? (graded ? 3 : 2) : 1],
    ['wrong turns', wrongTurns, 3],
    ['structures', structures, graded ? 4 : 1],
  ];
  return wanted
    .filter(([, list, least]) => list.length < least)
    .map(([what, list, least]) => `${id}: ${list.length} ${what}, expected at least ${least}`);
}
