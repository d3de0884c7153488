import type { Distortion } from '../../src/core/plan/schema/kit';
import type { Plan } from '../../src/core/plan/schema/plan';
import { BARE, lensOf, planFrom, stillSetup } from './bare';

/** A dark roof with nothing on it but one bright bulb in the air, seen by a turned, tilted and rolled camera. */
export function lanternPlan(distortion: Distortion | null): Plan {
  return planFrom({
    ...BARE,
    title: distortion ? 'Lantern, bent' : 'Lantern',
    ground: { surface: 'asphalt', wetness: 'dry' },
    kit: {
      bodies: [{ id: 'body', label: 'Body', modes: [{ id: 'mode', label: 'Mode', gateMm: [22, 18.59] }] }],
      lenses: [lensOf('lens', 40, { squeeze: 2, ...(distortion && { distortion }) })],
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
    beats: [...BARE.beats, { id: 'end', label: 'End', atSeconds: 4 }],
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
      stillSetup(
        'one',
        'lens',
        {},
        {
          label: 'One',
          mode: 'mode',
          delivery: 2.39,
          stop: 8,
          balanceKelvin: 3000,
          focus: { metres: 9 },
          span: { from: 'start', to: 'end' },
          move: {
            ease: 'linear',
            keys: [
              { atSeconds: 0, position: [0.4, 1.5, 0.8], headingDegrees: 8, tiltDegrees: 2, rollDegrees: 5 },
              { atSeconds: 4, position: [1.4, 1.3, 0.2], headingDegrees: 2, tiltDegrees: 5, rollDegrees: -3 },
            ],
          },
        },
      ),
    ],
  });
}
