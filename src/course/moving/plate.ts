import type { Rig } from '../../solver/document/rig.ts';
import type { ViewName } from './view.ts';

/** All that a plate of a lesson needs to move: it stands in the page as JSON beside the drawing. */
export interface PlateData {
  rig: Rig;
  view: ViewName;
  /** Drawing units a metre. */
  scale: number;
  /** Half the width of a skin bone, drawing units. */
  width: number;
  inputs: readonly PlateInput[];
  readings: readonly Reading[];
  /** Bones whose line of sight along +z is drawn, with its length in metres from the base. */
  sight: Readonly<Record<string, number>>;
}

/** One thing a reader can move: a channel of a bone, or a switch ("bone.switch"). */
export type PlateInput = InputRange & ({ bone: string; channel: PlateChannel } | { switch: string });
export type PlateChannel = `${'move' | 'turn'}.${'x' | 'y' | 'z'}`;

interface InputRange {
  /** What it does: "Boom up and down". */
  says: string;
  /** Degrees for a turn, metres for a move, else a plain number. */
  min: number;
  max: number;
  step: number;
  /** Where it stands at first; 0 if not said. */
  start?: number;
}

/** One coordinate of a point of a bone, in metres of rig space. */
export interface Reading {
  /** "Height of the hook" */
  says: string;
  bone: string;
  /** 0 base (default) to 1 tip. */
  at?: number;
  along: 'x' | 'y' | 'z';
}

/** "°", " m" or nothing: what follows the number of an input. */
export function unitOf(input: PlateInput): string {
  if ('switch' in input) return '';
  if (input.channel.startsWith('turn')) return '°';
  return input.channel.startsWith('move') ? ' m' : '';
}

/** A number as it is printed: with a true minus, and no more places than the step has. */
export function printed(value: number, step: number): string {
  const places = Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
  return value
    .toFixed(places)
    .replace(/^-(0(\.0+)?)$/, '$1')
    .replace('-', '−');
}
