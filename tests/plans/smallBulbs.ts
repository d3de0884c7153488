import { parsePlan } from '../../src/core/plan/parse';
import type { Plan } from '../../src/core/plan/schema/plan';

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
  const read = parsePlan({
    standclear: 1,
    title: 'Small bulbs',
    notes: '',
    place: {
      label: 'Nowhere',
      latitudeDegrees: 0,
      longitudeDegrees: 0,
      timeZone: 'UTC',
      date: '2026-11-27',
      northDegrees: 0,
    },
    ground: { surface: 'asphalt', wetness: 'dry' },
    safety: { metres: 0.2, frameWidths: 0.02 },
    kit: {
      bodies: [
        {
          id: 'body',
          label: 'Body',
          modes: [
            { id: 'wide', label: 'Wide', gateMm: [24.89, 14] },
            { id: 'high', label: 'High', gateMm: [24.89, 18.66] },
          ],
        },
      ],
      // Stopped down far enough that no rim cuts the discs off the axis.
      lenses: [
        { id: 'spherical', label: '85 mm', focalMm: 85, squeeze: 1 },
        { id: 'squeezed', label: '135 mm, 2x', focalMm: 135, squeeze: 2 },
      ].map((lens) => ({ ...lens, widestStop: 0.7, narrowestStop: 22, closeFocusMetres: 0.5 })),
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
    pieces: [],
    beats: [{ id: 'start', label: 'Start', atSeconds: 0 }],
    cast: [],
    gear: BULBS.map(({ right, ahead, size }, k) => ({
      id: `practical-${k}`,
      label: `Bulb ${k + 1}`,
      kind: 'practical',
      at: [right * ahead, HIGH_METRES + belowMount(size), -ahead],
      headingDegrees: 0,
      head: `bulb-${k}`,
      dim: 1,
    })),
    setups: (['spherical', 'squeezed'] as const).map((id) => ({
      id,
      label: id,
      body: 'body',
      mode: id === 'spherical' ? 'wide' : 'high',
      lens: id,
      delivery: 4,
      stop: 2,
      iso: 100,
      shutterDegrees: 180,
      framesPerSecond: 24,
      ndStops: 0,
      balanceKelvin: 3200,
      focus: { metres: 2 },
      support: 'sticks',
      span: { from: 'start', to: 'start' },
      move: {
        ease: 'linear',
        keys: [
          {
            atSeconds: 0,
            position: [0, HIGH_METRES, 0],
            headingDegrees: 0,
            tiltDegrees: 0,
            rollDegrees: 0,
          },
        ],
      },
    })),
  });
  if (!read.ok) throw new Error(read.faults.map((fault) => fault.sentence).join('\n'));
  return read.value;
}
