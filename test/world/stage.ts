import { Matrix4, Quaternion, Vector3 } from 'three';
import type { Bone, Driver, Link, Pose, Quat, Vec3 } from '../../src/solver/index.ts';
import { compile, readPose, readRig, solve } from '../../src/solver/index.ts';

/** Checks against the world speak to the solver as anybody would: a rig document and a pose in, world transforms out. */

export const NONE: Quat = [0, 0, 0, 1];

export interface BoneParts {
  parent?: string;
  base?: Vec3;
  turn?: Quat;
  length?: number;
  links?: Link[];
}

/** A bone of one metre at the origin, where nothing else is said. */
export function bone(name: string, parts: BoneParts & Partial<Omit<Bone, 'parent'>> = {}): Bone {
  const { parent = null, base = [0, 0, 0], turn = NONE, length = 1, ...rest } = parts;
  return { name, parent, role: 'helper', rest: { base, turn, length }, ...rest };
}

/** Where a bone came to stand. */
export interface Placed {
  /** 16 numbers, column-major, rig space, metres. */
  matrix: number[];
  base: Vec3;
  /** [x, y, z, w]; of a matrix without shear. */
  turn: Quat;
  size: Vec3;
  /** A point of the bone's own space, in rig space. */
  at: (local: Vec3) => Vec3;
}

/** Taken apart by three, so that the solver does not read itself. */
function placed(matrix: number[]): Placed {
  const whole = new Matrix4().fromArray(matrix);
  const [base, turn, size] = [new Vector3(), new Quaternion(), new Vector3()];
  whole.decompose(base, turn, size);
  return {
    matrix,
    base: base.toArray(),
    turn: turn.toArray() as unknown as Quat,
    size: size.toArray(),
    at: (local) => new Vector3(...local).applyMatrix4(whole).toArray(),
  };
}

export const rigDocument = (bones: readonly Bone[], drivers: readonly Driver[] = []) => ({
  format: 'counterpose/rig',
  version: 1,
  bones,
  ...(drivers.length > 0 && { drivers }),
});

/** Reads rig and pose as documents, compiles, solves. Fails with the refusal or the cycle where there is one. */
export function solved(document: unknown, pose: Pose = {}): Record<string, Placed> {
  const rig = readRig(document);
  if (!rig.ok) throw new Error(JSON.stringify(rig.refusal));
  const read = readPose(pose, rig.value);
  if (!read.ok) throw new Error(JSON.stringify(read.refusal));
  const compiled = compile(rig.value);
  if (!compiled.ok) throw new Error(compiled.cycle.join(' → '));
  const { bones } = solve(compiled.program, read.value);
  return Object.fromEntries(Object.entries(bones).map(([name, { matrix }]) => [name, placed(matrix)]));
}

/** Bones and what is posed of them; see `solved`. */
export const stand = (bones: readonly Bone[], pose: Pose['bones'] = {}, drivers: readonly Driver[] = []) =>
  solved(rigDocument(bones, drivers), { bones: pose });

export const DEG = Math.PI / 180;

/** The turn by an angle about an axis of any length. */
export function about(axis: Vec3, angleDeg: number): Quat {
  const length = Math.hypot(...axis);
  const s = Math.sin((angleDeg * DEG) / 2) / length;
  return [axis[0] * s, axis[1] * s, axis[2] * s, Math.cos((angleDeg * DEG) / 2)];
}

/** Angle in degrees, 0 to 180, and unit axis of a turn. */
export function axisAngle(q: Quat): { axis: Vec3; angleDeg: number } {
  const sign = q[3] < 0 ? -1 : 1;
  const s = Math.hypot(q[0], q[1], q[2]);
  const axis: Vec3 = [(sign * q[0]) / s, (sign * q[1]) / s, (sign * q[2]) / s];
  return { axis, angleDeg: (2 * Math.atan2(s, sign * q[3])) / DEG };
}

/** Row after row, as documents print a 3×3 or 3×4 part, to the 16 numbers in columns. */
export function columns(...rows: number[][]): number[] {
  const full = [...rows, [0, 0, 0, 1]].map((row) => [...row, ...[0, 0, 0, 0].slice(row.length)]);
  return [0, 1, 2, 3].flatMap((column) => full.map((row) => row[column]));
}
