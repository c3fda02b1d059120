import type { Gauge } from '../responses/gauge.ts';

/**
 * A change to a rig, after RFC 7396 (JSON Merge Patch), with the lists of named things (bones, links,
 * switches, drivers) written as objects keyed by name: null takes a thing away, a new name adds one at
 * the end. `parent: null` is a value.
 */
export type RigEdit = Readonly<Record<string, unknown>>;

export interface Reference {
  id: string;
  says: string;
  /** What is changed in the start; for kinds that are answered by a rig, or by a map. */
  edit?: RigEdit;
  /** Else what is answered. */
  response?: unknown;
  /** Where a part is not bound by its name. */
  parts?: Readonly<Record<string, string>>;
}

export interface WrongTurn {
  id: string;
  /** The misconception: "the map runs the wrong way round". */
  says: string;
  /** What the learner is told. */
  tells: string;
  /** The reference it starts from; without it, the start. */
  from?: string;
  edit?: RigEdit;
  response?: unknown;
  /** In a prediction: what the slip makes of the true number. */
  slip?: Slip;
  parts?: Readonly<Record<string, string>>;
  /** Ids of the requirements it must miss. */
  misses: readonly string[];
}

/** A number that is said in place of the true one: times, then plus; or another thing measured. */
export interface Slip {
  times?: number;
  plus?: number;
  gauge?: Gauge;
}

/**
 * What may look different and is still right: a rig of its own (`edit`, from a reference), or fields of a bone
 * that the task leaves open in every answer.
 */
export type FreeChoice = FreeEdit | FreeFields;

export interface FreeEdit {
  says: string;
  from?: string;
  edit: RigEdit;
}

export interface FreeFields {
  says: string;
  bone: string;
  fields: readonly string[];
}
