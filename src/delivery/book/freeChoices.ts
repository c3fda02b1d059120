import type { Exercise } from '../../grader/exercise/exercise.ts';
import { isObject } from '../../solver/document/structures.ts';

/** So many of them are not alike by chance: a name, a number written by hand. */
const TELLING = 4;

/**
 * What an answer decides freely, in a form that does not depend on the variant: names of bones and links that neither
 * the exercise nor its references use, and numbers that stand in neither. Null where it decides too little to tell
 * anything: short right answers are alike by nature.
 */
export function freeChoicesOf(answer: unknown, exercise: Exercise): string[] | null {
  const rig = isObject(answer) ? answer.rig : undefined;
  if (!isObject(rig)) return null;
  const known = new Set<string>();
  for (const one of [exercise.start, ...exercise.references.map((reference) => reference.rig)]) gather(one, known);
  const own = new Set<string>();
  gather(rig, own);
  const free = [...own].filter((one) => !known.has(one)).sort();
  return free.length >= TELLING ? free : null;
}

function gather(value: unknown, into: Set<string>): void {
  if (typeof value === 'string') into.add(value);
  else if (typeof value === 'number') into.add(String(Math.round(value * 1e6) / 1e6));
  else if (Array.isArray(value)) for (const item of value) gather(item, into);
  else if (isObject(value)) for (const [key, inner] of Object.entries(value)) if (key !== 'mesh') gather(inner, into);
}
