import { expect, test } from 'vitest';
import type { Plan } from '../../../../../src/core/plan/schema/plan';
import type { RoofLayer } from '../../../../../src/desk/crew/overhead/overheadStore';
import { roofHits } from '../../../../../src/screens/crew/overhead/roofHits';
import { DEMO, readPlan } from '../../../../plans/readPlan';

const demo = readPlan(DEMO);
const cart = demo.gear.find(({ kind }) => kind === 'cart');
if (cart?.kind !== 'cart') throw new Error('the demo has no cart');
const { id: _, label: __, monitors: ___, ...box } = cart;
const plan: Plan = { ...demo, gear: [...demo.gear, { ...box, id: 'dolly', label: 'Dolly', kind: 'dolly' }] };

test('a dolly is tapped with what is drawn with it: it goes with the cameras, not with the stands', () => {
  const isThere = (hidden: RoofLayer): boolean =>
    roofHits(plan, 0, new Set([hidden]), (spot) => spot).some(({ target }) => target === 'dolly');
  expect([isThere('cameras'), isThere('stands')]).toEqual([false, true]);
});
