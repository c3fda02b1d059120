import { workerData } from 'node:worker_threads';
import { auditVariant } from '../../grader/audit/auditVariant.ts';
import { fails } from '../../grader/audit/counts.ts';
import { checkVariant } from '../../grader/exercise/checkVariant.ts';
import { markingOf, openExercise } from '../../grader/index.ts';
import { Exercises } from '../content.ts';
import { serve } from '../serve.ts';

export interface CheckTask {
  id: string;
  seed: number;
  /** Whether a quick audit is part of it. */
  audit: boolean;
}

/** Fewer than a quick audit by itself tries: every exercise is checked at every change. */
const QUICK = { samples: 60, mutants: 20, equivalents: 24 };

const { contentDir } = workerData as { contentDir?: string };
const exercises = new Exercises(contentDir);

serve(({ id, seed, audit }: CheckTask): string[] => {
  try {
    const { definition, edition } = exercises.get(id)!;
    const marking = markingOf(openExercise(definition, { edition, seed }));
    if (!audit) return checkVariant(marking);
    const { counts, findings } = auditVariant(marking, QUICK);
    if (findings.length > 0 || !fails(counts)) return findings;
    const { counterposes, counterposesSimple } = counts;
    return [
      `${id}: only ${counterposesSimple} of ${counterposes} counterposes move one or two inputs, expected 95 in 100`,
    ];
  } catch (error) {
    return [`${id} (seed ${seed}): ${(error as Error).message}`];
  }
});
