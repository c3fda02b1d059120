import type { LinkKind as KindName } from '../document/rig.ts';
import { drivers } from '../drivers/drivers.ts';
import { KIND_NAMES, KINDS } from '../links/table.ts';
import type { Run } from './machine.ts';
import { ownPoses } from './ownPose.ts';
import { specialPoses } from './specialPose.ts';

/** Operations by number. */
export const OWN_POSE = 0;
export const SPECIAL_POSE = 1;
export const DRIVER = 2;
const FIRST_LINK = 3;
export const END = -1;

export const linkOp = (kind: KindName): number => FIRST_LINK + KIND_NAMES.indexOf(kind);

export const isLinkOp = (op: number): boolean => op >= FIRST_LINK;

export const RUNS: readonly Run[] = [ownPoses, specialPoses, drivers, ...KIND_NAMES.map((kind) => KINDS[kind].run)];
