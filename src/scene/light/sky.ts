import { BackSide, type IUniform, Mesh, ShaderMaterial, SphereGeometry, type Vector3 } from 'three';
import { SKYWARD } from '../materials/chunks.glsl';
import { MOON_UNIFORMS, NIGHT } from './night';

/** Shared by the dome and every surface that mirrors it. */
export const SKY_UNIFORMS: Readonly<Record<string, IUniform<Vector3>>> = {
  skyZenith: { value: NIGHT.zenith },
  skyHorizon: { value: NIGHT.horizon },
  skyGround: { value: NIGHT.ground },
};

/** What the haze glows with. */
export const HAZE_COLOUR = NIGHT.horizon;

/** The dome: always as far away as can be, so it is drawn behind everything. */
export function makeDome(): Mesh {
  const material = new ShaderMaterial({
    uniforms: { ...SKY_UNIFORMS, ...MOON_UNIFORMS },
    side: BackSide,
    depthWrite: false,
    vertexShader: /* glsl */ `
      varying vec3 vWhither;
      void main() {
        vWhither = position;
        vec4 place = projectionMatrix * vec4(mat3(viewMatrix) * position, 1.0);
        gl_Position = vec4(place.xy, place.w * 0.999999, place.w);
      }`,
    fragmentShader: /* glsl */ `
      varying vec3 vWhither;
      ${SKYWARD}
      uniform vec3 moonWay;
      uniform vec3 moonSun;
      uniform float moonRadius;
      uniform float moonLuminance;
      // Even over its lit side, as the moon is; it turns its own round to the sun.
      float moonAlong(vec3 way) {
        vec3 off = (way - moonWay) / moonRadius;
        float out2 = dot(off, off);
        if (dot(way, moonWay) < 0.99 || out2 > 1.0) return 0.0;
        vec3 facing = off - moonWay * sqrt(1.0 - out2);
        return moonLuminance * smoothstep(-0.05, 0.12, dot(facing, moonSun));
      }
      void main() {
        vec3 way = normalize(vWhither);
        vec3 seen = skyward(way.y);
        if (moonLuminance > 0.0) seen += vec3(1.0, 0.97, 0.9) * moonAlong(way);
        gl_FragColor = vec4(seen, 1.0);
      }`,
  });
  const dome = new Mesh(new SphereGeometry(100, 48, 24), material);
  dome.frustumCulled = false;
  // After everything solid: only what nothing covers is shaded.
  dome.renderOrder = 1e6;
  return dome;
}
