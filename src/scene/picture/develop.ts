import { type Texture, Vector2, Vector3, Vector4 } from 'three';
import type { Distortion } from '../../core/plan/schema/kit';
import type { Exposure } from './exposure';
import { Sheet } from './sheet';

/** Contrast of the curve at middle grey, and the picture value that comes out white: six stops above middle grey. */
const CONTRAST = 1.18;
const WHITE = 0.18 * 2 ** 6;
/** Brighter than this a light keeps its hue: clipped channel by channel, every bulb would come out white. */
const HUE_CEILING = 2.2 * WHITE;
/** How much of each channel runs into the others where it is bright: film and sensors go pale, they don't go neon. */
const CROSSTALK = 0.045;

/** The filmic curve's two constants, so that middle grey stays where it is and WHITE becomes 1 (after Lottes, 2016). */
function curve(): Vector3 {
  const grey = 0.18 ** CONTRAST;
  const white = WHITE ** CONTRAST;
  const slope = (grey / 0.18 - white) / (grey - white);
  return new Vector3(CONTRAST, slope, white * (1 - slope));
}

const FRAGMENT = /* glsl */ `
  uniform sampler2D view;
  uniform sampler2D blurred;
  uniform float lensOn;
  uniform sampler2D glow;
  uniform float glowShare;
  uniform float perCandela;
  uniform vec3 gains;
  uniform vec3 curve;
  uniform float hueCeiling;
  uniform float crosstalk;
  /* k1 k2 k3 p1, p2 apart; tangents of half the picture as shown and as drawn. */
  uniform vec4 bending;
  uniform float bendingLast;
  uniform float bends;
  uniform vec2 shown;
  uniform vec2 drawn;
  varying vec2 vAt;

  vec2 bend(vec2 t) {
    float r2 = dot(t, t);
    float radial = 1.0 + r2 * (bending.x + r2 * (bending.y + r2 * bending.z));
    return t * radial + vec2(
      2.0 * bending.w * t.x * t.y + bendingLast * (r2 + 2.0 * t.x * t.x),
      bending.w * (r2 + 2.0 * t.y * t.y) + 2.0 * bendingLast * t.x * t.y);
  }

  /* Where the straight picture holds what the lens draws here; the lens counts y downwards. */
  vec2 source(vec2 at) {
    vec2 target = (at * 2.0 - 1.0) * shown * vec2(1.0, -1.0);
    vec2 t = target;
    if (bends > 0.5) for (int k = 0; k < 12; k++) t += target - bend(t);
    return t * vec2(1.0, -1.0) / drawn * 0.5 + 0.5;
  }

  /* A level of the view through a cubic spline, in four taps: read plainly, its pixels would show as squares. */
  vec3 veilOf(vec2 at, int level) {
    vec2 size = vec2(textureSize(glow, level));
    vec2 place = at * size - 0.5;
    vec2 f = fract(place);
    vec2 last = f * f * f / 6.0;
    vec2 second = (4.0 - 6.0 * f * f + 3.0 * f * f * f) / 6.0;
    vec2 left = (1.0 - f) * (1.0 - f) * (1.0 - f) / 6.0 + second;
    vec2 low = (floor(place) - 0.5 + second / left) / size;
    vec2 high = (floor(place) + 1.5 + last / (1.0 - left)) / size;
    float lod = float(level);
    return mix(
      mix(textureLod(glow, high, lod).rgb, textureLod(glow, vec2(low.x, high.y), lod).rgb, left.x),
      mix(textureLod(glow, vec2(high.x, low.y), lod).rgb, textureLod(glow, low, lod).rgb, left.x), left.y);
  }

  float grain(vec2 at) { return fract(52.9829189 * fract(dot(at, vec2(0.06711056, 0.00583715)))); }

  void main() {
    vec2 at = source(vAt);
    vec3 light = texture2D(view, at).rgb;
    if (lensOn > 0.5) {
      /* Each pixel was gathered with its own turn of the taps: its neighbours around it together hide that. */
      vec2 apart = 1.0 / vec2(textureSize(blurred, 0));
      vec4 soft = vec4(0.0);
      for (int k = 0; k < 9; k++) soft += texture2D(blurred, at + 1.35 * apart * vec2(float(k % 3 - 1), float(k / 3 - 1)));
      soft /= 9.0;
      light = mix(light, soft.rgb, soft.a);
    }
    if (glowShare > 0.0) {
      vec3 veil = 0.5 * veilOf(at, 2) + 0.3 * veilOf(at, 3) + 0.2 * veilOf(at, 5);
      light = mix(light, veil, glowShare);
    }
    vec3 value = max(light * gains * perCandela, 0.0);
    value *= min(1.0, hueCeiling / max(max(value.r, value.g), max(value.b, 1e-5)));
    mat3 mixing = mat3(1.0 - 2.0 * crosstalk) + crosstalk * mat3(0.0, 1.0, 1.0, 1.0, 0.0, 1.0, 1.0, 1.0, 0.0);
    vec3 powered = pow(mixing * value, vec3(curve.x));
    vec3 print = powered / (powered * curve.y + curve.z);
    float u = 0.7 * crosstalk;
    mat3 parting = mat3(1.0 + 2.0 * u) - u * mat3(0.0, 1.0, 1.0, 1.0, 0.0, 1.0, 1.0, 1.0, 0.0);
    print = clamp(parting * print, 0.0, 1.0);
    vec3 coded = mix(12.92 * print, 1.055 * pow(max(print, 1e-5), vec3(1.0 / 2.4)) - 0.055, step(0.0031308, print));
    coded += (grain(gl_FragCoord.xy) - 0.5) / 255.0;
    gl_FragColor = vec4(coded, 1.0);
  }`;

export interface Development {
  readonly view: Texture;
  /** What the lens leaves soft, with its share in alpha; null for a view without a lens. */
  readonly blurred: Texture | null;
  /** The view's levels that the glow is taken from, and how much of the light goes astray. */
  readonly glow: Texture | null;
  readonly glowShare: number;
  readonly exposure: Exposure;
  /** The lens's distortion, with the tangents of half the picture shown, and of half the straight picture it is taken from. */
  readonly bending: {
    readonly distortion: Distortion;
    readonly shown: readonly [number, number];
    readonly drawn: readonly [number, number];
  } | null;
}

/**
 * Makes a picture for the screen of a view in cd/m²: white balance, exposure, a filmic curve (middle grey is 0.18 in and
 * out, white six stops above it), the sRGB code values, and a grain of half a code value against bands.
 */
export function makeDeveloping() {
  const sheet = new Sheet(
    {
      view: { value: null as Texture | null },
      blurred: { value: null as Texture | null },
      lensOn: { value: 0 },
      glow: { value: null as Texture | null },
      glowShare: { value: 0 },
      perCandela: { value: 1 },
      gains: { value: new Vector3(1, 1, 1) },
      curve: { value: curve() },
      hueCeiling: { value: HUE_CEILING },
      crosstalk: { value: CROSSTALK },
      bending: { value: new Vector4() },
      bendingLast: { value: 0 },
      bends: { value: 0 },
      shown: { value: new Vector2(1, 1) },
      drawn: { value: new Vector2(1, 1) },
    },
    FRAGMENT,
  );
  return { sheet, prepare: (of: Development) => prepare(sheet.uniforms, of) };
}

type Uniforms = ReturnType<typeof makeDeveloping>['sheet']['uniforms'];

function prepare(uniforms: Uniforms, of: Development): void {
  uniforms.view.value = of.view;
  uniforms.blurred.value = of.blurred;
  uniforms.lensOn.value = of.blurred ? 1 : 0;
  uniforms.glow.value = of.glow;
  uniforms.glowShare.value = of.glow ? of.glowShare : 0;
  uniforms.perCandela.value = of.exposure.perCandela;
  uniforms.gains.value.set(...of.exposure.gains);
  uniforms.bends.value = of.bending ? 1 : 0;
  if (!of.bending) {
    uniforms.shown.value.set(1, 1);
    uniforms.drawn.value.set(1, 1);
    return;
  }
  const { k1, k2, k3, p1, p2 } = of.bending.distortion;
  uniforms.bending.value.set(k1, k2, k3, p1);
  uniforms.bendingLast.value = p2;
  uniforms.shown.value.set(...of.bending.shown);
  uniforms.drawn.value.set(...of.bending.drawn);
}
