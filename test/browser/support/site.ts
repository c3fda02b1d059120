import { globSync } from 'node:fs';
import { resolve } from 'node:path';

/** The built course. */
export const DIST = resolve(import.meta.dirname, '../../../dist');

/** Addresses of all built pages, relative to the course's own address: "lessons/3.4/index.html". */
export function builtPages(): string[] {
  return globSync('**/*.html', { cwd: DIST })
    .map((path) => path.replaceAll('\\', '/'))
    .sort();
}
