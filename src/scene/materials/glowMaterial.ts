import { type IUniform, ShaderMaterial, Vector2, Vector3 } from 'three';

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
  uniform vec3 axis;
  uniform vec2 beam;
  uniform float ceiling;
  varying vec3 vToEye;
  varying vec3 vFacing;
  void main() {
    float off = max(0.0, 1.0 - dot(normalize(vToEye), axis));
    float share = beam.x > 0.0 ? max(exp2(-pow(off / beam.x, beam.y)), 0.004) : 1.0;
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
  readonly axis: IUniform<Vector3>;
  /** 1 − cos of half the beam angle, and the power of its fall; 0 for a source that shines alike all round. */
  readonly beam: IUniform<Vector2>;
}

/** `ceiling` is shared by all: the mirror's picture is drawn with a lower one, so that its levels don't sparkle. */
export function makeGlow(ceiling: IUniform<number>): { material: ShaderMaterial; uniforms: GlowUniforms } {
  const uniforms = {
    shine: { value: new Vector3() },
    axis: { value: new Vector3(0, -1, 0) },
    beam: { value: new Vector2(0, 1) },
  };
  const material = new ShaderMaterial({
    uniforms: { ...uniforms, ceiling },
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
  });
  return { material, uniforms };
}
