import type { Lens } from '../plan/schema/kit';

/** Diagonal of the 35 mm full aperture, and of the 36 × 24 still frame, in millimetres: what the sets cover. */
const CIRCLE_35 = 31.1;
const CIRCLE_FULL_FRAME = 43.3;

type FocalAndFocus = readonly [focalMm: number, closeFocusMetres: number];

const ANAMORPHIC: readonly FocalAndFocus[] = [
  [35, 0.85],
  [40, 0.8],
  [50, 0.85],
  [65, 0.95],
  [75, 1],
  [100, 1.1],
  [135, 1.5],
];

const SPHERICAL: readonly FocalAndFocus[] = [
  [18, 0.3],
  [21, 0.3],
  [25, 0.3],
  [28, 0.35],
  [32, 0.4],
  [35, 0.4],
  [40, 0.45],
  [50, 0.6],
  [65, 0.65],
  [75, 0.75],
  [85, 0.85],
  [100, 1],
  [135, 1.5],
];

/** Lenses in two sets, neither of which is any one lens: 2× anamorphic and spherical. Their distortion is not given. */
export const LENSES: readonly Lens[] = [
  ...ANAMORPHIC.map(
    ([focalMm, closeFocusMetres]): Lens => ({
      id: `anamorphic-${focalMm}`,
      label: `${focalMm}\u00a0mm anamorphic, 2×`,
      focalMm,
      squeeze: 2,
      widestStop: 2.3,
      narrowestStop: 22,
      closeFocusMetres,
      imageCircleMm: CIRCLE_35,
      source: 'lens-classes',
    }),
  ),
  ...SPHERICAL.map(
    ([focalMm, closeFocusMetres]): Lens => ({
      id: `spherical-${focalMm}`,
      label: `${focalMm}\u00a0mm spherical`,
      focalMm,
      squeeze: 1,
      widestStop: 2,
      narrowestStop: 22,
      closeFocusMetres,
      imageCircleMm: CIRCLE_FULL_FRAME,
      source: 'lens-classes',
    }),
  ),
];
