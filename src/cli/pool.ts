import { availableParallelism } from 'node:os';
import { Coming } from './coming.ts';
import { News } from './news.ts';
import { type Outcome, Thread } from './thread.ts';

/** So many tasks stand ready at a thread, the one in hand among them, that it need not wait for the next. */
const READY = 4;
/** So many results a thread may wait for one that comes before them. */
const AHEAD = 32;

/**
 * Runs tasks on worker threads, each on the one with the least to do, and gives the results in the order of the tasks, as
 * soon as they are there. Only so many tasks a thread are taken before results are handed on, so memory stays bounded
 * however many there are. The worker answers each message { task } with { result } (see `serve`).
 */
export async function* inOrder<Task, Result>(
  worker: URL,
  workerData: unknown,
  tasks: AsyncIterable<Task> | Iterable<Task>,
  threads = availableParallelism(),
): AsyncGenerator<Result> {
  const news = new News();
  const pool = Array.from({ length: threads }, () => new Thread<Task, Result>(worker, workerData, news));
  const coming = new Coming(tasks, news);
  const ahead: Outcome<Result>[] = [];
  try {
    while (!coming.isOver || ahead.length > 0) {
      const thread = pool.reduce((idlest, one) => (one.waiting < idlest.waiting ? one : idlest));
      if (coming.next && thread.waiting < READY && ahead.length < AHEAD * threads)
        ahead.push(thread.run(coming.take()));
      else if (ahead[0]?.is !== undefined && ahead[0].is !== 'awaited') yield resultOf(ahead.shift()!);
      else await news.heard();
    }
    coming.throwFault();
  } finally {
    coming.stop();
    await Promise.all(pool.map((thread) => thread.end()));
  }
}

function resultOf<Result>(outcome: Outcome<Result>): Result {
  if (outcome.is === 'there') return outcome.result;
  throw outcome.is === 'failed' ? outcome.error : new Error('a result that is not there yet');
}
