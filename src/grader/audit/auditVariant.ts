import { checkVariant } from '../exercise/checkVariant.ts';
import { scaleExercise } from '../exercise/open.ts';
import { gradeWork, type Marking, markingOf } from '../grade.ts';
import { channelsOffRest } from '../probe/pose.ts';
import { responseKindOf } from '../responses/response.ts';
import type { Graded } from '../result.ts';
import { subjectOf } from '../subject.ts';
import { asWritten, type Candidate, freeOnes, isLeftOpen, mutantsOf, rightOnes } from './candidates.ts';
import { type Counts, noCounts } from './counts.ts';
import { differsVisibly, type Seen, seenOf } from './seen.ts';
import { verdictOn } from './verdict.ts';

export interface AuditOptions {
  /** Random poses that the judge tries for each requirement. */
  samples: number;
  /** At most so many mutants are tried, spread over all there are. */
  mutants: number;
  /** The same of other ways to write the references; all where it is not said. */
  equivalents?: number;
}

export interface VariantAudit {
  counts: Counts;
  /** What is for the author to settle, in plain words. */
  findings: string[];
}

/** All lengths of an exercise and its references together at this scale are right as well. */
const OTHER_SCALE = 1.5;

/** Audits one variant of an exercise: its right rigs must pass, its wrong ones must be missed and told apart. */
export function auditVariant(marking: Marking, options: AuditOptions): VariantAudit {
  const { exercise } = marking;
  const counts = noCounts();
  const where = `${exercise.id} (${exercise.structure}, size ${exercise.size})`;
  const findings = checkVariant(marking);
  const tell = (finding: string) => findings.push(`${where}: ${finding}`);
  const free = freeOnes(exercise);
  if (exercise.references.length === 0) tell('there is no reference to make right and wrong rigs from');
  counts.margins = findings.length;

  const rights = exercise.references.flatMap((one) => rightOnes(exercise, one));
  for (const right of [...spread(rights, options.equivalents ?? rights.length), ...free]) countRight(marking, right);
  if (!responseKindOf(exercise.kind)) countScaled();

  const accepted = [...exercise.references.map(asWritten), ...free].map((one) => seenIn(marking, one));
  const looksAccepted = (seen: Seen | null) => accepted.some((one) => seen && one && !differsVisibly(seen, one));
  const known = exercise.wrongTurns
    .map((wrong) => ({ id: wrong.id, seen: seenIn(marking, asWritten(wrong)) }))
    .filter(({ seen }) => !looksAccepted(seen));
  for (const wrong of exercise.wrongTurns) countWrongTurn(asWritten(wrong), wrong.id);
  const mutants = exercise.references.flatMap((reference) => mutantsOf(exercise, reference));
  spread(mutants, options.mutants).forEach(countMutant);
  return { counts, findings };

  function countRight(by: Marking, candidate: Candidate) {
    counts.rightTried++;
    const missed = missedOf(gradeWork(by, candidate));
    if (missed.length === 0) return;
    counts.rightRefused++;
    tell(`${candidate.says} is right but misses ${missed.join(', ')}`);
  }

  function countScaled() {
    const scaled = markingOf(scaleExercise(exercise, OTHER_SCALE));
    for (const reference of scaled.exercise.references) {
      countRight(scaled, { ...asWritten(reference), says: `${reference.id}, all at ${OTHER_SCALE} times the scale` });
    }
  }

  function countWrongTurn(candidate: Candidate, id: string) {
    if (verdictOn(marking, candidate, options.samples) === 'broken') return countWrong(candidate, id);
    counts.undecided++;
    tell(`the judge finds nothing wrong with the wrong turn ${id}`);
  }

  function countMutant(candidate: Candidate) {
    const seen = seenIn(marking, candidate);
    if (verdictOn(marking, candidate, options.samples) === 'broken') return countWrong(candidate, behavesAs(seen));
    const isAccepted = looksAccepted(seen) || isLeftOpen(exercise, candidate);
    if (isAccepted || !gradeWork(marking, candidate).passed) return;
    counts.undecided++;
    tell(`${candidate.says} looks different and breaks nothing: a free choice, or a requirement is lacking`);
  }

  function countWrong(candidate: Candidate, wrongTurn: string | null) {
    const result = gradeWork(marking, candidate);
    counts.wrongTried++;
    if (result.passed) {
      counts.wrongPassed++;
      tell(`${candidate.says} is wrong but passes`);
      return;
    }
    // A pose that is handed in is shown as it is: none was looked for.
    const shown = candidate.inputs === undefined ? result.requirements : [];
    for (const { counterpose } of shown) {
      if (!counterpose) continue;
      counts.counterposes++;
      if (channelsOffRest(counterpose) <= 2) counts.counterposesSimple++;
    }
    if (wrongTurn === null) return;
    counts.diagnosed++;
    if (result.requirements.some(({ diagnosis }) => diagnosis === wrongTurn)) counts.diagnosedRight++;
    else tell(`${candidate.says} behaves as ${wrongTurn} but is not told so`);
  }

  function behavesAs(seen: Seen | null): string | null {
    const like = seen && known.find((one) => one.seen && !differsVisibly(seen, one.seen));
    return like ? like.id : null;
  }
}

const missedOf = (result: Graded): string[] =>
  result.requirements.filter(({ status }) => status !== 'met').map(({ id }) => id);

function seenIn({ exercise }: Marking, { rig, parts }: Candidate): Seen | null {
  const prepared = subjectOf(exercise, rig, parts);
  return prepared.ok ? seenOf(prepared.subject) : null;
}

/** At most so many of a list, from all over it. */
function spread<T>(list: readonly T[], most: number): T[] {
  const every = Math.max(1, list.length / most);
  return list.filter((_, index) => Math.floor(index / every) !== Math.floor((index - 1) / every));
}
