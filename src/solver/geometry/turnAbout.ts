import { cos, sin } from '../number/index.ts';
import { turnByQuaternion } from './quaternion.ts';

const INDEX = 0x3fffffff;

/** Turns the orientation about an axis of its own, a unit vector in memory. Uses four doubles at `spare`. */
export function turnAbout(m: Float64Array, orientation: number, axis: number, angleRad: number, spare: number): void {
  const s = sin(0.5 * angleRad);
  m[spare] = m[axis] * s;
  m[spare + 1] = m[axis + 1] * s;
  m[spare + 2] = m[axis + 2] * s;
  m[spare + 3] = cos(0.5 * angleRad);
  turnByQuaternion(m, orientation, spare);
}

/** Turns the orientation about its own z. */
export function turnAboutZ(m: Float64Array, orientation: number, angleRad: number): void {
  const c = cos(angleRad);
  const s = sin(angleRad);
  const o = orientation & INDEX;
  for (let i = o; i < o + 3; i++) {
    const x = m[i];
    const y = m[i + 3];
    m[i] = c * x + s * y;
    m[i + 3] = c * y - s * x;
  }
}
