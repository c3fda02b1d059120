import type { Link } from '../document/rig.ts';
import { drivers } from '../drivers/drivers.ts';
import { KIND_NAMES, KINDS, kindOf } from '../links/table.ts';
import { drivenPoses } from './drivenPose.ts';
import type { Run } from './machine.ts';
import { ownPoses } from './ownPose.ts';
import { specialPoses } from './specialPose.ts';

/** Operations by number. */
export const OWN_POSE = 0;
export const DRIVEN_POSE = 1;
export const SPECIAL_POSE = 2;
export const DRIVER = 3;
const FIRST_LINK = 4;
export const END = -1;

const LINK_RUNS = KIND_NAMES.map((kind) => KINDS[kind].runs);
/** The first operation of each kind of link. */
const FIRST_OPS = new Map(KIND_NAMES.map((kind, i) => [kind, FIRST_LINK + LINK_RUNS.slice(0, i).flat().length]));

export const linkOp = (link: Link): number => FIRST_OPS.get(link.kind)! + (kindOf(link).way?.(link) ?? 0);

export const isLinkOp = (op: number): boolean => op >= FIRST_LINK;

export const RUNS: readonly Run[] = [ownPoses, drivenPoses, specialPoses, drivers, ...LINK_RUNS.flat()];
