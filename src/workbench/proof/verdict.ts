import type { Graded } from '../../grader/result.ts';

/** "3 of 5 requirements are met. Mark 60 %." A gate that is missed is said, for it alone makes the mark 0. */
export function verdict(result: Graded): string {
  const met = result.requirements.filter(({ status }) => status === 'met').length;
  const all = result.requirements.length;
  const mark = `Mark ${Math.round(result.mark * 100)} %.`;
  if (result.passed) return `Proved: all ${all} requirements are met. ${mark}`;
  const gates = result.requirements.filter(({ gate, status }) => gate && status !== 'met').length;
  const spoiled = gates > 0 ? ' Something that held at the start no longer holds, so nothing counts yet.' : '';
  return `${met} of ${all} requirements are met. ${mark}${spoiled}`;
}
