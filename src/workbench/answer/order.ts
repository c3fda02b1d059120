import type { Exercise } from '../../grader/exercise/exercise.ts';

/** The names that are to be put in order, as the exercise lists them. */
export function orderAsked({ requirements }: Pick<Exercise, 'requirements'>): readonly string[] {
  const asked = requirements.find((requirement) => requirement.kind === 'in-order');
  return asked?.kind === 'in-order' ? asked.items : [];
}
