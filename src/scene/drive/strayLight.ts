import type { PerspectiveCamera } from 'three';
import { glassOf, stateAt } from '../../core/optics/camera';
import { greyElectrons, photositesIn, READ_ELECTRONS } from '../../core/optics/grain';
import {
  type FilterShares,
  filterShares,
  HALATION_RADIUS_MM,
  LENS_GLOW,
  LENS_SPREAD,
  MIST_SPREAD,
  type Spread,
} from '../../core/optics/stray';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import type { Grain, Ring } from '../picture/develop';
import type { Stray } from '../picture/glow';
import type { ViewTargets } from '../picture/targets';

/** How light goes astray on its way, and what is left where it falls. */
export interface StrayLight {
  readonly strays: readonly Stray[];
  readonly keep: readonly [number, number, number];
  readonly filter: FilterShares;
}

const strayBy = (spread: readonly Spread[], share: number): Stray[] =>
  spread.map(({ sigma, weight }) => {
    const each = share * weight;
    return { sigma, shares: [each, each, each] };
  });

/** Of a lens, and of what lies before it; what one takes, the other spreads no more. */
export function strayLight(filter: Setup['filter'] | null): StrayLight {
  const shares = filterShares(filter);
  const strays = strayBy(LENS_SPREAD, LENS_GLOW);
  if (shares.mist > 0) strays.push(...strayBy(MIST_SPREAD, shares.mist * (1 - LENS_GLOW)));
  const straight = (1 - LENS_GLOW) * (1 - shares.mist);
  const [red, green, blue] = shares.halation;
  return {
    strays,
    keep: [straight * (1 - red), straight * (1 - green), straight * (1 - blue)],
    filter: { ...shares, halation: [straight * red, straight * green, straight * blue] },
  };
}

/** Height of the delivered frame in pixels of a view that a camera draws. */
export const frameHeightIn = (
  { view }: ViewTargets,
  { projectionMatrix }: PerspectiveCamera,
  tanHalfHeight: number,
): number => view.height * projectionMatrix.elements[5] * tanHalfHeight;

/** The ring that a film's base throws around lights; null where nothing comes back from it. As on film, it is round. */
export function ringIn(
  { glow }: ViewTargets,
  { projectionMatrix }: PerspectiveCamera,
  { halation }: FilterShares,
  glass: { readonly focalMm: number; readonly squeeze: number },
): Ring | null {
  if (halation[0] === 0) return null;
  const { elements: p } = projectionMatrix;
  const tangent = HALATION_RADIUS_MM / glass.focalMm;
  const away = [(tangent * glass.squeeze * p[0]) / 2, (tangent * p[5]) / 2] as const;
  const gap = 0.52 * Math.max(away[0] * glow.width, away[1] * glow.height);
  return { away, level: Math.log2(Math.max(1, gap)), shares: halation };
}

/** The noise of a setup's sensor in the pixels of a view, at an instant. */
export function grainIn(
  { view }: ViewTargets,
  { projectionMatrix }: PerspectiveCamera,
  plan: Plan,
  setup: Setup,
  seconds: number,
): Grain {
  const { elements: p } = projectionMatrix;
  const { focalMm } = stateAt(plan, setup, seconds);
  const { squeeze } = glassOf(plan, setup).lens;
  const across = ((2 / p[0] / view.width) * focalMm) / squeeze;
  const up = (2 / p[5] / view.height) * focalMm;
  return {
    electronsAtGrey: greyElectrons(setup.iso),
    readElectrons: READ_ELECTRONS,
    share: 1 / Math.sqrt(photositesIn([across, up])),
    frame: Math.round(seconds * setup.framesPerSecond),
  };
}
