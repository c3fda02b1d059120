import { Worker } from 'node:worker_threads';
import { COMPILED } from './compiled.ts';
import type { News } from './news.ts';

/** What has come of a task so far. */
export type Outcome<Result> = { is: 'awaited' } | { is: 'there'; result: Result } | { is: 'failed'; error: unknown };

/** A worker thread that does its tasks one after the other. */
export class Thread<Task, Result> {
  readonly #worker: Worker;
  readonly #awaited: Outcome<Result>[] = [];

  /** @param news is told whenever an outcome has changed */
  constructor(url: URL, workerData: unknown, news: News) {
    this.#worker = new Worker(url, { workerData, env: { NODE_COMPILE_CACHE: COMPILED, ...process.env } });
    this.#worker.on('message', ({ result }: { result: Result }) => {
      Object.assign(this.#awaited.shift()!, { is: 'there', result });
      news.tell();
    });
    this.#worker.on('error', (error) => {
      for (const outcome of this.#awaited.splice(0)) Object.assign(outcome, { is: 'failed', error });
      news.tell();
    });
  }

  get waiting(): number {
    return this.#awaited.length;
  }

  run(task: Task): Outcome<Result> {
    const outcome: Outcome<Result> = { is: 'awaited' };
    this.#awaited.push(outcome);
    this.#worker.postMessage({ task });
    return outcome;
  }

  async end(): Promise<void> {
    await this.#worker.terminate();
  }
}
