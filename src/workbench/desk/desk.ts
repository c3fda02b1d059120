import type { Replies, Request } from './work.ts';
import { address, work } from './worker.ts';

/** Does grading work for the page: in one worker for all its exercises, on the page's own thread where none runs. */
export interface Desk {
  readonly ask: <A extends Request['ask']>(request: Extract<Request, { ask: A }>) => Promise<Replies[A]>;
  readonly release: () => void;
}

type Reply = { id: number; done: unknown } | { id: number; failed: string };
interface Waiting {
  readonly done: (reply: unknown) => void;
  readonly failed: (error: unknown) => void;
}
interface Shared {
  readonly worker: Worker;
  readonly waiting: Map<number, Waiting>;
  users: number;
  next: number;
}

/** The work itself could not be done: doing it over on another thread would not help. */
class WorkError extends Error {}

let shared: Shared | null = null;
/** Once a worker could not be had, none is tried again. */
let workersFail = false;

export function acquireDesk(): Desk {
  let own: Shared | null = null;
  try {
    if (!workersFail) own = shared ??= begin();
  } catch {
    workersFail = true;
  }
  if (own) own.users++;
  return {
    ask: async <A extends Request['ask']>(request: Extract<Request, { ask: A }>) => {
      if (own && !workersFail) {
        try {
          return (await asked(own, request)) as Replies[A];
        } catch (error) {
          if (error instanceof WorkError) throw error;
          workersFail = true;
        }
      }
      return work(request) as Replies[A];
    },
    release: () => {
      if (!own) return;
      own.users--;
      if (own.users === 0) end(own);
      own = null;
    },
  };
}

function begin(): Shared {
  const worker = new Worker(address, { type: 'module' });
  const made: Shared = { worker, waiting: new Map(), users: 0, next: 0 };
  worker.onmessage = ({ data }: MessageEvent<Reply>) => {
    const waiting = made.waiting.get(data.id);
    made.waiting.delete(data.id);
    if ('done' in data) waiting?.done(data.done);
    else waiting?.failed(new WorkError(data.failed));
  };
  worker.onerror = (event) => {
    for (const { failed } of made.waiting.values()) failed(event);
    made.waiting.clear();
  };
  return made;
}

function end(own: Shared): void {
  own.worker.terminate();
  if (shared === own) shared = null;
}

function asked(own: Shared, request: Request): Promise<unknown> {
  const id = own.next++;
  return new Promise((done, failed) => {
    own.waiting.set(id, { done, failed });
    own.worker.postMessage({ id, request });
  });
}
