import type { Group } from './groups.ts';

/** A test for poses that are kept out; null where none is. */
export type KeptOut = ((values: Float64Array) => boolean) | null;

/** Measures groups of equally long sheets: one probe after the other, each for all of them. */
export function measureTogether(groups: readonly Group[], keptOut: KeptOut): void {
  let from = 0;
  for (const [sheet, { list }] of (groups[0]?.sheets ?? []).entries()) {
    for (let i = 0; i < list.length; i++) for (const group of groups) measureAt(group, sheet, from, i, keptOut);
    from += list.length;
  }
}

function measureAt({ asked, sheets, measured }: Group, sheet: number, from: number, i: number, keptOut: KeptOut) {
  const { list, firstAt } = sheets[sheet]!;
  const first = firstAt[i]!;
  if (first < i) {
    for (const own of measured) own[from + i] = own[from + first]!;
    return;
  }
  const values = list[i]!;
  const isOut = keptOut?.(values) ?? false;
  for (let k = 0; k < asked.length; k++) measured[k]![from + i] = isOut ? asked[k]!.fine : asked[k]!.measure(values);
}
