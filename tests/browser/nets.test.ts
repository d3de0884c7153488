import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Plan } from '../../src/core/plan/schema/plan';
import { flagAt } from '../plans/darkRoof';
import { keyedFace, keyOn } from '../plans/keyedFace';
import { seriousViolations } from './axe';
import { dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { keptPlan } from './keptPlan';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';
import { withoutReports } from './withoutReports';

const eventually = <Value>(read: () => Promise<Value>) => expect.poll(read, { timeout: 30_000 });

/** Vera and her key, with a solid flag on the way. */
const flagged = (): Plan => ({
  ...keyedFace({
    gear: [...keyOn('1', [-2.5, 2.5], [0, 0]), flagAt('1', [-1.2, 1.7, 1.2], [0.9, 0.9])].map((gear) =>
      gear.kind === 'flag' ? { ...gear, id: 'flag' } : gear,
    ),
    cameras: [{ id: 'wide', label: 'Wide', at: [0, 6], headingDegrees: 0, lens: 'wide' }],
  }),
  title: 'Flagged',
});

const panel = (page: Page): Locator => page.locator('.item-panel');
const field = (page: Page, label: string): Locator =>
  panel(page).getByRole('textbox', { name: label, exact: true });
const cloth = (page: Page): Locator =>
  panel(page).getByRole('combobox', { name: 'black cloth', exact: true });

async function keptTransmission(page: Page): Promise<number | null> {
  const flag = (await keptPlan(page)).gear.find(({ id }) => id === 'flag');
  return flag?.kind === 'flag' ? (flag.transmission ?? null) : null;
}

test('a flag is made a net by its panel, in stops that can be typed, and solid again; the palette has both nets', async () => {
  const page = await openPage({
    width: 1440,
    height: 900,
    before: [withoutPicture, withoutReports, withoutDemo],
  });
  await dropPlan(page, flagged());
  await page.getByRole('tab', { name: /Set/ }).click();
  const find = page.getByRole('searchbox', { name: 'find' });
  await find.fill('net');
  await page.getByRole('button', { name: 'single net', exact: true }).waitFor();
  await page.getByRole('button', { name: 'double net', exact: true }).waitFor();
  await find.fill('Flag 1');
  await page.locator('.things .thing', { hasText: 'Flag 1' }).first().click();
  await cloth(page).waitFor();
  expect(await cloth(page).inputValue()).toBe('solid');
  expect(await field(page, 'in stops').count()).toBe(0);

  await cloth(page).selectOption('double net');
  await eventually(() => keptTransmission(page)).toBe(0.5);
  expect(await field(page, 'in stops').inputValue()).toBe('−1.0\u00a0stop');
  await panel(page).getByText('A lamp behind it loses 1.0\u00a0stop.').waitFor();
  await screenshot(page, 'net-panel');
  expect(await seriousViolations(page)).toEqual([]);

  await field(page, 'in stops').fill('1.5');
  await field(page, 'in stops').press('Enter');
  await eventually(() => keptTransmission(page)).toBeCloseTo(2 ** -1.5, 9);
  expect(await cloth(page).inputValue()).toBe('other net');

  await cloth(page).selectOption('solid');
  await eventually(() => keptTransmission(page)).toBeNull();
});
