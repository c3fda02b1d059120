import type { ExerciseDefinition } from '../grader/exercise/definition.ts';
import { UNWRITTEN } from './kit/new-exercise.ts';
import { noSidesIn } from './side-words.ts';

/** What an exercise must have and lacks, in plain words; more is asked where an instructor may set it. */
export function shortagesOf(definition: ExerciseDefinition): string[] {
  const { id, kind, graded, references, wrongTurns, structures } = definition;
  const isBuilt = kind !== 'predict' && kind !== 'order';
  const wanted: [string, readonly unknown[], number][] = [
    ['references', references, isBuilt ? (graded ? 3 : 2) : 1],
    ['wrong turns', wrongTurns, 3],
    ['structures', structures, graded ? 4 : 1],
  ];
  const few = wanted
    .filter(([, list, least]) => list.length < least)
    .map(([what, list, least]) => `${id}: ${list.length} ${what}, expected at least ${least}`);
  const unwritten = unwrittenIn(definition, '').map(
    ([place, what]) => `${id}, at ${place}: still to be written: ${what}`,
  );
  const swapped = structures.some(({ reflect }) => reflect)
    ? noSidesIn(definition).map(([place, words]) => `${id}, at ${place}: "${words}" is swapped where it is reflected`)
    : [];
  return [...few, ...unwritten, ...swapped];
}

/** Texts that stand as the kit laid them out: where, and what should stand there. */
function unwrittenIn(value: unknown, place: string): [place: string, what: string][] {
  if (typeof value === 'string') return value.startsWith(UNWRITTEN) ? [[place, value.slice(UNWRITTEN.length)]] : [];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, inner]) => unwrittenIn(inner, `${place}/${key}`));
}
