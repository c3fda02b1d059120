import type { Places } from '../compile/places.ts';
import type { Link } from '../document/rig.ts';
import type { Machine, Run } from '../machine/machine.ts';
import type { PlaceKind } from '../program.ts';

/** One kind of link: what it reads, how it is compiled and run, and where it turns singular. */
export interface LinkKind<L extends Link> {
  /** Names of the bones it reads after all their links; its own parent is not among them. */
  reads(link: L): string[];
  /** Its record: LINK_INTS numbers that all kinds share, then its own. */
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

/** Every record starts with: own world, where the weight lies, number of the link. */
export const LINK_INTS = 3;
export const WEIGHT = 1;
export const LINK = 2;
