/** JSON as documents hold it. */
export type Json = unknown;
export type Place = readonly (string | number)[];

/**
 * One difference between two documents. At a field: `was` and `is` (absent where there was or is none).
 * In a list: from `index` on, the items `out` gave way to the items `in`.
 */
export type Patch =
  | { at: Place; was?: Json; is?: Json }
  | { at: Place; index: number; out: readonly Json[]; in: readonly Json[] };

/** The differences that lead from one document to another; what the two share by identity is not looked into. */
export function difference(was: Json, is: Json, at: Place = []): Patch[] {
  if (was === is) return [];
  if (Array.isArray(was) && Array.isArray(is)) return listDifference(was, is, at);
  if (isRecord(was) && isRecord(is)) return recordDifference(was, is, at);
  return [{ at, was, is }];
}

/** The document after the patches, or before them when `back`. */
export function patched<T>(document: T, patches: readonly Patch[], back = false): T {
  const order = back ? patches.toReversed() : patches;
  return order.reduce<Json>((changed, patch) => withPatch(changed, patch.at, patch, back), document) as T;
}

function recordDifference(was: Record<string, Json>, is: Record<string, Json>, at: Place): Patch[] {
  const patches: Patch[] = [];
  for (const key of new Set([...Object.keys(was), ...Object.keys(is)])) {
    const here = [...at, key];
    if (!Object.hasOwn(is, key)) patches.push({ at: here, was: was[key] });
    else if (!Object.hasOwn(was, key)) patches.push({ at: here, is: is[key] });
    else patches.push(...difference(was[key], is[key], here));
  }
  return patches;
}

function listDifference(was: readonly Json[], is: readonly Json[], at: Place): Patch[] {
  let start = 0;
  while (start < was.length && start < is.length && was[start] === is[start]) start++;
  let end = 0;
  const most = Math.min(was.length, is.length) - start;
  while (end < most && was[was.length - 1 - end] === is[is.length - 1 - end]) end++;
  const removed = was.slice(start, was.length - end);
  const added = is.slice(start, is.length - end);
  if (removed.length !== added.length) return [{ at, index: start, out: removed, in: added }];
  return removed.flatMap((item, i) => difference(item, added[i], [...at, start + i]));
}

function withPatch(node: Json, at: Place, patch: Patch, back: boolean): Json {
  const [key, ...rest] = at;
  if (key === undefined) return atPlace(node, patch, back);
  if (Array.isArray(node)) return node.with(key as number, withPatch(node[key as number], rest, patch, back));
  const record = { ...(node as Record<string, Json>) };
  const field = back ? 'was' : 'is';
  if (rest.length === 0 && !('index' in patch) && !(field in patch)) delete record[key];
  // Not by assignment, which takes "__proto__" for something else.
  else return { ...record, [key]: withPatch(ownOf(record, key), rest, patch, back) };
  return record;
}

function ownOf(record: Record<string, Json>, key: string | number): Json {
  return Object.hasOwn(record, key) ? record[key] : undefined;
}

function atPlace(node: Json, patch: Patch, back: boolean): Json {
  if (!('index' in patch)) return back ? patch.was : patch.is;
  const [from, to] = back ? [patch.in, patch.out] : [patch.out, patch.in];
  return (node as readonly Json[]).toSpliced(patch.index, from.length, ...to);
}

function isRecord(value: Json): value is Record<string, Json> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
