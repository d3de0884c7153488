import { whereabouts } from '../../core/form/figure/whereabouts';
import { footprintOf } from '../../core/form/fromAbove/footprint';
import { stateAt } from '../../core/optics/camera';
import { itemNow } from '../../core/optics/riding';
import type { Plan } from '../../core/plan/schema/plan';
import { markNow } from '../../desk/blocking/tape';
import type { HitShape } from './geometry/hits';
import { type Spot, standing } from './geometry/spots';
import { shownItems } from './shown';
import type { Target } from './targets';

/** Everything that can be taken hold of, in the order in which it is drawn, in pixels of the pane. */
export function hitShapesOf(
  plan: Plan,
  seconds: number,
  setupId: string | null,
  at: (spot: Spot) => Spot,
): HitShape<Target>[] {
  const shapes: HitShape<Target>[] = [];
  const add = (target: Target, outline: readonly Spot[], closed: boolean, thin = false): void => {
    shapes.push({ target, outline: outline.map(at), closed, thin });
  };
  for (const { id, outline } of plan.ground.areas ?? [])
    shapes.push({
      target: { type: 'area', areaId: id },
      outline: outline.map(at),
      closed: true,
      thin: false,
      under: true,
    });
  for (const item of shownItems(plan)) {
    const target: Target = { type: 'item', id: item.record.id };
    if (item.section === 'cast') {
      const place = whereabouts(item.record, plan, seconds);
      // Of marks in one place the one at the clock lies on top.
      const now = markNow(plan, item.record, seconds);
      for (const mark of [...item.record.marks.filter((each) => each !== now), ...(now ? [now] : [])]) {
        add({ type: 'mark', performerId: item.record.id, markId: mark.id }, [mark.at], false);
      }
      if (place) add(target, [[place.at[0], place.at[2]]], false);
      continue;
    }
    const { kind } = item.record;
    if (kind === 'deck' || kind === 'skyline block') continue;
    const footprint = footprintOf(itemNow(plan, item, seconds), plan);
    add(target, footprint.outline, footprint.closed, !footprint.closed);
  }
  // The chosen camera last: it lies on top.
  const setups = [...plan.setups].sort((a, b) => Number(a.id === setupId) - Number(b.id === setupId));
  for (const setup of setups) {
    const { position, headingDegrees } = stateAt(plan, setup, seconds);
    const own = (along: number): Spot => standing([position[0], position[2]], headingDegrees, [0, along]);
    add({ type: 'camera', setupId: setup.id }, [own(-0.08), own(0.46)], false);
  }
  return shapes;
}
