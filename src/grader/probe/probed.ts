import type { Finding } from '../prove.ts';
import type { BehaviourKind, Meter } from '../requirements/kind.ts';
import { kindOf, type Requirement } from '../requirements/table.ts';
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

/** A behaviour that is asked for, with all that has been measured of it so far. */
interface Asked {
  requirement: Requirement;
  kind: BehaviourKind<Requirement>;
  worse: Worse;
  measure: Meter;
  measureHeld: (probe: Float64Array) => Measured;
  tried: Measured[];
}

/**
 * Measures behaviours over the canonical probes, the fill, and a hunt from the worst of them. One probe after the other,
 * each for all of them, so that a pose is evaluated once however many speak of it.
 */
export function probed(requirements: readonly Requirement[], subject: Subject, common: CommonProbes): Finding[] {
  const asked = requirements.map((requirement) => askedOf(requirement, subject, common));
  const shared = asked.filter(({ kind }) => !kind.probes).sort(byHeld);
  for (const probe of [...common.ladder, ...common.further]) {
    for (const one of shared) one.tried.push(one.measureHeld(probe));
  }
  for (const { requirement, kind, tried, measureHeld } of asked) {
    if (kind.probes) tried.push(...kind.probes(requirement, subject, common.ladder).map(measureHeld));
  }
  return asked.map((one) => found(one, subject, common));
}

/** Those that hold the same inputs next to each other. */
function byHeld(a: Asked, b: Asked): number {
  const [one, other] = [a, b].map(({ requirement }) => JSON.stringify(requirement.at ?? {}));
  return one! < other! ? -1 : Number(one! > other!);
}

function askedOf(requirement: Requirement, subject: Subject, common: CommonProbes): Asked {
  const kind = kindOf(requirement) as BehaviourKind<Requirement>;
  const worse: Worse = kind.atLeast ? (a, b) => a < b : (a, b) => a > b;
  const [fine, broken] = kind.atLeast ? [Number.POSITIVE_INFINITY, 0] : [0, Number.POSITIVE_INFINITY];
  const meter = kind.meter(requirement, subject);
  /** What is no number is the worst there is. */
  const sound: Meter = (values) => {
    const measured = meter(values);
    return Number.isNaN(measured) ? broken : measured;
  };
  /** A kept-out pose measures as nothing wrong. */
  const measure: Meter = (values) => (common.keptOut(values) ? fine : sound(values));
  const measureHeld = (probe: Float64Array): Measured => {
    const values = held(requirement, subject, probe);
    const isFine = values === probe ? common.isKnownOut(probe) : common.keptOut(values);
    return { values, measured: isFine ? fine : sound(values) };
  };
  return { requirement, kind, worse, measure, measureHeld, tried: [] };
}

function found(asked: Asked, subject: Subject, common: CommonProbes): Finding {
  const { requirement, kind, worse, measure, tried } = asked;
  const canonical = kind.probes ? tried : tried.slice(0, common.ladder.length);
  const starts = worstOf(tried, kind.probes || common.depth === 'ladder' ? 1 : HUNTS, worse);
  const worst = kind.probes || common.depth === 'ladder' ? starts[0]! : huntedFrom(starts, asked, subject);
  const measured = sixDigits(worst.measured);
  const met = kind.atLeast ? measured >= requirement.allowed : measured <= requirement.allowed;
  return {
    requirement,
    status: met ? 'met' : 'missed',
    measured,
    cause: lockOf(requirement, kind, subject),
    probes: canonical.map(({ values }) => values),
    profile: canonical.map(({ measured: value }) => value),
    worst: worst.values,
    meter: measure,
  };
}

/** The worst that a hunt from each of these finds; the first of them where none finds worse. */
function huntedFrom(starts: readonly Measured[], { requirement, measure, worse }: Asked, subject: Subject): Measured {
  const free = freeInputs(requirement, subject);
  const hunted = starts.map(({ values }) => hunt(values, free, subject.inputs, measure, worse));
  return worstOf([starts[0]!, ...hunted], 1, worse)[0]!;
}

/** So many of the worst, worst first; among equals the earlier ones. */
function worstOf(tried: readonly Measured[], count: number, worse: Worse): Measured[] {
  const worst: Measured[] = [];
  for (const one of tried) {
    const behind = worst.findIndex(({ measured }) => worse(one.measured, measured));
    const at = behind < 0 ? worst.length : behind;
    if (at < count) worst.splice(at, 0, one);
    if (worst.length > count) worst.pop();
  }
  return worst;
}

function lockOf(requirement: Requirement, kind: BehaviourKind<Requirement>, subject: Subject) {
  if (!kind.atLeast) return null;
  const input = kind.inputs(requirement).find((id) => subject.inputs[subject.inputIndex.get(id)!]!.stuck === 'locked');
  return input === undefined ? null : ({ why: 'locked', input } as const);
}
