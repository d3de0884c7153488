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

/**
 * As bright as the lamp is strong towards the eye, over its face as it is seen from there, as core's `glowLuminance`;
 * with a faint spill where it sends nothing. Nearer to edge-on than 9 degrees its rim is seen, and it grows no brighter.
 * A ball is darker at its limb, and as bright as the lamp is strong in the mean over its disc.
 */
const FRAGMENT = /* glsl */ `
  uniform vec3 shine;
  uniform vec3 axis;
  uniform vec2 beam;
  uniform float ceiling;
  varying vec3 vToEye;
  varying vec3 vFacing;
  void main() {
    vec3 toEye = normalize(vToEye);
    float ahead = dot(toEye, axis);
    float limb = (0.75 + 0.25 * clamp(dot(toEye, normalize(vFacing)), 0.0, 1.0)) * 12.0 / 11.0;
    float flatFace = exp2(-pow(max(0.0, 1.0 - ahead) / max(beam.x, 1e-6), beam.y)) / max(ahead, 0.15);
    vec3 light = shine * (beam.x > 0.0 ? max(flatFace, 0.004) : limb);
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
