import { useEffect, useState } from 'react';
import type { PlateScene } from './three/index.ts';

export interface Painter {
  readonly scene: PlateScene;
  readonly isLost: boolean;
}

/**
 * The plate's part of the page's one WebGL context, once it has been loaded; null while there is none, and where there
 * never will be. Everything is given back when the plate goes.
 */
export function usePlateScene(): Painter | null {
  const [painter, setPainter] = useState<Painter | null>(null);
  useEffect(() => {
    let close = () => {};
    let closed = false;
    void import('./three/index.ts').then(({ acquireEngine, createPlateScene }) => {
      const engine = closed ? null : acquireEngine();
      if (!engine) return;
      const scene = createPlateScene(engine);
      const unsubscribe = engine.subscribe(() => setPainter({ scene, isLost: engine.isLost() }));
      setPainter({ scene, isLost: engine.isLost() });
      close = () => {
        unsubscribe();
        scene.dispose();
        engine.release();
      };
    }, NOTHING);
    return () => {
      closed = true;
      close();
      setPainter(null);
    };
  }, []);
  return painter;
}

/** Without the WebGL part the plate stays the plain drawing that it is. */
const NOTHING = () => {};
