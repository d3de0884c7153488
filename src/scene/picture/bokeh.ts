import {
  AddEquation,
  BufferGeometry,
  CustomBlending,
  OneFactor,
  type PerspectiveCamera,
  Points,
  ShaderMaterial,
  type Texture,
  Vector2,
  Vector4,
  type WebGLRenderer,
} from 'three';
import { GATHERED, type LensFocus, type LensView } from './lens';
import type { ViewTargets } from './targets';

/** From this radius of what lies far away on, four neighbours are scattered as one: pixels of the view. */
const LARGE_RADIUS = 18;

const DIOPTRES = /* glsl */ `
  uniform sampler2D depths;
  uniform vec2 nearFar;
  float dioptresAt(vec2 pixel, vec2 size) {
    float depth = textureLod(depths, pixel / size, 0.0).x;
    return (nearFar.y - depth * (nearFar.y - nearFar.x)) / (nearFar.x * nearFar.y);
  }`;

/**
 * One point for each cell of the half-size picture. What was left out of the gathered picture there becomes a disc
 * around the middle of that light, at the depth of that light: πab pixels share it, so none is gained or lost.
 */
const VERTEX = /* glsl */ `
  uniform sampler2D view;
  uniform sampler2D half_;
  uniform int across;
  uniform int cell;
  uniform float focus;
  uniform float radiusPerDioptre;
  uniform float narrower;
  uniform float largest;
  uniform vec4 circle;
  flat varying vec3 vLight;
  flat varying vec2 vRadii;
  flat varying vec2 vCircle;
  flat varying float vDioptres;
  flat varying float vSide;
  flat varying vec2 vMiddle;
  flat varying float vSpan;
  ${DIOPTRES}
  ${GATHERED}
  const vec3 LUMINANCE = vec3(0.2126, 0.7152, 0.0722);
  void main() {
    gl_Position = vec4(2.0, 2.0, 2.0, 1.0);
    gl_PointSize = 1.0;
    ivec2 halfSize = textureSize(half_, 0);
    vec2 size = vec2(textureSize(view, 0));
    vec2 perTexel = size / vec2(halfSize);
    ivec2 first = cell * ivec2(gl_VertexID % across, gl_VertexID / across);
    vec3 light = vec3(0.0);
    vec2 middle = vec2(0.0);
    float dioptres = 0.0;
    float brightest = 0.0;
    float weights = 0.0;
    for (int k = 0; k < cell * cell; k++) {
      ivec2 texel = first + ivec2(k % cell, k / cell);
      if (any(greaterThanEqual(texel, halfSize))) continue;
      vec4 own = texelFetch(half_, texel, 0);
      if (dot(own.rgb, LUMINANCE) <= highlight || abs(own.a) < 0.5) continue;
      float kept = gathered(half_, (vec2(texel) + 0.5) / vec2(halfSize), own);
      if (kept > 0.999) continue;
      vec3 left = own.rgb * kept;
      vec3 excess = own.rgb - left;
      light += excess;
      for (int n = 0; n < 4; n++) {
        vec2 pixel = (vec2(texel) + 0.5) * perTexel + vec2(float(n & 1), float(n >> 1)) - 0.5;
        float over = max(1e-4, dot(textureLod(view, pixel / size, 0.0).rgb - left, LUMINANCE));
        middle += over * pixel;
        weights += over;
        /* At its edge a small light shares pixels with what is far behind it: the brightest is all its own. */
        if (over <= brightest) continue;
        brightest = over;
        dioptres = dioptresAt(pixel, size);
      }
    }
    if (weights == 0.0) return;
    middle /= weights;
    vSide = dioptres < 1.0 / focus ? 1.0 : -1.0;
    float radius = min(largest, max(0.8, radiusPerDioptre * abs(dioptres - 1.0 / focus)));
    vRadii = vec2(max(0.6, radius / narrower), radius);
    vMiddle = middle;
    vDioptres = dioptres;
    vCircle = (middle / size * 2.0 - 1.0 + circle.zw) * circle.xy;
    vLight = min(light * perTexel.x * perTexel.y / (3.14159265 * vRadii.x * vRadii.y), vec3(30000.0));
    vSpan = 2.0 * max(vRadii.x, vRadii.y) + 2.0;
    gl_Position = vec4(middle / size * 2.0 - 1.0, 0.0, 1.0);
    gl_PointSize = vSpan;
  }`;

/**
 * The disc of the pupil, cut by the rim, as far as nothing stands in the way. The ray from the light through this
 * place of the pupil crosses the picture in a straight line: with 1/d of the light it is at its middle, with 1/F it is
 * at this pixel, and it goes on beyond. Whatever is nearer than the light is asked for where the ray passes its depth.
 */
const FRAGMENT = /* glsl */ `
  uniform sampler2D reach;
  uniform vec2 size;
  uniform float focus;
  uniform float radiusPerDioptre;
  uniform vec2 rim;
  flat varying vec3 vLight;
  flat varying vec2 vRadii;
  flat varying vec2 vCircle;
  flat varying float vDioptres;
  flat varying float vSide;
  flat varying vec2 vMiddle;
  flat varying float vSpan;
  ${DIOPTRES}
  float passes(float blocker, vec2 away) {
    if (blocker <= vDioptres * 1.03 + 0.002) return 1.0;
    float along = (blocker - 1.0 / focus) / (1.0 / focus - vDioptres);
    float there = dioptresAt(gl_FragCoord.xy + away * along, size);
    return 1.0 - smoothstep(0.86, 0.94, there / blocker);
  }
  /* How much of the pixel lies within a circle, from how far inside it is in radii. */
  float within(float inside, vec2 from, float distance_) {
    return clamp(inside * max(distance_, 1e-4) / max(length(from / vRadii), 1e-5) + 0.5, 0.0, 1.0);
  }
  void main() {
    vec2 away = gl_FragCoord.xy - vMiddle;
    vec2 q = away / vRadii;
    float distance_ = length(q);
    float cover = within(1.0 - distance_, q, distance_);
    vec2 fromRim = q * vSide + vCircle * rim.y;
    float rimDistance = length(fromRim);
    cover *= within(rim.x - rimDistance, fromRim, rimDistance);
    if (cover <= 0.0) discard;
    float open = 0.0;
    for (int k = 0; k < 4; k++) {
      vec2 corner = vec2(float(k & 1), float(k >> 1)) - 0.5;
      open += passes(dioptresAt(gl_FragCoord.xy + corner, size), away);
    }
    open *= 0.25;
    float nearest = textureLod(reach, gl_FragCoord.xy / size, 0.0).x;
    if (nearest > 0.5) open *= passes(2.0 * nearest / radiusPerDioptre + 1.0 / focus, away);
    gl_FragColor = vec4(vLight * cover * open, 0.0);
  }`;

/** Scatters the highlights of a view that are out of focus over the discs that the lens makes of them. */
export class Bokeh {
  private readonly uniforms = {
    view: { value: null as Texture | null },
    half_: { value: null as Texture | null },
    reach: { value: null as Texture | null },
    depths: { value: null as Texture | null },
    nearFar: { value: new Vector2() },
    across: { value: 1 },
    cell: { value: 1 },
    highlight: { value: 1 },
    focus: { value: 1 },
    radiusPerDioptre: { value: 0 },
    narrower: { value: 1 },
    largest: { value: 64 },
    circle: { value: new Vector4() },
    size: { value: new Vector2(1, 1) },
    rim: { value: new Vector2(1, 0) },
  };
  private readonly material = new ShaderMaterial({
    uniforms: this.uniforms,
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
    depthTest: false,
    depthWrite: false,
    toneMapped: false,
    transparent: true,
    blending: CustomBlending,
    blendEquation: AddEquation,
    blendSrc: OneFactor,
    blendDst: OneFactor,
  });
  private readonly points = new Points(new BufferGeometry(), this.material);

  constructor() {
    // The points are numbered, and find their places themselves.
    this.points.frustumCulled = false;
  }

  /** Adds the discs of all that is brighter than `highlight`, cd/m², to `targets.lensed`. */
  draw(
    renderer: WebGLRenderer,
    { view, half, reach, lensed }: ViewTargets,
    lens: LensView,
    camera: PerspectiveCamera,
    { focusMetres, rim, circle }: LensFocus,
    highlight: number,
  ): void {
    const { uniforms } = this;
    const cell = lens.radiusPerDioptre / focusMetres > LARGE_RADIUS ? 2 : 1;
    const across = Math.ceil(half.width / cell);
    uniforms.view.value = view.texture;
    uniforms.half_.value = half.texture;
    uniforms.highlight.value = highlight;
    uniforms.reach.value = reach.texture;
    uniforms.depths.value = view.depthTexture;
    uniforms.nearFar.value.set(lens.near, lens.far);
    uniforms.across.value = across;
    uniforms.cell.value = cell;
    uniforms.focus.value = focusMetres;
    uniforms.radiusPerDioptre.value = lens.radiusPerDioptre;
    uniforms.narrower.value = lens.narrower;
    uniforms.largest.value = largestRadius(renderer);
    const { elements: p } = camera.projectionMatrix;
    uniforms.circle.value.set(1 / p[0] / circle[0], 1 / p[5] / circle[1], p[8], p[9]);
    uniforms.size.value.set(view.width, view.height);
    uniforms.rim.value.set(rim.radius, rim.shift);
    this.points.geometry.setDrawRange(0, across * Math.ceil(half.height / cell));
    renderer.autoClear = false;
    renderer.setRenderTarget(lensed);
    renderer.render(this.points, camera);
    renderer.autoClear = true;
  }

  dispose(): void {
    this.material.dispose();
    this.points.geometry.dispose();
  }
}

const largest = new WeakMap<WebGLRenderer, number>();

/** The largest point that the card draws, as a radius. */
function largestRadius(renderer: WebGLRenderer): number {
  const known = largest.get(renderer);
  if (known !== undefined) return known;
  const gl = renderer.getContext();
  const range: unknown = gl.getParameter(gl.ALIASED_POINT_SIZE_RANGE);
  const radius = range instanceof Float32Array ? range[1] / 2 - 1 : 30;
  largest.set(renderer, radius);
  return radius;
}
