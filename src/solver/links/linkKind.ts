import type { Places } from '../compile/places.ts';
import type { Link } from '../document/rig.ts';
import type { Machine, Run } from '../machine/machine.ts';
import type { PlaceKind } from '../program.ts';

/** One kind of link: what it reads, how it is compiled and run, and where it turns singular. */
export interface LinkKind<L extends Link> {
  /** Names of the bones it reads after all their links; its own parent is not among them. */
  reads(link: L): string[];
  /** Its record: what all kinds share, then its own. */
  code(link: L, own: OwnPlaces, places: Places): number[];
  /** How its records are run, in one or more ways; `way` chooses among them, the first where it is not there. */
  runs: readonly Run[];
  way?(link: L): number;
  singular(link: L): PlaceKind[];
  /** How near the link at `at` is to a singular place, before it runs: ≥ 0, and 0 there. */
  nearness(machine: Machine, at: number, place: PlaceKind): number;
}

/** The bone and the link a record is written for. */
export interface OwnPlaces {
  bone: number;
  link: number;
}

/**
 * What every record starts with: own world, where the weight lies, number of the link. Files take these as constants of
 * their own, which engines fold; they do not fold what is imported.
 */
export const LINK_RECORD = { WEIGHT: 1, LINK: 2, INTS: 3 } as const;
