import type { Vary } from '../variation.ts';
import { dropUp, reaxis, reup } from './aims.ts';
import { displace, lockBone, reinherit, reorderTurns, reparent, rerole, reswitch, unlockBone } from './bones.ts';
import {
  dropDriver,
  invertMap,
  rechannelDriver,
  redirectDriver,
  resideDriver,
  resignInput,
  rewireInput,
  shiftMap,
  stepMap,
} from './drivers.ts';
import { relimit, repole } from './limits.ts';
import { dropLink, rechannel, refraction, reoffset, repoint, respan, retarget, reweight, swapLinks } from './links.ts';
import { bareFollowForParent, parentForAnyFollow, reattach } from './parents.ts';

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
  reup,
  respan,
  relimit,
  repole,
  swapLinks,
  dropDriver,
  invertMap,
  shiftMap,
  stepMap,
  resignInput,
  resideDriver,
  redirectDriver,
  rewireInput,
  rechannelDriver,
  rerole,
  reparent,
  parentForAnyFollow,
  bareFollowForParent,
  reattach,
  reinherit,
  displace,
  lockBone,
  unlockBone,
  reorderTurns,
  reswitch,
};
