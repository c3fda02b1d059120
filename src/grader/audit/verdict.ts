import type { Marking } from '../grade.ts';
import { prove } from '../prove.ts';
import { kindOf, type Requirement } from '../requirements/table.ts';
import { subjectOf } from '../subject.ts';
import type { Candidate } from './candidates.ts';
import { breaks } from './judge.ts';

const SEED = 29;

/**
 * The judge's word: structure is read off the document as it is; behaviour is hunted in the judge's own way, over so
 * many random poses a requirement. In a pose that is handed in there is nothing to hunt.
 */
export function verdictOn({ exercise }: Marking, candidate: Candidate, samples: number): 'broken' | 'sound' {
  const prepared = subjectOf(exercise, candidate.rig, candidate.parts);
  if (!prepared.ok) return 'broken';
  const { subject } = prepared;
  const isRead = (one: Requirement) => candidate.inputs !== undefined || kindOf(one).about === 'structure';
  const read = prove({ ...exercise, requirements: exercise.requirements.filter(isRead) }, candidate);
  if (read.findings.some(({ status }) => status === 'missed')) return 'broken';
  const isUnbound = exercise.parts.some(({ id }) => subject.binding.get(id) === null);
  if (isUnbound) return 'broken';
  const hunted = exercise.requirements.filter((one) => !isRead(one));
  return breaks(hunted, subject, samples, SEED) ? 'broken' : 'sound';
}
