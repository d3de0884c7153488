import { cbrt } from '../../units/steadyMath';
import { standingAt } from '../build/placement';
import type { PlacedPart } from '../types';
import { ownPart, placeParts } from './part';
import type { GearOf } from './references';

/** Mass of a litre of dry sand, kg. Source: common practice, no source */
const SAND_KG_PER_LITRE = 1.6;
/** Length and height of a lobe in its widths. */
const LENGTH = 1.7;
const HEIGHT = 0.62;

/** The measures of a lobe of a bag of so many kilograms, metres. */
export interface Lobe {
  readonly width: number;
  readonly height: number;
  readonly length: number;
}

/** Half the sand of a saddle bag, as an ellipsoid. */
export function lobeOf(kilograms: number): Lobe {
  const volume = kilograms / SAND_KG_PER_LITRE / 1000 / 2;
  const width = cbrt(volume / ((Math.PI / 6) * HEIGHT * LENGTH));
  return { width, height: HEIGHT * width, length: LENGTH * width };
}

/** A saddle bag lying on `at`, a lobe on either side of its heading and the strap over what it weighs down. */
export function sandbagParts(sandbag: GearOf<'sandbag'>): PlacedPart[] {
  const { width } = lobeOf(sandbag.kilograms);
  const middle = width * 0.62;
  const bag = ownPart('bag', { substance: 'black cloth' }, (builder) => {
    for (const side of [-1, 1]) {
      builder.ball(
        [side * middle, (HEIGHT * width) / 2, 0],
        [width / 2, (HEIGHT * width) / 2, (LENGTH * width) / 2],
        6,
        10,
      );
    }
    builder.box([0, HEIGHT * width * 0.72, 0], [middle * 1.7, width * 0.06, width * 1.1]);
  });
  const strap = ownPart('strap', { substance: 'rubber', smooth: false }, (builder) => {
    builder.box([0, HEIGHT * width * 0.95, 0], [middle, width * 0.04, width * 0.14]);
  });
  return placeParts([bag, strap], standingAt(sandbag.at, sandbag.headingDegrees));
}
