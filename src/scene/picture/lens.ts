import type { PerspectiveCamera } from 'three';
import type { ViewTargets } from './targets';

/** What throws things out of focus: the entrance pupil's height, how much narrower it is, and the distance in focus. */
export interface LensFocus {
  /** f/N, metres. */
  readonly pupilMetres: number;
  /** Squeeze: the pupil is this much narrower than high, so highlights are ovals. */
  readonly squeeze: number;
  /** Along the axis from the entrance pupil, metres. */
  readonly focusMetres: number;
  /** The rim that cuts the pupil off the axis, in its radii: its own radius, and its shift where the circle ends. */
  readonly rim: { readonly radius: number; readonly shift: number };
  /** Tangents across and up at which the image circle ends. */
  readonly circle: readonly [number, number];
}

/** How a view's pixels and depths are told: what every pass of the lens needs. */
export interface LensView {
  readonly near: number;
  readonly far: number;
  /** Radius of the blur in pixels of the view, up, for each 1/m of difference from what is in focus. */
  readonly radiusPerDioptre: number;
  /** How much narrower than high a blur is in pixels of the view. */
  readonly narrower: number;
}

/** How the lens sees what was drawn into the targets by a camera. */
export function lensViewOf({ view }: ViewTargets, camera: PerspectiveCamera, focus: LensFocus): LensView {
  const { elements: p } = camera.projectionMatrix;
  return {
    near: camera.near,
    far: camera.far,
    radiusPerDioptre: (focus.pupilMetres / 2) * (view.height / 2) * p[5],
    // As on the sensor a pixel is wider than high: blurs are narrower by the squeeze once more.
    narrower: (focus.squeeze * view.height * p[5]) / (view.width * p[0]),
  };
}

/**
 * How much of a half-size pixel's light is gathered; the rest is scattered as discs. What is brighter than `highlight`,
 * and a few times brighter than what is around it, stays below that, as far as it is blurred at all.
 */
export const GATHERED = /* glsl */ `
  uniform float highlight;
  const float OUTSHINES = 3.0;
  float gathered(sampler2D halves, vec2 at, vec4 own) {
    const vec3 luminance = vec3(0.2126, 0.7152, 0.0722);
    float radius = abs(own.a);
    float around = dot(textureLod(halves, at, log2(max(1.0, radius)) + 1.5).rgb, luminance);
    float kept = min(1.0, max(highlight, OUTSHINES * around) / max(dot(own.rgb, luminance), 1e-4));
    return mix(1.0, kept, smoothstep(0.5, 1.2, radius));
  }`;

/** Brighter than this many times middle grey, light out of focus becomes discs. */
export const HIGHLIGHT = 4;
