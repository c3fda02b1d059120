import {
  BufferAttribute,
  DynamicDrawUsage,
  GLSL3,
  InstancedBufferGeometry,
  InstancedInterleavedBuffer,
  InterleavedBufferAttribute,
  Mesh,
  RawShaderMaterial,
} from 'three';
import type { Dash, Stroke } from '../drawing.ts';
import type { Tones } from '../tones.ts';
import { project, type View } from '../view.ts';
import { STROKE_FRAGMENT, STROKE_VERTEX } from './strokeShader.ts';

/** All strokes of a plate as one mesh: a quad for each stretch between two points, as wide as it should be in pixels. */
export interface Strokes {
  readonly mesh: Mesh;
  readonly set: (strokes: readonly Stroke[], view: View, tones: Tones) => void;
  readonly dispose: () => void;
}

/** Floats a stretch: both ends, colour, then width, dash on, dash off, and the pixels gone before it. */
const STRIDE = 13;
const FIELDS = { start: [3, 0], end: [3, 3], colour: [3, 6], manner: [4, 9] } as const;
const DASHES: Readonly<Record<Dash, readonly [on: number, off: number]>> = { none: [0, 0], reed: [4, 3], fine: [2, 3] };

export function createStrokes(): Strokes {
  const size = { value: [1, 1] };
  const material = new RawShaderMaterial({
    glslVersion: GLSL3,
    vertexShader: STROKE_VERTEX,
    fragmentShader: STROKE_FRAGMENT,
    transparent: true,
    premultipliedAlpha: true,
    depthWrite: false,
    uniforms: { size },
  });
  let { geometry, buffer } = quads(64);
  const mesh = new Mesh(geometry, material);
  mesh.frustumCulled = false;
  mesh.renderOrder = 1;

  return {
    mesh,
    set: (strokes, view, tones) => {
      const count = strokes.reduce((sum, { points }) => sum + Math.max(0, points.length - 1), 0);
      if (count * STRIDE > buffer.array.length) reserve(Math.ceil(count * 1.5));
      write(buffer.array as Float32Array, strokes, view, tones);
      buffer.needsUpdate = true;
      geometry.instanceCount = count;
      size.value = [view.width, view.height];
    },
    dispose: () => {
      geometry.dispose();
      material.dispose();
    },
  };

  /** A geometry remembers how many instances it first had room for, so more room is a new one. */
  function reserve(count: number): void {
    geometry.dispose();
    ({ geometry, buffer } = quads(count));
    mesh.geometry = geometry;
  }
}

/** A quad, and room for so many stretches of it. */
function quads(count: number): { geometry: InstancedBufferGeometry; buffer: InstancedInterleavedBuffer } {
  const geometry = new InstancedBufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array([0, -1, 0, 1, -1, 0, 1, 1, 0, 0, 1, 0]), 3));
  geometry.setIndex([0, 1, 2, 0, 2, 3]);
  const buffer = new InstancedInterleavedBuffer(new Float32Array(count * STRIDE), STRIDE);
  buffer.setUsage(DynamicDrawUsage);
  for (const [name, [length, offset]] of Object.entries(FIELDS)) {
    geometry.setAttribute(name, new InterleavedBufferAttribute(buffer, length, offset));
  }
  return { geometry, buffer };
}

function write(out: Float32Array, strokes: readonly Stroke[], view: View, tones: Tones): void {
  let at = 0;
  for (const { points, tone, width, dash } of strokes) {
    const [on, off] = DASHES[dash];
    let gone = 0;
    for (let i = 1; i < points.length; i++) {
      const a = points[i - 1]!;
      const b = points[i]!;
      put(out, at, a);
      put(out, at + 3, b);
      put(out, at + 6, tones[tone]);
      out[at + 9] = width;
      out[at + 10] = on;
      out[at + 11] = off;
      out[at + 12] = gone;
      if (on > 0) gone += pixelsBetween(view, a, b);
      at += STRIDE;
    }
  }
}

/** Three numbers one by one: many short `set` calls cost more than what they write. */
function put(out: Float32Array, at: number, [x, y, z]: readonly [number, number, number]): void {
  out[at] = x;
  out[at + 1] = y;
  out[at + 2] = z;
}

function pixelsBetween(view: View, a: Stroke['points'][number], b: Stroke['points'][number]): number {
  const [ax, ay] = project(view, a);
  const [bx, by] = project(view, b);
  return Math.hypot(bx - ax, by - ay);
}
