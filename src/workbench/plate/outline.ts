/** Flat outlines in a bone's own (x, z) plane, from its base at (0, 0) to its tip at (0, length). */
export type Flat = readonly (readonly [x: number, z: number])[];

const ROUND = 8;

/** A paddle: round ends, wider at the base. `grown` moves the outline outward all round. */
export function paddle(length: number, baseHalf: number, tipHalf: number, grown = 0): Flat {
  const base = baseHalf + grown;
  const tip = tipHalf + grown;
  const end = Array.from({ length: ROUND + 1 }, (_, i) => (i / ROUND) * Math.PI);
  return [
    ...end.map((angle) => [Math.cos(angle) * tip, length + Math.sin(angle) * tip] as const),
    ...end.map((angle) => [-Math.cos(angle) * base, -Math.sin(angle) * base] as const),
  ];
}

/** A circle of points round (0, 0), with a notch cut toward +y: it shows how far it is turned. */
export function notchedRing(radius: number): Flat {
  const notch = 0.13;
  const points: [number, number][] = [];
  for (let i = 0; i <= 36; i++) {
    const angle = Math.PI / 2 + notch + (i / 36) * (2 * Math.PI - 2 * notch);
    points.push([Math.cos(angle) * radius, Math.sin(angle) * radius]);
  }
  return [...points, [0, radius * 0.76]];
}

/** A ruled tape: its edge, as long as the bone. */
export function tape(length: number, half: number, grown = 0): Flat {
  const h = half + grown;
  return [
    [h, -grown],
    [h, length + grown],
    [-h, length + grown],
    [-h, -grown],
  ];
}
