import { BackSide, type IUniform, Mesh, ShaderMaterial, SphereGeometry, Vector3 } from 'three';
import { SKY_LUMINANCE } from '../../core/light/ambient';
import { SKYWARD } from '../materials/chunks.glsl';

const ZENITH = new Vector3(...SKY_LUMINANCE.zenith);
const HORIZON = new Vector3(...SKY_LUMINANCE.horizon);
const GROUND = new Vector3(...SKY_LUMINANCE.ground);

/** Shared by the dome and every surface that mirrors it. */
export const SKY_UNIFORMS: Readonly<Record<string, IUniform<Vector3>>> = {
  skyZenith: { value: ZENITH },
  skyHorizon: { value: HORIZON },
  skyGround: { value: GROUND },
};

/** Haze, per metre (exponential squared), and what it glows with. */
export const HAZE_PER_METRE = 0.0062;
export const HAZE_COLOUR = HORIZON;

/** The dome: always as far away as can be, so it is drawn behind everything. */
export function makeDome(): Mesh {
  const material = new ShaderMaterial({
    uniforms: SKY_UNIFORMS,
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
      void main() { gl_FragColor = vec4(skyward(normalize(vWhither).y), 1.0); }`,
  });
  const dome = new Mesh(new SphereGeometry(100, 48, 24), material);
  dome.frustumCulled = false;
  // After everything solid: only what nothing covers is shaded.
  dome.renderOrder = 1e6;
  return dome;
}
