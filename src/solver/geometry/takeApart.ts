import { FLAT, SHEAR } from '../machine/flagBits.ts';
import type { Machine } from '../machine/machine.ts';
import { orient } from './orient.ts';
import { dot } from './vector.ts';

/** Off the diagonal, up to this part of the largest size is rounding, not shear. */
const SHEAR_LEAST = 1e-6;

/**
 * Takes the 3×3 part at `from` apart into orientation (nine doubles) and size (three), raising `flat` and `shear`
 * on the link. Shear is dropped.
 */
export function takeApart(machine: Machine, from: number, orientation: number, size: number, link: number): void {
  const { memory: m, flags } = machine;
  const flat = orient(m, from, orientation);
  let largest = 0;
  let shear = 0;
  for (let i = 0; i < 3; i++) {
    const axis = orientation + 3 * i;
    const along = dot(m, axis, from + 3 * i);
    m[size + i] = along;
    largest = Math.max(largest, Math.abs(along));
    shear = Math.max(
      shear,
      Math.abs(dot(m, axis, from + 3 * ((i + 1) % 3))),
      Math.abs(dot(m, axis, from + 3 * ((i + 2) % 3))),
    );
  }
  if (flat) flags[link] |= FLAT;
  if (shear > SHEAR_LEAST * largest) flags[link] |= SHEAR;
}

/** Writes R(q)·S(s) to the 3×3 part at `to`. */
export function putTogether(m: Float64Array, orientation: number, size: number, to: number): void {
  for (let i = 0; i < 3; i++) {
    const s = m[size + i];
    for (let k = 3 * i; k < 3 * i + 3; k++) m[to + k] = m[orientation + k] * s;
  }
}
