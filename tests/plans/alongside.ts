import type { Plan } from '../../src/core/plan/schema/plan';
import { smallRoofDocument } from '../unit/smallRoof';
import { planFrom } from './bare';

const base = smallRoofDocument();

const performer = (id: string, label: string, from: readonly number[], to: readonly number[]) => ({
  ...base.cast[0],
  id,
  label,
  marks: [
    {
      ...base.cast[0].marks[0],
      id: 'from',
      beat: 'go',
      at: from,
      headingDegrees: 90,
      stance: 'walk',
      holdSeconds: 0,
    },
    {
      ...base.cast[0].marks[0],
      id: 'to',
      beat: 'stop',
      at: to,
      headingDegrees: 90,
      stance: 'walk',
      holdSeconds: 0,
    },
  ],
});

const lens = (focalMm: number) => ({
  ...base.kit.lenses[0],
  id: `two-${focalMm}`,
  label: `${focalMm} mm`,
  focalMm,
  squeeze: 2,
});

/**
 * Two who walk abreast along x, a metre and a half apart, and a dolly that goes alongside at their pace, square to
 * them, on a gate of 22 × 18.59 mm for 2.39.
 */
export function alongside(metresAway: number): Plan {
  const key = (atSeconds: number, x: number) => ({
    atSeconds,
    position: [x, 1.55, metresAway],
    headingDegrees: 0,
    tiltDegrees: 0,
    rollDegrees: 0,
  });
  return planFrom({
    ...base,
    pieces: base.pieces.slice(0, 1),
    gear: [],
    beats: [
      { id: 'go', label: 'Go', atSeconds: 0 },
      { id: 'stop', label: 'Stop', atSeconds: 4 },
    ],
    cast: [performer('ana', 'Ana', [-3.75, 0], [1.25, 0]), performer('bea', 'Bea', [-2.25, 0], [2.75, 0])],
    kit: {
      ...base.kit,
      bodies: [{ id: 'film', label: 'Film', modes: [{ id: 'wide', label: 'Wide', gateMm: [22, 18.59] }] }],
      lenses: [lens(40), lens(65), lens(100)],
    },
    setups: [
      {
        ...base.setups[0],
        body: 'film',
        mode: 'wide',
        lens: 'two-40',
        support: 'dolly',
        focus: { metres: 4 },
        span: { from: 'go', to: 'stop' },
        move: { ease: 'linear', keys: [key(0, -3), key(4, 2)] },
      },
    ],
  });
}
