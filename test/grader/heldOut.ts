import { asWritten, type Candidate, rightOnes } from '../../src/grader/audit/candidates.ts';
import { differsVisibly, type Seen, seenOf } from '../../src/grader/audit/seen.ts';
import { editRig } from '../../src/grader/exercise/editRig.ts';
import type { Exercise } from '../../src/grader/index.ts';
import { responseKindOf } from '../../src/grader/index.ts';
import { subjectOf } from '../../src/grader/subject.ts';
import { readRig } from '../../src/solver/index.ts';

/** A rig that shows a wrong turn otherwise than it is listed, and the wrong turns that look just so. */
export interface HeldOut {
  says: string;
  candidate: Candidate;
  shows: readonly string[];
}

/**
 * Mistakes of classes that no wrong turn is listed by and no mutant of the audit belongs to: a wrong turn written in
 * another way, and its change made in another reference, where that looks the same.
 */
export function heldOutOf(exercise: Exercise): HeldOut[] {
  if (responseKindOf(exercise.kind)) return [];
  const known = exercise.wrongTurns.map((wrong) => ({ id: wrong.id, seen: seenIn(exercise, asWritten(wrong)) }));
  return exercise.wrongTurns.flatMap((wrong) => {
    const own = seenIn(exercise, asWritten(wrong));
    const alike = known.filter(({ id, seen }) => id === wrong.id || looksLike(own, seen)).map(({ id }) => id);
    const rewritten = rightOnes(exercise, wrong).slice(1);
    const elsewhere = inOtherReferences(exercise, wrong).filter((one) => looksLike(own, seenIn(exercise, one)));
    return [...rewritten, ...elsewhere].map((candidate) => ({ says: candidate.says, candidate, shows: alike }));
  });
}

function inOtherReferences(exercise: Exercise, wrong: Exercise['wrongTurns'][number]): Candidate[] {
  const { from, edit } = wrong;
  if (!from || !edit) return [];
  return exercise.references.flatMap((reference) => {
    if (reference.id === from) return [];
    const reading = readRig(editRig(reference.rig, edit));
    return reading.ok ? [{ ...asWritten(reference), says: `${wrong.id} in ${reference.id}`, rig: reading.value }] : [];
  });
}

function seenIn(exercise: Exercise, { rig, parts }: Candidate): Seen | null {
  const prepared = subjectOf(exercise, rig, parts);
  return prepared.ok ? seenOf(prepared.subject) : null;
}

const looksLike = (a: Seen | null, b: Seen | null): boolean => a !== null && b !== null && !differsVisibly(a, b);
