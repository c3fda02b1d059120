/** A third of the time an end, which is where animators leave things. */
export function anyValue({ min, max }: { min: number; max: number }, random: () => number): number {
  const at = random();
  if (at < 1 / 6) return min;
  if (at < 1 / 3) return max;
  return min + (max - min) * random();
}
