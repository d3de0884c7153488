import { moveInOrder } from '../../../src/core/plan/edits/moveInOrder';
import type { Patch } from '../../../src/core/plan/edits/nightRecord';
import { setNight, type WholeNight } from '../../../src/core/plan/edits/setNight';
import { setNightCast } from '../../../src/core/plan/edits/setNightCast';
import { setNightSetup } from '../../../src/core/plan/edits/setNightSetup';
import { setOrder } from '../../../src/core/plan/edits/setOrder';
import { setPacking } from '../../../src/core/plan/edits/setPacking';
import { setSpare } from '../../../src/core/plan/edits/setSpare';
import { type NightSetup, SPARED } from '../../../src/core/plan/schema/night';
import type { Plan } from '../../../src/core/plan/schema/plan';
import type { Hat } from './hat';

const CLOCKS = ['18:00', '23:59', '00:00', '05:30', '24:00', 'late'];
const minutes = (hat: Hat): number => hat.draw.pick([0, 5, 45, 600, 601, -1, 2.5, Number.NaN]);

/** The edits of the night, by the names of their files. */
export const NIGHT_EDITS: Readonly<Record<string, (hat: Hat) => (plan: Plan) => Plan>> = {
  setNight: (hat) => {
    const patch = hat.draw.pick<Patch<WholeNight>>([
      {},
      { call: hat.draw.pick(CLOCKS), wrapBy: hat.draw.pick(CLOCKS) },
      { call: undefined, meal: undefined, wetOnce: undefined },
      { utcOffsetHours: hat.draw.between(-20, 20) },
      { clockChange: { time: hat.draw.pick(CLOCKS), utcOffsetHours: 1 } },
      { meal: { afterHours: hat.draw.between(0, 14), minutes: minutes(hat) } },
      { strike: minutes(hat), dries: minutes(hat) },
      { times: { rig: minutes(hat), shoot: minutes(hat) } },
      { costs: { lens: minutes(hat), halfTurn: minutes(hat) } },
      { times: {}, costs: {} },
      { dark: 'civil', wetOnce: true },
    ]);
    return (plan) => setNight(plan, { patch });
  },
  setNightSetup: (hat) => {
    const patch = hat.draw.pick<Patch<Omit<NightSetup, 'setup'>>>([
      {},
      { rig: minutes(hat), shoot: minutes(hat) },
      { rig: undefined, light: undefined, rehearse: undefined, shoot: undefined, move: undefined },
      { when: 'after dark', until: hat.draw.pick(CLOCKS) },
      { when: undefined, until: undefined, ground: undefined, cast: undefined, lighting: undefined },
      { ground: hat.draw.pick(['wet', 'dry'] as const), lighting: hat.draw.pick(['blue', '']) },
      { cast: [hat.performer(), hat.performer()] },
      { cast: [] },
    ]);
    const args = { setupId: hat.setup(), patch };
    return (plan) => setNightSetup(plan, args);
  },
  setNightCast: (hat) => {
    const patch = hat.draw.pick([
      { from: hat.draw.pick(CLOCKS) },
      { until: hat.draw.pick(CLOCKS) },
      { from: undefined, until: undefined },
    ]);
    const args = { performerId: hat.performer(), patch };
    return (plan) => setNightCast(plan, args);
  },
  moveInOrder: (hat) => {
    const args = { setupId: hat.setup(), to: hat.draw.pick([0, 1, 2, 99, -1, 1.4, Number.NaN]) };
    return (plan) => moveInOrder(plan, args);
  },
  setOrder: (hat) => {
    const all = hat.plan.setups.map(({ id }) => id);
    const order = hat.draw.pick([[], all, all.toReversed(), all.slice(1), [hat.setup(), hat.setup()]]);
    return (plan) => setOrder(plan, { order });
  },
  setPacking: (hat) => {
    const patch = hat.draw.pick([
      { slack: hat.draw.between(-0.2, 1.2) },
      { waterMillimetres: hat.draw.between(0, 25), batteryHours: hat.size() },
      { slack: undefined, waterMillimetres: undefined, batteryHours: undefined },
    ]);
    return (plan) => setPacking(plan, { patch });
  },
  setSpare: (hat) => {
    const args = { of: hat.draw.pick(SPARED), oneFor: hat.draw.pick([null, 1, 5, 100, 0, 2.5]) };
    return (plan) => setSpare(plan, args);
  },
};
