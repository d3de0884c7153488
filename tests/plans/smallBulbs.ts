import type { Plan } from '../../src/core/plan/schema/plan';
import { BARE, BODY, lensOf, planFrom, stillSetup } from './bare';

/** Where bulbs hang before the camera: tangent to the right, and metres ahead; and their diameter, metres. */
export const BULBS = [
  { right: -0.115, ahead: 1.3, size: 0.002 },
  { right: -0.057, ahead: 3, size: 0.004 },
  { right: 0, ahead: 4, size: 0.004 },
  { right: 0.057, ahead: 6, size: 0.004 },
  { right: 0.115, ahead: 12, size: 0.008 },
] as const;
/** Above a deck that stays dark. */
const HIGH_METRES = 20;
/** A bulb hangs on 5 cm of flex and its socket, with its middle so far below. */
const belowMount = (size: number) => 0.05 + size / 2;

/** Small bulbs in the dark at several distances, seen by a spherical lens and a 2x squeezed one, focused at 2 m. */
export function smallBulbs(): Plan {
  // Stopped down far enough that no rim cuts the discs off the axis.
  const range = { widestStop: 0.7, closeFocusMetres: 0.5 };
  return planFrom({
    ...BARE,
    title: 'Small bulbs',
    ground: { surface: 'asphalt', wetness: 'dry' },
    kit: {
      bodies: [BODY],
      lenses: [
        lensOf('spherical', 85, range),
        lensOf('squeezed', 135, { ...range, label: '135 mm, 2x', squeeze: 2 }),
      ],
      heads: BULBS.map(({ ahead, size }, k) => ({
        id: `bulb-${k}`,
        label: `Bulb ${k + 1}`,
        form: 'bulb',
        size: [size, size, size],
        watts: 5,
        powerFactor: 1,
        // As bright in the picture whatever their distance.
        peakCandela: 0.03 * ahead * ahead,
        beamDegrees: 360,
        fieldDegrees: 360,
        kelvin: 3200,
      })),
      stands: [],
    },
    gear: BULBS.map(({ right, ahead, size }, k) => ({
      id: `practical-${k}`,
      label: `Bulb ${k + 1}`,
      kind: 'practical',
      at: [right * ahead, HIGH_METRES + belowMount(size), -ahead],
      headingDegrees: 0,
      head: `bulb-${k}`,
      dim: 1,
    })),
    setups: (['spherical', 'squeezed'] as const).map((id) =>
      stillSetup(
        id,
        id,
        { position: [0, HIGH_METRES, 0] },
        {
          mode: id === 'spherical' ? 'wide' : 'high',
          delivery: 4,
          stop: 2,
          iso: 100,
          balanceKelvin: 3200,
          focus: { metres: 2 },
        },
      ),
    ),
  });
}
