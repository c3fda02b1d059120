/**
 * Cyclic coordinate descent on two bones with three's scene graph: each joint in turn, from the tip back, takes the shortest
 * turn that brings the tip onto the line to the target (L.-C. T. Wang and C. C. Chen, A combined optimization method
 * for solving the inverse kinematics problem, 1991; from memory).
 */
import { type Object3D, Quaternion, Vector3 } from 'three';

export interface Limb {
  readonly upper: Object3D;
  readonly lower: Object3D;
  readonly tip: Object3D;
}

const base = new Vector3();
const end = new Vector3();
const toTip = new Vector3();
const toTarget = new Vector3();
const turn = new Quaternion();
const above = new Quaternion();

/** Goes round until the tip is within `within` metres, `most` times at most; returns how often. */
export function descend({ upper, lower, tip }: Limb, target: Vector3, within: number, most: number): number {
  for (let round = 1; round <= most; round++) {
    turnJoint(lower, tip, target);
    turnJoint(upper, tip, target);
    if (tip.getWorldPosition(end).distanceTo(target) <= within) return round;
  }
  return most;
}

function turnJoint(joint: Object3D, tip: Object3D, target: Vector3): void {
  joint.getWorldPosition(base);
  toTip.subVectors(tip.getWorldPosition(end), base).normalize();
  toTarget.subVectors(target, base).normalize();
  turn.setFromUnitVectors(toTip, toTarget);
  joint.parent!.getWorldQuaternion(above);
  joint.getWorldQuaternion(joint.quaternion).premultiply(turn).premultiply(above.invert());
  joint.updateMatrixWorld(true);
}
