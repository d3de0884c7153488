import { type IUniform, ShaderMaterial, Vector3, Vector4 } from 'three';

/** As bright as a picture in half floats can hold with room to add, cd/m². */
export const BRIGHTEST = 30000;

const VERTEX = /* glsl */ `
  varying vec3 vToEye;
  varying vec3 vFacing;
  void main() {
    vec4 place = modelMatrix * vec4(position, 1.0);
    vToEye = cameraPosition - place.xyz;
    vFacing = mat3(modelMatrix) * normal;
    gl_Position = projectionMatrix * viewMatrix * place;
  }`;

/** A lens is as bright as the lamp is strong towards the eye: full on its axis, a faint spill from the side. */
const FRAGMENT = /* glsl */ `
  uniform vec3 shine;
  uniform vec4 beam;
  uniform float ceiling;
  varying vec3 vToEye;
  varying vec3 vFacing;
  void main() {
    float angle = acos(clamp(dot(normalize(vToEye), beam.xyz), -1.0, 1.0));
    float share = beam.w > 0.0 ? max(exp2(-pow(angle / beam.w, 2.0)), 0.004) : 1.0;
    float limb = 0.75 + 0.25 * clamp(dot(normalize(vToEye), normalize(vFacing)), 0.0, 1.0);
    vec3 light = shine * share * limb;
    /* The ceiling keeps the hue: clipped channel by channel, a bulb would turn green. */
    light *= min(1.0, ceiling / max(max(light.r, light.g), max(light.b, 1e-3)));
    gl_FragColor = vec4(light, 1.0);
  }`;

/** What glows of a lamp: its luminance on the axis, and how that falls off it. */
export interface GlowUniforms {
  /** On the axis, cd/m². */
  readonly shine: IUniform<Vector3>;
  /** The axis, and the angle from it to half the intensity in radians; 0 for a source that shines alike all round. */
  readonly beam: IUniform<Vector4>;
}

/** `ceiling` is shared by all: the mirror's picture is drawn with a lower one, so that its levels don't sparkle. */
export function makeGlow(ceiling: IUniform<number>): { material: ShaderMaterial; uniforms: GlowUniforms } {
  const uniforms = { shine: { value: new Vector3() }, beam: { value: new Vector4(0, -1, 0, 0) } };
  const material = new ShaderMaterial({
    uniforms: { ...uniforms, ceiling },
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
  });
  return { material, uniforms };
}
