import { atan2 } from '../../solver/number/atan2.ts';
import { radToDeg } from '../../solver/number/degrees.ts';

/** A table whose numbers are worked out when the page is made, by the solver's own arithmetic. */
export interface Table {
  id: string;
  title: string;
  /** What is worked out, in words and as a formula. */
  says: string;
  head: readonly string[];
  rows: readonly (readonly string[])[];
  /** Where the formula comes from. */
  source: string;
}

const shown = (value: number, digits: number): string => value.toFixed(digits).replace('-', '−');

/** Degrees between the gaze lines of two eyes `apartM` metres apart that meet `awayM` in front of their middle. */
export const vergenceDeg = (apartM: number, awayM: number): number => 2 * radToDeg(atan2(apartM / 2, awayM));

/** Degrees that an eye held upright is rolled against one turned the shortest way, looking `outDeg` aside and `upDeg` up. */
export function falseTorsionDeg(outDeg: number, upDeg: number): number {
  const tanOfHalf = (deg: number) => Math.tan((deg * Math.PI) / 360);
  return 2 * radToDeg(atan2(tanOfHalf(outDeg) * tanOfHalf(upDeg), 1));
}

const DISTANCES = [0.25, 0.4, 0.5, 1, 2, 6];
const APART = [0.06, 0.063, 0.12];

const vergence: Table = {
  id: 'vergence',
  title: 'How far two gaze lines close',
  says: 'On the middle line only: 2 · atan(p ÷ 2d), with p between the eyes and d to the crab. Beside it, measure.',
  head: ['distance', 'eyes 60 mm apart', '63 mm', '120 mm (Toad)'],
  rows: DISTANCES.map((d) => [`${d} m`, ...APART.map((p) => `${shown(vergenceDeg(p, d), 2)}°`)]),
  source: 'standard geometry, from memory',
};

const torsion: Table = {
  id: 'torsion',
  title: 'Roll between two ways of looking out and up',
  says: '2 · atan(tan(H/2) · tan(V/2)), with H out and V up, both the same here.',
  head: ['H and V, each', 'roll'],
  rows: [10, 20, 30, 40].map((deg) => [`${deg}°`, `${shown(falseTorsionDeg(deg, deg), 2)}°`]),
  source: 'K. Nakayama, K. J. Ciuffreda and C. M. Schor, 1983, as coded in an open model of the eye',
};

const stretch: Table = {
  id: 'stretch',
  title: 'How thin a thing gets that keeps its volume',
  says: 'r times as long, 1/√r as wide and as deep: r · (1/√r)² = 1.',
  head: ['length r', 'across', 'across, if forgotten', 'volume, if forgotten'],
  rows: [0.5, 0.8, 1, 1.21, 1.5, 2, 4].map((r) => [String(r), shown(1 / Math.sqrt(r), 3), '1', shown(r, 2)]),
  source: 'incompressible stretch along one axis: an encyclopaedia’s “Neo-Hookean solid”',
};

const leftBehind: Table = {
  id: 'left-behind',
  title: 'What two fading links leave behind',
  says: 'Weights 1 − s, then s, one after the other: s(1 − s) of the bone’s own pose remains. Only the last fading: nothing.',
  head: ['switch s', 'both fade', 'only the last fades'],
  rows: [0, 0.25, 0.5, 0.75, 1].map((s) => [String(s), shown(s * (1 - s), 4), '0']),
  source: 'worked out in lesson 5.4',
};

export const TABLES: readonly Table[] = [vergence, torsion, stretch, leftBehind];
