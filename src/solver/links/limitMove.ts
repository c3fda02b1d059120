import type { LimitLink } from '../document/rig.ts';
import { blend } from '../geometry/blend.ts';
import { transform } from '../geometry/matrix.ts';
import { writeRestBase, writeShift } from '../geometry/restFrame.ts';
import { FLAT } from '../machine/flagBits.ts';
import type { Machine } from '../machine/machine.ts';
import { LINK_RECORD } from './linkKind.ts';

const { LINK } = LINK_RECORD;
/** Least of x, y, z, then most, metres. */
export const moveConstants = ({ min, max }: NonNullable<LimitLink['move']>): number[] => [...min, ...max];

/**
 * Keeps the base of the bone of the link at `at` of the code within bounds in its rest frame, which lies at `frame` in
 * memory and stands at `frameAt` of the code. Uses twelve doubles at `spare`.
 */
export function limitMove(
  machine: Machine,
  at: number,
  frameAt: number,
  frame: number,
  bounds: number,
  weight: number,
  spare: number,
): void {
  const { code, memory: m, flags } = machine;
  const base = code[at] + 9;
  const restBase = spare;
  const shift = spare + 3;
  const goal = spare + 6;
  writeRestBase(code, m, frameAt, restBase);
  if (!writeShift(m, frame, base, restBase, shift, spare + 9)) {
    flags[code[at + LINK]] |= FLAT;
    return;
  }
  if (!clampShift(m, shift, bounds)) return;
  transform(m, frame, shift, goal);
  for (let i = 0; i < 3; i++) m[goal + i] += m[restBase + i];
  blend(m, base, goal, weight);
}

/** Returns whether anything was out of bounds. */
function clampShift(m: Float64Array, at: number, bounds: number): boolean {
  let changed = false;
  for (let i = 0; i < 3; i++) {
    const shift = m[at + i];
    m[at + i] = Math.min(m[bounds + 3 + i], Math.max(m[bounds + i], shift));
    changed ||= m[at + i] !== shift;
  }
  return changed;
}
