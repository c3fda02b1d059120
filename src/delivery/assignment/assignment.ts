import type { ExerciseDefinition } from '../../grader/exercise/definition.ts';

/** What an instructor sets. It carries its exercises, so that a later edition of the course changes no mark. */
export interface Assignment {
  format: 'counterpose/assignment';
  version: 1;
  /** 1 to 64 letters, digits, _ and -. With the learner's code it decides the variants. */
  id: string;
  title: string;
  /** Of the course that it was made with. */
  edition: string;
  exercises: readonly AssignedExercise[];
  /** From 0 to 1: the mark from which the whole is passed. */
  passMark: number;
  /** ISO 8601 with a zone: 2026-12-01T09:00+01:00. Without it, open at once. */
  opens?: string;
  /** The same. Without it, never late. */
  due?: string;
  late?: LateRule;
  /** How many answers to one exercise count; the best of them does. Without it, any number. */
  attempts?: number;
  /** A house sheet: how names, sides and axes are to be. Plain data. */
  house?: unknown;
  /** The public key of who signs it. */
  key?: PublicKey;
  /** The exercises as they were when it was made. */
  carried: readonly CarriedExercise[];
}

export interface AssignedExercise {
  id: string;
  /** Above 0; what counts is its share of all. */
  weight: number;
  /** What is allowed, by requirement, in place of what the exercise allows. Gates keep theirs. */
  tolerances?: Readonly<Record<string, number>>;
}

export interface CarriedExercise {
  definition: ExerciseDefinition;
  edition: string;
}

/** Each day begun after the due time takes this share of the full mark; after `until` nothing is counted. */
export interface LateRule {
  perDay: number;
  until?: string;
}

/** RFC 8037: a JWK of key type OKP, with the 32 bytes of x in base64url. */
export interface PublicKey {
  kty: 'OKP';
  crv: 'Ed25519';
  x: string;
}

export interface KeyPair extends PublicKey {
  /** The secret half. It never leaves the instructor's files. */
  d: string;
}
