import { BufferAttribute, BufferGeometry, DoubleSide, DynamicDrawUsage, GLSL3, Mesh, RawShaderMaterial } from 'three';
import type { Leaf } from '../drawing.ts';
import type { Rgb } from '../tones.ts';

/** The leaves of a plate as one mesh in the colour of the paper: they hide what is behind them. */
export interface Leaves {
  readonly mesh: Mesh;
  readonly set: (leaves: readonly Leaf[], paper: Rgb) => void;
  readonly dispose: () => void;
}

export function createLeaves(): Leaves {
  const geometry = new BufferGeometry();
  const colour = { value: [1, 1, 1] };
  const material = new RawShaderMaterial({
    glslVersion: GLSL3,
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
    side: DoubleSide,
    uniforms: { colour },
  });
  const mesh = new Mesh(geometry, material);
  mesh.frustumCulled = false;
  let positions = new Float32Array(0);

  return {
    mesh,
    set: (leaves, paper) => {
      const count = leaves.reduce((sum, { points }) => sum + 3 * Math.max(0, points.length - 2), 0);
      if (count * 3 > positions.length) reserve(Math.ceil(count * 1.5));
      write(positions, leaves);
      geometry.getAttribute('position').needsUpdate = true;
      geometry.setDrawRange(0, count);
      colour.value = [...paper];
    },
    dispose: () => {
      geometry.dispose();
      material.dispose();
    },
  };

  function reserve(count: number): void {
    positions = new Float32Array(count * 3);
    const attribute = new BufferAttribute(positions, 3);
    attribute.setUsage(DynamicDrawUsage);
    geometry.setAttribute('position', attribute);
  }
}

/** Each leaf as a fan of triangles from its first point. */
function write(out: Float32Array, leaves: readonly Leaf[]): void {
  let at = 0;
  for (const { points } of leaves) {
    for (let i = 2; i < points.length; i++) {
      out.set(points[0]!, at);
      out.set(points[i - 1]!, at + 3);
      out.set(points[i]!, at + 6);
      at += 9;
    }
  }
}

const VERTEX = `
precision highp float;
uniform mat4 projectionMatrix;
uniform mat4 viewMatrix;
in vec3 position;
void main() {
  gl_Position = projectionMatrix * viewMatrix * vec4(position, 1.0);
}
`;

const FRAGMENT = `
precision highp float;
uniform vec3 colour;
out vec4 painted;
void main() {
  painted = vec4(colour, 1.0);
}
`;
