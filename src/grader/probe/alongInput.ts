import type { Subject } from '../subject.ts';

/** Every ladder probe in which the input is at rest, with the input at each of these shares of its range in turn. */
export function alongInput(
  subject: Subject,
  id: string,
  ladder: readonly Float64Array[],
  shares: readonly number[],
): Float64Array[] {
  const index = subject.inputIndex.get(id)!;
  const { min, max, rest } = subject.inputs[index]!;
  return ladder
    .filter((probe) => probe[index] === rest)
    .flatMap((probe) =>
      shares.map((share) => {
        const taken = probe.slice();
        taken[index] = min + (max - min) * share;
        return taken;
      }),
    );
}
