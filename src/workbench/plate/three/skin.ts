import { BufferAttribute, BufferGeometry, DoubleSide, DynamicDrawUsage, GLSL3, Mesh, RawShaderMaterial } from 'three';
import type { Tones } from '../tones.ts';

/** A skinned mesh as a wash on the paper, a little darker where it is turned from the light. */
export interface Skin {
  readonly mesh: Mesh;
  readonly set: (positions: ArrayLike<number>, tones: Tones) => void;
  readonly dispose: () => void;
}

export function createSkin(vertices: number, triangles: readonly number[]): Skin {
  const geometry = new BufferGeometry();
  const positions = new Float32Array(vertices * 3);
  const attribute = new BufferAttribute(positions, 3);
  attribute.setUsage(DynamicDrawUsage);
  geometry.setAttribute('position', attribute);
  geometry.setIndex([...triangles]);
  const paper = { value: [1, 1, 1] };
  const rule = { value: [0.8, 0.8, 0.8] };
  const material = new RawShaderMaterial({
    glslVersion: GLSL3,
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
    side: DoubleSide,
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
    uniforms: { paper, rule },
  });
  const mesh = new Mesh(geometry, material);
  mesh.frustumCulled = false;
  return {
    mesh,
    set: (posed, tones) => {
      positions.set(posed);
      attribute.needsUpdate = true;
      paper.value = [...tones.paper];
      rule.value = [...tones.rule];
    },
    dispose: () => {
      geometry.dispose();
      material.dispose();
    },
  };
}

const VERTEX = `
precision highp float;
uniform mat4 projectionMatrix;
uniform mat4 viewMatrix;
in vec3 position;
out vec3 seen;
void main() {
  vec4 placed = viewMatrix * vec4(position, 1.0);
  seen = placed.xyz;
  gl_Position = projectionMatrix * placed;
}
`;

/** The light falls from the upper left of the page. */
const FRAGMENT = `
precision highp float;
uniform vec3 paper;
uniform vec3 rule;
in vec3 seen;
out vec4 painted;
void main() {
  vec3 normal = normalize(cross(dFdx(seen), dFdy(seen)));
  float light = max(0.0, dot(normal, normalize(vec3(-0.45, 0.7, 0.55))));
  painted = vec4(mix(rule, paper, 0.18 + 0.62 * light), 1.0);
}
`;
