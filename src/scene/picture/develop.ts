import { type Texture, Vector2, Vector3, Vector4 } from 'three';
import type { Distortion } from '../../core/plan/schema/kit';
import type { LinearColour } from '../light/kelvin';
import type { Exposure } from './exposure';
import { SPLINE } from './glow';
import { Sheet } from './sheet';

/** Contrast of the curve at middle grey, and the picture value that comes out white: six stops above middle grey. */
const CONTRAST = 1.18;
const WHITE = 0.18 * 2 ** 6;
/** The film's curve as data, for whoever reads a picture's light back. */
export const FILM = { contrast: CONTRAST, white: WHITE } as const;
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
  uniform sampler2D veil;
  uniform vec3 keep;
  uniform sampler2D glow;
  uniform vec2 ring;
  uniform float ringLevel;
  uniform vec3 ringShares;
  uniform float frame;
  uniform vec2 origin;
  uniform float electronsAtGrey;
  uniform float readElectrons;
  uniform float grainShare;
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

  ${SPLINE}

  /* Numbers without order, from a pixel and the frame that is exposed. */
  float scattered(vec3 at) {
    vec3 p = fract(at * vec3(0.1031, 0.1030, 0.0973));
    p += dot(p, p.yzx + 33.33);
    return fract((p.x + p.y) * p.z);
  }
  /* Nearly a bell: three of them together, with a variance of 1. */
  float bell(vec2 pixel, float which) {
    float sum = 0.0;
    for (int k = 0; k < 3; k++) sum += scattered(vec3(pixel, frame * 7.0 + which * 3.0 + float(k)));
    return 2.0 * (sum - 1.5);
  }
  /* Photons and reading out, in picture values: mostly the same in all channels. */
  vec3 noise(vec3 value) {
    vec2 pixel = gl_FragCoord.xy - origin;
    float common_ = bell(pixel, 0.0);
    vec3 own = vec3(bell(pixel, 1.0), bell(pixel, 2.0), bell(pixel, 3.0));
    vec3 electrons = value * (electronsAtGrey / 0.18);
    vec3 deviation = sqrt(electrons + readElectrons * readElectrons) * (0.18 / electronsAtGrey) * grainShare;
    return deviation * (0.9 * common_ + 0.436 * own);
  }

  float dither(vec2 at) { return fract(52.9829189 * fract(dot(at, vec2(0.06711056, 0.00583715)))); }

  void main() {
    vec2 at = source(vAt);
    vec3 light = min(texture2D(view, at).rgb, vec3(60000.0));
    vec3 kept = keep;
    if (ring.x > 0.0) {
      vec3 around = vec3(0.0);
      for (int k = 0; k < 12; k++) {
        float turn = 0.5235988 * float(k) + 0.26;
        float away = k % 2 == 0 ? 0.8 : 1.15;
        around += textureLod(glow, at + ring * away * vec2(cos(turn), sin(turn)), ringLevel).rgb;
      }
      light = light * kept + ringShares * around / 12.0;
    } else light *= kept;
    light += splined(veil, at, 0);
    vec3 value = max(light * gains * perCandela, 0.0);
    if (grainShare > 0.0) value = max(value + noise(value), 0.0);
    value *= min(1.0, hueCeiling / max(max(value.r, value.g), max(value.b, 1e-5)));
    mat3 mixing = mat3(1.0 - 2.0 * crosstalk) + crosstalk * mat3(0.0, 1.0, 1.0, 1.0, 0.0, 1.0, 1.0, 1.0, 0.0);
    vec3 powered = pow(mixing * value, vec3(curve.x));
    vec3 print = powered / (powered * curve.y + curve.z);
    float u = 0.7 * crosstalk;
    mat3 parting = mat3(1.0 + 2.0 * u) - u * mat3(0.0, 1.0, 1.0, 1.0, 0.0, 1.0, 1.0, 1.0, 0.0);
    print = clamp(parting * print, 0.0, 1.0);
    vec3 coded = mix(12.92 * print, 1.055 * pow(max(print, 1e-5), vec3(1.0 / 2.4)) - 0.055, step(0.0031308, print));
    coded += (dither(gl_FragCoord.xy) - 0.5) / 255.0;
    gl_FragColor = vec4(coded, 1.0);
  }`;

/** What a film's base sends around each light: how far, in shares of the picture across and up, and how much of it. */
export interface Ring {
  readonly away: readonly [number, number];
  /** Which level of the glow is as coarse as the gaps between what is taken from the ring. */
  readonly level: number;
  readonly shares: LinearColour;
}

/** A sensor's noise. */
export interface Grain {
  readonly electronsAtGrey: number;
  readonly readElectrons: number;
  /** What is left of it in a pixel that stands for several photosites. */
  readonly share: number;
  /** Number of the exposed frame: each has its own. */
  readonly frame: number;
}

export interface Development {
  readonly view: Texture;
  /** The light that goes astray, and how much of each colour stays where it fell. */
  readonly veil: Texture;
  readonly keep: LinearColour;
  /** The levels that a ring is taken from. */
  readonly glow: Texture;
  readonly ring: Ring | null;
  readonly grain: Grain | null;
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
      veil: { value: null as Texture | null },
      keep: { value: new Vector3(1, 1, 1) },
      glow: { value: null as Texture | null },
      ring: { value: new Vector2() },
      ringLevel: { value: 0 },
      ringShares: { value: new Vector3() },
      frame: { value: 0 },
      origin: { value: new Vector2() },
      electronsAtGrey: { value: 1 },
      readElectrons: { value: 0 },
      grainShare: { value: 0 },
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
  return {
    sheet,
    /** `origin` is the lower left of the picture in pixels of what it is developed onto. */
    prepare: (of: Development, origin: readonly [number, number]) => prepare(sheet.uniforms, of, origin),
  };
}

type Uniforms = ReturnType<typeof makeDeveloping>['sheet']['uniforms'];

const NOWHERE = [0, 0] as const;
const NONE = [0, 0, 0] as const;

function prepare(uniforms: Uniforms, of: Development, origin: readonly [number, number]): void {
  uniforms.view.value = of.view;
  uniforms.veil.value = of.veil;
  uniforms.keep.value.set(...of.keep);
  uniforms.glow.value = of.glow;
  const { ring, grain } = of;
  uniforms.ring.value.set(...(ring?.away ?? NOWHERE));
  uniforms.ringLevel.value = ring?.level ?? 0;
  uniforms.ringShares.value.set(...(ring?.shares ?? NONE));
  // Hashes of large numbers lose their digits on a card: frames a few minutes apart may look alike.
  uniforms.frame.value = (grain?.frame ?? 0) % 4096;
  uniforms.origin.value.set(...origin);
  uniforms.electronsAtGrey.value = grain?.electronsAtGrey ?? 1;
  uniforms.readElectrons.value = grain?.readElectrons ?? 0;
  uniforms.grainShare.value = grain?.share ?? 0;
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
