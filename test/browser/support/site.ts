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

/** COUNTERPOSE_PAGES=all lets every exercise's page take part everywhere; they are many and made alike. */
const takesAll = process.env.COUNTERPOSE_PAGES === 'all';
const exercisePages = builtPages().filter((page) => /^exercises\/[^/]+\/index\.html$/.test(page));

/** Whether a page takes part in the share `turn` of so many in which the pages of exercises are looked at in turns. */
export function isInTurn(page: string, turn: number, turns: number): boolean {
  const at = exercisePages.indexOf(page);
  return takesAll || at < 0 || at % turns === turn;
}
