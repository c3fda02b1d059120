/**
 * The rig document as it stands in a file: names, fields and defaults as the format fixes them.
 * Right-handed, +Y up, +Z forward, metres; quaternions [x, y, z, w]; angles in degrees.
 * Optional fields are absent where the default is meant; nothing here is filled in.
 */

export type Vec3 = readonly [number, number, number];
export type Quat = readonly [number, number, number, number];

export const ROLES = ['skin', 'helper', 'control', 'guide'] as const;
export type Role = (typeof ROLES)[number];
export type Attach = 'free' | 'tip';
export type Inherits = 'all' | 'uniform' | 'turn';
export type TurnOrder = 'xyz' | 'xzy' | 'yxz' | 'yzx' | 'zxy' | 'zyx';
export type AxisName = '+x' | '-x' | '+y' | '-y' | '+z' | '-z';
/** A named axis of a bone, or a unit vector in the bone's own frame. */
export type Axis = AxisName | Vec3;
export type Channel = 'move' | 'turn' | 'size';

export interface Rest {
  /** Rig space, metres. */
  base: Vec3;
  /** Unit quaternion, rig space. */
  turn: Quat;
  /** Metres, > 0. */
  length: number;
}

export interface Locks {
  move?: readonly [boolean, boolean, boolean];
  turn?: readonly [boolean, boolean, boolean];
  size?: readonly [boolean, boolean, boolean];
}

export interface Switch {
  name: string;
  min: number;
  max: number;
  default: number;
  sliding?: boolean;
}

/** A point on a bone: W·(0, 0, at·length). */
export interface Point {
  bone: string;
  /** 0 base (default) to 1 tip. */
  at?: number;
}

interface LinkBase {
  name: string;
  /** 0..1, default 1. */
  weight?: number;
}

export interface FollowLink extends LinkBase {
  kind: 'follow';
  source: string;
  channels?: readonly Channel[];
  offset?: 'none' | 'keep';
}

/** Where the up axis of an aim should point: a point, a direction in rig space, or an axis of a bone. */
export type UpToward = Point | { direction: Vec3 } | { bone: string; axis: Axis };

export interface AimLink extends LinkBase {
  kind: 'aim';
  target: Point;
  axis?: Axis;
  up?: { axis: Axis; toward: UpToward };
}

export interface SpanLink extends LinkBase {
  kind: 'span';
  target: Point;
  sides?: 'free' | 'volume';
  restLength?: number;
  least?: number;
  most?: number;
}

export interface ShareLink extends LinkBase {
  kind: 'share';
  source: string;
  fraction: number;
}

export interface LimitLink extends LinkBase {
  kind: 'limit';
  /** Metres, in the bone's rest frame under its parent. */
  move?: { min: Vec3; max: Vec3 };
  /** Degrees, [min, max]. */
  yaw?: readonly [number, number];
  pitch?: readonly [number, number];
  twist?: readonly [number, number];
  cone?: number;
}

export interface ReachLink extends LinkBase {
  kind: 'reach';
  target: Point;
  pole?: Point;
}

export type Link = FollowLink | AimLink | SpanLink | ShareLink | LimitLink | ReachLink;
export type LinkKind = Link['kind'];

export interface Bone {
  name: string;
  parent: string | null;
  role: Role;
  rest: Rest;
  attach?: Attach;
  inherits?: Inherits;
  turnOrder?: TurnOrder;
  locks?: Locks;
  switches?: readonly Switch[];
  links?: readonly Link[];
}

export type DriverSource =
  | { switch: string }
  | { turn: { bone: string; axis: 'x' | 'y' | 'z' } }
  | { shift: { bone: string; axis: 'x' | 'y' | 'z' } }
  | { gap: readonly [Point, Point] };

export interface DriverInput {
  from: DriverSource;
  /** Default 1. */
  times?: number;
}

export type MapShape = 'straight' | 'eased' | 'stepped' | { bezier: readonly [number, number, number, number] };

export interface DriverMap {
  keys: readonly (readonly [number, number])[];
  shape?: MapShape;
  beyond?: 'hold' | 'extend';
}

export type DrivenChannel = 'move.x' | 'move.y' | 'move.z' | 'turn.x' | 'turn.y' | 'turn.z';
export type DriverOutput =
  | { bone: string; link: string; field: 'weight' | 'fraction' }
  | { switch: string }
  | { bone: string; channel: DrivenChannel };

export interface Driver {
  name: string;
  inputs: readonly DriverInput[];
  map: DriverMap;
  output: DriverOutput;
}

export interface Mesh {
  positions: readonly number[];
  triangles: readonly number[];
  skinning?: 'linear' | 'dual';
}

export interface Rig {
  format: 'counterpose/rig';
  version: 1;
  title?: string;
  bones: readonly Bone[];
  drivers?: readonly Driver[];
  mesh?: Mesh;
}

export interface BonePose {
  move?: Vec3;
  turn?: Quat | { angles: Vec3 };
  size?: Vec3;
}

export interface Pose {
  bones?: Readonly<Record<string, BonePose>>;
  switches?: Readonly<Record<string, number>>;
}
