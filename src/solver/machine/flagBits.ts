import { FLAGS, type FlagName } from '../program.ts';

const bit = (flag: FlagName): number => 1 << FLAGS.indexOf(flag);

export const FLAT = bit('flat');
export const SHEAR = bit('shear');
export const AIM_UNDEFINED = bit('aim-undefined');
export const UP_UNDEFINED = bit('up-undefined');
export const TWIST_UNDEFINED = bit('twist-undefined');
export const POLE_UNDEFINED = bit('pole-undefined');
export const REACH_UNDEFINED = bit('reach-undefined');
export const WEIGHT_CLAMPED = bit('weight-clamped');
export const SWITCH_CLAMPED = bit('switch-clamped');
