import type { LimitLink } from '../document/rig.ts';
import { blend } from '../geometry/blend.ts';
import { transform } from '../geometry/matrix.ts';
import { writeRestBase, writeShift } from '../geometry/restFrame.ts';
import { FLAT } from '../machine/flagBits.ts';
import { FRAME, GOAL, REST_BASE, SIDE } from '../machine/layout.ts';
import type { Machine } from '../machine/machine.ts';
import { LINK } from './linkKind.ts';

/** Least of x, y, z, then most, metres. */
export const moveConstants = ({ min, max }: NonNullable<LimitLink['move']>): number[] => [...min, ...max];

/** Keeps the base of the link's bone within bounds in its rest frame, which is in FRAME and at `frame` of the code. */
export function limitMove(machine: Machine, at: number, frame: number, bounds: number, weight: number): void {
  const { code, memory: m, flags } = machine;
  const base = code[at] + 9;
  writeRestBase(code, m, frame);
  if (!writeShift(m, base, SIDE)) {
    flags[code[at + LINK]] |= FLAT;
    return;
  }
  if (!clampShift(m, bounds)) return;
  transform(m, FRAME, SIDE, GOAL);
  for (let i = 0; i < 3; i++) m[GOAL + i] += m[REST_BASE + i];
  blend(m, base, GOAL, weight);
}

/** Returns whether anything was out of bounds. */
function clampShift(m: Float64Array, bounds: number): boolean {
  let changed = false;
  for (let i = 0; i < 3; i++) {
    const shift = m[SIDE + i];
    m[SIDE + i] = Math.min(m[bounds + 3 + i], Math.max(m[bounds + i], shift));
    changed ||= m[SIDE + i] !== shift;
  }
  return changed;
}
