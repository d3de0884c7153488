import { standingAt } from '../build/placement';
import type { Vec3 } from '../build/vector';
import type { PlacedPart } from '../types';
import { ownPart, placeParts } from './part';
import type { GearOf } from './references';
import { addLathe, addPipe, addRod } from './rounds';
import { addCase, addScreen, CASE_DEPTH, caseHeight } from './screen';

const TUBE_RADIUS = 0.014;
const SHELF = 0.02;
/** How far the uprights reach above the top shelf, so that their ends and the shelf are not in one plane. */
const UPRIGHT_ABOVE = 0.004;
const LARGEST_SCREEN = 0.61;

/**
 * A cart standing on `at`: four uprights, three shelves, four wheels, and monitors in a row on its top shelf with
 * their screens towards the heading. `size` is that of the cart without the monitors.
 */
export function cartParts(cart: GearOf<'cart'>): PlacedPart[] {
  const [width, height, depth] = cart.size;
  const tube = Math.min(TUBE_RADIUS, width / 12, depth / 12);
  const wheel = Math.min(0.1, height * 0.12);
  const [x, z] = [width / 2 - tube, depth / 2 - tube];
  const corners = [
    [-x, -z],
    [x, -z],
    [x, z],
    [-x, z],
  ] as const;
  const frame = ownPart('frame', { substance: 'metal' }, (builder) => {
    for (const [cx, cz] of corners) addRod(builder, [cx, wheel * 1.6, cz], [cx, height, cz], tube);
    const handle = height * 0.82;
    addPipe(
      builder,
      [
        [x, handle, -z * 0.8],
        [x + 0.12, handle, -z * 0.8],
        [x + 0.12, handle, z * 0.8],
        [x, handle, z * 0.8],
      ],
      tube,
    );
  });
  const shelves = ownPart('shelves', { substance: 'dark metal', smooth: false }, (builder) => {
    for (const y of [wheel * 2.2, height * 0.55, height - UPRIGHT_ABOVE - SHELF / 2]) {
      builder.box([0, y, 0], [width - 2 * tube, SHELF, depth - 2 * tube]);
    }
  });
  const wheels = ownPart('wheels', { substance: 'rubber' }, (builder) => {
    for (const [cx, cz] of corners) {
      addLathe(
        builder,
        { at: [cx, wheel, cz], along: [1, 0, 0] },
        [
          [-wheel * 0.25, wheel],
          [wheel * 0.25, wheel],
        ],
        10,
      );
    }
  });
  const diagonal = Math.min(LARGEST_SCREEN, (width / Math.max(cart.monitors, 1)) * 1.05);
  const middles = Array.from(
    { length: cart.monitors },
    (_, k): Vec3 => [
      ((k + 0.5) / cart.monitors - 0.5) * width,
      height + 0.06 + caseHeight(diagonal) / 2,
      -CASE_DEPTH / 2,
    ],
  );
  const monitors = ownPart('monitors', { substance: 'dark metal' }, (builder) => {
    for (const middle of middles) {
      addCase(builder, middle, diagonal);
      addRod(builder, [middle[0], height - SHELF, 0], [middle[0], height + 0.08, 0], 0.016, 6);
    }
  });
  const screens = ownPart('screens', { substance: 'screen', smooth: false }, (builder) => {
    for (const middle of middles) addScreen(builder, middle, diagonal);
  });
  return placeParts([frame, shelves, wheels, monitors, screens], standingAt(cart.at, cart.headingDegrees));
}
