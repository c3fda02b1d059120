import type { Refusal } from '../solver/document/refusal.ts';
import type { Pose } from '../solver/document/rig.ts';
import type { ExerciseKind } from './exercise/definition.ts';
import type { RequirementKind } from './requirements/table.ts';

/** What comes of an answer. Data only; the words are made from it by src/grader/words/. */
export type Result = Graded | { outcome: 'unusable'; refusal: Refusal };

export interface Graded {
  outcome: 'graded';
  exercise: string;
  exerciseKind: ExerciseKind;
  seed: number;
  passed: boolean;
  /** 0..1: weight of the met requirements over the weight of all that are no gates. */
  mark: number;
  requirements: RequirementResult[];
  flags: ('edition-differs' | 'seed-differs' | 'unsigned')[];
}

export interface RequirementResult {
  id: string;
  kind: RequirementKind;
  gate: boolean;
  weight: number;
  status: 'met' | 'missed' | 'not-checked';
  /** In `unit`, rounded to six significant digits; null where nothing could be measured. */
  measured: number | null;
  allowed: number;
  unit: string;
  /** The simplest pose found in which it is missed. */
  counterpose: Pose | null;
  /** A wrong turn's id. */
  diagnosis: string | null;
  /** Why it could not be measured, or what stood in the way. */
  cause: Cause | null;
}

export type Cause =
  | { why: 'unbound'; part: string }
  /** A bone of the start that is no longer in the rig. */
  | { why: 'gone'; bone: string }
  | { why: 'cycle'; cycle: string[] }
  | { why: 'locked'; input: string }
  | { why: 'structure'; places: string[] };
