/*
 * Classical item analysis of a table of marks: one row a learner, one column an item, each from 0 to 1. Every number is
 * null where it cannot be said, as for an item that all answered alike. Variances are those of the learners there are
 * (divided by N), as in the usual form of KR-20; in correlations and in alpha it makes no difference which is taken.
 */

const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);
export const mean = (list: readonly number[]): number => sum(list) / list.length;

/** Mean square of the differences from the mean, divided by N. */
export function variance(list: readonly number[]): number {
  const middle = mean(list);
  return mean(list.map((x) => (x - middle) * (x - middle)));
}

/** Whether numbers differ by more than the rounding of their sums. */
const varies = (list: readonly number[]): boolean => Math.max(...list) - Math.min(...list) > 1e-9;

const columnOf = (marks: readonly (readonly number[])[], item: number): number[] => marks.map((row) => row[item]!);
const totals = (marks: readonly (readonly number[])[]): number[] => marks.map(sum);

/** Pearson's correlation; null where one of the two does not vary. */
export function correlation(a: readonly number[], b: readonly number[]): number | null {
  const [middleA, middleB] = [mean(a), mean(b)];
  const together = mean(a.map((x, i) => (x - middleA) * (b[i]! - middleB)));
  return varies(a) && varies(b) ? together / Math.sqrt(variance(a) * variance(b)) : null;
}

/** Correlation of an item with the sum of all items, itself among them. */
export const itemTotal = (marks: readonly (readonly number[])[], item: number): number | null =>
  correlation(columnOf(marks, item), totals(marks));

/** Correlation of an item with the sum of the others: an item is not to be measured against itself. */
export function itemRest(marks: readonly (readonly number[])[], item: number): number | null {
  const own = columnOf(marks, item);
  const rest = marks.map((row) => sum(row.filter((_, other) => other !== item)));
  return correlation(own, rest);
}

/**
 * Cronbach's alpha (Psychometrika 16, 1951; from memory): k/(k − 1) · (1 − Σ variance of items / variance of totals). For
 * items that are right or wrong it is KR-20 (Kuder and Richardson, Psychometrika 2, 1937; from memory), since the variance
 * of an item is then p(1 − p). Null for fewer than two items or learners, or where totals do not vary.
 */
export function alpha(marks: readonly (readonly number[])[]): number | null {
  const items = marks[0]?.length ?? 0;
  if (items < 2 || marks.length < 2) return null;
  if (!varies(totals(marks))) return null;
  const own = sum(Array.from({ length: items }, (_, item) => variance(columnOf(marks, item))));
  return alphaFrom(items, own, variance(totals(marks)));
}

/** The same from the sum of the items' variances (Σpq for KR-20) and the variance of totals. */
export const alphaFrom = (items: number, ownVariances: number, totalVariance: number): number | null =>
  totalVariance > 0 ? (items / (items - 1)) * (1 - ownVariances / totalVariance) : null;
