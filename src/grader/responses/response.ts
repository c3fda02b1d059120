import type { Reading } from '../../solver/document/refusal.ts';
import type { Rig } from '../../solver/document/rig.ts';
import type { ExerciseKind } from '../exercise/definition.ts';
import type { Exercise } from '../exercise/exercise.ts';
import { orderResponse } from './order.ts';
import { poseResponse } from './pose.ts';
import { shapeResponse } from './shape.ts';
import { valuesResponse } from './values.ts';

/** What was handed in, ready to be proved: a rig, how its parts are bound, and what was answered beside it. */
export interface Work {
  rig: Rig;
  parts?: Readonly<Record<string, string>>;
  /** Predicted numbers by requirement id. */
  values?: Readonly<Record<string, number>>;
  /** Input values of the one pose that counts. */
  inputs?: Readonly<Record<string, number>>;
  order?: readonly string[];
}

/** How a kind of exercise is answered where it is not answered by a rig. */
export interface ResponseKind {
  /** JSON Schema (2020-12) of the response. */
  schema(exercise: Exercise): object;
  read(response: unknown, exercise: Exercise): Reading<Work>;
}

const KINDS: Readonly<Partial<Record<ExerciseKind, ResponseKind>>> = {
  predict: valuesResponse,
  pose: poseResponse,
  order: orderResponse,
  shape: shapeResponse,
};

/** Null for exercises that are answered by a rig. */
export function responseKindOf(kind: ExerciseKind): ResponseKind | null {
  return KINDS[kind] ?? null;
}
