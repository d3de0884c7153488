import {
  AddEquation,
  BufferAttribute,
  CustomBlending,
  InstancedBufferAttribute,
  InstancedBufferGeometry,
  Mesh,
  OneFactor,
  type PerspectiveCamera,
  ShaderMaterial,
  Vector3,
  type WebGLRenderer,
} from 'three';
import type { ViewTargets } from './targets';

/** A level streak through a light, as the front of a squeezed lens draws it. */
export interface Streak {
  /** Where the light stands, as tangents across and up. */
  readonly at: readonly [number, number];
  /** Luminance at the light, cd/m², by colour. */
  readonly peak: readonly [number, number, number];
  /** What is left of it where it is no longer drawn, as a share of the peak. */
  readonly floor: number;
}

/** How the streaks of a frame are drawn, as tangents: where they have fallen to a quarter, and their thickness (σ). */
export interface StreakShape {
  readonly fall: number;
  readonly thickness: number;
}

const MOST_STREAKS = 64;
const CORNERS = new Float32Array([-1, -1, 0, 1, -1, 0, -1, 1, 0, 1, 1, 0]);

const VERTEX = /* glsl */ `
  attribute vec3 peak;
  attribute vec3 place;
  uniform vec3 shape;
  uniform vec4 tangents;
  varying vec2 vAway;
  flat varying vec3 vPeak;
  flat varying float vFloor;
  void main() {
    float reach = shape.x * (inversesqrt(place.z) - 1.0);
    vec2 away = position.xy * vec2(reach, 3.0 * shape.y);
    vAway = vec2(away.x / shape.x, position.y * 3.0);
    vPeak = peak * shape.z;
    vFloor = place.z;
    gl_Position = vec4((place.xy + away) * tangents.xy - tangents.zw, 0.0, 1.0);
  }`;

/** Falls as 1/(1 + x/w)² and ends where it reaches the floor, with no edge. */
const FRAGMENT = /* glsl */ `
  varying vec2 vAway;
  flat varying vec3 vPeak;
  flat varying float vFloor;
  void main() {
    float along = 1.0 / (1.0 + abs(vAway.x));
    gl_FragColor = vec4(vPeak * max(0.0, along * along - vFloor) * exp(-0.5 * vAway.y * vAway.y), 0.0);
  }`;

/** Draws streaks over what a lens has drawn. */
export class Streaks {
  private readonly geometry = new InstancedBufferGeometry();
  private readonly peaks = new InstancedBufferAttribute(new Float32Array(3 * MOST_STREAKS), 3);
  private readonly places = new InstancedBufferAttribute(new Float32Array(3 * MOST_STREAKS), 3);
  private readonly uniforms = {
    shape: { value: new Vector3() },
    tangents: { value: [1, 1, 0, 0] },
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
  private readonly mesh = new Mesh(this.geometry, this.material);

  constructor() {
    this.geometry.setAttribute('position', new BufferAttribute(CORNERS, 3));
    this.geometry.setIndex([0, 1, 2, 2, 1, 3]);
    this.geometry.setAttribute('peak', this.peaks);
    this.geometry.setAttribute('place', this.places);
    this.mesh.frustumCulled = false;
  }

  /** Adds the streaks to `targets.lensed`. */
  draw(
    renderer: WebGLRenderer,
    { lensed, view }: ViewTargets,
    camera: PerspectiveCamera,
    streaks: readonly Streak[],
    shape: StreakShape,
  ): void {
    const count = Math.min(MOST_STREAKS, streaks.length);
    if (count === 0) return;
    for (let k = 0; k < count; k += 1) {
      const { at, peak, floor } = streaks[k];
      this.peaks.setXYZ(k, ...peak);
      this.places.setXYZ(k, at[0], at[1], floor);
    }
    this.peaks.needsUpdate = true;
    this.places.needsUpdate = true;
    this.geometry.instanceCount = count;
    const { elements: p } = camera.projectionMatrix;
    // Thinner than a pixel it would break up into dashes: it is drawn as wide as one, and as much fainter.
    const thickness = Math.max(shape.thickness, 1.3 / (view.height * p[5]));
    this.uniforms.shape.value.set(shape.fall, thickness, shape.thickness / thickness);
    this.uniforms.tangents.value = [p[0], p[5], p[8], p[9]];
    renderer.autoClear = false;
    renderer.setRenderTarget(lensed);
    renderer.render(this.mesh, camera);
    renderer.autoClear = true;
  }

  dispose(): void {
    this.geometry.dispose();
    this.material.dispose();
  }
}
