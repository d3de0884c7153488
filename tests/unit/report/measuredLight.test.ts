import { expect, test } from 'vitest';
import { setHeadLight } from '../../../src/core/plan/edits/setHeadLight';
import { parsePlanText } from '../../../src/core/plan/parse';
import { serialisePlan } from '../../../src/core/plan/serialise';
import { setupReport } from '../../../src/core/report/setupReport';
import { readLm63 } from '../../../src/exchange/lm63/readLm63';
import { AXIAL_LM63 } from '../../outside/exchange/lm63/axial';
import { DEMO, readPlan } from '../../plans/readPlan';

test('a plan whose lamps have tables is read from its file, and what a lens sees is as without them', () => {
  const file = readLm63(AXIAL_LM63, 'axial.ies');
  if (!file.ok) throw new Error(file.faults[0].sentence);
  const { distribution } = file.value;
  const demo = readPlan(DEMO);
  const measured = demo.kit.heads.reduce(
    (plan, { id }) => setHeadLight(plan, { headId: id, light: { distribution } }),
    demo,
  );
  const read = parsePlanText(serialisePlan(measured));
  if (!read.ok) throw new Error(read.faults[0].sentence);
  expect(read.value.kit.heads.every((head) => head.distribution?.candela[0]?.[0] === 269)).toBe(true);
  const [setup] = demo.setups;
  expect(setupReport(read.value, setup, { at: 9 })).toEqual(setupReport(demo, setup, { at: 9 }));
});
