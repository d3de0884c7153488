import type { Gear } from '../../src/core/plan/schema/gear';
import type { Spot } from '../../src/core/plan/schema/numbers';
import type { Piece } from '../../src/core/plan/schema/pieces';
import type { Plan } from '../../src/core/plan/schema/plan';
import type { Setup } from '../../src/core/plan/schema/setup';
import { smallRoofDocument } from '../unit/smallRoof';
import { planFrom } from './bare';

const { dark: _, ...base } = smallRoofDocument();
const [ana] = base.cast;
const [stamp] = base.setups;

interface Camera {
  readonly id: string;
  readonly label: string;
  readonly at: Spot;
  readonly headingDegrees: number;
  readonly lens?: 'wide' | 'long';
  readonly cheats?: Setup['cheats'];
}

export interface KeyedFace {
  /** Where Vera stands; she faces +z unless a heading is given. */
  readonly headingDegrees?: number;
  readonly gear: readonly Gear[];
  readonly pieces?: readonly Piece[];
  readonly cameras: readonly Camera[];
}

/** A head on its stand; `dim` of 60,000 cd. */
export const keyOn = (id: string, at: Spot, aim: Spot, dim = 0.05, heightMetres = 2): Gear[] => [
  {
    id: `${id}-stand`,
    label: `Stand of ${id}`,
    kind: 'stand',
    stand: 'tall',
    at: [at[0], 0, at[1]],
    headingDegrees: 0,
    heightMetres,
  },
  {
    id,
    label: `Head ${id}`,
    kind: 'head',
    head: 'spot',
    place: { on: `${id}-stand` },
    aim: [aim[0], 1.6, aim[1]],
    dim,
  },
];

/** Vera on the spot at the middle of a small roof, lit by what is given, seen by cameras at the height of her eyes. */
export function keyedFace({ headingDegrees = 180, gear, pieces = [], cameras }: KeyedFace): Plan {
  return planFrom({
    ...base,
    pieces: [base.pieces[0], ...pieces],
    cast: [
      {
        ...ana,
        id: 'vera',
        label: 'Vera',
        marks: [{ id: 'v1', beat: 'start', at: [0, 0], headingDegrees, stance: 'stand', holdSeconds: 2 }],
      },
    ],
    gear,
    setups: cameras.map(({ id, label, at, headingDegrees: heading, lens = 'long', cheats }) => ({
      ...stamp,
      id,
      label,
      lens,
      ...(cheats && { cheats }),
      move: {
        ease: 'linear',
        keys: [
          {
            atSeconds: 0,
            position: [at[0], 1.55, at[1]],
            headingDegrees: heading,
            tiltDegrees: 0,
            rollDegrees: 0,
          },
        ],
      },
    })),
  });
}
