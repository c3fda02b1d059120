import { readFileSync } from 'node:fs';
import { type Binding, bindMesh, withWeights } from '../../../src/solver/index.ts';
import { rigOf, skinBone } from './worlds.ts';

const gltf = JSON.parse(readFileSync(new URL('../../data/SimpleSkin.gltf', import.meta.url), 'utf8'));

function bytesOf(buffer: number): DataView {
  const bytes = Buffer.from(gltf.buffers[buffer].uri.split(',')[1], 'base64');
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
}

const VERTICES = 10;
const four = [0, 1, 2, 3];
const vertices = Array.from({ length: VERTICES }, (_, v) => v);

/** The strip of Khronos SimpleSkin with its own weights, bound to two bones at its joints (0,0,0) and (0,1,0). */
export function simpleSkin(skinning: 'linear' | 'dual' = 'linear'): Binding {
  const strip = bytesOf(0);
  const pulls = bytesOf(1);
  const positions = Array.from({ length: 3 * VERTICES }, (_, i) => strip.getFloat32(48 + 4 * i, true));
  const rig = rigOf([skinBone('root', [0, 0, 0]), skinBone('bend', [0, 1, 0])], { positions, triangles: [], skinning });
  const indices = Int32Array.from(vertices.flatMap((v) => four.map((k) => pulls.getUint16(16 * v + 2 * k, true))));
  const weights = Float64Array.from(
    vertices.flatMap((v) => four.map((k) => pulls.getFloat32(160 + 16 * v + 4 * k, true))),
  );
  return withWeights(bindMesh(rig)!, { indices, weights });
}
