import type { ExerciseDefinition } from '../grader/exercise/definition.ts';

/** What an exercise must have and lacks, in plain words; more is asked where an instructor may set it. */
export function shortagesOf({ id, kind, graded, references, wrongTurns, structures }: ExerciseDefinition): string[] {
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
