import type { Finding } from '../prove.ts';
import type { BehaviourKind, Meter } from '../requirements/kind.ts';
import type { Requirement } from '../requirements/table.ts';
import { sixDigits } from '../round.ts';
import type { Subject } from '../subject.ts';
import { type Asked, askedOf } from './asked.ts';
import type { Canonical } from './canonical.ts';
import { type Depth, type Group, onLadder, onTheirOwn } from './groups.ts';
import { type KeptOut, measureTogether } from './measureGroups.ts';
import { freeInputs } from './probes.ts';
import { hunt } from './search.ts';
import { worstOf } from './worst.ts';

/** From how many of the worst probes a hunt starts. */
const HUNTS = 3;

/** Where a subject is tried. */
export interface Trial {
  readonly depth: Depth;
  readonly canonical: Canonical;
  readonly keptOut: KeptOut;
}

/** Measures behaviours over the canonical probes, the fill, and a hunt from the worst of them. */
export function probed(requirements: readonly Requirement[], subject: Subject, trial: Trial): Finding[] {
  const { depth, canonical, keptOut } = trial;
  const asked = requirements.map((requirement) => askedOf(requirement, subject));
  const shared = onLadder(asked, subject, canonical, depth);
  const own = onTheirOwn(asked, subject, canonical);
  measureTogether(shared, keptOut);
  for (const group of own) measureTogether([group], keptOut);
  return [...shared, ...own].flatMap((group) => group.asked.map((one, k) => found(one, group, k, subject, trial)));
}

function found(asked: Asked, group: Group, which: number, subject: Subject, { depth, keptOut }: Trial): Finding {
  const { requirement, kind, sign } = asked;
  const measured = group.measured[which]!;
  const probes = group.sheets[0]!.list;
  const hunts = !kind.probes && depth === 'hunt';
  const starts = worstOf(measured, hunts ? HUNTS : 1, sign).map((at) => ({
    values: poseAt(group, at),
    measured: measured[at]!,
  }));
  const worst = hunts ? huntedFrom(starts, asked, subject, keptOut) : starts[0]!;
  const rounded = sixDigits(worst.measured);
  return {
    requirement,
    status: (kind.atLeast ? rounded >= requirement.allowed : rounded <= requirement.allowed) ? 'met' : 'missed',
    measured: rounded,
    cause: lockOf(requirement, kind, subject),
    probes,
    profile: measured.subarray(0, probes.length),
    worst: worst.values,
    meter: meterOf(asked, keptOut),
  };
}

function poseAt({ sheets }: Group, at: number): Float64Array {
  let from = 0;
  for (const { list } of sheets) {
    if (at < from + list.length) return list[at - from]!;
    from += list.length;
  }
  throw new Error('a pose that was not tried');
}

interface Measured {
  values: Float64Array;
  measured: number;
}

/** The worst that a hunt from each of these finds; the first of them where none finds worse. */
function huntedFrom(starts: readonly Measured[], asked: Asked, subject: Subject, keptOut: KeptOut): Measured {
  const free = freeInputs(asked.requirement, subject);
  const measure = meterOf(asked, keptOut);
  const different = [...new Map(starts.map((start) => [start.values, start])).values()];
  const hunted: Measured[] = different.map(({ values }) => hunt(values, free, subject.inputs, measure, asked.sign));
  return hunted.reduce(
    (worst, one) => (asked.sign * one.measured > asked.sign * worst.measured ? one : worst),
    starts[0]!,
  );
}

/** A kept-out pose measures as nothing wrong. */
function meterOf({ measure, fine }: Asked, keptOut: KeptOut): Meter {
  return keptOut ? (values) => (keptOut(values) ? fine : measure(values)) : measure;
}

function lockOf(requirement: Requirement, kind: BehaviourKind<Requirement>, subject: Subject) {
  if (!kind.atLeast) return null;
  const input = kind.inputs(requirement).find((id) => subject.inputs[subject.inputIndex.get(id)!]!.stuck === 'locked');
  return input === undefined ? null : ({ why: 'locked', input } as const);
}
