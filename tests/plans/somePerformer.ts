import type { Beat, Performer } from '../../src/core/plan/schema/cast';
import type { Draw } from './draw';
import { type Roof, spotOn } from './somePiece';

const COLOURS = ['#3b4048', '#a8642a', '#2b3a3f', '#7a2f2a', '#c9b89a'] as const;

/** A performer who has a mark at each beat. */
export function somePerformer(id: string, roof: Roof, beats: readonly Beat[], draw: Draw): Performer {
  return {
    id,
    label: `Performer ${id}`,
    figure: draw.pick(['male', 'female'] as const),
    statureMetres: draw.between(1.5, 1.95),
    build: draw.pick(['slight', 'medium', 'heavy'] as const),
    clothes: {
      upper: draw.pick(['coat', 'jacket', 'jersey', 'shirt'] as const),
      upperColour: draw.pick(COLOURS),
      lowerColour: draw.pick(COLOURS),
      head: draw.pick(['bare', 'cap', 'hood', 'bun', 'long hair'] as const),
      headColour: draw.pick(COLOURS),
      skinColour: '#b98a6b',
    },
    ...(draw.chance(0.4) && { prop: draw.pick(['bird', 'box', 'ball', 'case'] as const) }),
    marks: beats.map(({ id: beat }, k) => ({
      id: `${id}-${k + 1}`,
      beat,
      at: spotOn(roof, draw),
      headingDegrees: draw.between(0, 360),
      stance: draw.pick(['stand', 'crouch', 'sit', 'lean', 'arms out', 'reach', 'holding'] as const),
      holdSeconds: draw.between(0, 2),
    })),
  };
}
