/** What the links and drivers of rigs/otter.ts do, with three's vectors and quaternions, for both peers made of it. */
import { Matrix4, Quaternion, Vector3 } from 'three';

/** What the links ask of a rig and do to it. Names are bones; all is in rig space. */
export interface Otter {
  position(name: string, to: Vector3): Vector3;
  tip(name: string, to: Vector3): Vector3;
  turn(name: string, to: Quaternion): Quaternion;
  parentTurn(name: string, to: Quaternion): Quaternion;
  restTurn(name: string): Quaternion;
  /** The turn at rest from one bone to another. */
  offset(from: string, to: string): Quaternion;
  length(name: string): number;
  setTurn(name: string, turn: Quaternion): void;
  setSize(name: string, x: number, y: number, z: number): void;
}

export type OtterLink = (rig: Otter, letGo: number) => void;

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
function writeOwnTurn(rig: Otter, name: string): void {
  rig.parentTurn(name, frame).multiply(rig.restTurn(name));
  r.copy(frame).invert().multiply(rig.turn(name, q));
  if (r.w < 0) r.set(-r.x, -r.y, -r.z, -r.w);
}

const clamp = (x: number, most: number): number => Math.min(most * DEG, Math.max(-most * DEG, x));

function holdHead(rig: Otter): void {
  writeOwnTurn(rig, 'head');
  a.copy(Z).applyQuaternion(r);
  const twist = 2 * Math.atan2(r.z, r.w);
  const yaw = Math.atan2(a.x, a.z);
  const pitch = Math.atan2(a.y, Math.sqrt(a.x * a.x + a.z * a.z));
  if (clamp(twist, 60) === twist && clamp(yaw, 70) === yaw && clamp(pitch, 40) === pitch) return;
  const [y, up] = [clamp(yaw, 70), clamp(pitch, 40)];
  a.set(Math.cos(up) * Math.sin(y), Math.sin(up), Math.cos(up) * Math.cos(y));
  full.setFromUnitVectors(Z, a).multiply(r.setFromAxisAngle(Z, clamp(twist, 60)));
  rig.setTurn('head', frame.multiply(full));
}

function frown(rig: Otter): void {
  writeOwnTurn(rig, 'head');
  const deg = (2 * Math.atan2(r.x, r.w)) / DEG;
  const angle = Math.min(20, Math.max(-20, -deg / 2)) * DEG;
  rig.setTurn('brow_left', rig.turn('brow_left', q).multiply(r.set(Math.sin(angle / 2), 0, 0, Math.cos(angle / 2))));
}

const watch = (side: string) => (rig: Otter, letGo: number) => {
  if (letGo === 0) return;
  const name = `gaze_${side}`;
  const up = b.copy(Z).applyQuaternion(rig.turn('head', q));
  rig.position(name, p);
  rig.position(`target_${side}`, target);
  full.setFromRotationMatrix(matrix.lookAt(target, p, up));
  rig.setTurn(name, rig.turn(name, q).slerp(full, letGo));
};

const tie = (side: string) => (rig: Otter) => {
  const [source, own] = [`gaze_${side}`, `eye_${side}`];
  rig.setTurn(own, rig.turn(source, q).multiply(rig.offset(source, own)));
};

/** Shortest turn of the bone's +z onto the target; leaves the distance. */
function aimAt(rig: Otter, name: string, at: string, weight: number): number {
  d.copy(rig.position(at, target)).sub(rig.position(name, p));
  const distance = d.length();
  rig.turn(name, q);
  r.setFromUnitVectors(a.copy(Z).applyQuaternion(q), d.divideScalar(distance));
  full.copy(r).multiply(q);
  rig.setTurn(name, weight === 1 ? full : q.slerp(full, weight));
  return distance;
}

function spanTo(rig: Otter): void {
  const ratio = aimAt(rig, 'indicator', 'holder', 1) / rig.length('indicator');
  const across = 1 / Math.sqrt(ratio);
  rig.setSize('indicator', across, across, ratio);
}

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

function reachOut(rig: Otter): void {
  rig.position('upper_left', p);
  rig.position('lower_left', elbow);
  rig.tip('lower_left', tip);
  const upper = u.subVectors(elbow, p).length();
  const lower = v.subVectors(tip, elbow).length();
  u.divideScalar(upper);
  v.divideScalar(lower);
  hinge.crossVectors(u, v);
  if (hinge.length() < 1e-6) hinge.set(1, 0, 0).applyQuaternion(rig.turn('upper_left', q));
  hinge.addScaledVector(u, -hinge.dot(u)).normalize();
  d.subVectors(rig.position('grip_left', target), p);
  const asked = d.length();
  d.divideScalar(asked);
  side.subVectors(rig.position('pole_left', target), p);
  side.addScaledVector(d, -side.dot(d)).normalize();
  const reached = Math.min(upper + lower, Math.max(Math.abs(upper - lower), asked));
  const along = (upper * upper + reached * reached - lower * lower) / (2 * reached);
  const aside = Math.sqrt(Math.max(0, upper * upper - along * along));
  a.copy(d).multiplyScalar(along).addScaledVector(side, aside).divideScalar(upper);
  b.copy(d)
    .multiplyScalar(reached - along)
    .addScaledVector(side, -aside)
    .divideScalar(lower);
  const newHinge = target.crossVectors(side, d);
  turned(u, a, newHinge, rig.turn('upper_left', q));
  hinge.addScaledVector(v, -hinge.dot(v)).normalize();
  turned(v, b, newHinge, rig.turn('lower_left', full));
  rig.setTurn('upper_left', q);
  rig.setTurn('lower_left', full);
}

function roll(rig: Otter): void {
  writeOwnTurn(rig, 'hand_left');
  const twist = 2 * Math.atan2(r.z, r.w);
  rig.setTurn('roll_left', rig.turn('roll_left', q).multiply(r.setFromAxisAngle(Z, 0.5 * twist)));
}

/** By the bone they belong to, in an order in which each finds what it reads done. */
export const OTTER_LINKS: ReadonlyMap<string, OtterLink> = new Map<string, OtterLink>([
  ['head', holdHead],
  ['brow_left', frown],
  ['gaze_left', watch('left')],
  ['gaze_right', watch('right')],
  ['eye_left', tie('left')],
  ['eye_right', tie('right')],
  ['lid_left', (rig) => aimAt(rig, 'lid_left', 'target_left', 0.5)],
  ['indicator', spanTo],
  ['lower_left', reachOut],
  ['roll_left', roll],
  ['tail', (rig) => aimAt(rig, 'tail', 'holder', 1)],
]);
