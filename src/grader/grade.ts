import { counterposeOf } from './counterpose.ts';
import { diagnose, type KnownWrong, knownWrongs } from './diagnosis.ts';
import type { Answer } from './exercise/answer.ts';
import type { Exercise } from './exercise/exercise.ts';
import { type Finding, type Proof, prove } from './prove.ts';
import { kindOf } from './requirements/table.ts';
import { responseKindOf, type Work } from './responses/response.ts';
import type { Graded, RequirementResult } from './result.ts';

/** An exercise with what is the same for all its answers: its gates, and its wrong turns once they are needed. */
export interface Marking {
  readonly exercise: Exercise;
  readonly gates: ReadonlySet<string>;
  readonly wrongs: () => readonly KnownWrong[];
}

/** Gates are what the untouched start meets, with the parts that stand in it under the names of the task. */
export function markingOf(exercise: Exercise): Marking {
  const met = prove(exercise, { rig: exercise.start }).findings.filter(({ status }) => status === 'met');
  let wrongs: readonly KnownWrong[] | null = null;
  return {
    exercise,
    gates: new Set(met.map(({ requirement }) => requirement.id)),
    wrongs: () => {
      wrongs ??= knownWrongs(exercise);
      return wrongs;
    },
  };
}

/** Grades an answer. The same marking and answer give the same bits everywhere. */
export function grade(marking: Marking, answer: Answer): Graded {
  const { exercise } = marking;
  const graded = gradeWork(marking, workOf(exercise, answer));
  return answer.edition === exercise.edition ? graded : { ...graded, flags: ['edition-differs'] };
}

/** Grades what was handed in, in whatever document. */
export function gradeWork(marking: Marking, work: Work): Graded {
  const { exercise, gates } = marking;
  const proof = prove(exercise, work);
  const requirements = proof.findings.map((finding) => resultOf(marking, proof, finding));
  const gatesHold = requirements.every(({ id, status }) => !gates.has(id) || status === 'met');
  return {
    outcome: 'graded',
    exercise: exercise.id,
    exerciseKind: exercise.kind,
    seed: exercise.seed,
    passed: requirements.every(({ status }) => status === 'met'),
    mark: gatesHold ? shareMet(requirements) : 0,
    requirements,
    flags: [],
  };
}

/** What an answer that was read without refusal hands in. */
function workOf(exercise: Exercise, { rig, parts, response }: Answer): Work {
  if (rig) return { rig, ...(parts && { parts }) };
  const read = responseKindOf(exercise.kind)!.read(response, exercise);
  if (!read.ok) throw new Error(`${exercise.id}: a response that was not read`);
  return read.value;
}

function resultOf(marking: Marking, proof: Proof, finding: Finding): RequirementResult {
  const { requirement, status, cause } = finding;
  const { prepared, findings } = proof;
  const missed = status === 'missed';
  const shown = missed && finding.meter && prepared.ok ? counterposeOf(prepared.subject, finding) : null;
  return {
    id: requirement.id,
    kind: requirement.kind,
    gate: marking.gates.has(requirement.id),
    weight: requirement.weight ?? 1,
    status,
    measured: shown ? shown.measured : finding.measured,
    allowed: requirement.allowed,
    unit: kindOf(requirement).unit(requirement),
    counterpose: shown?.pose ?? null,
    diagnosis: missed ? diagnose(findings, finding, marking.wrongs()) : null,
    cause: missed || status === 'not-checked' ? cause : null,
  };
}

function shareMet(requirements: readonly RequirementResult[]): number {
  const earning = requirements.filter(({ gate }) => !gate);
  const weightOf = (list: readonly RequirementResult[]) => list.reduce((sum, { weight }) => sum + weight, 0);
  const all = weightOf(earning);
  return all === 0 ? 0 : weightOf(earning.filter(({ status }) => status === 'met')) / all;
}
