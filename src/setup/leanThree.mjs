// Our picture draws with its own shaders, one canvas, no headset, no lights, no shadows, no textures. three's renderer
// brings all of these along; what follows stands in for them when the page is built, so that nobody waits for them.

/** Pieces of three's shaders which ours include, and the one its renderer adds to every fragment shader. */
const includedShaderParts = ['colorspace_fragment', 'colorspace_pars_fragment'];

/**
 * By file of three's sources: what the renderer asks of it while it is not in use.
 * @type {Readonly<Record<string, string>>}
 */
const standIns = {
  'renderers/shaders/ShaderChunk.js': `
    ${includedShaderParts.map((name) => `import ${name} from './ShaderChunk/${name}.glsl.js';`).join('\n')}
    export const ShaderChunk = { ${includedShaderParts.join(', ')} };`,
  'renderers/shaders/ShaderLib.js': `
    export const ShaderLib = {};`,
  'renderers/webxr/WebXRManager.js': `
    import { EventDispatcher } from '../../core/EventDispatcher.js';
    export class WebXRManager extends EventDispatcher {
      enabled = false;
      isPresenting = false;
      setAnimationLoop() {}
      getEnvironmentBlendMode() { return null; }
      hasDepthSensing() { return false; }
      dispose() {}
    }`,
  'renderers/webgl/WebGLShadowMap.js': `
    export class WebGLShadowMap {
      enabled = false;
      render() {}
    }`,
  'renderers/webgl/WebGLEnvironments.js': `
    export class WebGLEnvironments {
      get() { return null; }
      dispose() {}
    }`,
  'renderers/webgl/WebGLMorphtargets.js': `
    export class WebGLMorphtargets {
      update() {}
    }`,
  'renderers/webgl/WebGLTextures.js': `
    export class WebGLTextures {
      getTextureUnits() { return 0; }
      setTextureUnits() {}
      resetTextureUnits() {}
      dispose() {}
    }`,
  'renderers/webgl/WebGLMaterials.js': `
    export class WebGLMaterials {
      refreshMaterialUniforms(uniforms, material) { material.uniformsNeedUpdate = false; }
    }`,
  'renderers/webgl/WebGLLights.js': `
    const none = [];
    const kinds = ['directional', 'point', 'spot', 'sun'];
    export class WebGLLights {
      state = Object.assign(
        { version: 0, rectArea: none, hemi: none, spotLightMap: none, numLightProbes: 0, numSpotLightShadowsWithMaps: 0 },
        ...kinds.map((kind) => ({ [kind]: none, [kind + 'ShadowMap']: none })),
      );
      setup() {}
      setupView() {}
    }`,
  'renderers/webgl/WebGLUniformsGroups.js': `
    export class WebGLUniformsGroups {
      dispose() {}
    }`,
  'renderers/shaders/DFGLUTData.js': `
    export const getDFGLUT = () => null;`,
  'renderers/webgl/WebGLOutput.js': `
    export class WebGLOutput {
      constructor() { throw new Error('Built without output buffers of its own.'); }
    }`,
};

const folder = '/three/src/';

/** @returns {import('vite').Plugin} three from its single files, less what the picture never uses */
export function leanThree() {
  /** @type {Set<string>} */
  const used = new Set();
  return {
    name: 'lean-three',
    apply: 'build',
    enforce: 'pre',
    async resolveId(source, importer) {
      return source === 'three' ? this.resolve('three/src/Three.js', importer) : null;
    },
    load(id) {
      const at = id.replaceAll('\\', '/').indexOf(folder);
      if (at === -1) return null;
      const name = id.slice(at + folder.length);
      if (!(name in standIns)) return null;
      used.add(name);
      return { code: standIns[name], moduleType: 'js' };
    },
    buildEnd(error) {
      const unused = Object.keys(standIns).filter((name) => !used.has(name));
      if (error === undefined && used.size > 0 && unused.length > 0)
        this.error(`three has no file ${unused.join(', ')} any more: look again at what stands in for it.`);
    },
  };
}
