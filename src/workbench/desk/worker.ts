import { makeReady } from './proveAnswer.ts';
import { type Request, work } from './work.ts';

/**
 * Where this file lies once it is built. A page loads it and a worker starts from it, so that both share one copy of
 * the solver and the grader.
 */
export const address = import.meta.url;
export { work };

const isWorker = typeof window === 'undefined' && typeof self !== 'undefined' && 'postMessage' in self;

/** Opens exercises, reads files and proves answers off the page's own thread. Each message is answered by its `id`. */
if (isWorker) {
  self.onmessage = ({ data }: MessageEvent<{ id: number; request: Request }>) => {
    const { id, request } = data;
    try {
      const done = work(request);
      self.postMessage({ id, done });
      if (request.ask === 'open') setTimeout(makeReady, 0, done);
    } catch (error) {
      self.postMessage({ id, failed: error instanceof Error ? error.message : String(error) });
    }
  };
}
