import { join } from 'node:path';

/** Where Node keeps what it has compiled of this program, so that the next thread or run starts sooner. */
export const COMPILED = join(import.meta.dirname, '../../node_modules/.cache/counterpose');
