import { whereabouts } from '../../src/core/form/figure/whereabouts';
import type { Plan } from '../../src/core/plan/schema/plan';
import type { CameraKey, Setup } from '../../src/core/plan/schema/setup';
import { smallRoofDocument } from '../unit/smallRoof';
import { planFrom } from './bare';

/** Half of the way between the two, metres. */
export const HALF_APART = 0.5;

type Key = Omit<CameraKey, 'atSeconds'>;

/** A camera that stands at a place and looks along a heading, degrees. */
export const keyAt = (
  position: readonly [number, number, number],
  headingDegrees: number,
  tiltDegrees = 0,
): Key => ({ position: [...position], headingDegrees, tiltDegrees, rollDegrees: 0 });

/** Over Ana's left shoulder onto Bea, who stands on the right. */
export const OVER_ANA = keyAt([-2.2, 1.62, 0.6], 77.5, -1);
/** Onto Bea alone. */
export const ON_BEA = keyAt([-1.5, 1.56, 2.3], 41, 0);

const base = smallRoofDocument();
const [ana] = base.cast;
const [stamp] = base.setups;

const standing = (id: string, label: string, x: number, headingDegrees: number, more: object) => ({
  ...ana,
  id,
  label,
  marks: [
    {
      id: `${id}-1`,
      beat: 'start',
      at: [x, 0],
      headingDegrees,
      stance: 'stand',
      holdSeconds: 0,
    },
  ],
  ...more,
});

/** What differs from two alike who face each other. */
export interface FaceOff {
  readonly ana?: object;
  readonly bea?: object;
  readonly cast?: readonly object[];
  readonly plan?: object;
  /** A setup by its camera, and what else differs in it. */
  readonly setups: readonly (Partial<Omit<Setup, 'move'>> & { readonly keys: readonly Key[] })[];
}

/** Ana at the left and Bea at the right, half a metre from the middle of the deck each, eye to eye; and some setups. */
export function faceOff({ setups, cast = [], plan = {}, ...who }: FaceOff): Plan {
  return planFrom({
    ...base,
    gear: [],
    cast: [
      standing('ana', 'Ana', -HALF_APART, 90, who.ana ?? {}),
      standing('bea', 'Bea', HALF_APART, 270, who.bea ?? {}),
      ...cast,
    ],
    kit: {
      ...base.kit,
      lenses: [
        ...base.kit.lenses,
        { ...base.kit.lenses[1], id: 'short', label: '50 mm', focalMm: 50 },
        { ...base.kit.lenses[1], id: 'zoom', label: '40 to 120 mm', focalMm: 40, longestMm: 120 },
      ],
    },
    setups: setups.map(({ keys, ...setup }, k) => ({
      ...stamp,
      id: `setup-${k + 1}`,
      label: `Setup ${k + 1}`,
      lens: 'long',
      ...setup,
      move: {
        ease: 'linear',
        keys: keys.map((key, n) => ({
          atSeconds: keys.length > 1 ? (2 * n) / (keys.length - 1) : 0,
          ...key,
        })),
      },
    })),
    ...plan,
  });
}

const NOBODY = faceOff({ setups: [] });
const [ANAS_EYES, BEAS_EYES] = NOBODY.cast.map(
  (performer) => whereabouts(performer, NOBODY, 0)?.eyes ?? ([0, 0, 0] as const),
);

/**
 * A camera on Bea as it lies to Ana, mirrored: nobody stands quite straight, so it is from the eyes that it counts.
 * `times` as far off on the same line.
 */
export function onAna({ position, headingDegrees, ...rest }: Key, times = 1): Key {
  const [x, y, z] = position.map((at, axis) => times * (at - BEAS_EYES[axis]));
  return {
    ...rest,
    position: [ANAS_EYES[0] - x, ANAS_EYES[1] + y, ANAS_EYES[2] + z],
    headingDegrees: -headingDegrees,
  };
}
