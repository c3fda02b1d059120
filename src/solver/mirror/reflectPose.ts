import { splitSwitch } from '../document/renaming.ts';
import type { BonePose, Pose } from '../document/rig.ts';
import { LAST_WORD, type SideWords, swapSide } from './sides.ts';
import { reflectAngles, reflectTurn, reflectVector } from './values.ts';

function reflectPosedTurn(turn: NonNullable<BonePose['turn']>): NonNullable<BonePose['turn']> {
  return 'angles' in turn ? { angles: reflectAngles(turn.angles) } : reflectTurn(turn);
}

const reflectBonePose = (pose: BonePose): BonePose => ({
  ...pose,
  ...(pose.move && { move: reflectVector(pose.move) }),
  ...(pose.turn && { turn: reflectPosedTurn(pose.turn) }),
});

/** The same record under other keys. It has no prototype, because a bone may be named like a part of one. */
function mapRecord<T>(record: Readonly<Record<string, T>>, key: (key: string) => string, value: (value: T) => T) {
  const out: Record<string, T> = Object.create(null);
  for (const [name, item] of Object.entries(record)) out[key(name)] = value(item);
  return out;
}

/** The values of a pose across x = 0, under the names they stand under. */
export function reflectPoseValues({ bones, ...pose }: Pose): Pose {
  return bones ? { ...pose, bones: mapRecord(bones, (name) => name, reflectBonePose) } : pose;
}

/** A pose across x = 0: on the reflected rig it gives the reflected result. Twice is the identity. */
export function reflectPose(pose: Pose, sides: SideWords = LAST_WORD): Pose {
  const rename = (name: string) => swapSide(name, sides);
  const renameSwitch = (reference: string) => {
    const [bone, name] = splitSwitch(reference);
    return `${rename(bone)}.${name}`;
  };
  const { bones, switches, ...rest } = reflectPoseValues(pose);
  return {
    ...rest,
    ...(bones && { bones: mapRecord(bones, rename, (value) => value) }),
    ...(switches && { switches: mapRecord(switches, renameSwitch, (value) => value) }),
  };
}
