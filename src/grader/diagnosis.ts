import type { Exercise, ResolvedWrongTurn } from './exercise/exercise.ts';
import { type Finding, prove } from './prove.ts';
import type { RequirementKind } from './requirements/table.ts';

/** A wrong turn with what the canonical probes found in it, to be compared with an answer. */
export interface KnownWrong {
  /** Null for the start of something to build: it is wrong because nothing has been done yet. */
  wrong: ResolvedWrongTurn | null;
  /** Of each requirement; what it was measured with is let go, since many variants are kept at once. */
  findings: readonly Compared[];
}

export interface Compared extends Pick<Finding, 'status' | 'measured' | 'cause'> {
  profile: ArrayLike<number>;
}

export function knownWrongs(exercise: Exercise): KnownWrong[] {
  const known = (wrong: KnownWrong['wrong']) => {
    const { findings } = prove(exercise, wrong ?? { rig: exercise.start }, 'ladder');
    return { wrong, findings: findings.map(comparedOf) };
  };
  const wrongs = exercise.wrongTurns.map(known);
  return exercise.kind === 'build' ? [...wrongs, known(null)] : wrongs;
}

function comparedOf({ status, measured, cause, profile }: Finding): Compared {
  return { status, measured, cause, profile: status === 'missed' ? Float64Array.from(profile) : [] };
}

/**
 * The wrong turn that a missed requirement shows: the one that fails in the same way on every canonical probe. Where
 * several do, one that is alike in all requirements, then one that misses the same, then the first that misses nothing
 * that is met here or missed elsewhere in the structure. Where none does, because a structure is at fault in bones of
 * other names, one that misses the same requirements by as much. Of the start nothing is told.
 */
export function diagnose(findings: readonly Finding[], missed: Finding, known: readonly KnownWrong[]): string | null {
  const at = findings.indexOf(missed);
  const each = (holds: (a: Finding, b: Compared) => boolean) => (one: KnownWrong) =>
    findings.every((finding, i) => holds(finding, one.findings[i]!));
  const same = each((a, b) => a.status === b.status && (a.status !== 'missed' || failsAlike(a, b)));
  const agrees = each((a, b) => a.status === b.status && !belies(a, b));
  const fits = each((a, b) => !belies(a, b));
  const alike = known.filter(({ findings: theirs }) => failsAlike(missed, theirs[at]!));
  const found =
    alike.find(same) ??
    alike.find(agrees) ??
    alike.find(fits) ??
    known.find((one) => agrees(one) && countsAlike(missed, one.findings[at]!));
  return found?.wrong?.id ?? null;
}

/** What a wrong turn misses is met here, or it is another thing in the structure that is at fault. */
function belies(a: Finding, b: Compared): boolean {
  if (b.status !== 'missed') return false;
  if (a.status !== 'missed') return true;
  if (b.profile.length > 0 || a.requirement.kind === 'few-changes') return false;
  return !failsAlike(a, b) && !countsAlike(a, b);
}

/** Of what stands in the start the places tell more than their number. */
const PLACED: ReadonlySet<string> = new Set<RequirementKind>(['kept', 'locks']);

function countsAlike({ requirement, profile, cause, measured }: Finding, b: Compared): boolean {
  if (profile.length > 0 || cause?.why !== 'structure' || PLACED.has(requirement.kind)) return false;
  return b.measured === measured;
}

function failsAlike(a: Finding, b: Compared): boolean {
  if (b.status !== 'missed') return false;
  if (a.profile.length !== b.profile.length) return false;
  if (a.profile.length === 0) return JSON.stringify(a.cause) === JSON.stringify(b.cause);
  for (let i = 0; i < a.profile.length; i++) {
    if (!closeEnough(a.profile[i]!, b.profile[i]!, a.requirement.allowed)) return false;
  }
  return true;
}

/** Within a tenth of the tolerance, or a fiftieth of the value. */
function closeEnough(a: number, b: number, allowed: number): boolean {
  return a === b || Math.abs(a - b) <= Math.max(0.1 * allowed, 0.02 * Math.max(Math.abs(a), Math.abs(b)));
}
