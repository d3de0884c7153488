import { Color, type IUniform, ShaderMaterial, UniformsLib, UniformsUtils, Vector3 } from 'three';
import type { LinearColour } from '../light/kelvin';
import { NIGHT } from '../light/night';

const VERTEX = /* glsl */ `
  #include <fog_pars_vertex>
  varying vec3 vPlace;
  varying vec3 vFacing;
  void main() {
    vec4 place = modelMatrix * vec4(position, 1.0);
    vPlace = place.xyz;
    vFacing = mat3(modelMatrix) * normal;
    vec4 mvPosition = viewMatrix * place;
    gl_Position = projectionMatrix * mvPosition;
    #include <fog_vertex>
  }`;

/** Lit by the sky from above and by its street from below, more so the lower down; blotched like old render. */
const FRAGMENT = /* glsl */ `
  #include <fog_pars_fragment>
  uniform vec3 reflectance;
  uniform vec3 fromSky;
  uniform vec3 fromStreet;
  uniform sampler2D noiseMap;
  varying vec3 vPlace;
  varying vec3 vFacing;
  void main() {
    vec3 facing = normalize(vFacing);
    vec2 along = abs(facing.y) > 0.7 ? vPlace.xz : vec2(dot(vPlace.xz, vec2(-facing.z, facing.x)), vPlace.y);
    float blotch = 0.6 + 0.5 * texture2D(noiseMap, along / vec2(23.0, 41.0)).r + 0.25 * texture2D(noiseMap, along / 5.0).g;
    float street = exp(-max(0.0, vPlace.y + 20.0) / 14.0);
    vec3 lux = mix(fromStreet, fromSky, 0.5 + 0.5 * facing.y) + (1.6 + 5.0 * street) * fromStreet * (1.0 - abs(facing.y));
    gl_FragColor = vec4(reflectance * blotch * lux / 3.14159265, 1.0);
    #include <fog_fragment>
  }`;

const WEATHERED = new Color('#8d8377');

/** Buildings beyond the roof, which no lamp of the set reaches: a far cheaper shading for a large part of the picture. */
export function makeSkyline(colour: LinearColour, noise: IUniform): ShaderMaterial {
  // Even soot-black render gives back a tenth: without it a street-lit wall would be a hole in the night.
  const reflectance = new Color(...colour).lerp(WEATHERED, 0.45);
  return new ShaderMaterial({
    uniforms: {
      ...UniformsUtils.clone(UniformsLib.fog),
      noiseMap: noise,
      reflectance: { value: new Vector3(reflectance.r, reflectance.g, reflectance.b) },
      fromSky: { value: NIGHT.above },
      fromStreet: { value: NIGHT.below },
    },
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
    fog: true,
  });
}
