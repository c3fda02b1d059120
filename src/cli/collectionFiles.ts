import { readdir, readFile, stat } from 'node:fs/promises';
import { basename, join, relative, sep } from 'node:path';
import { collect } from '../delivery/collection/collect.ts';
import { type Collected, type CollectedFile, LIMITS } from '../delivery/collection/collected.ts';
import { Unusable } from './refusal.ts';

/** A zip that a school's system hands out is read whole; more than this is for a folder. */
const LARGEST_ZIP = 2 * 1024 * 1024 * 1024;

/** What a folder or a zip holds, file by file in order of the paths. Throws Unusable where there is neither. */
export async function* collectionAt(path: string): AsyncGenerator<Collected> {
  const found = await stat(path).catch(() => null);
  if (!found) throw new Unusable(`${path}: found nothing, expected a folder or a zip of submissions`);
  yield* collect(found.isDirectory() ? filesOf(path) : [fileAt(path, basename(path), LARGEST_ZIP)]);
}

async function* filesOf(folder: string): AsyncGenerator<CollectedFile> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const paths = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  const named = paths.map((path) => ({ path, name: relative(folder, path).split(sep).join('/') }));
  named.sort((a, b) => (a.name < b.name ? -1 : 1));
  for (const { path, name } of named) {
    const { mtime } = await stat(path);
    yield { ...fileAt(path, name, name.endsWith('.zip') ? LARGEST_ZIP : LIMITS.file), collected: mtime.toISOString() };
  }
}

function fileAt(path: string, name: string, most: number): CollectedFile {
  return {
    path: name,
    collected: null,
    read: async () => ((await stat(path)).size > most ? null : new Uint8Array(await readFile(path))),
  };
}
