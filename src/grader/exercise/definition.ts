import type { Rig } from '../../solver/document/rig.ts';
import type { Requirement } from '../requirements/table.ts';
import type { Gauge } from '../responses/gauge.ts';
import type { Work } from '../responses/response.ts';

/**
 * An exercise as its author writes it: plain data, so that a signed assignment can carry it whole.
 * It stands in content/exercises/<id>/exercise.json; any value there may be `{ "$file": "start.json" }`,
 * which the loader replaces by that file of the same folder.
 *
 * A structure's `let` fills names in: a string that is exactly "$name" becomes the value of `name`
 * (any JSON), and "{name}" inside a longer string or a key becomes its text. An item of a list with
 * `"only": ["structure id", …]` stays in those structures alone.
 */
export interface ExerciseDefinition {
  format: 'counterpose/exercise';
  version: 1;
  id: string;
  /** "3.4" */
  lesson: string;
  title: string;
  kind: ExerciseKind;
  /** May be set by an instructor: three references and four structures at least. */
  graded: boolean;
  skills: readonly string[];
  /** What to make, as a supervisor would say it. Plain text; blank lines part paragraphs. */
  task: string;
  /** Why an animator cares. */
  why: string;
  start: Rig;
  kept: readonly Kept[];
  parts: readonly Part[];
  inputs: readonly Input[];
  keepOut: readonly KeepOut[];
  requirements: readonly Requirement[];
  references: readonly Reference[];
  wrongTurns: readonly WrongTurn[];
  freeChoices: readonly FreeChoice[];
  hints: readonly Hint[];
  structures: readonly Structure[];
  /** Numbers drawn anew for each seed, filled in as names are. */
  draw?: readonly Draw[];
  /** In an exercise of kind shape: the driver whose map is asked for. */
  shape?: string;
  /** In a repair: the wrong turn that the start shows. */
  fault?: string;
  /** Factors on every length; the seed chooses one. */
  sizes: readonly number[];
}

export type ExerciseKind = 'build' | 'repair' | 'predict' | 'pose' | 'order' | 'shape';

/** What of the start must stay: of a bone, these fields of the rig document. */
export interface Kept {
  bone: string;
  fields: readonly string[];
}

/** What the task asks for by name; the learner's bone or switch is bound to it. */
export interface Part {
  id: string;
  is: 'bone' | 'switch';
  /** The name the task gives; for a switch "bone.switch". */
  name: string;
  /** It stands in the start already. */
  given: boolean;
  /** "the left target" */
  says: string;
}

/** One channel of one bone, or one switch, that the proof moves. Exactly one of part, bone, switch. */
export interface Input {
  id: string;
  part?: string;
  bone?: string;
  switch?: string;
  /** Of a bone: metres for move, degrees for turn, a factor for size. Absent for a switch. */
  channel?: InputChannel;
  /** On top of rest: 0 (size 1) is rest and lies within. For a switch, its range. */
  min: number;
  max: number;
}
export type InputChannel = `${'move' | 'turn' | 'size'}.${'x' | 'y' | 'z'}`;

/** Where no animator goes: a probe is passed over while the point lies within `within` metres of the other. */
export interface KeepOut {
  says: string;
  point: Where;
  near: Where;
  within: number;
}

/** A point of a bone; `bone` is a part's id, or else the name of a bone of the start. */
export interface Where {
  bone: string;
  at?: number;
}

/**
 * A change to a rig, after RFC 7396 (JSON Merge Patch), with the lists of named things (bones, links,
 * switches, drivers) written as objects keyed by name: null takes a thing away, a new name adds one at
 * the end. `parent: null` is a value.
 */
export type RigEdit = Readonly<Record<string, unknown>>;

/** A whole multiple of `step` between `from` and `to`. */
export interface Draw {
  name: string;
  from: number;
  to: number;
  step: number;
}

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

export interface Hint {
  /** pose → requirement → where to look → principle → worked step */
  step: 'pose' | 'requirement' | 'where' | 'principle' | 'worked';
  requirement?: string;
  says: string;
}

export interface Structure {
  id: string;
  says: string;
  let?: Readonly<Record<string, unknown>>;
  /** The whole exercise mirrored: sides swapped. */
  reflect?: boolean;
}

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

export interface Answer {
  format: 'counterpose/answer';
  version: 1;
  exercise: string;
  edition: string;
  seed: number;
  rig?: Rig;
  response?: unknown;
  /** Part id to "bone" or "bone.switch". */
  parts?: Readonly<Record<string, string>>;
  learner?: string;
  made?: string;
  steps?: unknown;
  hints?: unknown;
  attempt?: number;
  guess?: string;
}
