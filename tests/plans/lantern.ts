import { parsePlan } from '../../src/core/plan/parse';
import type { Distortion } from '../../src/core/plan/schema/kit';
import type { Plan } from '../../src/core/plan/schema/plan';

/** A dark roof with nothing on it but one bright bulb in the air, seen by a turned, tilted and rolled camera. */
export function lanternPlan(distortion: Distortion | null): Plan {
  const parsed = parsePlan({
    standclear: 1,
    title: distortion ? 'Lantern, bent' : 'Lantern',
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
    safety: { metres: 0.25, frameWidths: 0.03 },
    kit: {
      bodies: [{ id: 'body', label: 'Body', modes: [{ id: 'mode', label: 'Mode', gateMm: [22, 18.59] }] }],
      lenses: [
        {
          id: 'lens',
          label: 'Lens',
          focalMm: 40,
          squeeze: 2,
          widestStop: 2,
          narrowestStop: 22,
          closeFocusMetres: 1,
          ...(distortion && { distortion }),
        },
      ],
      heads: [
        {
          id: 'bulb',
          label: 'Bulb',
          form: 'bulb',
          size: [0.16, 0.22, 0.16],
          watts: 60,
          powerFactor: 1,
          peakCandela: 60,
          beamDegrees: 360,
          fieldDegrees: 360,
          kelvin: 3000,
        },
      ],
      stands: [],
    },
    pieces: [
      {
        id: 'deck',
        label: 'Deck',
        kind: 'deck',
        outline: [
          [-30, -30],
          [30, -30],
          [30, 30],
          [-30, 30],
        ],
        topMetres: 0,
        dropMetres: 1,
      },
    ],
    beats: [
      { id: 'start', label: 'Start', atSeconds: 0 },
      { id: 'end', label: 'End', atSeconds: 4 },
    ],
    cast: [],
    gear: [
      {
        id: 'lantern',
        label: 'Lantern',
        kind: 'practical',
        at: [2.6, 3.1, -9],
        headingDegrees: 0,
        head: 'bulb',
        dim: 1,
      },
    ],
    setups: [
      {
        id: 'one',
        label: 'One',
        body: 'body',
        mode: 'mode',
        lens: 'lens',
        delivery: 2.39,
        stop: 8,
        iso: 400,
        shutterDegrees: 180,
        framesPerSecond: 24,
        ndStops: 0,
        balanceKelvin: 3000,
        focus: { metres: 9 },
        support: 'sticks',
        span: { from: 'start', to: 'end' },
        move: {
          ease: 'linear',
          keys: [
            { atSeconds: 0, position: [0.4, 1.5, 0.8], headingDegrees: 8, tiltDegrees: 2, rollDegrees: 5 },
            { atSeconds: 4, position: [1.4, 1.3, 0.2], headingDegrees: 2, tiltDegrees: 5, rollDegrees: -3 },
          ],
        },
      },
    ],
  });
  if (!parsed.ok) throw new Error(parsed.faults.map((fault) => fault.sentence).join('\n'));
  return parsed.value;
}
