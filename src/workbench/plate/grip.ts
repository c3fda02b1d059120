import type { Bone, Pose, Rig, TurnOrder, Vec3 } from '../../solver/document/rig.ts';
import type { Edit } from '../edit/draft.ts';
import { setRest } from '../edit/setRest.ts';
import { anglesOf, columns, turnOf } from '../pose/angles.ts';
import { isLocked, valuesOf, withValues } from '../pose/channels.ts';
import type { Solved } from '../pose/solved.ts';
import { frameAt } from './frame.ts';
import { applied, restFrame } from './restFrame.ts';
import { unit } from './vector.ts';

type Basis = readonly [Vec3, Vec3, Vec3];
type Free = readonly [boolean, boolean, boolean];

/** What the handles on a plate hold: a bone's move and turn, in a pose or at rest. */
export interface Grip {
  readonly bone: string;
  /** What they change, as their names say it. */
  readonly holds: 'pose' | 'rest';
  /** Rig space. */
  readonly origin: Vec3;
  readonly move: { readonly values: Vec3; readonly axes: Basis; readonly free: Free };
  /** Degrees, and the unit axes that each angle turns about. */
  readonly turn: { readonly values: Vec3; readonly axes: Basis; readonly free: Free };
}

/** The handles of Try: a control's pose, but what is locked or carried by an attachment. */
export function poseGrip({ rig, world }: Solved, pose: Pose, bone: Bone): Grip {
  const basis = restFrame(rig, world, bone);
  const free = (channel: 'move' | 'turn') =>
    ([0, 1, 2] as const).map((axis) => !isLocked(bone, channel, axis)) as unknown as Free;
  const turn = valuesOf(pose, bone, 'turn');
  return {
    bone: bone.name,
    holds: 'pose',
    origin: originOf(rig, world, bone),
    move: {
      values: valuesOf(pose, bone, 'move'),
      axes: basis,
      free: bone.attach === 'tip' ? [false, false, false] : free('move'),
    },
    turn: { values: turn, axes: turnAxes(basis, turn, bone.turnOrder ?? 'xyz'), free: free('turn') },
  };
}

export function withGrip(pose: Pose, bone: Bone, channel: 'move' | 'turn', values: Vec3): Pose {
  return withValues(pose, bone, channel, values);
}

const RIG_AXES: Basis = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/** The handles of Build: where a made bone lies at rest, along the rig's own axes. */
export function restGrip({ rig, world }: Solved, bone: Bone): Grip {
  const turn = anglesOf(bone.rest.turn, 'xyz');
  const attached = bone.attach === 'tip';
  return {
    bone: bone.name,
    holds: 'rest',
    origin: originOf(rig, world, bone),
    move: { values: bone.rest.base, axes: RIG_AXES, free: [!attached, !attached, !attached] },
    turn: { values: turn, axes: turnAxes(RIG_AXES, turn, 'xyz'), free: [true, true, true] },
  };
}

export function restEdit(bone: string, channel: 'move' | 'turn', values: Vec3): Edit {
  if (channel === 'move') return setRest(bone, { base: values }, 'base');
  return setRest(bone, { turn: turnOf(values, 'xyz') }, 'turn');
}

/** The name of a handle, apart from those of the slider and the number that do the same: "move x of wind, on the plate". */
export function handleName({ holds, bone }: Grip, channel: 'move' | 'turn', axis: 0 | 1 | 2): string {
  const words = { pose: channel, rest: channel === 'move' ? 'rest base' : 'rest turn' }[holds];
  return `${words} ${'xyz'[axis]} of ${bone}, on the plate`;
}

function originOf(rig: Rig, world: Float64Array, bone: Bone): Vec3 {
  return frameAt(world, rig.bones.indexOf(bone)).base;
}

/** Each angle of an order turns about its axis as the angles before it have turned that. */
function turnAxes(basis: Basis, angles: Vec3, order: TurnOrder): Basis {
  const axes: Vec3[] = [];
  let before: Vec3 = [0, 0, 0];
  for (const letter of order) {
    const i = 'xyz'.indexOf(letter);
    axes[i] = unit(applied(basis, columns(turnOf(before, order))[i as 0 | 1 | 2]));
    before = before.with(i, angles[i]!) as unknown as Vec3;
  }
  return axes as unknown as Basis;
}
