import type { Pose } from '../../solver/document/rig.ts';
import { checkVariant } from '../exercise/checkVariant.ts';
import { gradeWork, type Marking } from '../grade.ts';
import { prove } from '../prove.ts';
import { kindOf, type Requirement } from '../requirements/table.ts';
import type { Graded } from '../result.ts';
import { type Subject, subjectOf } from '../subject.ts';
import { asWritten, type Candidate, freeOnes, isLeftOpen, mutantsOf, rightOnes } from './candidates.ts';
import { type Counts, noCounts } from './counts.ts';
import { breaks } from './judge.ts';
import { differsVisibly, type Seen, seenOf } from './seen.ts';

export interface AuditOptions {
  /** Random poses that the judge tries for each requirement. */
  samples: number;
  /** Of the mutants, every how many-th is tried; 1 for all. */
  every: number;
}

export interface VariantAudit {
  counts: Counts;
  /** What is for the author to settle, in plain words. */
  findings: string[];
}

/** Audits one variant of an exercise: its right rigs must pass, its wrong ones must be missed and told apart. */
export function auditVariant(marking: Marking, options: AuditOptions): VariantAudit {
  const { exercise } = marking;
  const counts = noCounts();
  const findings = checkVariant(marking);
  counts.margins = findings.length;
  const where = `${exercise.id} (${exercise.structure}, size ${exercise.size})`;
  const gradeOne = (candidate: Candidate) => gradeWork(marking, candidate);
  const free = freeOnes(exercise);

  for (const candidate of [...exercise.references.flatMap((one) => rightOnes(exercise, one)), ...free]) {
    counts.rightTried++;
    const missed = missedOf(gradeOne(candidate));
    if (missed.length === 0) continue;
    counts.rightRefused++;
    findings.push(`${where}: ${candidate.says} is right but misses ${missed.join(', ')}`);
  }

  const accepted = [...exercise.references.map(asWritten), ...free].map((one) => seenIn(marking, one));
  const looksAccepted = (seen: Seen | null) => accepted.some((one) => seen && one && !differsVisibly(seen, one));
  const known = exercise.wrongTurns
    .map((wrong) => ({ id: wrong.id, seen: seenIn(marking, asWritten(wrong)) }))
    .filter(({ seen }) => !looksAccepted(seen));
  for (const wrong of exercise.wrongTurns) {
    const candidate = asWritten(wrong);
    if (judged(marking, candidate, options) === 'sound') {
      findings.push(`${where}: the judge finds nothing wrong with the wrong turn ${wrong.id}`);
      counts.undecided++;
      continue;
    }
    countWrong(candidate, wrong.id);
  }

  const mutants = exercise.references.flatMap((reference) => mutantsOf(exercise, reference));
  mutants.filter((_, index) => index % options.every === 0).forEach(countMutant);
  return { counts, findings };

  function countMutant(candidate: Candidate) {
    const seen = seenIn(marking, candidate);
    if (judged(marking, candidate, options) === 'broken') return countWrong(candidate, behavesAs(seen));
    if (looksAccepted(seen) || isLeftOpen(exercise, candidate) || !gradeOne(candidate).passed) return;
    counts.undecided++;
    findings.push(
      `${where}: ${candidate.says} looks different and breaks nothing: a free choice, or a requirement is lacking`,
    );
  }

  function countWrong(candidate: Candidate, wrongTurn: string | null) {
    const result = gradeOne(candidate);
    counts.wrongTried++;
    if (result.passed) {
      counts.wrongPassed++;
      findings.push(`${where}: ${candidate.says} is wrong but passes`);
      return;
    }
    for (const { counterpose } of result.requirements) {
      if (!counterpose) continue;
      counts.counterposes++;
      if (channelsOffRest(counterpose) <= 2) counts.counterposesSimple++;
    }
    if (wrongTurn === null) return;
    counts.diagnosed++;
    if (result.requirements.some(({ diagnosis }) => diagnosis === wrongTurn)) counts.diagnosedRight++;
    else findings.push(`${where}: ${candidate.says} behaves as ${wrongTurn} but is not told so`);
  }

  function behavesAs(seen: Seen | null): string | null {
    const like = seen && known.find((one) => one.seen && !differsVisibly(seen, one.seen));
    return like ? like.id : null;
  }
}

const missedOf = (result: Graded): string[] =>
  result.requirements.filter(({ status }) => status !== 'met').map(({ id }) => id);

function subjectIn({ exercise }: Marking, { rig, parts }: Candidate): Subject | null {
  const prepared = subjectOf(exercise, rig, parts);
  return prepared.ok ? prepared.subject : null;
}

function seenIn(marking: Marking, candidate: Candidate): Seen | null {
  const subject = subjectIn(marking, candidate);
  return subject && seenOf(subject);
}

/**
 * The judge's word: structure is read off the document as it is; behaviour is hunted in the judge's own way. In a pose
 * that is handed in there is nothing to hunt.
 */
function judged(marking: Marking, candidate: Candidate, { samples }: AuditOptions): 'broken' | 'sound' {
  const { exercise } = marking;
  const subject = subjectIn(marking, candidate);
  if (!subject) return 'broken';
  const isRead = (one: Requirement) => candidate.inputs !== undefined || kindOf(one).about === 'structure';
  const structural = prove({ ...exercise, requirements: exercise.requirements.filter(isRead) }, candidate);
  if (structural.findings.some(({ status }) => status === 'missed')) return 'broken';
  const isUnbound = exercise.parts.some(({ id }) => subject.binding.get(id) === null);
  if (isUnbound) return 'broken';
  const hunted = exercise.requirements.filter((one) => !isRead(one));
  return hunted.some((one) => breaks(one, subject, samples, 29)) ? 'broken' : 'sound';
}

/** Channels and switches that a pose moves. */
function channelsOffRest(pose: Pose): number {
  const channels = Object.values(pose.bones ?? {}).flatMap(({ move, turn, size }) => [
    ...(move ?? []).filter((value) => value !== 0),
    ...(turn && 'angles' in turn ? turn.angles.filter((value) => value !== 0) : []),
    ...(size ?? []).filter((value) => value !== 1),
  ]);
  return channels.length + Object.keys(pose.switches ?? {}).length;
}
