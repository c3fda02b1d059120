import type { Vec3 } from '../../solver/document/rig.ts';

/** Where a reader of a plate looks from. Rig space: +X to the character's left, +Y up, +Z forward. */
export const VIEWS = {
  /** Facing the character: its left is on the right. */
  'from the front': { right: [1, 0, 0], up: [0, 1, 0], toward: [0, 0, 1] },
  /** Forward is up the page, the character's left on the left. */
  'from above': { right: [-1, 0, 0], up: [0, 0, 1], toward: [0, 1, 0] },
  /** From the character's right: forward is on the right. */
  'from the side': { right: [0, 0, 1], up: [0, 1, 0], toward: [-1, 0, 0] },
} as const satisfies Record<string, { right: Vec3; up: Vec3; toward: Vec3 }>;

export type ViewName = keyof typeof VIEWS;

export interface Seen {
  /** Drawing units, y upwards. */
  point: readonly [x: number, y: number];
  /** Metres toward the reader. */
  depth: number;
}

/** A point of rig space, in metres, as it is seen at `scale` drawing units a metre. */
export function project(point: Vec3, view: ViewName, scale: number): Seen {
  const { right, up, toward } = VIEWS[view];
  return { point: [dot(point, right) * scale, dot(point, up) * scale], depth: dot(point, toward) };
}

const dot = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
