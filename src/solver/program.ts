import type { Rig } from './document/rig.ts';
import type { Layout } from './machine/layout.ts';
import type { Machine } from './machine/machine.ts';

/**
 * What the solver promises to its callers. A rig is compiled once into a Program; a State holds the
 * numbers of one evaluation and is reused, so that evaluating allocates nothing.
 */

/** Doubles per bone in a packed pose: move x y z, turn x y z w, size x y z. */
export const POSE_STRIDE = 10;
/** Doubles per bone in a packed world transform: three columns of the 3×3 part, then the base. */
export const WORLD_STRIDE = 12;

export const FLAGS = [
  'flat',
  'shear',
  'aim-undefined',
  'up-undefined',
  'twist-undefined',
  'pole-undefined',
  'reach-undefined',
  'weight-clamped',
  'switch-clamped',
] as const;
export type FlagName = (typeof FLAGS)[number];

/** `link` is null only for `switch-clamped`, where `bone` is the owner of the switch. */
export interface Flag {
  flag: FlagName;
  bone: string;
  link: string | null;
}

/** A rig that was compiled. It holds no numbers of any pose, so any number of states may share it. */
export interface Program {
  readonly rig: Rig;
  /** In document order, as everything that is numbered. */
  readonly boneNames: readonly string[];
  readonly boneIndex: ReadonlyMap<string, number>;
  /** "bone.switch" */
  readonly switchNames: readonly string[];
  /** "bone.link" */
  readonly linkNames: readonly string[];
  /** Doubles in a packed pose: POSE_STRIDE per bone, then one per switch. */
  readonly poseLength: number;
  /** WORLD_STRIDE per bone: its rest, rig space. */
  readonly restWorld: Float64Array;
  /** For the solver's own use. */
  readonly inner: ProgramCode;
}

export interface ProgramCode {
  readonly code: Int32Array;
  /** What a state's memory starts as. */
  readonly memory: Float64Array;
  readonly layout: Layout;
  /** The code once more, by operation and record. */
  readonly runs: readonly { op: number; records: readonly (readonly number[])[] }[];
}

export interface State {
  /** WORLD_STRIDE per bone, in document order. */
  readonly world: Float64Array;
  /** One per link, in document order; driven weights as they came out. */
  readonly weights: Float64Array;
  /** One per switch, in document order; driven ones as they came out. */
  readonly switches: Float64Array;
  /** For the solver's own use. */
  readonly machine: Machine;
}

/** The kinds of places where a rig turns singular. */
export type PlaceKind = 'target-at-base' | 'opposite' | 'up-along-aim' | 'full-stretch' | 'half-twist';

/** A link that turns singular somewhere. */
export interface SingularPlace {
  kind: PlaceKind;
  bone: string;
  /** The link's own name. */
  link: string;
}

export interface SolveResult {
  bones: Record<string, { matrix: number[] }>;
  weights: Record<string, number>;
  flags: Flag[];
}
