import { POINT_INTS } from '../geometry/point.ts';
import { LINK_RECORD } from './linkKind.ts';
import { UP_INTS } from './upVector.ts';

const TARGET = LINK_RECORD.INTS;
const AXIS = TARGET + POINT_INTS;

/**
 * The record of an aim: its target, where its axis lies, where the axis of the half-turn lies that is taken when the
 * target is straight behind, its up vector. Files take these as constants of their own, which engines fold; they do not
 * fold what is imported.
 */
export const AIM_RECORD = { TARGET, AXIS, HALF: AXIS + 1, UP: AXIS + 2, INTS: AXIS + 2 + UP_INTS } as const;
