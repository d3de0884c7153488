import { ShaderMaterial, UniformsLib, UniformsUtils, Vector3 } from 'three';
import { WINDOW_LUMINANCE } from '../../core/light/surroundings';
import { colourOfHex, ofUnitLuminance } from '../light/kelvin';

/** Luminance of a lit room behind its curtain and of a lamp that can be seen in it, so that the mean is core's, cd/m². */
const ROOM_LUMINANCE = 0.19 * WINDOW_LUMINANCE;
const LAMP_LUMINANCE = 36.5 * WINDOW_LUMINANCE;

/** A window is two triangles, six corners in order: the corner's number tells where in its window it is. */
const VERTEX = /* glsl */ `
  #include <fog_pars_vertex>
  attribute float windowNumber;
  varying vec2 vPane;
  flat varying float vOwn;
  float scatter(float n) { return fract(sin(n * 127.1) * 43758.5453); }
  void main() {
    int corner = gl_VertexID % 6;
    vPane = vec2(corner == 1 || corner == 2 || corner == 4 ? 1.0 : 0.0, corner == 2 || corner == 4 || corner == 5 ? 1.0 : 0.0);
    vec4 place = modelMatrix * vec4(position, 1.0);
    vOwn = scatter(windowNumber);
    vec4 mvPosition = viewMatrix * place;
    gl_Position = projectionMatrix * mvPosition;
    #include <fog_vertex>
  }`;

/** Each of its own: how bright the room is, how far the curtain is drawn, and in most a lamp, small and bright. */
const FRAGMENT = /* glsl */ `
  #include <fog_pars_fragment>
  uniform vec3 tone;
  uniform vec2 luminances;
  varying vec2 vPane;
  flat varying float vOwn;
  float scatter(float n) { return fract(sin(n * 311.7 + vOwn * 91.3) * 43758.5453); }
  void main() {
    float room = mix(0.12, 1.3, scatter(1.0) * scatter(1.0));
    float drawn = scatter(2.0);
    float curtain = smoothstep(0.0, 0.04, vPane.x - drawn * 0.8);
    float lights = room * mix(0.3, 1.0, curtain) * (0.55 + 0.6 * vPane.y);
    vec2 away = (vPane - vec2(0.25 + 0.5 * scatter(3.0), 0.35 + 0.4 * scatter(4.0))) * vec2(1.1, 1.45);
    /* Narrower than a pixel it would come and go as the camera moves: it is drawn as wide as one, and as much fainter. */
    vec2 pixel = fwidth(vPane) * vec2(1.1, 1.45);
    float spread = 0.03 + 0.5 * dot(pixel, pixel);
    float lamp = exp(-dot(away, away) / spread) * 0.03 / spread * step(0.3, scatter(5.0)) * mix(0.25, 1.0, scatter(6.0));
    gl_FragColor = vec4(tone * (lights * luminances.x + lamp * luminances.y), 1.0);
    #include <fog_fragment>
  }`;

/** Windows with the light of their rooms, in the part's colour. */
export function makeWindow(colour: string | null): ShaderMaterial {
  const tone = ofUnitLuminance(colourOfHex(colour ?? '#f2c58c'));
  return new ShaderMaterial({
    uniforms: {
      ...UniformsUtils.clone(UniformsLib.fog),
      tone: { value: new Vector3(...tone) },
      luminances: { value: [ROOM_LUMINANCE, LAMP_LUMINANCE] },
    },
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
    fog: true,
  });
}
