import { diagnose, type KnownWrong } from '../diagnosis.ts';
import type { Marking } from '../grade.ts';
import { type Finding, prove } from '../prove.ts';
import { kindOf } from '../requirements/table.ts';
import type { Exercise } from './exercise.ts';

/** References measure under this share of what is allowed, wrong turns beyond that one. */
const REFERENCE_SHARE = 0.5;
const WRONG_SHARE = 1.2;

/**
 * What is at fault in one variant of an exercise, in plain words: a start that earns something, a reference
 * that does not pass with room to spare, a wrong turn that misses something else than it says, or not by
 * enough, or is taken for another.
 */
export function checkVariant(marking: Marking): string[] {
  const { exercise } = marking;
  const where = `${exercise.id} (${exercise.structure}, size ${exercise.size})`;
  return [
    ...startFaults(marking),
    ...exercise.references.flatMap((reference) => referenceFaults(exercise, reference)),
    ...wrongTurnsFaults(exercise),
  ].map((fault) => `${where}: ${fault}`);
}

/** What the start meets are its gates, so it earns nothing by them; but something has to be left to do. */
function startFaults({ exercise, gates }: Marking): string[] {
  return gates.size < exercise.requirements.length ? [] : ['the untouched start meets everything'];
}

function referenceFaults(exercise: Exercise, reference: Exercise['references'][number]): string[] {
  const { findings } = prove(exercise, reference);
  return findings.flatMap((finding) => {
    const { requirement, status, measured } = finding;
    const shown = `${measured} against ${requirement.allowed}`;
    if (status !== 'met') return [`the reference ${reference.id} misses ${requirement.id}: ${shown}`];
    const within = share(finding);
    return within <= REFERENCE_SHARE
      ? []
      : [`the reference ${reference.id} is close to missing ${requirement.id}: ${shown}`];
  });
}

function wrongTurnsFaults(exercise: Exercise): string[] {
  const proved = exercise.wrongTurns.map((wrong) => ({ wrong, findings: prove(exercise, wrong, 'ladder').findings }));
  return proved.flatMap(({ wrong, findings }) => wrongTurnFaults(wrong, findings, proved));
}

function wrongTurnFaults(
  wrong: Exercise['wrongTurns'][number],
  findings: readonly Finding[],
  known: readonly KnownWrong[],
): string[] {
  return findings.flatMap((finding) => {
    const { requirement, status, measured } = finding;
    if (!wrong.misses.includes(requirement.id)) return [];
    const what = `the wrong turn ${wrong.id} and ${requirement.id}: ${measured} against ${requirement.allowed}`;
    if (status !== 'missed') return [`${what}, but it should be missed`];
    if (share(finding) < WRONG_SHARE) return [`${what}, too close to tell`];
    const told = diagnose(findings, finding, known);
    return told === wrong.id ? [] : [`${what}, taken for ${told}`];
  });
}

/** How much of what is allowed is used; above 1 it is missed. */
function share({ requirement, measured, status }: Finding): number {
  if (measured === null) return status === 'missed' ? Number.POSITIVE_INFINITY : 0;
  const kind = kindOf(requirement);
  const atLeast = kind.about === 'behaviour' && kind.atLeast;
  if (atLeast) return measured === 0 ? Number.POSITIVE_INFINITY : requirement.allowed / measured;
  if (requirement.allowed === 0) return measured === 0 ? 0 : Number.POSITIVE_INFINITY;
  return measured / requirement.allowed;
}
