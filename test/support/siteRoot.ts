import { cpSync, mkdirSync, readdirSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';

const ROOT = join(import.meta.dirname, '../..');
const COPIED = ['src', 'content', 'public', 'scripts', 'astro.config.mjs', 'tsconfig.json', 'package.json'];

/**
 * Lays out in a new folder what the site is built from, so that the build keeps nothing among the files of this one,
 * which another build may be reading. Packages are linked, not copied.
 */
export function layOutSite(folder: string): void {
  for (const name of COPIED) cpSync(join(ROOT, name), join(folder, name), { recursive: true });
  const packages = join(ROOT, 'node_modules');
  mkdirSync(join(folder, 'node_modules'));
  // What stands there with a dot is caches, and what is run.
  for (const name of readdirSync(packages).filter((name) => !name.startsWith('.'))) {
    symlinkSync(join(packages, name), join(folder, 'node_modules', name), 'junction');
  }
}
