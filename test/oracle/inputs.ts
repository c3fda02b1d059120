/** What a driver reads. */
import type { DriverSource } from '../../src/solver/document/rig.ts';
import { switchValue } from './controls.ts';
import type { Evaluation } from './evaluation.ts';
import { twistRad } from './links/share.ts';
import { product, transposed } from './matrix.ts';
import { moveTo } from './restFrame.ts';
import { degrees } from './rotation.ts';
import { frameOf, pointOf, worldOf } from './stages.ts';
import { distance } from './vector.ts';
import { orient } from './world.ts';

const AXES = ['x', 'y', 'z'] as const;
type AxisLetter = (typeof AXES)[number];

export function driverInput(from: DriverSource, e: Evaluation): number {
  if ('switch' in from) return switchValue(e, from.switch);
  if ('turn' in from) return turnDeg(from.turn.bone, from.turn.axis, e);
  if ('shift' in from) return shift(from.shift.bone, from.shift.axis, e);
  return distance(pointOf(e, from.gap[0]), pointOf(e, from.gap[1]));
}

function turnDeg(bone: string, axis: AxisLetter, e: Evaluation): number {
  const rest = orient(frameOf(e, bone).fq);
  const turn = product(transposed(rest), orient(worldOf(e, bone).a));
  return degrees(twistRad(turn, AXES.indexOf(axis) as 0 | 1 | 2) ?? 0);
}

function shift(bone: string, axis: AxisLetter, e: Evaluation): number {
  const move = moveTo(worldOf(e, bone).base, frameOf(e, bone));
  return move === undefined ? 0 : move[AXES.indexOf(axis)];
}
