import type { Plan } from '../../../src/core/plan/schema/plan';
import { reportOf } from '../../../src/core/report/report';
import type { ItemReport } from '../../../src/core/report/types';
import { planFrom } from '../../plans/bare';
import { itemIn as inSetup } from '../../unit/report/inReport';
import { smallRoofDocument } from '../../unit/smallRoof';

export interface PaperRoof {
  readonly pieces: readonly object[];
  readonly gear?: readonly object[];
  readonly wetness?: 'dry' | 'damp' | 'wet down' | 'puddled';
  readonly areas?: readonly object[];
  /** Where the camera stands and how it is tilted; it looks along −z. */
  readonly from: readonly [number, number, number];
  readonly tiltDegrees?: number;
}

export const DECK = {
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
  dropMetres: 6,
};

/** A box with sides along the axes, which should keep out: its base's middle, and [width, height, depth]. */
export const box = (id: string, at: readonly number[], size: readonly number[]) => ({
  id,
  label: id,
  kind: 'box',
  wish: 'keep out',
  at,
  headingDegrees: 0,
  size,
  material: 'metal',
});

/**
 * A roof on which shares can be worked out on paper: one camera whose frame is 2 tangents wide and 1 high,
 * so that an outline of A square tangents takes A / 2 of the frame.
 */
function paperRoof({
  pieces,
  gear = [],
  wetness = 'wet down',
  areas = [],
  from,
  tiltDegrees = 0,
}: PaperRoof): Plan {
  const base = smallRoofDocument();
  const [setup] = base.setups;
  return planFrom({
    ...base,
    ground: { surface: 'asphalt', wetness, areas },
    kit: {
      ...base.kit,
      bodies: [
        { id: 'body-a', label: 'Two by one', modes: [{ id: 'full', label: 'Full', gateMm: [20, 10] }] },
      ],
      lenses: [{ ...base.kit.lenses[0], focalMm: 10, squeeze: 1 }],
    },
    pieces,
    cast: [],
    gear,
    setups: [
      {
        ...setup,
        delivery: 2,
        move: {
          ease: 'linear',
          keys: [{ atSeconds: 0, position: from, headingDegrees: 0, tiltDegrees, rollDegrees: 0 }],
        },
      },
    ],
  });
}

/** What the report says of one item of a paper roof. */
export function itemIn(roof: PaperRoof, id: string): ItemReport {
  const plan = paperRoof(roof);
  return inSetup(reportOf(plan, { at: 0 }).setups[0], id);
}
