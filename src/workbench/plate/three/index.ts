/** What a plate loads when it comes to be drawn with WebGL. */
export { acquireEngine, type Engine } from './engine.ts';
export { createPlateScene, type PlateScene, type PosedMesh } from './plateScene.ts';
