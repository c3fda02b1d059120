/** Three numbers part of the way to three others; all of the way is exact. */
export function blend(m: Float64Array, from: number, to: number, weight: number): void {
  for (let i = 0; i < 3; i++) {
    m[from + i] = weight === 1 ? m[to + i] : m[from + i] + weight * (m[to + i] - m[from + i]);
  }
}
