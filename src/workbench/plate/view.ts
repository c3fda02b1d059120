import type { Vec3 } from '../../solver/document/rig.ts';
import { cross, dot, minus, plus, scaled } from './vector.ts';

export type ViewName = 'front' | 'above' | 'side' | 'free';
export const VIEWS: readonly { name: ViewName; says: string }[] = [
  { name: 'front', says: 'From the front' },
  { name: 'above', says: 'From above' },
  { name: 'side', says: 'From the side' },
  { name: 'free', says: 'Free' },
];

/** How a plate is looked at: which way, how near, and at what. */
export interface Look {
  readonly view: ViewName;
  /** Of the free view: degrees round the upright, and up from level. */
  readonly round: number;
  readonly rise: number;
  /** 1 fits everything. */
  readonly zoom: number;
}
export const FIRST_LOOK: Look = { view: 'free', round: 35, rise: 22, zoom: 1 };

/** An orthographic view: rig space to pixels. `toward` points at the reader. */
export interface View {
  readonly right: Vec3;
  readonly up: Vec3;
  readonly toward: Vec3;
  readonly centre: Vec3;
  /** Pixels a metre. */
  readonly scale: number;
  readonly width: number;
  readonly height: number;
}

/** What a plate shows, rig space, metres: middle and half-widths of a box around it, and the points themselves. */
export interface Extent {
  readonly centre: Vec3;
  readonly half: Vec3;
  readonly points: readonly Vec3[];
  /** Where the axes are drawn from, and how long. */
  readonly axes: { readonly foot: Vec3; readonly length: number };
}

/** The view that shows all of an extent, with room around it to move in. */
export function viewOf(look: Look, extent: Extent, width: number, height: number): View {
  const { right, up, toward } = axesOf(look);
  const across = span(extent.points, right);
  const upward = span(extent.points, up);
  const room = 0.22 * Math.max(across.half, upward.half, 1e-3);
  const margin = 30;
  const fit = Math.min(
    (width - 2 * margin) / (2 * (across.half + room)),
    (height - 2 * margin) / (2 * (upward.half + room)),
  );
  const near = dot(extent.centre, toward);
  const centre = plus(scaled(toward, near), plus(scaled(right, across.middle), scaled(up, upward.middle)));
  return { right, up, toward, centre, scale: fit * look.zoom, width, height };
}

/** Pixels from the top left, and metres toward the reader. */
export function project(view: View, point: Vec3): [x: number, y: number, near: number] {
  const d = minus(point, view.centre);
  return [
    view.width / 2 + dot(d, view.right) * view.scale,
    view.height / 2 - dot(d, view.up) * view.scale,
    dot(d, view.toward),
  ];
}

/** The rig-space shift that moves a point by so many pixels across the view's plane. */
export function unproject(view: View, dx: number, dy: number): Vec3 {
  return plus(scaled(view.right, dx / view.scale), scaled(view.up, -dy / view.scale));
}

function axesOf(look: Look): { right: Vec3; up: Vec3; toward: Vec3 } {
  if (look.view === 'front') return { right: [1, 0, 0], up: [0, 1, 0], toward: [0, 0, 1] };
  // As in the lessons: forward is up the page, the character's left on the left.
  if (look.view === 'above') return { right: [-1, 0, 0], up: [0, 0, 1], toward: [0, 1, 0] };
  // From the character's right, so that forward reads from left to right.
  if (look.view === 'side') return { right: [0, 0, 1], up: [0, 1, 0], toward: [-1, 0, 0] };
  const round = (look.round * Math.PI) / 180;
  const rise = (look.rise * Math.PI) / 180;
  const toward: Vec3 = [Math.sin(round) * Math.cos(rise), Math.sin(rise), Math.cos(round) * Math.cos(rise)];
  const right: Vec3 = [Math.cos(round), 0, -Math.sin(round)];
  return { right, up: cross(toward, right), toward };
}

function span(points: readonly Vec3[], along: Vec3): { middle: number; half: number } {
  let least = Infinity;
  let most = -Infinity;
  for (const point of points) {
    const at = dot(point, along);
    least = Math.min(least, at);
    most = Math.max(most, at);
  }
  return { middle: (least + most) / 2, half: (most - least) / 2 };
}
