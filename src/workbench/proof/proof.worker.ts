import { type Request, work } from '../desk/work.ts';

/** Opens exercises, reads files and proves answers off the page's own thread. Each message is answered by its `id`. */
self.onmessage = ({ data }: MessageEvent<{ id: number; request: Request }>) => {
  const { id, request } = data;
  try {
    self.postMessage({ id, done: work(request) });
  } catch (error) {
    self.postMessage({ id, failed: error instanceof Error ? error.message : String(error) });
  }
};
