import { cos, sin } from '../number/index.ts';

/** Turns the orientation (three columns) about its own z. */
export function turnAboutZ(m: Float64Array, orientation: number, angleRad: number): void {
  const c = cos(angleRad);
  const s = sin(angleRad);
  for (let i = orientation; i < orientation + 3; i++) {
    const x = m[i];
    const y = m[i + 3];
    m[i] = c * x + s * y;
    m[i + 3] = c * y - s * x;
  }
}
