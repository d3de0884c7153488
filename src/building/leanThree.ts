import type { Plugin } from 'vite';
import { foldShader } from './foldShader.ts';

/** three in files of its own, of which what nothing asks for stays out. */
const SOURCES = 'three/src/Three.js';
const BELOW = /[\\/]node_modules[\\/]three[\\/]src[\\/](.+)$/;

/** What three's shaders ask before they do what no surface here does: such maps, such layers, such lights. */
export const NEVER: ReadonlySet<string> = new Set(
  [
    ...['ANISOTROPY', 'BATCHING', 'BATCHING_COLOR', 'CLEARCOAT', 'DIFFUSE_ROUGHNESS', 'DISPERSION'],
    ...['INSTANCING', 'INSTANCING_COLOR', 'INSTANCING_MORPH', 'IRIDESCENCE', 'RETROREFLECTION', 'SHEEN'],
    ...['ALPHAHASH', 'LIGHT_PROBES', 'MATCAP', 'MORPHCOLORS', 'MORPHNORMALS', 'MORPHTARGETS', 'POINTS_UV'],
    ...['LOGARITHMIC_DEPTH_BUFFER', 'REVERSED_DEPTH_BUFFER', 'SIZEATTENUATION', 'SPECULAR', 'TANGENT'],
    ...['ALPHAMAP', 'ANISOTROPYMAP', 'AOMAP', 'BUMPMAP', 'CLEARCOATMAP', 'CLEARCOAT_NORMALMAP', 'ENVMAP'],
    ...['CLEARCOAT_ROUGHNESSMAP', 'DIFFUSE_ROUGHNESSMAP', 'DISPLACEMENTMAP', 'EMISSIVEMAP', 'GRADIENTMAP'],
    ...[
      'IRIDESCENCEMAP',
      'IRIDESCENCE_THICKNESSMAP',
      'LIGHTMAP',
      'METALNESSMAP',
      'NORMALMAP',
      'ROUGHNESSMAP',
    ],
    ...['NORMALMAP_OBJECTSPACE', 'NORMALMAP_TANGENTSPACE', 'PACKED_NORMALMAP', 'SHEEN_COLORMAP'],
    ...['SHEEN_ROUGHNESSMAP', 'SPECULARMAP', 'SPECULAR_COLORMAP', 'SPECULAR_INTENSITYMAP', 'THICKNESSMAP'],
    ...['TRANSMISSION', 'TRANSMISSIONMAP'],
  ]
    .map((name) => `USE_${name}`)
    .concat(
      ['DITHERING', 'ENVMAP_TYPE_CUBE', 'ENVMAP_TYPE_PMREM', 'IOR', 'PHYSICAL', 'TONE_MAPPING'],
      ['SHADOWMAP_TYPE_PCF', 'SHADOWMAP_TYPE_VSM', 'DECODE_VIDEO_TEXTURE', 'DECODE_VIDEO_TEXTURE_EMISSIVE'],
      ['NUM_CLIPPING_PLANES', 'NUM_LIGHT_PROBE_GRIDS', 'NUM_POINT_LIGHT_SHADOWS', 'NUM_RECT_AREA_LIGHTS'],
      ['NUM_SPOT_LIGHT_MAPS', 'NUM_SUN_LIGHTS', 'NUM_SUN_LIGHT_SHADOWS'],
    ),
);

/** Shaders of three's own materials that nothing here is made of, and pieces that only these include. */
const NO_SHADERS: readonly string[] = [
  ...[
    'backgroundCube',
    'cube',
    'equirect',
    'linedashed',
    'meshlambert',
    'meshmatcap',
    'meshnormal',
    'meshphong',
  ],
  ...['meshtoon', 'points', 'shadow', 'sprite', 'vsm'],
]
  .map((name) => `ShaderLib/${name}`)
  .concat(
    [
      ...['gradientmap_pars_fragment', 'lights_lambert_fragment', 'lights_lambert_pars_fragment'],
      ...['lights_phong_fragment', 'lights_phong_pars_fragment', 'lights_toon_fragment'],
      ...['lights_toon_pars_fragment', 'map_particle_fragment', 'map_particle_pars_fragment'],
      ...['tonemapping_fragment', 'tonemapping_pars_fragment', 'shadowmask_pars_fragment'],
    ].map((name) => `ShaderChunk/${name}`),
  )
  .map((name) => `renderers/shaders/${name}.glsl.js`);

/** What the renderer makes at once and never uses here, with what stands in its place: headsets, rooms that mirror, morphs. */
const STAND_INS: Readonly<Record<string, string>> = {
  'renderers/webxr/WebXRManager.js': `
    const nothing = () => {};
    export class WebXRManager {
      enabled = false;
      isPresenting = false;
      addEventListener = nothing;
      removeEventListener = nothing;
      setAnimationLoop = nothing;
      getEnvironmentBlendMode = nothing;
      dispose = nothing;
    }`,
  'renderers/webgl/WebGLEnvironments.js':
    'export const WebGLEnvironments = function () { return { get: () => null, dispose() {} }; };',
  'renderers/webgl/WebGLMorphtargets.js':
    'export const WebGLMorphtargets = function () { return { update() {} }; };',
  'renderers/webgl/WebGLOutput.js': 'export class WebGLOutput {}',
  'renderers/WebGLCubeRenderTarget.js': 'export class WebGLCubeRenderTarget {}',
};

/** What a source would have to use to be drawn by something that is left out, each as a word of three's. */
const LEFT_OUT =
  /\b(Mesh(Lambert|Phong|Toon|Matcap|Normal|Physical)Material|(Points|Shadow|Sprite|LineDashed)Material|InstancedMesh|BatchedMesh|RectAreaLight|LightProbe|SunLight|CubeTexture|CubeCamera|PMREMGenerator|VideoTexture|morph(Targets|Attributes)|clippingPlanes|envMap|environment\b|normalMap|bumpMap|aoMap|lightMap|alphaMap|emissiveMap|roughnessMap|metalnessMap|displacementMap|alphaHash|dithering|logarithmicDepthBuffer|reversedDepthBuffer|outputBufferType|(PCF|VSM)\w*ShadowMap|(?!No)\w+ToneMapping|(to|from)JSON)\b/g;

/** The words in a source that imports three by which it would draw with something that is left out; none in others. */
export const drawsByLeftOut = (code: string): readonly string[] =>
  code.includes("from 'three'") ? [...code.matchAll(LEFT_OUT)].map(([word]) => word) : [];

/**
 * Builds three from its own sources without what the page never draws: shaders, branches of shaders, and parts of the
 * renderer. What is left does the same to the last bit.
 * @throws an error while building when three has no such part any more, or a source of the page draws by one of them
 */
export function leanThree(): Plugin {
  const missed = new Set([...NO_SHADERS, ...Object.keys(STAND_INS)]);
  const partOf = (id: string): string => BELOW.exec(id)?.[1]?.replaceAll('\\', '/') ?? '';
  return {
    name: 'lean-three',
    apply: 'build',
    enforce: 'pre',
    config: () => ({ resolve: { alias: [{ find: /^three$/, replacement: SOURCES }] } }),
    load(id) {
      const part = partOf(id);
      const isShader = NO_SHADERS.includes(part);
      const standIn = STAND_INS[part];
      if (!isShader && standIn === undefined) return null;
      missed.delete(part);
      if (standIn !== undefined) return standIn;
      return part.includes('ShaderLib')
        ? "export const vertex = ''; export const fragment = '';"
        : "export default '';";
    },
    transform(code, id) {
      const [word] = /[\\/]node_modules[\\/]/.test(id) ? [] : drawsByLeftOut(code);
      if (word !== undefined)
        throw new Error(
          `${id} draws by ${word}, which the page leaves out of three: see src/building/leanThree.ts`,
        );
      if (!partOf(id).endsWith('.glsl.js')) return null;
      const folded = code.replace(/`([^`]*)`/g, (_, shader: string) => `\`${foldShader(shader, NEVER)}\``);
      return { code: folded, map: null };
    },
    buildEnd(error) {
      if (!error && missed.size > 0)
        throw new Error(`three has no ${[...missed].join(', ')} any more: see src/building/leanThree.ts`);
    },
  };
}
