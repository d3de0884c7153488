import { addWayOut } from '../../../src/core/plan/edits/addWayOut';
import { changeWayOut } from '../../../src/core/plan/edits/changeWayOut';
import { noteCaution } from '../../../src/core/plan/edits/noteCaution';
import { removeWayOut } from '../../../src/core/plan/edits/removeWayOut';
import { setForecast } from '../../../src/core/plan/edits/setForecast';
import { setRoofLoad } from '../../../src/core/plan/edits/setRoofLoad';
import { setWayOutWidth } from '../../../src/core/plan/edits/setWayOutWidth';
import { takeBackCautionNote } from '../../../src/core/plan/edits/takeBackCautionNote';
import type { Plan } from '../../../src/core/plan/schema/plan';
import type { Hat } from './hat';

const someKey = (hat: Hat): string =>
  `${hat.draw.pick(['wind', 'edge-people', 'Wind', 'load/'])}/${hat.id()}`;
const someWayOut = (hat: Hat): string => hat.draw.pick(['way-out-1', 'way-out-2', 'none']);

/** The edits of what is entered for cautions, by the names of their files. */
export const CAUTION_EDITS: Readonly<Record<string, (hat: Hat) => (plan: Plan) => Plan>> = {
  noteCaution: (hat) => {
    const args = {
      key: someKey(hat),
      note: hat.draw.pick(['Warning line from eight o’clock', ' ', 'x'.repeat(401)]),
    };
    return (plan) => noteCaution(plan, args);
  },
  takeBackCautionNote: (hat) => {
    const key = someKey(hat);
    return (plan) => takeBackCautionNote(plan, { key });
  },
  setForecast: (hat) => {
    const wind = hat.orNull({
      metresPerSecond: hat.draw.pick([0, 5.5, 61, Number.NaN]),
      ...(hat.draw.chance(0.5) && { gustMetresPerSecond: hat.draw.between(0, 95) }),
    });
    return (plan) => setForecast(plan, { wind });
  },
  setRoofLoad: (hat) => {
    const roofLoad = hat.orNull({
      ...(hat.draw.chance(0.5) && { kilonewtonsPerSquareMetre: hat.draw.between(-0.5, 6) }),
      ...(hat.draw.chance(0.5) && { kilonewtons: hat.draw.between(0, 2) }),
    });
    return (plan) => setRoofLoad(plan, { roofLoad });
  },
  setWayOutWidth: (hat) => {
    const metres = hat.draw.pick([null, 0.7, 1.2, 0.1]);
    return (plan) => setWayOutWidth(plan, { metres });
  },
  addWayOut: (hat) => {
    const at = hat.point();
    return (plan) => addWayOut(plan, { at });
  },
  changeWayOut: (hat) => {
    const args = {
      id: someWayOut(hat),
      ...(hat.draw.chance(0.5) && { at: hat.point() }),
      ...(hat.draw.chance(0.5) && { label: hat.draw.pick(['Hatch', ' ', 'x'.repeat(81)]) }),
    };
    return (plan) => changeWayOut(plan, args);
  },
  removeWayOut: (hat) => {
    const id = someWayOut(hat);
    return (plan) => removeWayOut(plan, { id });
  },
};
