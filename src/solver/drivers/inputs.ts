import type { Places } from '../compile/places.ts';
import type { DriverSource } from '../document/rig.ts';
import { isTurn } from '../geometry/isTurn.ts';
import { orient } from '../geometry/orient.ts';
import { plainTwist } from '../geometry/plainTwist.ts';
import { writePoint } from '../geometry/point.ts';
import { FRAME_INTS, writeRestBase, writeRestFrame, writeShift } from '../geometry/restFrame.ts';
import { TWIST_LEAST, writeTwist } from '../geometry/twist.ts';
import { lengthOf, subtract } from '../geometry/vector.ts';
import { radToDeg } from '../number/index.ts';

/** A record of an input: kind, where its factor lies, then up to five numbers. */
export const INPUT_INTS = 7;
const SWITCH = 0;
const TURN = 1;
const SHIFT = 2;
const GAP = 3;

const NOTHING = [0, 0, 0, 0];

/** Of a turn or shift, after the bone's world: its frame, its axis. */
const OWN_FRAME = 1;
const AXIS = OWN_FRAME + FRAME_INTS;

/** Scratch. */
const FRAME = 0;
const FROM = 9;
const TO = 18;
const SPARE = 27;

const AXES = 'xyz';

/** The code of one input; `times` is its factor. */
export function inputCode(source: DriverSource, times: number, places: Places): number[] {
  return [...kindAndPlaces(source, places.constant(times), places), ...NOTHING].slice(0, INPUT_INTS);
}

function kindAndPlaces(source: DriverSource, times: number, places: Places): number[] {
  if ('switch' in source) return [SWITCH, times, places.switch(source.switch)];
  if ('gap' in source) return [GAP, times, ...places.point(source.gap[0]), ...places.point(source.gap[1])];
  const { bone, axis } = 'turn' in source ? source.turn : source.shift;
  const kind = 'turn' in source ? TURN : SHIFT;
  return [kind, times, places.world(bone), ...places.frame(bone), AXES.indexOf(axis)];
}

/** The bones an input reads, by name; a switch is none. */
export function bonesRead(source: DriverSource): string[] {
  if ('switch' in source) return [];
  if ('gap' in source) return source.gap.map((point) => point.bone);
  return ['turn' in source ? source.turn.bone : source.shift.bone];
}

/** The value of the input at `at` of the code, its factor left out: a switch's number, degrees or metres. */
export function inputValue(code: Int32Array, m: Float64Array, at: number): number {
  if (code[at] === SWITCH) return m[code[at + 2]];
  if (code[at] === TURN) return turnDeg(code, m, at + 2);
  if (code[at] === SHIFT) return shift(code, m, at + 2);
  return gap(code, m, at + 2);
}

/** Signed degrees of twist from the rest frame under the parent, 0 where the axis is turned right over. */
function turnDeg(code: Int32Array, m: Float64Array, at: number): number {
  const twistRad = plainTwist(code, m, at + OWN_FRAME, code[at], code[at + AXIS]);
  return radToDeg(Number.isNaN(twistRad) ? anyTwist(code, m, at) : twistRad);
}

/** The same in radians for any bone. */
function anyTwist(code: Int32Array, m: Float64Array, at: number): number {
  writeRestFrame(code, m, at + OWN_FRAME, FRAME, SPARE);
  const isFrameTurn = isTurn(m, FRAME);
  if (!isFrameTurn) orient(m, FRAME, FROM);
  const isOwnTurn = isTurn(m, code[at]);
  if (!isOwnTurn) orient(m, code[at], TO);
  writeTwist(m, isFrameTurn ? FRAME : FROM, isOwnTurn ? code[at] : TO, code[at + AXIS], TWIST_LEAST, SPARE);
  return m[SPARE];
}

function shift(code: Int32Array, m: Float64Array, at: number): number {
  writeRestFrame(code, m, at + OWN_FRAME, FRAME, SPARE);
  writeRestBase(code, m, at + OWN_FRAME, FROM);
  return writeShift(m, FRAME, code[at] + 9, FROM, TO, SPARE) ? m[TO + code[at + AXIS]] : 0;
}

function gap(code: Int32Array, m: Float64Array, at: number): number {
  writePoint(code, m, at, FROM);
  writePoint(code, m, at + 2, TO);
  subtract(m, FROM, TO, TO);
  return lengthOf(m, TO);
}
