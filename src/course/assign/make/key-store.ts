import type { KeyPair } from '../../../delivery/assignment/assignment.ts';
import { withTeaching } from '../keep/teaching-database.ts';

/** The instructor's key pair; undefined where none is kept. Rejects where the browser keeps nothing. */
export const keptKey = (): Promise<KeyPair | undefined> => withTeaching((database) => database.get('keys', 'own'));

/** Keeps a key pair in place of the one before. Rejects where the browser keeps nothing. */
export async function keepKey(pair: KeyPair): Promise<void> {
  await withTeaching((database) => database.put('keys', pair, 'own'));
}
