import { type OrthographicCamera, type Scene, WebGLRenderer } from 'three';

/**
 * The page's one WebGL context. Every plate draws through it, one after another, and takes the picture over into a
 * canvas of its own; it is given back when the last plate has gone.
 */
export interface Engine {
  /** Draws scenes over one another, each in front of those before it; false while the context is lost. */
  readonly draw: (scenes: readonly Scene[], camera: OrthographicCamera, onto: HTMLCanvasElement) => boolean;
  /** Hears of the context being lost and restored. */
  readonly subscribe: (listener: () => void) => () => void;
  readonly isLost: () => boolean;
  readonly release: () => void;
}

interface Shared {
  readonly renderer: WebGLRenderer;
  readonly listeners: Set<() => void>;
  users: number;
  lost: boolean;
}

let shared: Shared | null = null;

/** The engine for one more plate; null where the browser has no WebGL. */
export function acquireEngine(): Engine | null {
  try {
    shared ??= begin();
  } catch {
    return null;
  }
  if (!shared) return null;
  const own = shared;
  own.users++;
  let held = true;
  return {
    draw: (scenes, camera, onto) => draw(own, scenes, camera, onto),
    subscribe: (listener) => {
      own.listeners.add(listener);
      return () => own.listeners.delete(listener);
    },
    isLost: () => own.lost,
    release: () => {
      if (!held) return;
      held = false;
      own.users--;
      if (own.users === 0) end(own);
    },
  };
}

function begin(): Shared | null {
  const canvas = document.createElement('canvas');
  const context = canvas.getContext('webgl2', { alpha: true, antialias: true, powerPreference: 'low-power' });
  // Asked here, because three reports a browser without WebGL as an error.
  if (!context) return null;
  const renderer = new WebGLRenderer({ canvas, context, alpha: true });
  renderer.autoClear = false;
  const made: Shared = { renderer, listeners: new Set(), users: 0, lost: false };
  canvas.addEventListener('webglcontextlost', () => tell(made, true));
  canvas.addEventListener('webglcontextrestored', () => tell(made, false));
  return made;
}

function end(own: Shared): void {
  if (shared === own) shared = null;
  own.renderer.dispose();
  own.renderer.forceContextLoss();
}

function tell(own: Shared, lost: boolean): void {
  own.lost = lost;
  for (const listener of own.listeners) listener();
}

function draw(own: Shared, scenes: readonly Scene[], camera: OrthographicCamera, onto: HTMLCanvasElement): boolean {
  const paper = onto.getContext('2d');
  if (own.lost || !paper) return false;
  const { renderer } = own;
  const { width, height } = onto;
  grow(renderer, width, height);
  renderer.setViewport(0, 0, width, height);
  renderer.setScissor(0, 0, width, height);
  renderer.setScissorTest(true);
  // Said anew each time, for a restored context has forgotten it: the paper behind shows through.
  renderer.setClearColor(0x000000, 0);
  renderer.clear();
  for (const scene of scenes) {
    renderer.clearDepth();
    renderer.render(scene, camera);
  }
  paper.clearRect(0, 0, width, height);
  paper.drawImage(renderer.domElement, 0, renderer.domElement.height - height, width, height, 0, 0, width, height);
  return true;
}

/** The shared canvas is as large as the largest plate so far, so that drawing others does not make it anew. */
function grow(renderer: WebGLRenderer, width: number, height: number): void {
  const { domElement } = renderer;
  if (domElement.width >= width && domElement.height >= height) return;
  renderer.setSize(Math.max(domElement.width, width), Math.max(domElement.height, height), false);
}
