/** The signed text of an assignment in an address; null where there is none. */
export function assignmentIn(hash: string): string | null {
  const text = hash.slice(1);
  return /^[\w-]+\.[\w-]+\.[\w-]+$/.test(text) ? text : null;
}

/** The end of the address of an assignment that this browser keeps. */
export const keptHash = (id: string): string => `#kept/${id}`;

/** Its id; null where the address names none. */
export function keptIn(hash: string): string | null {
  return /^#kept\/([\w-]{1,64})$/.exec(hash)?.[1] ?? null;
}
