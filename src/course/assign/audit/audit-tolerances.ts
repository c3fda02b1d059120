import { assignedMarking } from '../../../delivery/mark/markings.ts';
import { auditVariant } from '../../../grader/audit/auditVariant.ts';
import { checkVariant } from '../../../grader/exercise/checkVariant.ts';
import type { ExerciseDefinition } from '../../../grader/exercise/definition.ts';
import { type Marking, markingOf } from '../../../grader/index.ts';

/** An exercise with what is to be allowed in it. */
export interface AuditTask {
  definition: ExerciseDefinition;
  edition: string;
  tolerances: Readonly<Record<string, number>>;
}

export interface ToleranceAudit {
  isSound: boolean;
  rightTried: number;
  rightRefused: number;
  wrongTried: number;
  wrongPassed: number;
  /** What was found, in plain words. */
  findings: string[];
}

/** That of `counterpose audit` without --full. */
const QUICK = { samples: 200, mutants: 60 };

/**
 * Audits an exercise under changed tolerances: the variant as drawn with a sample of mistakes, the other structures by
 * their references and wrong turns. An exercise of the course is sound before, so whatever is found is due to the change.
 * @param told how many of the structures are done
 */
export function auditTolerances(task: AuditTask, told: (done: number, of: number) => void): ToleranceAudit {
  const { definition, edition, tolerances } = task;
  const of = definition.structures.length;
  const drawn = assignedMarking(definition, tolerances, { edition, seed: 0 });
  const { counts, findings } = auditVariant(drawn, QUICK);
  const all = [...newGates(drawn), ...findings];
  told(1, of);
  for (let seed = 1; seed < of; seed++) {
    const marking = assignedMarking(definition, tolerances, { edition, seed });
    all.push(...newGates(marking), ...checkVariant(marking));
    told(seed + 1, of);
  }
  const { rightTried, rightRefused, wrongTried, wrongPassed, undecided } = counts;
  const isSound = all.length === 0 && rightRefused + wrongPassed + undecided === 0;
  return { isSound, rightTried, rightRefused, wrongTried, wrongPassed, findings: all };
}

/** Requirements so loose that the untouched start meets them: they would earn marks for nothing. */
function newGates({ exercise, gates }: Marking): string[] {
  const met = [...markingOf(exercise).gates].filter((id) => !gates.has(id));
  return met.map((id) => `${exercise.id} (${exercise.structure}): the untouched start already meets ${id}`);
}
