import { unboundOf } from './bind.ts';
import type { Exercise } from './exercise/exercise.ts';
import { Canonical, canonicalFor } from './probe/canonical.ts';
import type { Depth } from './probe/groups.ts';
import { probed, type Trial } from './probe/probed.ts';
import { keepOutTest } from './probe/probes.ts';
import type { Built, Meter, StructureKind } from './requirements/kind.ts';
import { kindOf, type Requirement } from './requirements/table.ts';
import type { Work } from './responses/response.ts';
import type { Cause } from './result.ts';
import { sixDigits } from './round.ts';
import { type Prepared, type Subject, subjectOf } from './subject.ts';

/** What proving one requirement of one rig found. */
export interface Finding {
  requirement: Requirement;
  status: 'met' | 'missed' | 'not-checked';
  /** The worst measurement, rounded; null where there is none. */
  measured: number | null;
  cause: Cause | null;
  /** Of a behaviour: the canonical probes, and what each measured. */
  probes: readonly Float64Array[];
  profile: ArrayLike<number>;
  /** The input values of the worst measurement. */
  worst: Float64Array | null;
  meter: Meter | null;
}

export interface Proof {
  prepared: Prepared;
  findings: Finding[];
}

/**
 * Proves every requirement of the exercise on a rig. The seed shifts the fill; all else is canonical.
 * On the ladder alone it is a comparison, not a proof.
 */
export function prove(exercise: Exercise, work: Work, depth: Depth = 'hunt'): Proof {
  const prepared = subjectOf(exercise, work.rig, work.parts);
  const settled = new Map(
    exercise.requirements.map((requirement) => [requirement, withoutProbes(requirement, exercise, work, prepared)]),
  );
  const open = exercise.requirements.filter((requirement) => !settled.get(requirement));
  if (prepared.ok && open.length > 0) {
    const trial = trialFor(prepared.subject, work, depth);
    for (const finding of probed(open, prepared.subject, trial)) settled.set(finding.requirement, finding);
  }
  return { prepared, findings: exercise.requirements.map((requirement) => settled.get(requirement)!) };
}

/** What can be said of a requirement without moving anything; null where the rig must be probed. */
function withoutProbes(
  requirement: Requirement,
  exercise: Exercise,
  { rig, values, order }: Work,
  prepared: Prepared,
): Finding | null {
  const kind = kindOf(requirement);
  const binding = prepared.ok ? prepared.subject.binding : prepared.binding;
  const cycle = prepared.ok ? null : prepared.cycle;
  const inputs = [...kind.inputs(requirement), ...Object.keys(requirement.at ?? {})];
  const spoken = [...kind.bones(requirement), ...movedBy(exercise, inputs)];
  const unbound = unboundOf(spoken, exercise, binding);
  if (unbound) return unmeasured(requirement, 'missed', { why: 'unbound', part: unbound.id });
  const isThere = (name: string) => binding.has(name) || rig.bones.some((bone) => bone.name === name);
  const gone = spoken.find((name) => !isThere(name));
  if (gone !== undefined) return unmeasured(requirement, 'missed', { why: 'gone', bone: gone });
  if (kind.about === 'structure') {
    return inspected(requirement, kind, { exercise, rig, binding, cycle, values, order });
  }
  return cycle && unmeasured(requirement, 'not-checked', { why: 'cycle', cycle });
}

/** A pose that is handed in is the only one that counts. */
function trialFor(subject: Subject, { inputs }: Work, depth: Depth): Trial {
  if (!inputs) return { depth, canonical: canonicalFor(subject), keptOut: keepOutTest(subject) };
  const values = Float64Array.from(subject.inputs, ({ id, rest }) => inputs[id] ?? rest);
  return { depth: 'ladder', canonical: new Canonical([values]), keptOut: null };
}

/** Parts and bones that inputs move, so that one which nothing stands for is told by name. */
function movedBy(exercise: Exercise, ids: readonly string[]): string[] {
  return exercise.inputs
    .filter(({ id }) => ids.includes(id))
    .map(({ part, bone, switch: own }) => part ?? bone ?? own!.split('.')[0]!);
}

const NOTHING = { profile: [], probes: [], worst: null, meter: null } as const;

function unmeasured(requirement: Requirement, status: Finding['status'], cause: Cause): Finding {
  return { requirement, status, measured: null, cause, ...NOTHING };
}

function inspected(requirement: Requirement, kind: StructureKind<Requirement>, built: Built): Finding {
  const { measured: exact, places, profile = [] } = kind.inspect(requirement, built);
  const measured = sixDigits(exact);
  const status = measured <= requirement.allowed ? 'met' : 'missed';
  const cause: Cause | null = places.length ? { why: 'structure', places } : null;
  return { requirement, status, measured, cause, ...NOTHING, profile };
}
