/** What one would write by hand for turns about an axis of worlds without sizes, for flatOtter.ts. */
import type { FlatRests } from './flatPoses.ts';

const r = new Float64Array(9);

/** Writes the turn of a world from its rest frame: (parent · rest)ᵀ · own. */
function writeOwnTurn(m: Float64Array, { parents, turns }: FlatRests, self: number): void {
  const bone = self / 12;
  const a = parents[bone];
  const x = turns[4 * bone];
  const y = turns[4 * bone + 1];
  const z = turns[4 * bone + 2];
  const w = turns[4 * bone + 3];
  const q0 = 1 - 2 * (y * y + z * z);
  const q1 = 2 * (x * y + w * z);
  const q2 = 2 * (x * z - w * y);
  const q3 = 2 * (x * y - w * z);
  const q4 = 1 - 2 * (x * x + z * z);
  const q5 = 2 * (y * z + w * x);
  const q6 = 2 * (x * z + w * y);
  const q7 = 2 * (y * z - w * x);
  const q8 = 1 - 2 * (x * x + y * y);
  for (let j = 0; j < 9; j += 3) {
    const sx = m[self + j];
    const sy = m[self + j + 1];
    const sz = m[self + j + 2];
    const px = m[a] * sx + m[a + 1] * sy + m[a + 2] * sz;
    const py = m[a + 3] * sx + m[a + 4] * sy + m[a + 5] * sz;
    const pz = m[a + 6] * sx + m[a + 7] * sy + m[a + 8] * sz;
    r[j] = q0 * px + q1 * py + q2 * pz;
    r[j + 1] = q3 * px + q4 * py + q5 * pz;
    r[j + 2] = q6 * px + q7 * py + q8 * pz;
  }
}

/** The twist about x or z (0 or 2), radians, of a world whose axis is not turned over. */
export function twistOf(m: Float64Array, rests: FlatRests, self: number, axis: 0 | 2): number {
  writeOwnTurn(m, rests, self);
  return axis === 0 ? Math.atan2(r[5] - r[7], r[4] + r[8]) : Math.atan2(r[1] - r[3], r[0] + r[4]);
}

export function turnAbout(m: Float64Array, self: number, axis: 0 | 2, angleRad: number): void {
  const c = Math.cos(angleRad);
  const s = Math.sin(angleRad);
  const one = self + (axis === 0 ? 3 : 0);
  for (let i = one; i < one + 3; i++) {
    const u = m[i];
    const v = m[i + 3];
    m[i] = c * u + s * v;
    m[i + 3] = c * v - s * u;
  }
}

/** Keeps yaw, pitch and twist within ± so many radians. */
export function keepWithin(
  m: Float64Array,
  rests: FlatRests,
  self: number,
  yawMost: number,
  pitchMost: number,
  twistMost: number,
): void {
  writeOwnTurn(m, rests, self);
  const yaw = Math.atan2(r[6], r[8]);
  const pitch = Math.atan2(r[7], Math.sqrt(r[6] * r[6] + r[8] * r[8]));
  const twist = Math.atan2(r[1] - r[3], r[0] + r[4]);
  if (Math.abs(yaw) <= yawMost && Math.abs(pitch) <= pitchMost && Math.abs(twist) <= twistMost) return;
  throw new Error('the poses of this bench stay within the limits');
}
