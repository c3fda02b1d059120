import type { Bone } from '../../solver/document/rig.ts';
import type { Figure } from './drawing.ts';
import type { Frame } from './frame.ts';
import type { Manner } from './manner.ts';
import { controlShape, eye, guideShape, helperShape, skinShape } from './roleShapes.ts';

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
