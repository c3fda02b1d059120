import type { Rig } from '../../solver/document/rig.ts';
import type { Requirement } from '../requirements/table.ts';
import type { Input, KeepOut } from './inputs.ts';
import type { FreeChoice, Reference, WrongTurn } from './works.ts';

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

/** A whole multiple of `step` between `from` and `to`. */
export interface Draw {
  name: string;
  from: number;
  to: number;
  step: number;
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
