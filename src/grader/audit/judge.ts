import { type BoundInput, restValues } from '../probe/boundInput.ts';
import { freeInputs, held, keepOutTest } from '../probe/probes.ts';
import { randomOf } from '../random.ts';
import type { Kind } from '../requirements/kind.ts';
import { kindOf, type Requirement } from '../requirements/table.ts';
import { sixDigits } from '../round.ts';
import type { Subject } from '../subject.ts';
import { anyValue } from './anyValue.ts';
import { worstBySimplex } from './simplex.ts';

/**
 * Whether a rig breaks a requirement, found out without the proof's own probes: so many random poses spread
 * evenly, as many again with inputs thrown together in ones, twos and all, and a downhill simplex from the worst
 * of them. 688 even poses miss a fault in 1 % of the space once in a thousand times: 0.99^688 = 0.001. A kind that
 * chooses its own probes is asked at those, made from the random poses.
 */
export function breaks(requirement: Requirement, subject: Subject, samples: number, seed: number): boolean {
  const kind: Kind<Requirement> = kindOf(requirement);
  if (kind.about === 'structure') return false;
  const meter = kind.meter(requirement, subject);
  const keptOut = keepOutTest(subject);
  const sign = kind.atLeast ? -1 : 1;
  const limit = sign * requirement.allowed;
  const badness = (values: Float64Array) => (keptOut?.(values) ? Number.NEGATIVE_INFINITY : sign * meter(values));
  const free = freeInputs(requirement, subject);
  const rest = held(requirement, subject, restValues(subject.inputs));
  const isBroken = (values: Float64Array) => exceeds(badness(values), limit);
  if (kind.probes) {
    const own = kind.probes(requirement, subject, [rest, ...randomPoses()]);
    return own.some((probe) => isBroken(held(requirement, subject, probe)));
  }
  let worst = { values: rest, value: badness(rest) };
  for (const values of randomPoses()) {
    const value = badness(values);
    if (exceeds(value, limit)) return true;
    if (value > worst.value) worst = { values, value };
  }
  return exceeds(worstBySimplex(worst.values, free, subject.inputs, badness), limit);

  function* randomPoses(): Generator<Float64Array> {
    const random = randomOf(seed);
    const posed = (chosen: (input: BoundInput) => number) => {
      const values = rest.slice();
      for (const index of free) values[index] = chosen(subject.inputs[index]!);
      return values;
    };
    for (let n = 0; n < samples; n++) {
      const share = [1 / free.length, 2 / free.length, 1][n % 3]!;
      yield posed((input) => (random() < share ? anyValue(input, random) : input.rest));
      yield posed(({ min, max }) => min + (max - min) * random());
    }
  }
}

function exceeds(value: number, limit: number): boolean {
  return Number.isNaN(value) || sixDigits(value) > limit;
}
