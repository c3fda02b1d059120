import type { Refusal } from '../../solver/document/refusal.ts';
import type { Bone, Driver, Link, Rig } from '../../solver/document/rig.ts';

/** What a learner changes: the rig, and which of its bones and switches answer to the parts of the task. */
export interface Draft {
  readonly rig: Rig;
  /** Part id to "bone" or "bone.switch"; a part not listed takes the name the task gives. */
  readonly parts: Readonly<Record<string, string>>;
  /** What is answered where no rig is asked for. */
  readonly response?: DraftResponse;
}

/** An answer on its way: numbers by requirement id as far as they are given, or names in an order. */
export interface DraftResponse {
  readonly values?: Readonly<Record<string, number>>;
  readonly order?: readonly string[];
}

/** One change, with the words that undo and redo announce. Edits of one `merge` key that follow at once are one step. */
export interface Edit {
  readonly says: string;
  readonly merge?: string;
  readonly apply: (draft: Draft) => Draft;
  /** Why it cannot be made, where that is more than that its rig could not be read. */
  readonly refuses?: (draft: Draft) => Refusal | undefined;
}

/** An edit that is a step of its own however fast it follows. */
export function apart(says: string, edit: Edit): Edit {
  return { says, apply: edit.apply };
}

export function boneOf(draft: Draft, name: string): Bone | undefined {
  return draft.rig.bones.find((bone) => bone.name === name);
}

/** The draft with one bone changed; the draft itself where no bone has that name. */
export function changeBone(draft: Draft, name: string, change: (bone: Bone) => Bone): Draft {
  const bones = draft.rig.bones.map((bone) => (bone.name === name ? change(bone) : bone));
  return { ...draft, rig: { ...draft.rig, bones } };
}

export function changeLinks(draft: Draft, bone: string, change: (links: readonly Link[]) => readonly Link[]): Draft {
  return changeBone(draft, bone, (old) => withList(old, 'links', change(old.links ?? [])));
}

export function changeDrivers(draft: Draft, change: (drivers: readonly Driver[]) => readonly Driver[]): Draft {
  return { ...draft, rig: withList(draft.rig, 'drivers', change(draft.rig.drivers ?? [])) };
}

/** A copy with one optional field set, or left out where the value is undefined: defaults are never written. */
export function withField<T extends object, K extends keyof T>(thing: T, field: K, value: T[K] | undefined): T {
  const copy = { ...thing };
  if (value === undefined) delete copy[field];
  else copy[field] = value;
  return copy;
}

/** As withField, with an empty list left out. */
export function withList<T extends object, K extends keyof T>(thing: T, field: K, list: T[K] & readonly unknown[]): T {
  return withField(thing, field, list.length > 0 ? list : undefined);
}

/** The item moved by so many places, as far as the list goes. */
export function movedBy<T>(list: readonly T[], index: number, places: number): readonly T[] {
  const to = Math.max(0, Math.min(list.length - 1, index + places));
  if (index < 0 || to === index) return list;
  const rest = list.filter((_, i) => i !== index);
  return [...rest.slice(0, to), list[index]!, ...rest.slice(to)];
}

/** `wanted`, or `wanted_2`, `wanted_3` … where it is taken. */
export function freshName(wanted: string, taken: Iterable<string>): string {
  const names = new Set(taken);
  if (!names.has(wanted)) return wanted;
  let n = 2;
  while (names.has(`${wanted}_${n}`)) n++;
  return `${wanted}_${n}`;
}
