import { OrthographicCamera, Scene } from 'three';
import type { Drawing, Stroke } from '../drawing.ts';
import type { Tones } from '../tones.ts';
import { scaled } from '../vector.ts';
import type { View } from '../view.ts';
import type { Engine } from './engine.ts';
import { createLeaves } from './leaves.ts';
import { createSkin, type Skin } from './skin.ts';
import { createStrokes } from './strokes.ts';

/** The skinned mesh of a plate, in its pose. */
export interface PosedMesh {
  readonly positions: Float64Array;
  readonly triangles: readonly number[];
  /** The edges one would draw by hand. */
  readonly edges: readonly Stroke[];
}

/** What one plate keeps on the graphics side. */
export interface PlateScene {
  /** False where nothing could be drawn just now. */
  readonly draw: (
    drawing: Drawing,
    view: View,
    mesh: PosedMesh | null,
    tones: Tones,
    onto: HTMLCanvasElement,
  ) => boolean;
  readonly dispose: () => void;
}

/** Metres before and behind the middle of the view that are drawn, in widths of the plate. */
const DEPTH = 40;

export function createPlateScene(engine: Engine): PlateScene {
  const camera = new OrthographicCamera();
  camera.matrixAutoUpdate = false;
  const [under, over] = [new Scene(), new Scene()];
  const [leaves, strokes, edges] = [createLeaves(), createStrokes(), createStrokes()];
  over.add(leaves.mesh, strokes.mesh);
  under.add(edges.mesh);
  let skin: { of: readonly number[]; drawn: Skin } | null = null;

  return {
    draw: (drawing, view, mesh, tones, onto) => {
      look(camera, view);
      setSkin(mesh, tones);
      edges.set(mesh?.edges ?? [], view, tones);
      leaves.set(
        drawing.figures.flatMap((figure) => figure.leaves),
        tones.paper,
      );
      strokes.set(
        drawing.figures.flatMap((figure) => figure.strokes),
        view,
        tones,
      );
      return engine.draw([under, over], camera, onto);
    },
    dispose: () => {
      for (const part of [leaves, strokes, edges]) part.dispose();
      skin?.drawn.dispose();
    },
  };

  function setSkin(mesh: PosedMesh | null, tones: Tones): void {
    if (skin && skin.of !== mesh?.triangles) {
      under.remove(skin.drawn.mesh);
      skin.drawn.dispose();
      skin = null;
    }
    if (!mesh) return;
    if (!skin) {
      skin = { of: mesh.triangles, drawn: createSkin(mesh.positions.length / 3, mesh.triangles) };
      under.add(skin.drawn.mesh);
    }
    skin.drawn.set(mesh.positions, tones);
  }
}

/** Sets the camera to a plate's view: the same numbers that place its names and handles. */
function look(camera: OrthographicCamera, view: View): void {
  const { right, up, toward, centre, scale, width, height } = view;
  const [halfWidth, halfHeight] = [width / 2 / scale, height / 2 / scale];
  const depth = DEPTH * Math.max(halfWidth, halfHeight);
  camera.left = -halfWidth;
  camera.right = halfWidth;
  camera.top = halfHeight;
  camera.bottom = -halfHeight;
  camera.near = 0;
  camera.far = 2 * depth;
  camera.updateProjectionMatrix();
  const eye = scaled(toward, depth);
  camera.matrix.set(
    right[0],
    up[0],
    toward[0],
    centre[0] + eye[0],
    right[1],
    up[1],
    toward[1],
    centre[1] + eye[1],
    right[2],
    up[2],
    toward[2],
    centre[2] + eye[2],
    0,
    0,
    0,
    1,
  );
  camera.matrixWorldNeedsUpdate = true;
}
