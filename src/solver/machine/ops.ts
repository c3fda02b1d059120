import type { LinkKind as KindName } from '../document/rig.ts';
import { drivers } from '../drivers/drivers.ts';
import { KIND_NAMES, KINDS } from '../links/table.ts';
import { alignedPoses } from './alignedPose.ts';
import type { Run } from './machine.ts';
import { ownPoses } from './ownPose.ts';
import { specialPoses } from './specialPose.ts';

/** Operations by number. */
export const ALIGNED_POSE = 0;
export const OWN_POSE = 1;
export const SPECIAL_POSE = 2;
export const DRIVER = 3;
const FIRST_LINK = 4;
export const END = -1;

export const linkOp = (kind: KindName): number => FIRST_LINK + KIND_NAMES.indexOf(kind);

export const isLinkOp = (op: number): boolean => op >= FIRST_LINK;

export const RUNS: readonly Run[] = [
  alignedPoses,
  ownPoses,
  specialPoses,
  drivers,
  ...KIND_NAMES.map((kind) => KINDS[kind].run),
];
