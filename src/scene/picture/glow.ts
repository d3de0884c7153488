import { type Texture, Vector2, Vector3, type WebGLRenderer } from 'three';
import { Sheet } from './sheet';
import type { ViewTargets } from './targets';

/** A Gaussian of the stray light: its σ over the height of the delivered frame, and how much of each colour it takes. */
export interface Stray {
  readonly sigma: number;
  readonly shares: readonly [number, number, number];
}

/** As many as the veil is ever made of: the lens's own and a mist's. */
const MOST = 8;

/** Four by four pixels of the view, those that are no numbers left out. */
const QUARTER = /* glsl */ `
  uniform sampler2D light;
  uniform vec2 texel;
  varying vec2 vAt;
  void main() {
    vec3 sum = vec3(0.0);
    for (int k = 0; k < 4; k++) {
      vec3 here = texture2D(light, vAt + 2.0 * texel * (vec2(float(k & 1), float(k >> 1)) - 0.5)).rgb;
      if (!any(isnan(here))) sum += min(here, vec3(60000.0));
    }
    gl_FragColor = vec4(sum * 0.25, 1.0);
  }`;

/** A level through a cubic spline, in four taps: read plainly, its pixels would show as squares. */
export const SPLINE = /* glsl */ `
  vec3 splined(sampler2D levels, vec2 at, int level) {
    vec2 size = vec2(textureSize(levels, level));
    vec2 place = at * size - 0.5;
    vec2 f = fract(place);
    vec2 last = f * f * f / 6.0;
    vec2 second = (4.0 - 6.0 * f * f + 3.0 * f * f * f) / 6.0;
    vec2 left = (1.0 - f) * (1.0 - f) * (1.0 - f) / 6.0 + second;
    vec2 low = (floor(place) - 0.5 + second / left) / size;
    vec2 high = (floor(place) + 1.5 + last / (1.0 - left)) / size;
    float lod = float(level);
    return mix(
      mix(textureLod(levels, high, lod).rgb, textureLod(levels, vec2(low.x, high.y), lod).rgb, left.x),
      mix(textureLod(levels, vec2(high.x, low.y), lod).rgb, textureLod(levels, low, lod).rgb, left.x), left.y);
  }`;

/**
 * The sum of the Gaussians: a level of pixels t wide through a cubic spline spreads by σ² = t²(1/12 + 1/3), and a
 * σ between two levels is mixed of both.
 */
const VEIL = /* glsl */ `
  uniform sampler2D glow;
  uniform float levels[${MOST}];
  uniform vec3 shares[${MOST}];
  uniform int count;
  varying vec2 vAt;
  ${SPLINE}
  void main() {
    vec3 veil = vec3(0.0);
    for (int k = 0; k < ${MOST}; k++) {
      if (k >= count) break;
      float level = max(0.0, levels[k]);
      int below = int(level);
      float above = level - float(below);
      vec3 light = splined(glow, vAt, below);
      if (above > 0.02) light = mix(light, splined(glow, vAt, below + 1), above);
      veil += shares[k] * light;
    }
    gl_FragColor = vec4(veil, 1.0);
  }`;

const SPLINE_SIGMA = Math.sqrt(1 / 12 + 1 / 3);

/** The light that goes astray in a lens and its filter, drawn into `targets.veil`. */
export class Glow {
  private readonly quarter = new Sheet(
    { light: { value: null as Texture | null }, texel: { value: new Vector2() } },
    QUARTER,
  );
  private readonly veil = new Sheet(
    {
      glow: { value: null as Texture | null },
      levels: { value: new Array<number>(MOST).fill(0) },
      shares: { value: Array.from({ length: MOST }, () => new Vector3()) },
      count: { value: 0 },
    },
    VEIL,
  );

  /** `frameHeight` is that of the delivered frame in pixels of the view. */
  draw(
    renderer: WebGLRenderer,
    { view, glow, veil }: ViewTargets,
    light: Texture,
    strays: readonly Stray[],
    frameHeight: number,
  ): void {
    this.quarter.uniforms.light.value = light;
    this.quarter.uniforms.texel.value.set(1 / view.width, 1 / view.height);
    this.quarter.draw(renderer, glow);
    const { uniforms } = this.veil;
    const last = Math.floor(Math.log2(Math.max(glow.width, glow.height))) - 1;
    uniforms.glow.value = glow.texture;
    uniforms.count.value = Math.min(MOST, strays.length);
    strays.slice(0, MOST).forEach(({ sigma, shares }, k) => {
      const texels = (sigma * frameHeight * glow.height) / view.height;
      // Between two levels it is the squares of the widths that mix.
      const exact = Math.max(0, Math.log2(Math.max(1, texels / SPLINE_SIGMA)));
      const below = Math.floor(exact);
      uniforms.levels.value[k] = Math.min(last, below + (4 ** (exact - below) - 1) / 3);
      uniforms.shares.value[k].set(...shares);
    });
    this.veil.draw(renderer, veil);
  }

  dispose(): void {
    this.quarter.dispose();
    this.veil.dispose();
  }
}
