import { workerData } from 'node:worker_threads';
import { auditVariant, type VariantAudit } from '../../grader/audit/auditVariant.ts';
import { noCounts } from '../../grader/audit/counts.ts';
import { markingOf, openExercise } from '../../grader/index.ts';
import { Exercises } from '../content.ts';
import { serve } from '../serve.ts';

export interface AuditTask {
  id: string;
  seed: number;
  samples: number;
  mutants: number;
}

const { contentDir } = workerData as { contentDir?: string };
const exercises = new Exercises(contentDir);

serve(({ id, seed, samples, mutants }: AuditTask): VariantAudit => {
  const { definition, edition } = exercises.get(id)!;
  try {
    return auditVariant(markingOf(openExercise(definition, { edition, seed })), { samples, mutants });
  } catch (error) {
    return { counts: { ...noCounts(), margins: 1 }, findings: [`${id} (seed ${seed}): ${(error as Error).message}`] };
  }
});
