/** Seeds are six bytes. */
const SEED_LIMIT = 2 ** 48;

/** The query of an exercise's address that asks for one variant; nothing for the one that is told in the page. */
export function queryFor(seed: number): string {
  return seed === 0 ? '' : `?seed=${seed}`;
}

/** The seed that an address's query asks for; 0 where it asks for none, or for none there can be. */
export function seedIn(query: string): number {
  const asked = new URLSearchParams(query).get('seed') ?? '';
  const seed = /^\d{1,15}$/.test(asked) ? Number(asked) : 0;
  return seed < SEED_LIMIT ? seed : 0;
}
