import type { ExerciseKind } from '../grader/exercise/definition.ts';

export const KIND_WORDS: Readonly<Record<ExerciseKind, string>> = {
  build: 'Build',
  repair: 'Repair',
  predict: 'Predict',
  pose: 'Pose',
  order: 'Order',
  shape: 'Shape',
};
