/** What the links and drivers of rigs/otter.ts do, with three's vectors and quaternions, for both peers made of it. */
import { Matrix4, Quaternion, Vector3 } from 'three';

/** What the links ask of a rig and do to it, B being its bones; all is in rig space. */
export interface Otter<B> {
  bone(name: string): B;
  position(bone: B, to: Vector3): Vector3;
  tip(bone: B, to: Vector3): Vector3;
  turn(bone: B, to: Quaternion): Quaternion;
  parentTurn(bone: B, to: Quaternion): Quaternion;
  restTurn(name: string): Quaternion;
  /** The turn at rest from one bone to another. */
  offset(from: string, to: string): Quaternion;
  length(name: string): number;
  setTurn(bone: B, turn: Quaternion): void;
  setSize(bone: B, x: number, y: number, z: number): void;
}

/** A link with the bones it speaks of looked up; how much of the gaze is left is given. */
export type OtterLink = (letGo: number) => void;
type LinkMaker = <B>(rig: Otter<B>) => OtterLink;

const Z = new Vector3(0, 0, 1);
const p = new Vector3();
const target = new Vector3();
const d = new Vector3();
const a = new Vector3();
const b = new Vector3();
const q = new Quaternion();
const full = new Quaternion();
const r = new Quaternion();
const frame = new Quaternion();
const matrix = new Matrix4();
const DEG = Math.PI / 180;

/** Writes the turn of a bone from its rest frame under its parent to r, with w ≥ 0, and that frame. */
function writeOwnTurn<B>(rig: Otter<B>, bone: B, restTurn: Quaternion): void {
  rig.parentTurn(bone, frame).multiply(restTurn);
  r.copy(frame).invert().multiply(rig.turn(bone, q));
  if (r.w < 0) r.set(-r.x, -r.y, -r.z, -r.w);
}

const clamp = (x: number, most: number): number => Math.min(most * DEG, Math.max(-most * DEG, x));

const holdSkull: LinkMaker = (rig) => {
  const skull = rig.bone('skull');
  const restTurn = rig.restTurn('skull');
  return () => {
    writeOwnTurn(rig, skull, restTurn);
    a.copy(Z).applyQuaternion(r);
    const twist = 2 * Math.atan2(r.z, r.w);
    const yaw = Math.atan2(a.x, a.z);
    const pitch = Math.atan2(a.y, Math.sqrt(a.x * a.x + a.z * a.z));
    if (clamp(twist, 60) === twist && clamp(yaw, 70) === yaw && clamp(pitch, 40) === pitch) return;
    const [y, up] = [clamp(yaw, 70), clamp(pitch, 40)];
    a.set(Math.cos(up) * Math.sin(y), Math.sin(up), Math.cos(up) * Math.cos(y));
    full.setFromUnitVectors(Z, a).multiply(r.setFromAxisAngle(Z, clamp(twist, 60)));
    rig.setTurn(skull, frame.multiply(full));
  };
};

const frown: LinkMaker = (rig) => {
  const [skull, brow] = [rig.bone('skull'), rig.bone('brow_left')];
  const restTurn = rig.restTurn('skull');
  return () => {
    writeOwnTurn(rig, skull, restTurn);
    const deg = (2 * Math.atan2(r.x, r.w)) / DEG;
    const half = (Math.min(20, Math.max(-20, -deg / 2)) * DEG) / 2;
    rig.setTurn(brow, rig.turn(brow, q).multiply(r.set(Math.sin(half), 0, 0, Math.cos(half))));
  };
};

const watch =
  (side: string): LinkMaker =>
  (rig) => {
    const [gaze, kite, skull] = [rig.bone(`gaze_${side}`), rig.bone(`target_${side}`), rig.bone('skull')];
    return (letGo) => {
      if (letGo === 0) return;
      const up = b.copy(Z).applyQuaternion(rig.turn(skull, q));
      full.setFromRotationMatrix(matrix.lookAt(rig.position(kite, target), rig.position(gaze, p), up));
      rig.setTurn(gaze, rig.turn(gaze, q).slerp(full, letGo));
    };
  };

const tie =
  (side: string): LinkMaker =>
  (rig) => {
    const [gaze, eye] = [rig.bone(`gaze_${side}`), rig.bone(`eye_${side}`)];
    const offset = rig.offset(`gaze_${side}`, `eye_${side}`);
    return () => rig.setTurn(eye, rig.turn(gaze, q).multiply(offset));
  };

/** Shortest turn of the bone's +z onto the target; returns the distance. */
function aimAt<B>(rig: Otter<B>, bone: B, at: B, weight: number): number {
  d.copy(rig.position(at, target)).sub(rig.position(bone, p));
  const distance = d.length();
  rig.turn(bone, q);
  r.setFromUnitVectors(a.copy(Z).applyQuaternion(q), d.divideScalar(distance));
  full.copy(r).multiply(q);
  rig.setTurn(bone, weight === 1 ? full : q.slerp(full, weight));
  return distance;
}

const aimed =
  (name: string, at: string, weight: number): LinkMaker =>
  (rig) => {
    const [bone, target] = [rig.bone(name), rig.bone(at)];
    return () => void aimAt(rig, bone, target, weight);
  };

const spanTo: LinkMaker = (rig) => {
  const [indicator, holder] = [rig.bone('indicator'), rig.bone('holder')];
  const length = rig.length('indicator');
  return () => {
    const ratio = aimAt(rig, indicator, holder, 1) / length;
    const across = 1 / Math.sqrt(ratio);
    rig.setSize(indicator, across, across, ratio);
  };
};

const elbow = new Vector3();
const tip = new Vector3();
const u = new Vector3();
const v = new Vector3();
const hinge = new Vector3();
const side = new Vector3();
const now = new Matrix4();
const then = new Matrix4();
const across = new Vector3();

function turned(from: Vector3, to: Vector3, newHinge: Vector3, turn: Quaternion): Quaternion {
  now.makeBasis(from, hinge, across.crossVectors(from, hinge)).transpose();
  then.makeBasis(to, newHinge, across.crossVectors(to, newHinge));
  return turn.premultiply(r.setFromRotationMatrix(then.multiply(now)));
}

const reachOut: LinkMaker = (rig) => {
  const [upperBone, lowerBone] = [rig.bone('upper_left'), rig.bone('lower_left')];
  const [grip, pole] = [rig.bone('grip_left'), rig.bone('pole_left')];
  return () => {
    rig.position(upperBone, p);
    rig.position(lowerBone, elbow);
    rig.tip(lowerBone, tip);
    const upper = u.subVectors(elbow, p).length();
    const lower = v.subVectors(tip, elbow).length();
    u.divideScalar(upper);
    v.divideScalar(lower);
    hinge.crossVectors(u, v);
    if (hinge.length() < 1e-6) hinge.set(1, 0, 0).applyQuaternion(rig.turn(upperBone, q));
    hinge.addScaledVector(u, -hinge.dot(u)).normalize();
    d.subVectors(rig.position(grip, target), p);
    const asked = d.length();
    d.divideScalar(asked);
    side.subVectors(rig.position(pole, target), p);
    side.addScaledVector(d, -side.dot(d)).normalize();
    const reached = Math.min(upper + lower, Math.max(Math.abs(upper - lower), asked));
    const along = (upper * upper + reached * reached - lower * lower) / (2 * reached);
    const product = (upper + lower - reached) * (reached + lower - upper) * (upper + reached - lower);
    const aside = Math.sqrt(Math.max(0, product * (upper + lower + reached))) / (2 * reached);
    a.copy(d).multiplyScalar(along).addScaledVector(side, aside).divideScalar(upper);
    b.copy(d)
      .multiplyScalar(reached - along)
      .addScaledVector(side, -aside)
      .divideScalar(lower);
    const newHinge = target.crossVectors(side, d);
    turned(u, a, newHinge, rig.turn(upperBone, q));
    hinge.addScaledVector(v, -hinge.dot(v)).normalize();
    turned(v, b, newHinge, rig.turn(lowerBone, full));
    rig.setTurn(upperBone, q);
    rig.setTurn(lowerBone, full);
  };
};

const roll: LinkMaker = (rig) => {
  const [hand, own] = [rig.bone('hand_left'), rig.bone('roll_left')];
  const restTurn = rig.restTurn('hand_left');
  return () => {
    writeOwnTurn(rig, hand, restTurn);
    const twist = 2 * Math.atan2(r.z, r.w);
    rig.setTurn(own, rig.turn(own, q).multiply(r.setFromAxisAngle(Z, 0.5 * twist)));
  };
};

/** By the bone they belong to, in an order in which each finds what it reads done. */
export const OTTER_LINKS: ReadonlyMap<string, LinkMaker> = new Map<string, LinkMaker>([
  ['skull', holdSkull],
  ['brow_left', frown],
  ['gaze_left', watch('left')],
  ['gaze_right', watch('right')],
  ['eye_left', tie('left')],
  ['eye_right', tie('right')],
  ['lid_left', aimed('lid_left', 'target_left', 0.5)],
  ['indicator', spanTo],
  ['lower_left', reachOut],
  ['roll_left', roll],
  ['rudder', aimed('rudder', 'holder', 1)],
]);
