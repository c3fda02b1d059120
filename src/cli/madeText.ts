import type { ExerciseFile } from '../course/exercise-files.ts';
import { mutantsOf, rightOnes } from '../grader/audit/candidates.ts';
import { openExercise, variantCount } from '../grader/index.ts';

/** What an audit makes of an exercise as it is drawn, and the variants of it: a line each. */
export function madeText({ definition, edition }: ExerciseFile): string {
  const { id, structures, sizes } = definition;
  const exercise = openExercise(definition, { edition, seed: 0 });
  const said = (ones: readonly { says: string }[]) => ones.map(({ says }) => `  ${says}`);
  const right = exercise.references.flatMap((reference) => said(rightOnes(exercise, reference)));
  const wrong = exercise.references.flatMap((reference) => said(mutantsOf(exercise, reference)));
  return [
    `${id}: ${variantCount(definition)} variants, at ${sizes.join(', ')} times the size:`,
    ...said(structures),
    `${right.length} right rigs:`,
    ...right,
    `${wrong.length} mistakes, besides ${exercise.wrongTurns.length} wrong turns:`,
    ...wrong,
    '',
  ].join('\n');
}
