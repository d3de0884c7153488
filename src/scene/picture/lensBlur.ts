import { type PerspectiveCamera, type Texture, Vector2, type WebGLRenderer } from 'three';
import { Sheet } from './sheet';
import type { ViewTargets } from './targets';

/** What throws things out of focus: the entrance pupil's height, how much narrower it is, and the distance in focus. */
export interface LensFocus {
  /** f/N, metres. */
  readonly pupilMetres: number;
  /** Squeeze: the pupil is this much narrower than high, so highlights are ovals. */
  readonly squeeze: number;
  /** Along the axis from the entrance pupil, metres. */
  readonly focusMetres: number;
}

/** Light is taken no brighter than this into the soft picture: one pixel of a bulb would else show every tap, cd/m². */
const MOST_LUMINANCE = 2500;
/** The largest blur that is drawn, in pixels of the half-size picture. */
const MOST_PIXELS = 28;

/**
 * Blur of a point at depth d: the pupil seen from it against the plane in focus, as the tangent A/2 (1/d − 1/F);
 * positive in front of that plane. Written into alpha as pixels of the half-size picture, up.
 */
const SPLIT = /* glsl */ `
  uniform sampler2D view;
  uniform sampler2D depths;
  uniform vec2 texel;
  uniform float near;
  uniform float far;
  uniform float pupil;
  uniform float focus;
  uniform float pixelsPerTangent;
  uniform float most;
  uniform float brightest;
  varying vec2 vAt;
  float metres(float depth) { return near * far / (far - depth * (far - near)); }
  void main() {
    vec3 sum = vec3(0.0);
    float nearest = 1.0;
    for (int k = 0; k < 4; k++) {
      vec2 at = vAt + texel * vec2(float(k & 1) - 0.5, float(k >> 1) - 0.5);
      vec3 light = texture2D(view, at).rgb;
      /* One pixel that is no number would black out every level above it. */
      if (any(isnan(light)) || any(isinf(light))) light = vec3(0.0);
      sum += light * min(1.0, brightest / max(max(light.r, light.g), max(light.b, 1e-3)));
      nearest = min(nearest, texture2D(depths, at).x);
    }
    float blur = 0.5 * pupil * (1.0 / metres(nearest) - 1.0 / focus) * pixelsPerTangent;
    gl_FragColor = vec4(sum * 0.25, clamp(blur, -most, most));
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
  uniform sampler2D reach;
  uniform vec2 texel;
  uniform vec2 reachTexel;
  uniform float squeeze;
  varying vec2 vAt;
  const int TAPS = 56;
  void main() {
    vec4 own = textureLod(half_, vAt, 0.0);
    float before = 0.0;
    for (int y = -1; y <= 1; y++) for (int x = -1; x <= 1; x++)
      before = max(before, textureLod(reach, vAt + reachTexel * vec2(float(x), float(y)), 0.0).x);
    float radius = max(abs(own.a), before);
    if (radius < 0.6) { gl_FragColor = vec4(own.rgb, 0.0); return; }
    /* Colours from a level with fewer pixels than gaps between taps; blurs from the finest, or edges would smear. */
    float level = max(0.0, log2(radius * 1.77 / sqrt(float(TAPS))) - 0.7);
    float spin = 6.2831853 * fract(52.9829189 * fract(dot(gl_FragCoord.xy, vec2(0.06711056, 0.00583715))));
    vec3 sum = own.rgb / (own.a * own.a + 1.0);
    float weights = 1.0 / (own.a * own.a + 1.0);
    float covered = 0.0;
    for (int k = 0; k < TAPS; k++) {
      float away = sqrt((float(k) + 0.5) / float(TAPS)) * radius;
      float turn = spin + float(k) * 2.39996323;
      vec2 step_ = away * vec2(cos(turn) / squeeze, sin(turn));
      vec2 at = vAt + step_ * texel;
      vec4 there = vec4(textureLod(half_, at, level).rgb, textureLod(half_, at, 0.0).a);
      float spread = there.a > 0.0 ? there.a : min(-there.a, max(abs(own.a), 0.0));
      float takes = clamp(spread - away + 1.0, 0.0, 1.0);
      float weight = takes / (spread * spread + 1.0);
      sum += there.rgb * weight;
      weights += weight;
      covered += there.a > 0.6 ? takes * (radius * radius) / (spread * spread + 1.0) : 0.0;
    }
    float share = max(smoothstep(0.5, 1.4, abs(own.a)), clamp(covered / float(TAPS), 0.0, 1.0));
    gl_FragColor = vec4(sum / weights, share);
  }`;

/** The lens's own softness, drawn from a view and its depths into `targets.blurred`. */
export class LensBlur {
  private readonly split = new Sheet(
    {
      view: { value: null as Texture | null },
      depths: { value: null as Texture | null },
      texel: { value: new Vector2() },
      near: { value: 0.1 },
      far: { value: 1000 },
      pupil: { value: 0 },
      focus: { value: 1 },
      pixelsPerTangent: { value: 1 },
      most: { value: MOST_PIXELS },
      brightest: { value: MOST_LUMINANCE },
    },
    SPLIT,
  );
  private readonly reach = new Sheet(
    { half_: { value: null as Texture | null }, texel: { value: new Vector2() } },
    REACH,
  );
  private readonly gather = new Sheet(
    {
      half_: { value: null as Texture | null },
      reach: { value: null as Texture | null },
      texel: { value: new Vector2() },
      reachTexel: { value: new Vector2() },
      squeeze: { value: 1 },
    },
    GATHER,
  );

  /** Fills `targets.half`, whose levels the glow is taken from, and with a lens also `targets.blurred`. */
  draw(
    renderer: WebGLRenderer,
    targets: ViewTargets,
    camera: PerspectiveCamera,
    lens: LensFocus | null,
  ): void {
    const { view, half, blurred, reach } = targets;
    const split = this.split.uniforms;
    split.view.value = view.texture;
    split.depths.value = view.depthTexture;
    split.texel.value.set(1 / view.width, 1 / view.height);
    split.near.value = camera.near;
    split.far.value = camera.far;
    split.pupil.value = lens?.pupilMetres ?? 0;
    split.focus.value = lens?.focusMetres ?? 1;
    split.pixelsPerTangent.value = (half.height * camera.projectionMatrix.elements[5]) / 2;
    this.split.draw(renderer, half);
    if (!lens) return;
    this.reach.uniforms.half_.value = half.texture;
    this.reach.uniforms.texel.value.set(1 / half.width, 1 / half.height);
    this.reach.draw(renderer, reach);
    const gather = this.gather.uniforms;
    gather.half_.value = half.texture;
    gather.reach.value = reach.texture;
    gather.texel.value.set(1 / half.width, 1 / half.height);
    gather.reachTexel.value.set(1 / reach.width, 1 / reach.height);
    // As on the sensor a pixel is wider than high: blurs are narrower by the squeeze once more.
    const { elements: p } = camera.projectionMatrix;
    gather.squeeze.value = (lens.squeeze * half.height * p[5]) / (half.width * p[0]);
    this.gather.draw(renderer, blurred);
  }

  dispose(): void {
    for (const sheet of [this.split, this.reach, this.gather]) sheet.dispose();
  }
}
