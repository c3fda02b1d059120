/** Three-vectors as plain values; every function returns a new one. */
export type Vector = readonly [number, number, number];

export const zeroVector: Vector = [0, 0, 0];
export const unitX: Vector = [1, 0, 0];
export const unitY: Vector = [0, 1, 0];
export const unitZ: Vector = [0, 0, 1];

export const add = (a: Vector, b: Vector): Vector => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const subtract = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const scale = (a: Vector, by: number): Vector => [a[0] * by, a[1] * by, a[2] * by];
export const negate = (a: Vector): Vector => scale(a, -1);
export const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const size = (a: Vector): number => Math.hypot(a[0], a[1], a[2]);
export const unit = (a: Vector): Vector => scale(a, 1 / size(a));
export const distance = (a: Vector, b: Vector): number => size(subtract(a, b));

/** From a to b in a straight line. */
export const blend = (a: Vector, b: Vector, share: number): Vector => add(a, scale(subtract(b, a), share));

/** What is left of a when its part along the unit vector n is taken away. */
export const madePerpendicular = (a: Vector, n: Vector): Vector => subtract(a, scale(n, dot(a, n)));

/** The angle between a and the nearer of ±b, radians. */
export const angleToLineRad = (a: Vector, b: Vector): number => Math.atan2(size(cross(a, b)), Math.abs(dot(a, b)));
