import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { DIST } from './site.ts';

/** In a built script every file that it may load stands as a quoted name beside it: `"./solver.B-1zb-ij.js"`. */
const QUOTED_FILE = /["'`]([^"'`\s]+\.(?:js|css))["'`]/g;
const FILE_OF_PAGE = /<(?:script|link)\b[^>]*?\b(?:src|href)="([^"]+\.(?:js|css))"/g;

/**
 * All scripts and style sheets that a page may ever load: those it names, and whatever those name in turn, be it
 * imported at once, when an exercise comes near, or by a worker. Paths in the built course.
 */
export function filesOf(page: string): string[] {
  const found = new Set<string>();
  const waiting = namedIn(page, FILE_OF_PAGE);
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    if (found.has(file)) continue;
    found.add(file);
    if (file.endsWith('.js')) waiting.push(...namedIn(file, QUOTED_FILE));
  }
  return [...found].sort();
}

function namedIn(file: string, pattern: RegExp): string[] {
  const text = readFileSync(join(DIST, file), 'utf8');
  return [...text.matchAll(pattern)]
    .map(([, name]) => join(dirname(file), name!))
    .filter((path) => existsSync(join(DIST, path)));
}
