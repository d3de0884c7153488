import { whereabouts } from '../../core/form/figure/whereabouts';
import { type Footprint, footprintOf } from '../../core/form/fromAbove/footprint';
import { stateAt } from '../../core/optics/camera';
import { itemNow } from '../../core/optics/riding';
import { carrierOf } from '../../core/plan/edits/anchorOf';
import { itemOf } from '../../core/plan/items';
import type { Plan } from '../../core/plan/schema/plan';
import type { Spot } from './geometry/spots';
import { areaOfKey, keyOf } from './targets';

/** The ground that a target takes; a performer's and a camera's at the instant. */
export function groundOf(plan: Plan, key: string, seconds: number): Footprint | null {
  const item = itemOf(plan, key);
  if (item?.section === 'cast') {
    const place = whereabouts(item.record, plan, seconds);
    return place ? point([place.at[0], place.at[2]]) : null;
  }
  if (item) {
    const carrier = item.section === 'gear' ? carrierOf(plan, item.record.id) : null;
    const stand = carrier === null ? null : itemOf(plan, carrier);
    // A lamp is ringed where its stand is: that is what moves.
    return footprintOf(
      stand && stand.section === 'gear' && item.record.kind === 'head' ? stand : itemNow(plan, item, seconds),
      plan,
    );
  }
  const area = areaOfKey(plan, key);
  if (area) return { outline: area.outline, closed: true };
  const setup = plan.setups.find(({ id }) => key === keyOf({ type: 'camera', setupId: id }));
  if (setup) {
    const { position } = stateAt(plan, setup, seconds);
    return point([position[0], position[2]]);
  }
  const mark = plan.cast
    .flatMap((performer) =>
      performer.marks.map((each) => ({
        key: keyOf({ type: 'mark', performerId: performer.id, markId: each.id }),
        each,
      })),
    )
    .find((each) => each.key === key)?.each;
  return mark ? point([mark.at[0], mark.at[1]]) : null;
}

const point = (spot: Spot): Footprint => ({ outline: [spot], closed: true });
