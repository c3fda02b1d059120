import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';

interface Waiting<Result> {
  resolve(result: Result): void;
  reject(error: unknown): void;
}

/**
 * Runs tasks on worker threads and gives the results in the order of the tasks. No more than a few tasks a
 * thread are taken before results are handed on, so memory stays bounded however many there are. The worker
 * answers each message { task } with { result } (see `serve`).
 */
export async function* inOrder<Task, Result>(
  worker: URL,
  workerData: unknown,
  tasks: AsyncIterable<Task> | Iterable<Task>,
  threads = availableParallelism(),
): AsyncGenerator<Result> {
  const pool = Array.from({ length: threads }, () => new Thread<Task, Result>(worker, workerData));
  const ahead: Promise<Result>[] = [];
  try {
    let next = 0;
    for await (const task of tasks) {
      const result = pool[next % threads]!.run(task);
      result.catch(() => {});
      ahead.push(result);
      next++;
      if (ahead.length >= 4 * threads) yield await ahead.shift()!;
    }
    while (ahead.length > 0) yield await ahead.shift()!;
  } finally {
    await Promise.all(pool.map((thread) => thread.end()));
  }
}

class Thread<Task, Result> {
  readonly #worker: Worker;
  readonly #waiting: Waiting<Result>[] = [];

  constructor(url: URL, workerData: unknown) {
    this.#worker = new Worker(url, { workerData });
    this.#worker.on('message', ({ result }: { result: Result }) => this.#waiting.shift()!.resolve(result));
    this.#worker.on('error', (error) => {
      for (const { reject } of this.#waiting.splice(0)) reject(error);
    });
  }

  run(task: Task): Promise<Result> {
    return new Promise((resolve, reject) => {
      this.#waiting.push({ resolve, reject });
      this.#worker.postMessage({ task });
    });
  }

  async end(): Promise<void> {
    await this.#worker.terminate();
  }
}
