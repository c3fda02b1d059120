import type { MarkedFile } from '../delivery/book/markFile.ts';
import type { Collected } from '../delivery/collection/collected.ts';
import type { MarkReply, MarkRequest } from './worker.ts';

const MOST_WORKERS = 8;
/** So many files are handed to a worker before one comes back; so memory stays bounded. */
const AHEAD = 3;

interface Marking {
  assignment: string;
  secretSeed: number;
  signal: AbortSignal;
  /** Told of every file as it is marked, in no order. */
  onMarked: (marked: MarkedFile) => void;
}

/** Marks a collection in worker threads. Ends early, with what is done told, where it is cancelled. */
export async function markAll(files: AsyncIterable<Collected>, marking: Marking): Promise<void> {
  const { assignment, secretSeed, signal, onMarked } = marking;
  const count = Math.max(1, Math.min(MOST_WORKERS, navigator.hardwareConcurrency ?? 2));
  const workers = Array.from({ length: count }, () => new MarkWorker({ ask: 'begin', assignment, secretSeed }));
  const under = new Set<Promise<void>>();
  let next = 0;
  try {
    for await (const file of files) {
      if (signal.aborted) break;
      if (file.kind === 'stray') {
        onMarked(file);
        continue;
      }
      const work = workers[next++ % count]!.mark(file).then((marked) => {
        under.delete(work);
        if (!signal.aborted) onMarked(marked);
      });
      under.add(work);
      if (under.size >= count * AHEAD) await Promise.race(under);
    }
    await Promise.all(under);
  } finally {
    for (const worker of workers) worker.end();
  }
}

class MarkWorker {
  readonly #worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  readonly #waiting = new Map<number, { resolve: (marked: MarkedFile) => void; reject: (error: Error) => void }>();
  #next = 0;

  constructor(begin: MarkRequest) {
    this.#worker.onmessage = ({ data }: MessageEvent<MarkReply>) => {
      this.#waiting.get(data.id)?.resolve(data.marked);
      this.#waiting.delete(data.id);
    };
    this.#worker.onerror = ({ message }) => {
      for (const { reject } of this.#waiting.values()) reject(new Error(message || 'a worker could not be started'));
      this.#waiting.clear();
    };
    this.#worker.postMessage(begin);
  }

  mark(file: Collected): Promise<MarkedFile> {
    const id = this.#next++;
    return new Promise((resolve, reject) => {
      this.#waiting.set(id, { resolve, reject });
      this.#worker.postMessage({ ask: 'mark', id, file } satisfies MarkRequest);
    });
  }

  end(): void {
    this.#worker.terminate();
  }
}
