import {
  Color,
  DoubleSide,
  FrontSide,
  type IUniform,
  MeshStandardMaterial,
  ShaderChunk,
  Vector2,
} from 'three';
import { LAMP_DECLARATIONS, LAMP_LOOP } from '../light/lampLight.glsl';
import { LAMP_UNIFORMS } from '../light/lampUniforms';
import { SKY_UNIFORMS } from '../light/sky';
import {
  CLOTH_LIGHT,
  LAID_OUT,
  OWN_FRAGMENT_DECLARATIONS,
  OWN_VERTEX,
  OWN_VERTEX_DECLARATIONS,
  RAISED,
  SKYWARD,
  WORLD_PLACE_VERTEX,
} from './chunks.glsl';
import type { DeckView } from './deckView';
import { isShiny, type Look } from './looks';
import { numberOf, PATTERNS } from './patterns.glsl';
import { WET_DECLARATIONS, WET_MIRROR, WET_SURFACE } from './wetDeck.glsl';
import { WIRE_DECLARATIONS, WIRE_OPACITY } from './wire.glsl';

/** How wet a deck is: the share under a film and the share under standing water; and the view that it mirrors. */
export interface Wetness {
  readonly film: number;
  readonly puddle: number;
  readonly view: DeckView;
}

/** Woven wire: pitch of its cells and diameter of its wire, metres. */
export interface Wire {
  readonly cellMetres: number;
  readonly wireMetres: number;
}

export interface SurfaceSpec {
  readonly look: Look;
  /** `#rrggbb` in place of the look's own colour. */
  readonly colour: string | null;
  readonly round: boolean;
  readonly wet?: Wetness;
  readonly wire?: Wire;
  /** An imported surface: coloured corner by corner, seen from both sides. */
  readonly skin?: { readonly hasPicture: boolean; readonly isCutOut: boolean };
  readonly noise: IUniform;
}

/** A lit surface: three's physical shading, with our patterns, sky, cloth, wire and wet put in. */
export function makeSurface(spec: SurfaceSpec): MeshStandardMaterial {
  const { look, round, wet, wire, skin } = spec;
  const lets = look.lets ?? 0;
  const clear = look.clear ?? 0;
  const isClear = clear > 0;
  const thin = lets > 0 || isClear || wire !== undefined;
  const material = new MeshStandardMaterial({
    color: colourOf(spec),
    roughness: look.roughness,
    metalness: look.metalness,
    side: thin || skin ? DoubleSide : FrontSide,
    transparent: wire !== undefined || isClear,
    // What a sheet of glass mirrors comes on top of what is seen through it.
    opacity: 1 - clear,
    premultipliedAlpha: isClear,
    depthWrite: !isClear,
    forceSinglePass: isClear,
    vertexColors: skin !== undefined,
    alphaTest: skin?.isCutOut ? 0.5 : 0,
  });
  const uniforms: Record<string, IUniform> = {
    ...SKY_UNIFORMS,
    ...LAMP_UNIFORMS,
    noiseMap: spec.noise,
    laying: { value: numberOf(look.pattern) },
    isRound: { value: round ? 1 : 0 },
    lets: { value: lets },
  };
  if (wet) Object.assign(uniforms, wet.view, { wetShares: { value: new Vector2(wet.film, wet.puddle) } });
  if (wire) uniforms.wire = { value: new Vector2(wire.cellMetres, wire.wireMetres) };
  material.customProgramCacheKey = () =>
    [lets > 0, isClear, isShiny(look), wet !== undefined, wire !== undefined, skin?.hasPicture === true].join(
      ' ',
    );
  material.onBeforeCompile = (shader) => {
    Object.assign(shader.uniforms, uniforms);
    shader.vertexShader = shader.vertexShader
      .replace('#include <common>', `#include <common>\n${OWN_VERTEX_DECLARATIONS}`)
      .replace('#include <begin_vertex>', `#include <begin_vertex>\n${OWN_VERTEX}`)
      .replace('#include <skinning_vertex>', `#include <skinning_vertex>\n${WORLD_PLACE_VERTEX}`);
    let declarations = `${OWN_FRAGMENT_DECLARATIONS}${PATTERNS}${LAID_OUT}${RAISED}${SKYWARD}`;
    if (wet) declarations += WET_DECLARATIONS;
    if (wire) declarations += WIRE_DECLARATIONS;
    shader.fragmentShader = shader.fragmentShader
      .replace('#include <common>', `#include <common>\n${declarations}`)
      .replace(
        '#include <map_fragment>',
        `${skin?.hasPicture ? '#include <map_fragment>' : ''}${surfaceOf(spec)}`,
      )
      .replace('#include <roughnessmap_fragment>', 'float roughnessFactor = clamp(surface.rough, 0.04, 1.0);')
      .replace('#include <normal_fragment_maps>', 'normal = raised(-vViewPosition, normal, surface.relief);')
      .replace('#include <lights_physical_pars_fragment>', shading(lets > 0, wet !== undefined))
      .replace(
        '#include <shadowmap_pars_fragment>',
        `#include <shadowmap_pars_fragment>\n${LAMP_DECLARATIONS}`,
      )
      .replace(
        '#include <lights_physical_fragment>',
        `#include <lights_physical_fragment>\n${wet || isShiny(look) ? '' : DULL}`,
      )
      .replace('#include <lights_fragment_begin>', LAMP_LOOP)
      // Wet, the sky comes with the mirror's picture.
      .replace('#include <lights_fragment_end>', `#include <lights_fragment_end>\n${wet ? '' : SKY_SHINE}`)
      .replace('#include <opaque_fragment>', `${wet ? WET_MIRROR : ''}#include <opaque_fragment>`);
    if (isClear) {
      shader.fragmentShader = shader.fragmentShader.replace('#include <premultiplied_alpha_fragment>', '');
    }
  };
  return material;
}

function colourOf({ look, colour, skin }: SurfaceSpec): Color {
  if (skin) return new Color(1, 1, 1);
  return colour === null ? new Color(...look.colour) : new Color(colour);
}

function surfaceOf({ wet, wire }: SurfaceSpec): string {
  return /* glsl */ `
    vec2 laid = laidOut(vOwnPosition, vOwnNormal);
    float footprint = max(length(dFdx(laid)), length(dFdy(laid)));
    Surface surface = Surface(diffuseColor.rgb, roughness, 0.0);
    lay(surface, laid, footprint);
    ${wet ? WET_SURFACE : ''}
    diffuseColor.rgb = surface.albedo;
    ${wire ? WIRE_OPACITY : ''}`;
}

/** What has no sheen to speak of gives back evenly and no more, as core reckons. */
const DULL = /* glsl */ `
  material.specularColor = vec3(0.0);
  material.specularColorBlended = vec3(0.0);
  material.specularF90 = 0.0;
`;

/** three's shading, with the light through cloths, and with water's own Fresnel in place of Schlick's where it is wet. */
function shading(cloth: boolean, wet: boolean): string {
  let chunk = ShaderChunk.lights_physical_pars_fragment;
  if (wet) {
    chunk = chunk.replaceAll('F_Schlick( f0, f90, dotVH )', 'vec3( waterFresnel( dotVH ) )');
  }
  return cloth ? `${chunk}\n${CLOTH_LIGHT}` : chunk;
}

const SKY_SHINE = /* glsl */ `
  vec3 skyAlong = reflect(-geometryViewDir, geometryNormal);
  float skyRise = dot(skyAlong, (viewMatrix * vec4(0.0, 1.0, 0.0, 0.0)).xyz);
  reflectedLight.indirectSpecular += skyward(skyRise) * (material.specularColorBlended * material.dfg.x + material.dfg.y * material.specularF90);
`;
