import type { ReachLink } from '../../../src/solver/document/rig.ts';
import { apply, identity, type Matrix, product, transposed } from '../matrix.ts';
import type { Setting } from '../setting.ts';
import { slerp } from '../slerp.ts';
import {
  add,
  angleToLineRad,
  cross,
  distance,
  madePerpendicular,
  negate,
  scale,
  size,
  subtract,
  unit,
  type Vector,
} from '../vector.ts';
import { orient, toRigSpace, type World } from '../world.ts';

export interface Limb {
  readonly upper: World;
  readonly lower: World;
}

/** Turns the two bones of a limb; the setting is the lower bone's. */
export function reach(link: ReachLink, limb: Limb, setting: Setting): Limb {
  const a = limb.upper.base;
  const b = limb.lower.base;
  const c = toRigSpace(limb.lower, [0, 0, setting.bone.rest.length]);
  const target = setting.pointOf(link.target);
  if (Math.min(distance(a, b), distance(b, c), distance(a, target)) < 1e-9) {
    setting.raise('reach-undefined');
    return limb;
  }
  const u = unit(subtract(b, a));
  const v = unit(subtract(c, b));
  const d = unit(subtract(target, a));
  const n = hinge(u, v, limb.upper);
  const e = elbowSide(link, a, d, n, u, setting);
  const bent = bentLimb(distance(a, b), distance(b, c), distance(a, target), d, e);
  const newN = cross(e, d);
  const upperTurn = turnTaking(u, n, bent.upper, newN);
  const lowerTurn = turnTaking(v, n, bent.lower, newN);
  return turned(limb, slerp(identity, upperTurn, setting.weight), slerp(identity, lowerTurn, setting.weight));
}

function hinge(u: Vector, v: Vector, upper: World): Vector {
  const across = cross(u, v);
  if (size(across) >= 1e-6) return unit(across);
  const axes = orient(upper.a);
  const fromX = madePerpendicular(axes.x, u);
  return size(fromX) < 1e-9 ? unit(madePerpendicular(axes.y, u)) : unit(fromX);
}

function elbowSide(link: ReachLink, a: Vector, d: Vector, n: Vector, u: Vector, setting: Setting): Vector {
  if (link.pole !== undefined) {
    const toPole = subtract(setting.pointOf(link.pole), a);
    if (size(toPole) >= 1e-9 && angleToLineRad(toPole, d) >= 1e-6) return unit(madePerpendicular(toPole, d));
    setting.raise('pole-undefined');
  }
  const side = cross(d, n);
  return size(side) < 1e-6 ? unit(madePerpendicular(u, d)) : unit(side);
}

/** u′ and v′, from the elbow A + k·d + h·e and the tip A + D·d. */
function bentLimb(l1: number, l2: number, toTarget: number, d: Vector, e: Vector): { upper: Vector; lower: Vector } {
  const nearest = Math.abs(l1 - l2);
  const farthest = l1 + l2;
  const reached = Math.min(Math.max(toTarget, nearest), farthest);
  const short = farthest - reached;
  const spare = reached - nearest;
  if (Math.min(short, spare) <= 1e-12 * farthest) {
    // With h = 0 the elbow is at ±l₁ along d. One length may be nothing beside the other, so not by subtraction.
    if (short <= spare) return { upper: d, lower: d };
    return l1 >= l2 ? { upper: d, lower: negate(d) } : { upper: negate(d), lower: d };
  }
  const k = (l1 * l1 + reached * reached - l2 * l2) / (2 * reached);
  const elbow = add(scale(d, k), scale(e, Math.sqrt(l1 * l1 - k * k)));
  return { upper: unit(elbow), lower: unit(subtract(scale(d, reached), elbow)) };
}

/** The rotation taking the frame of (along, across) to that of (newAlong, newAcross). */
function turnTaking(along: Vector, across: Vector, newAlong: Vector, newAcross: Vector): Matrix {
  return product(frame(newAlong, newAcross), transposed(frame(along, across)));
}

function frame(along: Vector, across: Vector): Matrix {
  const y = unit(madePerpendicular(across, along));
  return { x: along, y, z: cross(along, y) };
}

function turned({ upper, lower }: Limb, upperTurn: Matrix, lowerTurn: Matrix): Limb {
  return {
    upper: { a: product(upperTurn, upper.a), base: upper.base },
    lower: {
      a: product(lowerTurn, lower.a),
      base: add(upper.base, apply(upperTurn, subtract(lower.base, upper.base))),
    },
  };
}
