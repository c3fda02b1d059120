const RAD_PER_DEG = 0.017453292519943295;
const DEG_PER_RAD = 57.29577951308232;

/** One multiplication by the double nearest π/180. */
export function degToRad(angleDeg: number): number {
  return angleDeg * RAD_PER_DEG;
}

/** One multiplication by the double nearest 180/π. */
export function radToDeg(angleRad: number): number {
  return angleRad * DEG_PER_RAD;
}
