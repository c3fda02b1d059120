/** What one link may see of the rig while it is applied. */
import type { Bone, Point } from '../../src/solver/document/rig.ts';
import type { FlagName } from '../../src/solver/program.ts';
import type { RestFrame } from './restFrame.ts';
import type { Vector } from './vector.ts';
import type { World } from './world.ts';

export interface Setting {
  readonly bone: Bone;
  /** The bone's rest frame under its parent as the parent stands now. */
  readonly frame: RestFrame;
  readonly weight: number;
  /** Another bone, as others read it. */
  worldOf(name: string): World;
  pointOf(point: Point): Vector;
  frameOf(name: string): RestFrame;
  /** R0. */
  restOf(name: string): World;
  raise(flag: FlagName): void;
  /** Tells that rounding decides what comes of this link. */
  undecided(): void;
}
