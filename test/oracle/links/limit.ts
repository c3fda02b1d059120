import type { LimitLink } from '../../../src/solver/document/rig.ts';
import { apply, type Matrix, product, transposed } from '../matrix.ts';
import { moveTo } from '../restFrame.ts';
import { radians, shortestTurn, turnAbout, wrappedRad } from '../rotation.ts';
import type { Setting } from '../setting.ts';
import { slerp } from '../slerp.ts';
import { add, blend, unitY, unitZ, type Vector } from '../vector.ts';
import { orientation, putTogether, type World } from '../world.ts';
import { takeApart } from './takeApart.ts';

type Bounds = readonly [number, number] | undefined;

export function limit(link: LimitLink, before: World, setting: Setting): World {
  const own = takeApart(setting, before);
  const frame = orientation(setting.frame.fq);
  if (frame.flat) setting.raise('flat');
  const turn = product(transposed(frame.rotation), own.q);
  if (isYawOpen(link, turn.z)) setting.undecided();
  const full = product(frame.rotation, limitedTurn(link, turn));
  return putTogether({
    p: blend(own.p, limitedBase(link, own.p, setting), setting.weight),
    q: slerp(own.q, full, setting.weight),
    s: own.s,
  });
}

/** In the rest frame: where +z points kept within yaw, pitch and cone, then the twist kept within its bounds. */
function limitedTurn(link: LimitLink, turn: Matrix): Matrix {
  const twistTurn = product(transposed(swingTo(turn.z)), turn);
  const twistRad = wrappedRad(Math.atan2(twistTurn.x[1], twistTurn.x[0]));
  const forward = withinCone(link.cone, withinYawPitch(link, turn.z));
  return product(swingTo(forward), turnAbout(unitZ, clampedRad(twistRad, link.twist)));
}

/** Straight back is where −z lies within 1e-9. */
const isStraightBack = (v: Vector): boolean => v[2] < 0 && Math.hypot(v[0], v[1]) < 1e-9;

const swingTo = (v: Vector): Matrix => (isStraightBack(v) ? turnAbout(unitY, Math.PI) : shortestTurn(unitZ, v));

/** Straight up or down there is no yaw, yet a bound on pitch may bring one to bear. */
const isYawOpen = (link: LimitLink, v: Vector): boolean => link.pitch !== undefined && Math.hypot(v[0], v[2]) < 1e-9;

function withinYawPitch(link: LimitLink, v: Vector): Vector {
  if (link.yaw === undefined && link.pitch === undefined) return v;
  const yawRad = isStraightBack(v) ? Math.PI : wrappedRad(Math.atan2(v[0], v[2]));
  const pitchRad = Math.atan2(v[1], Math.hypot(v[0], v[2]));
  const yaw = clampedRad(yawRad, link.yaw);
  const pitch = clampedRad(pitchRad, link.pitch);
  return [Math.sin(yaw) * Math.cos(pitch), Math.sin(pitch), Math.cos(yaw) * Math.cos(pitch)];
}

function withinCone(coneDeg: number | undefined, v: Vector): Vector {
  if (coneDeg === undefined) return v;
  const coneRad = radians(coneDeg);
  const sideways = Math.hypot(v[0], v[1]);
  if (Math.atan2(sideways, v[2]) <= coneRad) return v;
  const side = isStraightBack(v) ? [1, 0] : [v[0] / sideways, v[1] / sideways];
  return [Math.sin(coneRad) * side[0], Math.sin(coneRad) * side[1], Math.cos(coneRad)];
}

function clampedRad(angleRad: number, boundsDeg: Bounds): number {
  if (boundsDeg === undefined) return angleRad;
  return Math.min(Math.max(angleRad, radians(boundsDeg[0])), radians(boundsDeg[1]));
}

/** The full move: (F·Q)⁻¹·(base − rest base) clamped, and brought back to rig space. */
function limitedBase(link: LimitLink, base: Vector, setting: Setting): Vector {
  if (link.move === undefined) return base;
  const move = moveTo(base, setting.frame);
  if (move === undefined) {
    setting.raise('flat');
    return base;
  }
  const { min, max } = link.move;
  const clamped: Vector = [0, 1, 2].map((i) => Math.min(Math.max(move[i], min[i]), max[i])) as unknown as Vector;
  return add(setting.frame.base, apply(setting.frame.fq, clamped));
}
