import type { Bone } from '../../solver/document/rig.ts';
import type { Figure, Stroke } from './drawing.ts';
import { type Frame, pointOf } from './frame.ts';
import { type Manner, ROLE_TONES } from './manner.ts';
import { notchedRing, paddle, tape } from './outline.ts';
import { closed, dotAt, flat, line, twice } from './strokeTools.ts';
import { lengthOf } from './vector.ts';

export function skinShape(bone: Bone, frame: Frame, manner: Manner): Figure {
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

export function helperShape(bone: Bone, frame: Frame, manner: Manner): Figure {
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

export function controlShape(bone: Bone, frame: Frame, manner: Manner): Figure {
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

export function guideShape(bone: Bone, frame: Frame, manner: Manner): Figure {
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

export function eye(bone: Bone, frame: Frame, manner: Manner): Figure {
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
