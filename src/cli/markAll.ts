import type { MarkedFile } from '../delivery/book/markFile.ts';
import type { Collected } from '../delivery/collection/collected.ts';
import type { Journal } from './journal.ts';
import { inOrder } from './pool.ts';
import { Progress } from './progress.ts';

const threadUrl = new URL('./threads/markFiles.ts', import.meta.url);

/** Marks every file collected, in worker threads, but for those the journal knows; in the order of their paths. */
export async function markAll(
  collected: AsyncIterable<Collected>,
  marking: { assignment: string; secretSeed: number },
  journal: Journal | null,
): Promise<MarkedFile[]> {
  const files: MarkedFile[] = [];
  const asked: Collected[] = [];
  async function* unmarked() {
    for await (const file of collected) {
      const known = journal?.known(file);
      if (known) files.push(known);
      else if (file.kind === 'stray') files.push(file);
      else {
        asked.push(file);
        yield file;
      }
    }
  }
  const progress = new Progress(null, 'files marked');
  for await (const marked of inOrder<Collected, MarkedFile>(threadUrl, marking, unmarked())) {
    const file = asked.shift()!;
    journal?.add(file, marked);
    files.push(marked);
    progress.step();
  }
  progress.end();
  return files.sort((a, b) => (a.path < b.path ? -1 : 1));
}
