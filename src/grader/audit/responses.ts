import type { Exercise } from '../exercise/exercise.ts';
import type { Work } from '../responses/response.ts';

/** What is answered in place of a rig, with the change in words. */
export type WorkVariation = readonly [says: string, work: Work];

/** The same answer within what is allowed: numbers rounded otherwise. */
export function equalAnswers({ requirements }: Exercise, work: Work): WorkVariation[] {
  const { values } = work;
  if (!values) return [];
  return requirements
    .filter(({ id }) => Object.hasOwn(values, id))
    .flatMap(({ id, allowed }) =>
      [0.4, -0.4].map((share): WorkVariation => {
        return [`${id} ${share} of what is allowed off`, withValue(work, id, values[id]! + share * allowed)];
      }),
    );
}

/** Mistakes made in an answer: slips in a number, an input of a pose forgotten or overdone, two names swapped. */
export function wrongAnswers(exercise: Exercise, work: Work): WorkVariation[] {
  return [...wrongValues(exercise, work), ...wrongPoses(exercise, work), ...wrongOrders(work)];
}

function wrongValues({ requirements }: Exercise, work: Work): WorkVariation[] {
  return Object.entries(work.values ?? {}).flatMap(([id, value]) => {
    const { allowed } = requirements.find((one) => one.id === id)!;
    return [
      [`${id} with the wrong sign`, withValue(work, id, 0 - value)],
      [`half of ${id}`, withValue(work, id, value / 2)],
      [`twice ${id}`, withValue(work, id, value * 2)],
      [`${id} too large by twice what is allowed`, withValue(work, id, value + 2 * allowed)],
      [`${id} too small by twice what is allowed`, withValue(work, id, value - 2 * allowed)],
    ] as WorkVariation[];
  });
}

function withValue(work: Work, id: string, value: number): Work {
  return { ...work, values: { ...work.values, [id]: value } };
}

function wrongPoses({ inputs }: Exercise, work: Work): WorkVariation[] {
  const { inputs: posed } = work;
  if (!posed) return [];
  return inputs.flatMap(({ id, min, max }) => {
    const { [id]: value, ...others } = posed;
    const tried = value === undefined ? [min, max] : [0 - value, value / 2, min, max];
    const within = [...new Set(tried)].filter((one) => one !== value && one >= min && one <= max);
    const moved = within.map((one): WorkVariation => [`${id} at ${one}`, { ...work, inputs: { ...posed, [id]: one } }]);
    return value === undefined ? moved : [[`${id} forgotten`, { ...work, inputs: others }], ...moved];
  });
}

function wrongOrders(work: Work): WorkVariation[] {
  const order = work.order ?? [];
  return order.slice(1).map((second, i) => {
    const swapped = [...order.slice(0, i), second, order[i]!, ...order.slice(i + 2)];
    return [`${second} before ${order[i]}`, { ...work, order: swapped }];
  });
}
