import { appendFileSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import type { MarkedFile } from '../delivery/book/markFile.ts';
import type { Collected } from '../delivery/collection/collected.ts';
import { hashOf } from '../delivery/hash.ts';

/**
 * Marked files, a line each, written as they come, so that a run that was broken off goes on where it stopped. It only
 * counts for the same assignment and secret seed; files that changed since are marked again.
 */
export class Journal {
  readonly #path: string;
  readonly #done = new Map<string, MarkedFile>();

  /** @param of what the marks depend on besides the files */
  constructor(path: string, of: unknown) {
    this.#path = path;
    const head = hashOf(of);
    const lines = existsSync(path) ? readFileSync(path, 'utf8').split('\n') : [];
    if (lines[0] !== head) {
      writeFileSync(path, `${head}\n`);
      return;
    }
    for (const line of lines.slice(1)) this.#take(line);
  }

  /** What a file was marked with, if it was. */
  known(file: Collected): MarkedFile | null {
    return this.#done.get(hashOf(file)) ?? null;
  }

  add(file: Collected, marked: MarkedFile): void {
    appendFileSync(this.#path, `${JSON.stringify({ key: hashOf(file), marked })}\n`);
  }

  /** The last line of a run that was broken off may be half a line. */
  #take(line: string): void {
    try {
      const { key, marked } = JSON.parse(line) as { key: string; marked: MarkedFile };
      this.#done.set(key, marked);
    } catch {
      return;
    }
  }
}
