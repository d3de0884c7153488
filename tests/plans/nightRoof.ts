import type { NightPlan } from '../../src/core/plan/schema/night';
import type { Plan } from '../../src/core/plan/schema/plan';
import { smallRoofDocument } from '../unit/smallRoof';
import { planFrom } from './bare';

/** A night of round numbers: 10 min to rig, light, rehearse, 30 to shoot, 5 to move on; no change costs anything. */
export const EVEN_NIGHT: NightPlan = {
  call: '18:00',
  utcOffsetHours: 0,
  meal: { afterHours: 6, minutes: 0 },
  strike: 30,
  times: { rig: 10, light: 10, rehearse: 10, shoot: 30, move: 5 },
  costs: {
    lens: 0,
    body: 0,
    filter: 0,
    support: 0,
    lighting: 0,
    head: 0,
    halfTurn: 0,
    tenMetres: 0,
    wetDown: 0,
  },
};

/** The small roof with its setups `master`, `single` and `still`, and a night; `place` is what is otherwise of its place. */
export function nightRoof(night: NightPlan, place: Partial<Plan['place']> = {}, more: object = {}): Plan {
  const document = smallRoofDocument();
  return planFrom({ ...document, ...more, place: { ...document.place, ...place }, night });
}
