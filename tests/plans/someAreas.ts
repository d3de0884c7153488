import type { WetArea } from '../../src/core/plan/schema/ground';
import type { Spot } from '../../src/core/plan/schema/numbers';
import { WETNESSES } from '../../src/core/plan/wetness';
import type { Draw } from './draw';

/** Wet and dry areas round the middle of a roof; they lie over each other, and some cross themselves. */
export const someAreas = (draw: Draw, most = 4): WetArea[] =>
  Array.from({ length: draw.whole(1, most) }, (_, k): WetArea => {
    const middle: Spot = [draw.between(-4, 4), draw.between(-4, 4)];
    return {
      id: `area-${k + 1}`,
      ...(draw.chance(0.3) && { label: draw.pick(['Under the tank', 'Walkway', 'Ø']) }),
      wetness: draw.pick(WETNESSES),
      outline: Array.from(
        { length: draw.whole(3, 8) },
        (): Spot => [
          Math.round((middle[0] + draw.between(-4, 4)) * 1e3) / 1e3,
          Math.round((middle[1] + draw.between(-4, 4)) * 1e3) / 1e3,
        ],
      ),
    };
  });
