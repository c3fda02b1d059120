import { parentPort } from 'node:worker_threads';

/** In a worker thread of the pool: answers each task with what `work` makes of it, in order. */
export function serve<Task, Result>(work: (task: Task) => Result): void {
  parentPort!.on('message', ({ task }: { task: Task }) => parentPort!.postMessage({ result: work(task) }));
}
