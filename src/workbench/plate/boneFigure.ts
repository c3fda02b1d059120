import type { Bone, Vec3 } from '../../solver/document/rig.ts';
import type { Dash, Figure, Stroke, Tone } from './drawing.ts';
import { type Flat, notchedRing, paddle, tape } from './outline.ts';
import { lengthOf, plus, scaled } from './vector.ts';

/** A bone's world transform as vectors: the three columns of its 3×3 part, and its base. */
export interface Frame {
  readonly x: Vec3;
  readonly y: Vec3;
  readonly z: Vec3;
  readonly base: Vec3;
}

export function frameAt(world: Float64Array, bone: number): Frame {
  const at = (i: number): Vec3 => [world[12 * bone + i]!, world[12 * bone + i + 1]!, world[12 * bone + i + 2]!];
  return { x: at(0), y: at(3), z: at(6), base: at(9) };
}

export function pointOf(frame: Frame, x: number, y: number, z: number): Vec3 {
  return plus(frame.base, plus(scaled(frame.x, x), plus(scaled(frame.y, y), scaled(frame.z, z))));
}

/** How a bone is drawn. */
export interface Manner {
  /** Metres a pixel: strokes and outlines keep their width at any zoom. */
  readonly pixel: number;
  /** The rig's own size, metres. */
  readonly size: number;
  readonly chosen: boolean;
  /** Where it should be, or would be: fine dashes and no leaf. */
  readonly ghost?: Tone;
}

export const ROLE_TONES = { skin: 'ink', helper: 'ochre', control: 'indigo', guide: 'ink' } as const;

/** A bone in the shape of its role: paddle, reed, notched ring or ruled tape; an eye has a pupil and a gaze line. */
export function boneFigure(bone: Bone, frame: Frame, manner: Manner): Figure {
  const draw = isEye(bone) ? eye : SHAPES[bone.role];
  const figure = draw(bone, frame, manner);
  if (!manner.ghost) return figure;
  const tone = manner.ghost;
  return { ...figure, leaves: [], strokes: figure.strokes.map((stroke) => ({ ...stroke, tone, dash: 'fine' })) };
}

/** A plain ball hides its turning, so a bone called an eye shows where it looks. */
export function isEye(bone: Bone): boolean {
  return bone.role !== 'control' && bone.role !== 'guide' && bone.name.split('_').includes('eye');
}

const SHAPES = { skin: skinShape, helper: helperShape, control: controlShape, guide: guideShape };

function skinShape(bone: Bone, frame: Frame, manner: Manner): Figure {
  const [base, tip] = halves(bone, manner);
  const { length } = bone.rest;
  const edge = flat(frame, paddle(length, base, tip));
  return {
    bone: bone.name,
    at: frame.base,
    leaves: [{ points: edge }],
    strokes: [
      closed(edge, 'ink', 1.4),
      line([frame.base, pointOf(frame, 0, 0, length)], 'ink', 0.9),
      ...dotAt(frame, 'ink', manner),
      ...twice(manner, (grown) => flat(frame, paddle(length, base, tip, grown))),
    ],
  };
}

function helperShape(bone: Bone, frame: Frame, manner: Manner): Figure {
  const [base, tip] = halves(bone, manner).map((half) => half * 0.55) as [number, number];
  const { length } = bone.rest;
  return {
    bone: bone.name,
    at: frame.base,
    leaves: [],
    strokes: [
      closed(flat(frame, paddle(length, base, tip)), 'ochre', 1.3, 'reed'),
      line([frame.base, pointOf(frame, 0, 0, length)], 'ochre', 0.9),
      ...dotAt(frame, 'ochre', manner),
      ...twice(manner, (grown) => flat(frame, paddle(length, base, tip, grown))),
    ],
  };
}

function controlShape(bone: Bone, frame: Frame, manner: Manner): Figure {
  const radius = ringRadius(bone, manner);
  const ring = (r: number) => notchedRing(r).map(([x, y]) => pointOf(frame, x, y, 0));
  return {
    bone: bone.name,
    at: frame.base,
    leaves: [],
    strokes: [
      closed(ring(radius), 'indigo', 1.6),
      line([frame.base, pointOf(frame, 0, 0, Math.max(bone.rest.length, radius * 0.8))], 'indigo', 1),
      ...dotAt(frame, 'indigo', manner),
      ...twice(manner, (grown) => ring(radius + grown)),
    ],
  };
}

function guideShape(bone: Bone, frame: Frame, manner: Manner): Figure {
  const half = halves(bone, manner)[0] * 0.6;
  const { length } = bone.rest;
  const edge = flat(frame, tape(length, half));
  return {
    bone: bone.name,
    at: frame.base,
    leaves: [{ points: edge }],
    strokes: [
      closed(edge, 'ink', 1.1),
      ...ticks(frame, length, half, manner),
      ...twice(manner, (grown) => flat(frame, tape(length, half, grown))),
    ],
  };
}

/** Ticks of true length: a long one every ten. */
function ticks(frame: Frame, length: number, half: number, manner: Manner): Stroke[] {
  const metres = lengthOf(frame.z) * length;
  const step = [0.001, 0.005, 0.01, 0.05, 0.1, 0.5, 1].find((each) => each > 5 * manner.pixel) ?? 10;
  const count = Math.min(400, Math.floor(metres / step + 1e-9));
  return Array.from({ length: count }, (_, i) => {
    const at = ((i + 1) * step * length) / metres;
    const reach = (i + 1) % 10 === 0 ? -half : 0;
    return line([pointOf(frame, half, 0, at), pointOf(frame, reach, 0, at)], 'ink', 0.8);
  });
}

function eye(bone: Bone, frame: Frame, manner: Manner): Figure {
  const { length } = bone.rest;
  const tone = ROLE_TONES[bone.role];
  const circle = (radius: number, z: number) =>
    Array.from({ length: 28 }, (_, i) => {
      const angle = (i / 28) * 2 * Math.PI;
      return pointOf(frame, Math.cos(angle) * radius, Math.sin(angle) * radius, z);
    });
  const gaze = [pointOf(frame, 0, 0, length), pointOf(frame, 0, 0, length + manner.size * 1.6)];
  return {
    bone: bone.name,
    at: pointOf(frame, 0, 0, length),
    leaves: [{ points: circle(length * 0.62, length * 0.78) }],
    strokes: [
      closed(circle(length * 0.62, length * 0.78), tone, 1.2),
      closed(circle(length * 0.24, length * 0.97), tone, 2.6),
      { ...line(gaze, tone, 0.9), dash: 'fine' },
      ...dotAt(frame, tone, manner),
      ...twice(manner, (grown) => circle(length * 0.62 + grown, length * 0.78)),
    ],
  };
}

/** Half widths at base and tip: from the bone's length, within what the rig's size lets one see. */
function halves(bone: Bone, manner: Manner): [base: number, tip: number] {
  const base = Math.min(0.045 * manner.size, Math.max(0.012 * manner.size, 0.1 * bone.rest.length));
  return [base, base * 0.5];
}

function ringRadius(bone: Bone, manner: Manner): number {
  return Math.min(0.11 * manner.size, Math.max(0.045 * manner.size, 0.9 * bone.rest.length));
}

function flat(frame: Frame, outline: Flat): Vec3[] {
  return outline.map(([x, z]) => pointOf(frame, x, 0, z));
}

function line(points: readonly Vec3[], tone: Tone, width: number, dash: Dash = 'none'): Stroke {
  return { points, tone, width, dash };
}

function closed(points: readonly Vec3[], tone: Tone, width: number, dash: Dash = 'none'): Stroke {
  return line([...points, points[0]!], tone, width, dash);
}

/** A dot at the base: a small square cross-stroke as wide as long. */
function dotAt(frame: Frame, tone: Tone, manner: Manner): Stroke[] {
  const r = 0.9 * manner.pixel;
  return [line([plus(frame.base, [-r, 0, 0]), plus(frame.base, [r, 0, 0])], tone, 5)];
}

/** What is chosen is outlined twice and keeps its colour. */
function twice(manner: Manner, outline: (grown: number) => Vec3[]): Stroke[] {
  if (!manner.chosen) return [];
  return [4, 8].map((pixels) => closed(outline(pixels * manner.pixel), 'ink', 1));
}
