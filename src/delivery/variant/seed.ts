import { hmac } from '@noble/hashes/hmac.js';
import { sha256 } from '@noble/hashes/sha2.js';
import { utf8ToBytes } from '@noble/hashes/utils.js';
import type { ExerciseKind } from '../../grader/exercise/definition.ts';

/** Kinds that are drawn anew at each attempt. */
const REDRAWN: readonly ExerciseKind[] = ['predict', 'order'];

/** The attempt that decides the variant: always the first, unless the kind is drawn anew each time. */
export const seedAttempt = (kind: ExerciseKind, attempt: number): number => (REDRAWN.includes(kind) ? attempt : 1);

/**
 * The seed of a learner's variant: the first 6 bytes, big-endian, of HMAC-SHA-256 (RFC 2104) with the assignment's id as
 * key and learner, exercise and attempt, joined by line feeds, as message, all in UTF-8. Below 2⁴⁸.
 */
export function seedOf(assignment: string, learner: string, exercise: string, attempt: number): number {
  const message = utf8ToBytes(`${learner}\n${exercise}\n${attempt}`);
  const bytes = hmac(sha256, utf8ToBytes(assignment), message);
  return bytes.slice(0, 6).reduce((seed, byte) => seed * 256 + byte, 0);
}
