/** Poses to be tried, and of each where in the list it stands first: what was measured there holds for it too. */
export interface Listed {
  readonly list: readonly Float64Array[];
  readonly firstAt: Int32Array;
}

/** Poses that come again are told by their numbers; from then on they are one array. */
export function listed(poses: readonly Float64Array[]): Listed {
  const list = [...poses];
  const firstAt = new Int32Array(list.length);
  const byHash = new Map<number, number[]>();
  const room = new Float64Array(1);
  const halves = new Uint32Array(room.buffer);
  list.forEach((values, index) => {
    const hash = hashOf(values, room, halves);
    const alike = byHash.get(hash);
    const first = alike?.find((at) => isSame(list[at]!, values)) ?? index;
    firstAt[index] = first;
    list[index] = list[first]!;
    if (first !== index) return;
    if (alike) alike.push(index);
    else byHash.set(hash, [index]);
  });
  return { list, firstAt };
}

/** Poses that are taken to differ. */
export const listedAsTheyAre = (list: readonly Float64Array[]): Listed => ({
  list,
  firstAt: Int32Array.from(list.keys()),
});

export function isSameList({ list: a }: Listed, { list: b }: Listed): boolean {
  return a.length === b.length && a.every((values, i) => isSame(values, b[i]));
}

export function isSame(a: Float64Array, b: Float64Array): boolean {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}

/** FNV-1a over the 32-bit halves of the numbers (Fowler, Noll, Vo; constants from memory); −0 counts as 0. */
function hashOf(values: Float64Array, room: Float64Array, halves: Uint32Array): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < values.length; i++) {
    room[0] = values[i]! + 0;
    hash = Math.imul(hash ^ halves[0]!, 0x01000193);
    hash = Math.imul(hash ^ halves[1]!, 0x01000193);
  }
  return hash;
}
