import { type Asked, askedOf } from '../probe/asked.ts';
import { type BoundInput, restValues } from '../probe/boundInput.ts';
import { heldText } from '../probe/canonical.ts';
import { freeInputs, held, keepOutTest } from '../probe/probes.ts';
import { randomOf } from '../random.ts';
import { kindOf, type Requirement } from '../requirements/table.ts';
import { sixDigits } from '../round.ts';
import type { Subject } from '../subject.ts';
import { anyValue } from './anyValue.ts';
import { worstBySimplex } from './simplex.ts';

/**
 * Whether a rig breaks one of these behaviours, found out without the proof's own probes: so many random poses spread
 * evenly, as many again with inputs thrown together in ones, twos and all, and for each behaviour a downhill simplex from
 * the worst of them. 688 even poses miss a fault in 1 % of the space once in a thousand times: 0.99^688 = 0.001. A kind
 * that chooses its own probes is asked at those, made from the random poses. The searches come last, because most faults
 * show without them.
 */
export function breaks(all: readonly Requirement[], subject: Subject, samples: number, seed: number): boolean {
  const keptOut = keepOutTest(subject);
  const asked = all.filter((one) => kindOf(one).about === 'behaviour').map((one) => askedOf(one, subject));
  const badness = ({ sign, measure }: Asked, values: Float64Array) =>
    keptOut?.(values) ? Number.NEGATIVE_INFINITY : sign * measure(values);
  const searches: (() => boolean)[] = [];
  for (const group of Map.groupBy(asked, ({ requirement }) => heldText(requirement)).values()) {
    const poses = [...randomPoses(group[0]!.requirement, subject, samples, seed)];
    const worst = worstOf(group, poses);
    if (!worst || group.some((one) => isBrokenAtItsOwn(one, poses))) return true;
    searches.push(
      ...worst.map(
        ([one, from]) =>
          () =>
            isBrokenNear(one, from),
      ),
    );
  }
  return searches.some((search) => search());

  /** Of each behaviour that is hunted the pose it is worst in; null where one is broken there. */
  function worstOf(group: readonly Asked[], poses: readonly Float64Array[]) {
    const worst = group
      .filter(({ kind }) => !kind.probes)
      .map((one) => ({ one, values: poses[0]!, value: Number.NEGATIVE_INFINITY }));
    for (const values of poses) {
      for (const so of worst) {
        const value = badness(so.one, values);
        if (exceeds(so.one, value)) return null;
        if (value > so.value) Object.assign(so, { values, value });
      }
    }
    return worst.map(({ one, values }) => [one, values] as const);
  }

  function isBrokenAtItsOwn(one: Asked, poses: readonly Float64Array[]): boolean {
    const probes = one.kind.probes?.(one.requirement, subject, poses) ?? [];
    return probes.some((probe) => exceeds(one, badness(one, held(one.requirement, subject, probe))));
  }

  function isBrokenNear(one: Asked, from: Float64Array): boolean {
    const free = freeInputs(one.requirement, subject);
    return exceeds(
      one,
      worstBySimplex(from, free, subject.inputs, (values) => badness(one, values)),
    );
  }
}

/** Rest, and random poses with what the requirement holds. */
function* randomPoses(
  requirement: Requirement,
  subject: Subject,
  samples: number,
  seed: number,
): Generator<Float64Array> {
  const free = freeInputs(requirement, subject);
  const rest = held(requirement, subject, restValues(subject.inputs));
  const random = randomOf(seed);
  const posed = (chosen: (input: BoundInput) => number) => {
    const values = rest.slice();
    for (const index of free) values[index] = chosen(subject.inputs[index]!);
    return values;
  };
  yield rest;
  for (let n = 0; n < samples; n++) {
    const share = [1 / free.length, 2 / free.length, 1][n % 3]!;
    yield posed((input) => (random() < share ? anyValue(input, random) : input.rest));
    yield posed(({ min, max }) => min + (max - min) * random());
  }
}

function exceeds({ requirement, sign }: Asked, value: number): boolean {
  return Number.isNaN(value) || sixDigits(value) > sign * requirement.allowed;
}
