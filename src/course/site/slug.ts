/** A fragment name from a heading: "The sum behind it" → "the-sum-behind-it". */
export function slug(heading: string): string {
  return heading
    .toLowerCase()
    .normalize('NFD')
    .replaceAll(/[^a-z0-9 -]/g, '')
    .trim()
    .replaceAll(/\s+/g, '-');
}
