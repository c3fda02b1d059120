import type { AimLink, UpToward } from '../../../src/solver/document/rig.ts';
import { axisVector } from '../axis.ts';
import { apply, type Matrix, product } from '../matrix.ts';
import { turnAbout } from '../rotation.ts';
import type { Setting } from '../setting.ts';
import { slerp } from '../slerp.ts';
import { angleToLineRad, cross, dot, madePerpendicular, subtract, unit, type Vector } from '../vector.ts';
import { orient, putTogether, type World } from '../world.ts';
import { aimed, aimedFully, isNear } from './aiming.ts';
import { takeApart } from './takeApart.ts';

const ALONG_RAD = 1e-6;

export function aim(link: AimLink, before: World, setting: Setting): World {
  const offset = subtract(setting.pointOf(link.target), before.base);
  if (isNear(offset)) {
    setting.raise('aim-undefined');
    return before;
  }
  const own = takeApart(setting, before);
  const axis = axisVector(link.axis ?? '+z');
  const d = unit(offset);
  if (link.up === undefined) return putTogether({ ...own, q: aimed(own.q, axis, d, setting.weight) });

  const unrolled = aimedFully(own.q, axis, d);
  const upAxis = apply(unrolled, axisVector(link.up.axis));
  const up = upDirection(link.up.toward, before.base, setting);
  if (up === undefined || angleToLineRad(up, d) < ALONG_RAD || angleToLineRad(upAxis, d) < ALONG_RAD) {
    setting.raise('up-undefined');
    return putTogether({ ...own, q: aimed(own.q, axis, d, setting.weight) });
  }
  return putTogether({ ...own, q: slerp(own.q, product(roll(upAxis, up, d), unrolled), setting.weight) });
}

/** The turn about d after which one direction, seen along d, lies on another. */
function roll(from: Vector, onto: Vector, d: Vector): Matrix {
  const fromSeen = unit(madePerpendicular(from, d));
  const ontoSeen = unit(madePerpendicular(onto, d));
  return turnAbout(d, Math.atan2(dot(d, cross(fromSeen, ontoSeen)), dot(fromSeen, ontoSeen)));
}

/** Rig space, not unit; none where an up point lies on the base. */
function upDirection(toward: UpToward, base: Vector, setting: Setting): Vector | undefined {
  if ('direction' in toward) return unit(toward.direction);
  if ('axis' in toward) return apply(orient(setting.worldOf(toward.bone).a), axisVector(toward.axis));
  const offset = subtract(setting.pointOf(toward), base);
  return isNear(offset) ? undefined : offset;
}
