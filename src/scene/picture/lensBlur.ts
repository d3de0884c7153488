import { type PerspectiveCamera, type Texture, Vector2, type WebGLRenderer } from 'three';
import { Bokeh } from './bokeh';
import { GATHERED, HIGHLIGHT, type LensFocus, type LensView, lensViewOf } from './lens';
import { Sheet } from './sheet';
import type { ViewTargets } from './targets';

/** The largest blur that is gathered, in pixels of the half-size picture; discs have no such bound. */
const MOST_PIXELS = 48;

/**
 * Radius of a point's blur at depth d: half the pupil seen from it against the plane in focus, A/2 (1/d − 1/F),
 * positive in front of that plane. Written into alpha as pixels of the half-size picture, up.
 */
const SPLIT = /* glsl */ `
  uniform sampler2D view;
  uniform sampler2D depths;
  uniform vec2 texel;
  uniform vec2 nearFar;
  uniform float focus;
  uniform float radiusPerDioptre;
  uniform float most;
  varying vec2 vAt;
  void main() {
    vec3 sum = vec3(0.0);
    float nearest = 1.0;
    for (int k = 0; k < 4; k++) {
      vec2 at = vAt + texel * vec2(float(k & 1) - 0.5, float(k >> 1) - 0.5);
      vec3 light = texture2D(view, at).rgb;
      /* One pixel that is no number would black out every level above it. */
      if (any(isnan(light)) || any(isinf(light))) light = vec3(0.0);
      sum += light;
      nearest = min(nearest, texture2D(depths, at).x);
    }
    float dioptres = (nearFar.y - nearest * (nearFar.y - nearFar.x)) / (nearFar.x * nearFar.y);
    float blur = 0.5 * radiusPerDioptre * (dioptres - 1.0 / focus);
    gl_FragColor = vec4(sum * 0.25, clamp(blur, -most, most));
  }`;

/**
 * Leaves to the discs what outshines its surroundings, as far as they get mixed with it. Alpha, and the colour with it,
 * is 0 where light must not be taken from: what is sharp keeps its light, and what lies beside something sharper before
 * it has that thing's edge in it.
 */
const TEMPER = /* glsl */ `
  uniform sampler2D half_;
  uniform vec2 texel;
  varying vec2 vAt;
  ${GATHERED}
  void main() {
    vec4 own = textureLod(half_, vAt, 0.0);
    float radius = abs(own.a);
    float takes = smoothstep(0.3, 0.8, radius);
    for (int k = 0; k < 9; k++) {
      float beside = textureLod(half_, vAt + texel * vec2(float(k % 3 - 1), float(k / 3 - 1)), 0.0).a;
      float nearer = smoothstep(0.3, 0.5, (beside - own.a) / max(radius, 1.0));
      takes = min(takes, 1.0 - nearer * (1.0 - smoothstep(0.3, 0.6, abs(beside) / max(radius, 1.0))));
    }
    gl_FragColor = vec4(own.rgb * gathered(half_, vAt, own) * takes, takes);
  }`;

const REACH = /* glsl */ `
  uniform sampler2D half_;
  uniform vec2 texel;
  varying vec2 vAt;
  void main() {
    float reach = 0.0;
    for (int y = -4; y < 4; y++) for (int x = -4; x < 4; x++)
      reach = max(reach, textureLod(half_, vAt + texel * (vec2(float(x), float(y)) + 0.5), 0.0).a);
    gl_FragColor = vec4(reach, 0.0, 0.0, 1.0);
  }`;

/** Takes light from wherever the blur reaches here: what is behind never spills over what is sharp before it. */
const GATHER = /* glsl */ `
  uniform sampler2D half_;
  uniform sampler2D base;
  uniform sampler2D reach;
  uniform vec2 texel;
  uniform vec2 reachTexel;
  uniform float narrower;
  varying vec2 vAt;
  const int TAPS = 56;
  void main() {
    float own = textureLod(half_, vAt, 0.0).a;
    float before = 0.0;
    for (int y = -1; y <= 1; y++) for (int x = -1; x <= 1; x++)
      before = max(before, textureLod(reach, vAt + reachTexel * vec2(float(x), float(y)), 0.0).x);
    float radius = max(abs(own), before);
    if (radius < 0.5) { gl_FragColor = vec4(0.0); return; }
    /* Colours from a level with fewer pixels than gaps between taps; blurs from the finest, or edges would smear. */
    float level = max(0.0, log2(radius * 1.77 / sqrt(float(TAPS))) - 0.7);
    float spin = 6.2831853 * fract(52.9829189 * fract(dot(gl_FragCoord.xy, vec2(0.06711056, 0.00583715))));
    vec4 sum = textureLod(base, vAt, 0.0) / (own * own + 1.0);
    float covered = 0.0;
    for (int k = 0; k < TAPS; k++) {
      float away = sqrt((float(k) + 0.5) / float(TAPS)) * radius;
      float turn = spin + float(k) * 2.39996323;
      vec2 step_ = away * vec2(cos(turn) / narrower, sin(turn));
      vec2 at = vAt + step_ * texel;
      float there = textureLod(half_, at, 0.0).a;
      float spread = there > 0.0 ? there : min(-there, abs(own));
      float takes = clamp(spread - away + 1.0, 0.0, 1.0);
      float weight = takes / (spread * spread + 1.0);
      sum += textureLod(base, at, level) * weight;
      covered += there > 0.6 ? weight : 0.0;
    }
    covered = clamp(covered * (radius * radius) / float(TAPS), 0.0, 1.0);
    float share = max(smoothstep(0.4, 1.0, abs(own)), covered) * step(1e-5, sum.a);
    gl_FragColor = vec4(sum.rgb / max(sum.a, 1e-5) * share, share);
  }`;

/** The view where it is sharp, and what was gathered where it is not. */
const COMPOSE = /* glsl */ `
  uniform sampler2D view;
  uniform sampler2D depths;
  uniform sampler2D blurred;
  uniform sampler2D reach;
  uniform vec2 nearFar;
  uniform float focus;
  uniform float radiusPerDioptre;
  uniform vec2 apart;
  uniform float isBlurred;
  varying vec2 vAt;
  const vec2 BESIDE[5] = vec2[5](vec2(0.0), vec2(1.0, 0.0), vec2(-1.0, 0.0), vec2(0.0, 1.0), vec2(0.0, -1.0));
  void main() {
    vec3 light = texture2D(view, vAt).rgb;
    if (isBlurred > 0.5) {
      /* Each pixel was gathered with its own turn of the taps: its neighbours around it together hide that. */
      vec4 soft = vec4(0.0);
      for (int k = 0; k < 9; k++) soft += texture2D(blurred, vAt + 1.35 * apart * vec2(float(k % 3 - 1), float(k / 3 - 1)));
      /* What is sharp stays so, its smoothed edge with it; only what is blurred before it spills over it. */
      float share = 1.0;
      for (int k = 0; k < 5; k++) {
        vec2 at = vAt + 0.5 * apart * BESIDE[k];
        float dioptres = (nearFar.y - texture2D(depths, at).x * (nearFar.y - nearFar.x)) / (nearFar.x * nearFar.y);
        share = min(share, smoothstep(0.8, 2.0, abs(radiusPerDioptre * (dioptres - 1.0 / focus))));
      }
      share = max(share, soft.a / 9.0 * smoothstep(0.4, 0.8, texture2D(reach, vAt).x));
      if (soft.a > 1e-3) light = mix(light, soft.rgb / soft.a, share);
    }
    gl_FragColor = vec4(light, 1.0);
  }`;

/** The lens's own softness, drawn from a view and its depths into `targets.lensed`. */
export class LensBlur {
  private readonly split = new Sheet(
    {
      view: { value: null as Texture | null },
      depths: { value: null as Texture | null },
      texel: { value: new Vector2() },
      nearFar: { value: new Vector2() },
      focus: { value: 1 },
      radiusPerDioptre: { value: 0 },
      most: { value: MOST_PIXELS },
    },
    SPLIT,
  );
  private readonly temper = new Sheet(
    {
      half_: { value: null as Texture | null },
      texel: { value: new Vector2() },
      highlight: { value: 1 },
    },
    TEMPER,
  );
  private readonly reach = new Sheet(
    { half_: { value: null as Texture | null }, texel: { value: new Vector2() } },
    REACH,
  );
  private readonly gather = new Sheet(
    {
      half_: { value: null as Texture | null },
      base: { value: null as Texture | null },
      reach: { value: null as Texture | null },
      texel: { value: new Vector2() },
      reachTexel: { value: new Vector2() },
      narrower: { value: 1 },
    },
    GATHER,
  );
  private readonly compose = new Sheet(
    {
      view: { value: null as Texture | null },
      depths: { value: null as Texture | null },
      blurred: { value: null as Texture | null },
      reach: { value: null as Texture | null },
      nearFar: { value: new Vector2() },
      focus: { value: 1 },
      radiusPerDioptre: { value: 0 },
      apart: { value: new Vector2() },
      isBlurred: { value: 0 },
    },
    COMPOSE,
  );
  private readonly bokeh = new Bokeh();

  /** Fills `targets.lensed`, blurred where there is a focus; `greyLuminance` is what comes out middle grey, cd/m². */
  draw(
    renderer: WebGLRenderer,
    targets: ViewTargets,
    camera: PerspectiveCamera,
    focus: LensFocus | null,
    greyLuminance: number,
  ): void {
    const { view, blurred, reach, lensed } = targets;
    const lens = focus && lensViewOf(targets, camera, focus);
    if (focus && lens) this.blur(renderer, targets, lens, focus, greyLuminance);
    const compose = this.compose.uniforms;
    compose.view.value = view.texture;
    compose.depths.value = view.depthTexture;
    compose.blurred.value = focus ? blurred.texture : null;
    compose.reach.value = focus ? reach.texture : null;
    compose.nearFar.value.set(camera.near, camera.far);
    compose.focus.value = focus?.focusMetres ?? 1;
    compose.radiusPerDioptre.value = lens?.radiusPerDioptre ?? 0;
    compose.apart.value.set(1 / blurred.width, 1 / blurred.height);
    compose.isBlurred.value = focus ? 1 : 0;
    this.compose.draw(renderer, lensed);
    if (focus && lens) this.bokeh.draw(renderer, targets, lens, camera, focus, HIGHLIGHT * greyLuminance);
  }

  private blur(
    renderer: WebGLRenderer,
    targets: ViewTargets,
    lens: LensView,
    focus: LensFocus,
    greyLuminance: number,
  ): void {
    const { view, half, base, blurred, reach } = targets;
    const split = this.split.uniforms;
    split.view.value = view.texture;
    split.depths.value = view.depthTexture;
    split.texel.value.set(1 / view.width, 1 / view.height);
    split.nearFar.value.set(lens.near, lens.far);
    split.focus.value = focus.focusMetres;
    split.radiusPerDioptre.value = lens.radiusPerDioptre;
    this.split.draw(renderer, half);
    this.temper.uniforms.half_.value = half.texture;
    this.temper.uniforms.texel.value.set(1 / half.width, 1 / half.height);
    this.temper.uniforms.highlight.value = HIGHLIGHT * greyLuminance;
    this.temper.draw(renderer, base);
    this.reach.uniforms.half_.value = half.texture;
    this.reach.uniforms.texel.value.set(1 / half.width, 1 / half.height);
    this.reach.draw(renderer, reach);
    const gather = this.gather.uniforms;
    gather.half_.value = half.texture;
    gather.base.value = base.texture;
    gather.reach.value = reach.texture;
    gather.texel.value.set(1 / half.width, 1 / half.height);
    gather.reachTexel.value.set(1 / reach.width, 1 / reach.height);
    gather.narrower.value = lens.narrower;
    this.gather.draw(renderer, blurred);
  }

  dispose(): void {
    const { split, temper, reach, gather, compose, bokeh } = this;
    for (const each of [split, temper, reach, gather, compose, bokeh]) each.dispose();
  }
}
