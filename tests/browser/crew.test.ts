import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { cameraReading } from '../../src/core/continuity/cameraReading';
import { nightOf } from '../../src/core/night/nightOf';
import { spanOf } from '../../src/core/optics/span';
import { setupsInOrder } from '../../src/core/plan/nightOrder';
import { serialisePlan } from '../../src/core/plan/serialise';
import { darkenedSteps } from '../../src/core/report/light/darkened';
import { findingSentence } from '../../src/core/report/sentences';
import { setupReport } from '../../src/core/report/setupReport';
import { formatLength } from '../../src/core/units/lengths';
import { inOneGo } from '../../src/core/units/steps';
import { linkOfPlan, planOfLink } from '../../src/exchange/link/link';
import { findingsOf } from '../../src/screens/report/concerns';
import { quickDemo } from '../plans/quickDemo';
import { seriousViolations } from './axe';
import { openPage, waitUntilReady } from './harness';
import { hostileLink } from './hostileLink';
import { shelfContents, titlesKept } from './shelfContents';
import { withoutPicture } from './withoutPicture';
import { withoutReports } from './withoutReports';

const plan = quickDemo();
const { fragment } = linkOfPlan(plan);
const order = setupsInOrder(plan);
const third = order[2];

const phone = { width: 390, height: 844, touch: true, before: withoutPicture } as const;

/** What a reading of the opened setup says. */
const reading = (page: Page, name: string): Promise<string | null> =>
  page
    .locator('.crew-facts div', { has: page.locator('dt', { hasText: new RegExp(`^${name}$`) }) })
    .locator('dd')
    .textContent();

const openThird = (page: Page): Promise<void> =>
  page.getByRole('button', { name: new RegExp(`${third.label}$`) }).click();

test('somebody on the roof reads the third setup off a link, ticks it, and finds their way back', async () => {
  const page = await openPage({ ...phone, address: `#${fragment}` });
  const cards = page.locator('.crew-card h2 button');
  expect(await cards.count()).toBe(order.length);
  const [from] = spanOf(plan, third);
  const { heightMetres, performers } = cameraReading(plan, third, from);
  const height = formatLength(heightMetres, 'm');
  await page.locator('.crew-card').nth(2).getByText(`${height} high`).waitFor();
  const sky = page.getByLabel('The night by the clock');
  await expect.poll(() => sky.textContent(), { timeout: 60_000 }).toContain('call15:30');
  expect(await seriousViolations(page)).toEqual([]);

  await openThird(page);
  const lens = plan.kit.lenses.find(({ id }) => id === third.lens);
  expect(await reading(page, 'lens')).toBe(`${lens?.focalMm}\u00a0mm`);
  expect(await reading(page, 'lens height')).toBe(height);
  const [nearest] = performers;
  expect(await reading(page, `to ${nearest.label}`)).toContain(formatLength(nearest.tapeMetres, 'm'));

  const watch = page.getByRole('region', { name: 'Watch for' });
  await page.locator('[aria-label="Watch for"][aria-busy="false"]').waitFor();
  const report = inOneGo(darkenedSteps(plan, third, setupReport(plan, third)));
  const findings = findingsOf(report);
  expect(findings.length).toBeGreaterThan(0);
  for (const item of findings) {
    const { name, colon, text } = findingSentence(item, report);
    expect(await watch.textContent()).toContain(`${name}${colon ? ':' : ''} ${text}`);
  }
  expect(await seriousViolations(page)).toEqual([]);

  const tick = page.locator('.crew-setup').getByRole('checkbox');
  await tick.check();
  await page.reload();
  await waitUntilReady(page);
  await page.locator('.crew-setup h2', { hasText: third.label }).waitFor();
  expect(await tick.isChecked(), 'the tick stays over a reload').toBe(true);

  await page.getByRole('button', { name: 'Next setup' }).click();
  await page.locator('.crew-setup h2', { hasText: order[3].label }).waitFor();
  expect(await tick.isChecked(), 'another setup has a tick of its own').toBe(false);
  await page.goBack();
  await cards.first().waitFor();
  expect(await page.locator('.crew-setup').count(), 'back is the list').toBe(0);

  // The device's clock a minute after the third setup's turn begins.
  const { schedule, clock } = nightOf(plan);
  const turn = schedule.setups.find(({ setupId }) => setupId === third.id);
  if (!turn) throw new Error('the third setup was to have a turn');
  const [year, month, day] = clock.date.split('-').map(Number);
  const minutes = turn.from + 1 - clock.utcOffsetHours * 60;
  await page.clock.setFixedTime(Date.UTC(year, month - 1, day) + minutes * 60_000);
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  await page.getByRole('button', { name: new RegExp(`, on now, ${third.label}$`) }).waitFor();
  await expect.poll(() => page.locator('.crew-card', { hasText: 'now' }).count()).toBe(1);

  await page.getByRole('button', { name: 'Search' }).click();
  await page.getByRole('searchbox').fill('caution');
  await page.locator('.crew-found button', { hasText: 'caution, ' }).first().click();
  await page.getByRole('button', { name: 'cautions', exact: true, pressed: true }).waitFor();
  await page.goBack();
  await page.locator('.crew-foot [aria-current]', { hasText: 'Setups' }).waitFor();
});

test('a search opens what it finds, theme and lengths change at a press, and every screen can be read', async () => {
  const page = await openPage({ ...phone, address: `#${fragment}` });
  await page.getByRole('button', { name: 'Search' }).click();
  await page.getByRole('searchbox').fill(third.label.toUpperCase());
  expect(await seriousViolations(page)).toEqual([]);
  await page.locator('.crew-found button').first().click();
  await page.locator('.crew-setup h2', { hasText: third.label }).waitFor();
  await page.goBack();

  const before = await page.locator('html').getAttribute('data-theme');
  await page.getByRole('button', { name: /^(Day|Night) theme$/ }).click();
  const after = before === 'day' ? 'night' : 'day';
  expect(await page.locator('html').getAttribute('data-theme')).toBe(after);
  expect(await seriousViolations(page)).toEqual([]);

  await page.getByRole('button', { name: 'More' }).click();
  await page.getByRole('button', { name: 'Feet and inches' }).click();
  expect(await seriousViolations(page)).toEqual([]);
  await page.getByRole('button', { name: 'Close' }).click();
  const { heightMetres } = cameraReading(plan, third, spanOf(plan, third)[0]);
  const card = page.locator('.crew-card').nth(2);
  await card.getByText(`${formatLength(heightMetres, 'ft-in')} high`).waitFor();

  for (const tab of ['Overhead', 'Power', 'Times', 'Lists']) {
    await page.getByRole('button', { name: tab, exact: true }).click();
    await page.locator(`.crew-foot [aria-current]`, { hasText: tab }).waitFor();
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(wide, `${tab} keeps to the width of the phone`).toBeLessThanOrEqual(0);
  }
  await page.reload();
  await waitUntilReady(page);
  expect(await page.locator('html').getAttribute('data-theme'), 'the theme is remembered').toBe(after);
  await page.locator(`.crew-foot [aria-current]`, { hasText: 'Lists' }).waitFor();
});

test('a link is made one’s own twice, beside the plan that was there, and each broken link says why', async () => {
  const page = await openPage({ width: 1440, height: 900, before: [withoutPicture, withoutReports] });
  // An edit, so that the device keeps a plan of the reader's own.
  await page.locator('.desk').press('Control+d');
  const home = page.url();
  const openLink = async (hash: string): Promise<void> => {
    await page.goto('about:blank');
    await page.goto(`${home}#${hash}`);
    await waitUntilReady(page);
  };
  const makeMine = async (): Promise<void> => {
    await openLink(fragment);
    await page.getByRole('button', { name: 'More' }).click();
    await page.getByRole('button', { name: 'Make it mine' }).click();
    await page.locator('.desk').waitFor();
  };
  await makeMine();
  const [first] = await titlesKept(page);
  const { documents: own } = await shelfContents(page);
  await makeMine();
  const { documents, lastOpen } = await shelfContents(page);
  expect(await titlesKept(page)).toEqual([first, `${first}, from a link`]);
  for (const [id, document] of Object.entries(own)) expect(documents[id]).toEqual(document);
  const copy = documents[lastOpen ?? ''];
  expect(JSON.parse(JSON.stringify(copy))).toEqual({
    ...JSON.parse(serialisePlan(plan)),
    title: `${plan.title}, from a link`,
  });

  const said = new Set<string>();
  for (const hash of [
    fragment.slice(0, -40),
    `${fragment.slice(0, 60)}AAAA${fragment.slice(64)}`,
    `2${fragment.slice(1)}`,
  ]) {
    await openLink(hash);
    await page.getByRole('heading', { name: 'This link does not open' }).waitFor();
    const read = planOfLink(hash);
    if (read.ok) throw new Error('the link was to be broken');
    await page.getByText(read.sentence).waitFor();
    said.add(read.kind);
  }
  expect([...said]).toEqual(['cut', 'altered', 'newer']);
  expect(await seriousViolations(page)).toEqual([]);
  await page.locator('.crew-kept-open', { hasText: plan.title }).first().waitFor();
  await page.getByRole('button', { name: 'Open the editor' }).click();
  await page.locator('.desk').waitFor();
});

test('the longest link, made to take as long as one may, holds nobody up: a press is answered, and a stop ends it', async () => {
  const hostile = hostileLink();
  expect(hostile.length).toBe(400_000);
  const read = planOfLink(hostile);
  if (read.ok) throw new Error('the link was to hold no plan');
  const page = await openPage({ ...phone, address: `#${fragment}` });
  const reads = page.getByRole('status').filter({ hasText: 'Reads the link' });
  const open = async (): Promise<void> => {
    await page.evaluate((hash) => {
      location.hash = hash;
    }, hostile);
    await reads.waitFor();
  };
  await open();
  await page.getByRole('button', { name: 'Times', exact: true }).press('Enter');
  await page.locator('.crew-foot [aria-current]', { hasText: 'Times' }).waitFor();
  expect(await reads.count(), 'the press is answered before the link is read').toBe(1);
  await page.getByRole('heading', { name: 'This link does not open' }).waitFor();
  await page.getByText(read.sentence).waitFor();

  await page.locator('.crew-kept-open', { hasText: plan.title }).click();
  await page.locator('.crew-card').first().waitFor();
  // A reader that never comes, as over a network that hangs.
  await page.route('**/link.worker*', () => {});
  await open();
  expect(await seriousViolations(page)).toEqual([]);
  await page.getByRole('button', { name: 'Stop' }).tap();
  await page.getByRole('heading', { name: 'The link was not read' }).waitFor();
  await page.unroute('**/link.worker*');
  await page.locator('.crew-kept-open', { hasText: plan.title }).click();
  await page.locator('.crew-card').first().waitFor();
});
