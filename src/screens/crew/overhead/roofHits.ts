import { whereabouts } from '../../../core/form/figure/whereabouts';
import { footprintOf } from '../../../core/form/fromAbove/footprint';
import { stateAt } from '../../../core/optics/camera';
import { standUnder } from '../../../core/plan/edits/anchorOf';
import type { Plan } from '../../../core/plan/schema/plan';
import type { RoofLayer } from '../../../desk/crew/overhead/overheadStore';
import type { HitShape } from '../../overhead/geometry/hits';
import { type Spot, standing } from '../../overhead/geometry/spots';
import { shown } from '../../overhead/shown';
import { layerOf } from './layerOf';

/** What a finger can tap, in pixels of the pane, what lies on top last: by the id of the item, or of a camera's setup. */
export function roofHits(
  plan: Plan,
  seconds: number,
  hidden: ReadonlySet<RoofLayer>,
  at: (spot: Spot) => Spot,
): readonly HitShape<string>[] {
  const shapes: HitShape<string>[] = [];
  const add = (target: string, outline: readonly Spot[], closed: boolean, thin = false): void => {
    shapes.push({ target, outline: outline.map(at), closed, thin });
  };
  for (const gear of shown(plan.gear)) {
    if (hidden.has(layerOf(gear)) || standUnder(gear) !== null) continue;
    const { outline, closed } = footprintOf({ section: 'gear', record: gear }, plan);
    add(gear.id, outline, closed, !closed);
  }
  if (!hidden.has('marks'))
    for (const performer of shown(plan.cast)) {
      for (const { at: spot } of performer.marks) add(performer.id, [spot], false);
      const place = whereabouts(performer, plan, seconds);
      if (place) add(performer.id, [[place.at[0], place.at[2]]], false);
    }
  if (!hidden.has('cameras'))
    for (const setup of plan.setups) {
      const { position, headingDegrees } = stateAt(plan, setup, seconds);
      const own = (along: number): Spot => standing([position[0], position[2]], headingDegrees, [0, along]);
      add(setup.id, [own(-0.08), own(0.46)], false);
    }
  return shapes;
}

/** The middle of what a finger tapped, metres; null for what is not on the roof. */
export function middleOnRoof(plan: Plan, seconds: number, id: string): Spot | null {
  const shapes = roofHits(plan, seconds, new Set(), (spot) => spot).filter(({ target }) => target === id);
  const outline = shapes.at(-1)?.outline ?? [];
  if (outline.length === 0) return null;
  const sum = outline.reduce<Spot>(([x, z], spot) => [x + spot[0], z + spot[1]], [0, 0]);
  return [sum[0] / outline.length, sum[1] / outline.length];
}
