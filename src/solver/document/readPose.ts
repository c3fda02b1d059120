import { type Reader, reading, refuseValue, within } from './reader.ts';
import { readText } from './readText.ts';
import { refuseUndeclared } from './references.ts';
import type { Reading } from './refusal.ts';
import type { BonePose, Pose, Rig, Switch, Vec3 } from './rig.ts';
import { dictionary, keyPath, needed, optional, record } from './structures.ts';
import { number } from './values.ts';
import { quaternion, vector } from './vectors.ts';

/** What a pose may name: the bones of a rig, and its switches by "bone.switch". */
interface Posable {
  bones: ReadonlySet<string>;
  switches: ReadonlyMap<string, Switch>;
}

const angles: Reader<{ angles: Vec3 }> = record('a turn in angles', {
  angles: needed(vector('angles [x, y, z], in degrees')),
});

const turn: Reader<NonNullable<BonePose['turn']>> = (value, known) => {
  if (Array.isArray(value)) return quaternion(value, known);
  if (typeof value === 'object' && value !== null) return angles(value, known);
  return refuseValue(value, 'a unit quaternion [x, y, z, w] or {angles: [x, y, z]} in degrees');
};

const readBonePose: Reader<BonePose> = record('the pose of a bone', {
  move: optional(vector('a move [x, y, z], in metres')),
  turn: optional(turn),
  size: optional(vector('a size [x, y, z]')),
});

function bonePose(name: string, { bones }: Posable): Reader<BonePose> {
  if (!bones.has(name))
    within(keyPath(name), () => refuseUndeclared(name, [...bones], 'the name of a bone of this rig'));
  return readBonePose;
}

function switchValue(name: string, { switches }: Posable): Reader<number> {
  const one = switches.get(name);
  if (!one) {
    const what = 'a switch of this rig, as "bone.switch"';
    return within(keyPath(name), () => refuseUndeclared(name, [...switches.keys()], what));
  }
  const { min, max, sliding } = one;
  if (sliding) return number(`a number from ${min} to ${max}, the range of ${name}`, (v) => v >= min && v <= max);
  return number(`${min} or ${max}, because ${name} does not slide`, (v) => v === min || v === max);
}

const readFields = record<Pose, Posable>('a pose', {
  bones: optional(dictionary('poses by the name of the bone', bonePose)),
  switches: optional(dictionary('numbers by "bone.switch"', switchValue)),
});

function posableIn(rig: Rig): Posable {
  const switches = rig.bones.flatMap((bone) =>
    (bone.switches ?? []).map((one): [string, Switch] => [`${bone.name}.${one.name}`, one]),
  );
  return { bones: new Set(rig.bones.map((bone) => bone.name)), switches: new Map(switches) };
}

/** A reader of poses of one rig, for when there are many. */
export function poseReader(rig: Rig): (value: unknown) => Reading<Pose> {
  const posable = posableIn(rig);
  return (value) => reading(() => readFields(value, posable));
}

/**
 * Reads a pose of a rig: a fresh document whose `bones` and `switches` have no prototype, nothing filled in,
 * quaternions of unit length; or why it cannot be used.
 */
export const readPose = (value: unknown, rig: Rig): Reading<Pose> => poseReader(rig)(value);

/** Reads a pose from JSON of at most 1 MiB. */
export const readPoseText = (json: string, rig: Rig): Reading<Pose> => readText(json, poseReader(rig));
