import { nearnesses, singularPlaces } from '../../solver/index.ts';
import { type Subject, worldAt } from '../subject.ts';
import { hunt } from './search.ts';

/**
 * Poses as near as can be found to each place where the rig announces that it turns singular (target on the
 * base, opposite, up along the aim, full stretch, half a turn of twist): from the nearest ladder pose on.
 */
export function singularProbes(subject: Subject, ladder: readonly Float64Array[]): Float64Array[] {
  const { program } = subject;
  const count = singularPlaces(program).length;
  if (count === 0) return [];
  const nearnessesAt = (values: Float64Array) => {
    worldAt(subject, values);
    return nearnesses(program, subject.state);
  };
  const found = Array.from({ length: count }, () => ({ values: ladder[0]!, near: Number.POSITIVE_INFINITY }));
  for (const values of ladder) {
    const near = nearnessesAt(values);
    for (let i = 0; i < count; i++) if (near[i]! < found[i]!.near) found[i] = { values, near: near[i]! };
  }
  const free = subject.inputs.flatMap((input, index) => (input.stuck ? [] : [index]));
  return found.map(({ values }, i) => hunt(values, free, subject.inputs, (at) => nearnessesAt(at)[i]!, -1).values);
}
