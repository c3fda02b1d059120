import type { Pose } from '../solver/document/rig.ts';
import { poseOf } from './probe/pose.ts';
import { freeInputs } from './probe/probes.ts';
import type { Finding } from './prove.ts';
import { kindOf } from './requirements/table.ts';
import { sixDigits } from './round.ts';
import type { Subject } from './subject.ts';

/** A counterpose fails by this much more than is allowed, so that the eye can see it. */
const CLEAR = 1.2;

export interface Counterpose {
  pose: Pose;
  /** What the requirement measures in it, rounded. */
  measured: number;
}

/**
 * The simplest pose found in which a requirement is missed: of the canonical probes that fail clearly, the
 * worst among those with the fewest inputs off rest; else the worst pose found anywhere, made simpler one
 * input at a time while it still fails.
 */
export function counterposeOf(subject: Subject, finding: Finding): Counterpose {
  const measure = finding.meter!;
  const { allowed } = finding.requirement;
  const atLeast = isAtLeast(finding);
  const failsBy = (share: number) => (value: number) => (atLeast ? value * share < allowed : value > allowed * share);
  const clearly = failsBy(CLEAR);
  const fails = finding.measured !== null && clearly(finding.measured) ? clearly : failsBy(1);
  const values = onLadder(subject, finding, fails) ?? simplified(subject, finding, fails);
  const whole = rounded(subject, finding, values, fails);
  return { pose: poseOf(subject, whole), measured: sixDigits(measure(whole)) };
}

type Fails = (measured: number) => boolean;

function isAtLeast(finding: Finding): boolean {
  const kind = kindOf(finding.requirement);
  return kind.about === 'behaviour' && kind.atLeast === true;
}

function offRest(subject: Subject, values: Float64Array): number {
  return subject.inputs.filter((input, index) => !input.stuck && values[index] !== input.rest).length;
}

function onLadder(subject: Subject, finding: Finding, fails: Fails): Float64Array | null {
  const worse = isAtLeast(finding) ? (a: number, b: number) => a < b : (a: number, b: number) => a > b;
  let best: { values: Float64Array; measured: number; moved: number } | null = null;
  finding.probes.forEach((values, index) => {
    const measured = sixDigits(finding.profile[index]!);
    if (!fails(measured)) return;
    const moved = offRest(subject, values);
    const simpler = !best || moved < best.moved || (moved === best.moved && worse(measured, best.measured));
    if (simpler) best = { values, measured, moved };
  });
  return (best as { values: Float64Array } | null)?.values ?? null;
}

/** Brings inputs back to rest while the pose still fails, those last in the exercise first. */
function simplified(subject: Subject, finding: Finding, fails: Fails): Float64Array {
  const values = finding.worst!.slice();
  for (const index of freeInputs(finding.requirement, subject).reverse()) {
    const before = values[index]!;
    values[index] = subject.inputs[index]!.rest;
    if (!fails(finding.meter!(values))) values[index] = before;
  }
  return values;
}

/** Whole tens, fives or ones of degrees, of centimetres, tenths of a size; switches to their nearer end. */
function rounded(subject: Subject, finding: Finding, from: Float64Array, fails: Fails): Float64Array {
  const values = from.slice();
  for (const index of freeInputs(finding.requirement, subject)) {
    const input = subject.inputs[index]!;
    const before = values[index]!;
    if (before === input.rest) continue;
    for (const candidate of roundings(before, input)) {
      values[index] = candidate;
      if (candidate !== input.rest && fails(finding.meter!(values))) break;
      values[index] = before;
    }
  }
  return values;
}

const UNITS = { turn: [10, 5, 1], move: [0.1, 0.05, 0.01], size: [0.5, 0.1], switch: [] } as const;

function roundings(value: number, input: Subject['inputs'][number]): number[] {
  const { min, max } = input;
  if (input.channel === 'switch') return [value - min <= max - value ? min : max];
  return UNITS[input.channel]
    .map((unit) => Math.round(value / unit) * unit)
    .map((candidate) => Number(candidate.toPrecision(12)))
    .filter((candidate) => candidate >= min && candidate <= max);
}
