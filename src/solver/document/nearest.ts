/** Longer words are no slip of the hand, and comparing them would be slow. */
const LONGEST = 64;

/**
 * How many letters must be put in, taken out, changed or swapped with their neighbour (optimal string alignment, after
 * F. Damerau 1964 and V. Levenshtein 1966; from memory).
 */
function distance(a: string, b: string): number {
  let before: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      next.push(Math.min(change, row[j]! + 1, next[j - 1]! + 1, swapped ? before[j - 2]! + 1 : change));
    }
    before = row;
    row = next;
  }
  return row[b.length]!;
}

/** The choice that `word` may be a slip for: at most a third of its letters off, the first of equals; or null. */
export function nearest(word: string, choices: Iterable<string>): string | null {
  if (word.length > LONGEST) return null;
  const lower = word.toLowerCase();
  let best: string | null = null;
  let least = Math.max(1, Math.floor(word.length / 3)) + 1;
  for (const choice of choices) {
    if (Math.abs(choice.length - word.length) >= least) continue;
    const off = distance(lower, choice.toLowerCase());
    if (off < least) {
      best = choice;
      least = off;
    }
  }
  return best;
}
