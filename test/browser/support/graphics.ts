import type { BrowserContext, Page } from '@playwright/test';

/** What the pages hold of the graphics card, counted as it is made and given back. */
export interface Held {
  readonly contexts: number;
  readonly buffers: number;
  readonly vertexArrays: number;
  readonly programs: number;
  readonly workers: number;
}

interface Watched {
  watched: { contexts: WebGL2RenderingContext[]; made: number; held: Record<string, number> };
}

/** From the next page on, counts contexts, what is made in them, and workers. */
export async function watchGraphics(context: BrowserContext): Promise<void> {
  await context.addInitScript(() => {
    const watched: Watched['watched'] = { contexts: [], made: 0, held: {} };
    (globalThis as unknown as Watched).watched = watched;
    const count = (what: string, by: number) => {
      watched.held[what] = (watched.held[what] ?? 0) + by;
    };
    for (const canvas of [HTMLCanvasElement, OffscreenCanvas]) {
      const getContext = canvas.prototype.getContext as (kind: string, ...rest: unknown[]) => unknown;
      canvas.prototype.getContext = function (this: unknown, kind: string, ...rest: unknown[]) {
        const found = getContext.call(this, kind, ...rest);
        const known = watched.contexts.includes(found as WebGL2RenderingContext);
        if (kind.startsWith('webgl') && found && !known) {
          watched.contexts.push(found as WebGL2RenderingContext);
          watched.made++;
        }
        return found;
      } as never;
    }
    const drawn = WebGL2RenderingContext.prototype as unknown as Record<string, (thing?: unknown) => unknown>;
    for (const what of ['Buffer', 'VertexArray', 'Program']) {
      const [create, remove] = [drawn[`create${what}`]!, drawn[`delete${what}`]!];
      drawn[`create${what}`] = function (this: unknown) {
        count(what, 1);
        return create.call(this);
      };
      drawn[`delete${what}`] = function (this: unknown, thing: unknown) {
        if (thing) count(what, -1);
        return remove.call(this, thing);
      };
    }
    const { terminate } = Worker.prototype;
    Worker.prototype.terminate = function () {
      count('Worker', -1);
      terminate.call(this);
    };
    globalThis.Worker = new Proxy(Worker, {
      construct: (worker, options) => {
        count('Worker', 1);
        return Reflect.construct(worker, options);
      },
    });
  });
}

export function graphicsHeld(page: Page): Promise<Held> {
  return page.evaluate(() => {
    const { contexts, held } = (globalThis as unknown as Watched).watched;
    return {
      contexts: contexts.filter((context) => !context.isContextLost()).length,
      buffers: held.Buffer ?? 0,
      vertexArrays: held.VertexArray ?? 0,
      programs: held.Program ?? 0,
      workers: held.Worker ?? 0,
    };
  });
}

/** How many contexts the page has made so far, lost ones included. */
export function contextsMade(page: Page): Promise<number> {
  return page.evaluate(() => (globalThis as unknown as Watched).watched.made);
}

/** Takes the page's one context away, as a driver that fails does. */
export function loseContext(page: Page): Promise<void> {
  return page.evaluate(() => {
    const [context] = (globalThis as unknown as Watched).watched.contexts;
    const taker = context!.getExtension('WEBGL_lose_context')!;
    (globalThis as unknown as { taker: WEBGL_lose_context }).taker = taker;
    taker.loseContext();
  });
}

/** Gives it back; the milliseconds until a plate is drawn with it again. */
export function restoreContext(page: Page): Promise<number> {
  return page.evaluate(async () => {
    const began = performance.now();
    (globalThis as unknown as { taker: WEBGL_lose_context }).taker.restoreContext();
    const isDrawn = () => {
      const canvas = document.querySelector('canvas');
      if (!canvas) return false;
      const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
      return data.some((value) => value !== 0);
    };
    while (!isDrawn() && performance.now() - began < 10_000) await new Promise(requestAnimationFrame);
    return performance.now() - began;
  });
}
