import { workerData } from 'node:worker_threads';
import { serve } from '../../src/cli/serve.ts';

/** How many tasks all threads together have done. */
const done = workerData as Int32Array;

/** In a worker thread: waits until so many tasks are done, and gives back the number; throws where it is below 0. */
serve(({ number, after }: { number: number; after: number }) => {
  if (number < 0) throw new Error('a number below 0');
  for (let seen = Atomics.load(done, 0); seen < after; seen = Atomics.load(done, 0)) Atomics.wait(done, 0, seen);
  Atomics.add(done, 0, 1);
  Atomics.notify(done, 0);
  return number;
});
