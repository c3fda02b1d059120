import type { Finding } from '../prove.ts';
import type { BehaviourKind, Meter } from '../requirements/kind.ts';
import type { Requirement } from '../requirements/table.ts';
import { sixDigits } from '../round.ts';
import type { Subject } from '../subject.ts';
import { fillProbes } from './fill.ts';
import { ladder } from './ladder.ts';
import { freeInputs, held, keepOutTest } from './probes.ts';
import { hunt } from './search.ts';
import { singularProbes } from './singularProbes.ts';

const FILL_COUNT = 400;
/** From how many of the worst probes a hunt starts. */
const HUNTS = 3;

/** How far to look: the canonical ladder alone, or all that can be found. */
export type Depth = 'ladder' | 'hunt';

/** Probes shared by all requirements of a subject. */
export interface CommonProbes {
  depth: Depth;
  ladder: Float64Array[];
  /** Beyond the ladder: near singular places, and spread from the seed. */
  further: Float64Array[];
  keptOut: (values: Float64Array) => boolean;
  /** The same for probes that never change, each found out once. */
  isKnownOut: (probe: Float64Array) => boolean;
}

export function commonProbes(subject: Subject, depth: Depth): CommonProbes {
  const rungs = ladder(subject.inputs);
  const keptOut = keepOutTest(subject);
  const common = { depth, ladder: rungs, keptOut, isKnownOut: once(keptOut) };
  if (depth === 'ladder') return { ...common, further: [] };
  const fill = fillProbes(subject.inputs, FILL_COUNT, subject.exercise.seed);
  return { ...common, further: [...singularProbes(subject, rungs), ...fill] };
}

function once(test: (values: Float64Array) => boolean): (values: Float64Array) => boolean {
  const known = new Map<Float64Array, boolean>();
  return (values) => {
    const found = known.get(values) ?? test(values);
    known.set(values, found);
    return found;
  };
}

interface Measured {
  values: Float64Array;
  measured: number;
}
type Worse = (a: number, b: number) => boolean;

/** Measures one behaviour over the canonical probes, the fill, and a hunt from the worst of them. */
export function probed(
  requirement: Requirement,
  kind: BehaviourKind<Requirement>,
  subject: Subject,
  common: CommonProbes,
): Omit<Finding, 'requirement'> {
  const worse: Worse = kind.atLeast ? (a, b) => a < b : (a, b) => a > b;
  const [fine, broken] = kind.atLeast ? [Number.POSITIVE_INFINITY, 0] : [0, Number.POSITIVE_INFINITY];
  const meter = kind.meter(requirement, subject);
  /** What is no number is the worst there is. */
  const sound: Meter = (values) => {
    const found = meter(values);
    return Number.isNaN(found) ? broken : found;
  };
  /** A kept-out pose measures as nothing wrong. */
  const measure: Meter = (values) => (common.keptOut(values) ? fine : sound(values));
  const measureHeld = (probe: Float64Array): Measured => {
    const values = held(requirement, subject, probe);
    const isFine = values === probe ? common.isKnownOut(probe) : common.keptOut(values);
    return { values, measured: isFine ? fine : sound(values) };
  };
  const canonical = (kind.probes?.(requirement, subject, common.ladder) ?? common.ladder).map(measureHeld);
  const tried = kind.probes ? canonical : [...canonical, ...common.further.map(measureHeld)];
  const ranked = rank(tried, worse);
  const free = freeInputs(requirement, subject);
  const hunts = kind.probes || common.depth === 'ladder' ? 0 : HUNTS;
  const hunted = ranked.slice(0, hunts).map(({ values }) => hunt(values, free, subject.inputs, measure, worse));
  const worst = rank([ranked[0]!, ...hunted], worse)[0]!;
  const measured = sixDigits(worst.measured);
  const met = kind.atLeast ? measured >= requirement.allowed : measured <= requirement.allowed;
  return {
    status: met ? 'met' : 'missed',
    measured,
    cause: lockOf(requirement, kind, subject),
    probes: canonical.map(({ values }) => values),
    profile: canonical.map(({ measured: value }) => value),
    worst: worst.values,
    meter: measure,
  };
}

/** Worst first; among equals the earlier one. */
function rank(tried: readonly Measured[], worse: Worse): Measured[] {
  return tried
    .map((item, order) => ({ item, order }))
    .sort((a, b) => {
      if (worse(a.item.measured, b.item.measured)) return -1;
      if (worse(b.item.measured, a.item.measured)) return 1;
      return a.order - b.order;
    })
    .map(({ item }) => item);
}

function lockOf(requirement: Requirement, kind: BehaviourKind<Requirement>, subject: Subject) {
  if (!kind.atLeast) return null;
  const input = kind.inputs(requirement).find((id) => subject.inputs[subject.inputIndex.get(id)!]!.stuck === 'locked');
  return input === undefined ? null : ({ why: 'locked', input } as const);
}
