import { expect, test } from 'vitest';
import { parsePlanText } from '../../../../src/core/plan/parse';
import { serialisePlan } from '../../../../src/core/plan/serialise';
import { crc32 } from '../../../../src/exchange/crc32';
import { linkOfPlan, planOfLink } from '../../../../src/exchange/link/link';
import { NIGHT_TEXT } from '../../../../src/exchange/link/v1/primer/night';
import { PALETTE_TEXT } from '../../../../src/exchange/link/v1/primer/palette';
import { readPlan, textOf } from '../../../plans/readPlan';

const FROZEN = ['v1-demo', 'v1-tenement', 'v1-random'];

/** Why: a link that was sent is opened years later; whatever changes here, these links give these plans. */
test.each(FROZEN)('the link %s still gives its plan, to the byte', (name) => {
  const read = planOfLink(textOf(`tests/plans/links/${name}.txt`));
  if (!read.ok) throw new Error(read.sentence);
  const plan = readPlan(`tests/plans/links/${name}.plan.json`);
  expect(serialisePlan(read.plan)).toBe(serialisePlan(plan));
  expect(read.plan).toEqual(plan);
});

test.each(FROZEN)('the plan of %s still gives the same link', (name) => {
  const { fragment } = linkOfPlan(readPlan(`tests/plans/links/${name}.plan.json`));
  expect(fragment).toBe(textOf(`tests/plans/links/${name}.txt`).trim());
});

test('what version 1 was primed on is as it was', () => {
  const sums = [PALETTE_TEXT, NIGHT_TEXT].map((text) => crc32(new TextEncoder().encode(text)));
  expect(sums).toEqual([906070928, 4036169569]);
});

test('nothing of the demo itself is in what links are primed on', () => {
  const demo = parsePlanText(textOf('assets/loft-night.plan.json'));
  if (!demo.ok) throw new Error('no demo');
  const primer = PALETTE_TEXT + NIGHT_TEXT;
  for (const text of [demo.value.title, demo.value.notes, ...demo.value.beats.map(({ label }) => label)])
    expect(primer).not.toContain(text);
  for (const { label } of [...demo.value.cast, ...demo.value.setups])
    expect(primer).not.toContain(`"${label}"`);
});
