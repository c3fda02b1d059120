import { nearness, singularPlaces } from '../../solver/index.ts';
import { type Subject, worldAt } from '../subject.ts';
import { hunt } from './search.ts';

/**
 * Poses as near as can be found to each place where the rig announces that it turns singular (target on the
 * base, opposite, up along the aim, full stretch, half a turn of twist): from the nearest ladder pose on.
 */
export function singularProbes(subject: Subject, ladder: readonly Float64Array[]): Float64Array[] {
  const { program } = subject;
  const places = singularPlaces(program);
  const nearnessAt = (place: (typeof places)[number]) => (values: Float64Array) => {
    worldAt(subject, values);
    return nearness(program, subject.state, place);
  };
  const free = subject.inputs.flatMap((input, index) => (input.stuck ? [] : [index]));
  const found = places.map(() => ({ values: ladder[0]!, near: Number.POSITIVE_INFINITY }));
  for (const values of ladder) {
    worldAt(subject, values);
    places.forEach((place, i) => {
      const near = nearness(program, subject.state, place);
      if (near < found[i]!.near) found[i] = { values, near };
    });
  }
  return places.map((place, i) => hunt(found[i]!.values, free, subject.inputs, nearnessAt(place), -1).values);
}
