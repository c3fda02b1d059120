import type { Rig } from '../../solver/document/rig.ts';
import type { RigEdit } from './works.ts';

type Plain = Record<string, unknown>;
/** Lists of named things: written in an edit as objects keyed by name. */
const NAMED_LISTS = new Set(['bones', 'links', 'switches', 'drivers']);

/**
 * Applies an edit to a rig document: JSON Merge Patch (RFC 7396), where lists of named things are merged
 * by name. The result is fresh; nothing is checked here, readRig does that.
 */
export function editRig(rig: Rig, edit: RigEdit): unknown {
  return merge(rig, edit);
}

function merge(old: unknown, edit: unknown): unknown {
  if (!isPlain(edit)) return edit;
  const merged: Plain = isPlain(old) ? { ...old } : {};
  for (const [key, change] of Object.entries(edit)) {
    if (NAMED_LISTS.has(key) && isPlain(change)) merged[key] = mergeNamed(merged[key], change);
    else if (change === null && key !== 'parent') delete merged[key];
    else merged[key] = merge(merged[key], change);
  }
  return merged;
}

function mergeNamed(old: unknown, changes: Plain): Plain[] {
  const list = Array.isArray(old) ? (old as Plain[]) : [];
  const kept = list
    .filter((item) => changes[String(item.name)] !== null)
    .map((item) => {
      const change = changes[String(item.name)];
      return change === undefined ? item : (merge(item, change) as Plain);
    });
  const known = new Set(list.map((item) => item.name));
  const added = Object.entries(changes)
    .filter(([name, change]) => !known.has(name) && change !== null)
    .map(([name, change]) => merge({ name }, change) as Plain);
  return [...kept, ...added];
}

function isPlain(value: unknown): value is Plain {
  return value !== null && typeof value === 'object' && !Array.isArray(value);
}
