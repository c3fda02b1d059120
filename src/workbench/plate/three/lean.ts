import type { Plugin } from 'vite';

/**
 * What of three a plate never reaches, since it draws with shaders of its own: no lights, shadows, backgrounds, textures
 * of the surroundings, groups of uniforms, built-in materials or headsets. Each gives way to the least that the renderer asks of it.
 */
const STAND_INS: Readonly<Record<string, string>> = {
  'renderers/shaders/ShaderChunk.js': 'export const ShaderChunk = {};',
  'renderers/shaders/ShaderLib.js': 'export const ShaderLib = {};',
  // The paper behind always shows through.
  'renderers/webgl/WebGLBackground.js': `export function WebGLBackground(renderer, environments, state) {
    const clear = () => state.buffers.color.setClear(0, 0, 0, 0, true);
    return {
      setClearColor: clear, setClearAlpha: clear, render: clear, getClearAlpha: () => 0,
      addToRenderList() {}, dispose() {},
    };
  }`,
  'renderers/webgl/WebGLUniformsGroups.js':
    'export function WebGLUniformsGroups() { return { bind() {}, update() {}, dispose() {} }; }',
  'renderers/webgl/WebGLEnvironments.js':
    'export function WebGLEnvironments() { return { get: () => null, dispose() {} }; }',
  'renderers/webgl/WebGLMaterials.js':
    'export function WebGLMaterials() { return { refreshFogUniforms() {}, refreshMaterialUniforms() {} }; }',
  'renderers/webgl/WebGLMorphtargets.js': 'export function WebGLMorphtargets() { return { update() {} }; }',
  'renderers/webgl/WebGLOutput.js': 'export function WebGLOutput() {}',
  'renderers/webgl/WebGLShadowMap.js':
    'export function WebGLShadowMap() { return { enabled: false, autoUpdate: false, needsUpdate: false, render() {} }; }',
  'renderers/webxr/WebXRManager.js': `export class WebXRManager {
    enabled = false; isPresenting = false;
    addEventListener() {} removeEventListener() {} setAnimationLoop() {} dispose() {}
    getEnvironmentBlendMode() { return null; } hasDepthSensing() { return false; }
  }`,
};

/** Builds three from its sources, so that what is not used falls away, without the parts no plate reaches. */
export function leanThree(): Plugin {
  return {
    name: 'lean-three',
    apply: 'build',
    enforce: 'pre',
    resolveId(id) {
      return id === 'three' ? this.resolve('three/src/Three.js') : null;
    },
    load(id) {
      const [, part] = id.replaceAll('\\', '/').split('/three/src/');
      return part === undefined ? null : (STAND_INS[part] ?? null);
    },
  };
}
