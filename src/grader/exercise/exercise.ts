import type { Rig } from '../../solver/document/rig.ts';
import type { Work } from '../responses/response.ts';
import type { ExerciseDefinition } from './definition.ts';
import type { FreeEdit, FreeFields, Reference, WrongTurn } from './works.ts';

/** An exercise for one seed: names filled in, size chosen, nothing left open. */
export interface Exercise extends Omit<ExerciseDefinition, 'structures' | 'sizes' | 'draw' | 'format' | 'version'> {
  edition: string;
  seed: number;
  structure: string;
  size: number;
  references: readonly ResolvedReference[];
  wrongTurns: readonly ResolvedWrongTurn[];
  freeChoices: readonly ResolvedFreeChoice[];
}

export interface ResolvedReference extends Reference, Work {}

export interface ResolvedWrongTurn extends WrongTurn, Work {}

export type ResolvedFreeChoice = (FreeEdit & { rig: Rig }) | FreeFields;
