import type { Vary } from '../variation.ts';
import { displace, lockBone, reinherit, reparent, rerole, reswitch } from './bones.ts';
import { dropDriver, invertMap, redirectDriver, resideDriver, resignInput, shiftMap, stepMap } from './drivers.ts';
import {
  dropLink,
  dropUp,
  reaxis,
  rechannel,
  refraction,
  reoffset,
  repoint,
  respan,
  retarget,
  reweight,
  swapLinks,
} from './links.ts';

/** The mistakes that the audit makes in rigs that are right. */
export const MUTATIONS: Readonly<Record<string, Vary>> = {
  dropLink,
  retarget,
  reweight,
  reaxis,
  reoffset,
  rechannel,
  refraction,
  repoint,
  dropUp,
  respan,
  swapLinks,
  dropDriver,
  invertMap,
  shiftMap,
  stepMap,
  resignInput,
  resideDriver,
  redirectDriver,
  rerole,
  reparent,
  reinherit,
  displace,
  lockBone,
  reswitch,
};
