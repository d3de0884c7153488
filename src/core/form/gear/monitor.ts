import type { Plan } from '../../plan/schema/plan';
import { standingAt } from '../build/placement';
import type { Vec3 } from '../build/vector';
import type { PlacedPart } from '../types';
import { ownPart, placeParts } from './part';
import { carrierOf, type GearOf } from './references';
import { addRod } from './rounds';
import { addCase, addScreen, CASE_DEPTH, caseHeight, caseWidth } from './screen';
import { standTop } from './standTop';

const NECK = 0.06;

/**
 * A monitor whose screen faces its heading. It stands on its place: on a foot where that is a point, on a bracket
 * over the spigot where a stand carries it. World coordinates.
 */
export function monitorParts(monitor: GearOf<'monitor'>, plan: Plan): PlacedPart[] {
  const stand = carrierOf(monitor, plan);
  const at = stand ? standTop(stand).at : 'at' in monitor.place ? monitor.place.at : ([0, 0, 0] as const);
  const diagonal = monitor.diagonalMetres;
  const middle: Vec3 = [0, NECK + caseHeight(diagonal) / 2, -CASE_DEPTH / 2];
  const holder = stand
    ? ownPart('bracket', { substance: 'dark metal' }, (builder) => {
        addRod(builder, [0, -0.06, 0], [0, NECK + 0.05, 0], 0.016);
      })
    : ownPart('foot', { substance: 'dark metal' }, (builder) => {
        builder.box([0, 0.006, 0], [caseWidth(diagonal) * 0.5, 0.012, Math.min(diagonal * 0.4, 0.3)]);
        addRod(builder, [0, 0.01, 0], [0, NECK + 0.03, 0], 0.016);
      });
  return placeParts(
    [
      ownPart('case', { substance: 'dark metal', smooth: false }, (builder) => {
        addCase(builder, middle, diagonal);
      }),
      ownPart('screen', { substance: 'screen', smooth: false }, (builder) => {
        addScreen(builder, middle, diagonal);
      }),
      holder,
    ],
    standingAt(at, monitor.headingDegrees),
  );
}
