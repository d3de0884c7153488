import { layCables } from '../../../src/core/plan/edits/layCables';
import { setPower } from '../../../src/core/plan/edits/setPower';
import { setWire } from '../../../src/core/plan/edits/setWire';
import type { Plan } from '../../../src/core/plan/schema/plan';
import type { Hat } from './hat';

const SUPPLIES = ['generator', 'distro', 'outlet', 'battery'] as const;
const LOADS = ['head', 'practical', 'bulb string', 'cart', 'monitor', 'appliance'] as const;

/** Edits of power by the names of their files, with arguments drawn for a plan. */
export const POWER_EDITS: Readonly<Record<string, (hat: Hat) => (plan: Plan) => Plan>> = {
  layCables: (hat) => {
    const cables = Array.from({ length: hat.draw.whole(0, 3) }, () => ({
      fromId: hat.gear(...SUPPLIES),
      toId: hat.gear(...LOADS),
      path: hat.spots(1, 4),
      baseMetres: hat.metres(),
      diameterMetres: hat.draw.between(-0.01, 0.3),
      wire: hat.draw.pick([{ awg: 12 } as const, { mm2: 2.5 } as const]),
      circuit: hat.draw.whole(0, 30),
    }));
    return (plan) => layCables(plan, { cables }).plan;
  },
  setPower: (hat) => {
    const args = hat.draw.pick([
      {},
      { volts: 120 as const },
      { volts: 230 as const, hours: 9 },
      { volts: null },
      { hours: null },
      { hours: hat.draw.pick([0, -3, 8.5, 1000, Number.NaN]) },
    ]);
    return (plan) => setPower(plan, args);
  },
  setWire: (hat) => {
    const id = hat.gear('cable');
    const to = hat.orNull({
      wire: hat.draw.pick([{ awg: 10 } as const, { mm2: 4 } as const]),
      diameterMetres: hat.draw.between(0, 0.4),
    });
    return (plan) => setWire(plan, { id, to });
  },
};
