import type { Program, SingularPlace, State } from '../program.ts';
import { measure, probeOf, siteKey } from './probe.ts';

/** Where the rig turns singular: of every link whose weight is not 0 for good, the places its kind knows. */
export function singularPlaces(program: Program): SingularPlace[] {
  return probeOf(program).sites.map(({ kind, bone, link }) => ({ kind, bone, link }));
}

/**
 * How near the last evaluation came to a singular place: ≥ 0, and 0 there. Metres for `target-at-base` and
 * `full-stretch`, radians for `opposite` and `half-twist`, the sine of the angle for `up-along-aim`.
 *
 * It is measured as the link finds its bone, for which the evaluation is run again: the array of the pose must still
 * hold the same numbers. The first call after an evaluation pays for all places.
 */
export function nearness(program: Program, state: State, place: SingularPlace): number {
  const number = probeOf(program).siteNumbers.get(siteKey(place));
  return number === undefined ? Infinity : measure(program, state)[number];
}

/** The same for every place, in the order of `singularPlaces`; overwritten by the next call for the same state. */
export function nearnesses(program: Program, state: State): Float64Array {
  return measure(program, state);
}
