import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { cautionsOf } from '../../src/core/cautions/cautions';
import { nightOf } from '../../src/core/night/nightOf';
import { packingOf } from '../../src/core/night/packing/packingOf';
import { wallTime } from '../../src/core/night/times/nightClock';
import { powerReport } from '../../src/core/report/power/powerReport';
import { wattWords } from '../../src/core/report/power/powerWords';
import { formatShare } from '../../src/core/units/shares';
import { nightCalendar } from '../../src/exchange/calendar/nightCalendar';
import { linkOfPlan } from '../../src/exchange/link/link';
import { nightCsv } from '../../src/exchange/night/nightCsv';
import { EVEN_NIGHT, nightRoof } from '../plans/nightRoof';
import { cable, drawing, generator } from '../plans/wired';
import { smallRoofDocument } from '../unit/smallRoof';
import { seriousViolations } from './axe';
import { eventually } from './building';
import { openPage, screenshot, waitUntilReady } from './harness';
import { withPlainFiles } from './plainFiles';
import { withoutPicture } from './withoutPicture';

/** Beside others a page may take its time. */
const PATIENT = { timeout: 600_000 };

/** The small roof with a generator, a kettle that it feeds, and the times of a night. */
const PLAN = nightRoof(
  { ...EVEN_NIGHT, wrapBy: '23:00' },
  {},
  {
    title: 'Night on the small roof',
    gear: [
      ...smallRoofDocument().gear,
      generator('genny', { volts: 230, continuousWatts: 2800, peakWatts: 3200 }, [-9, 0, 6]),
      drawing('kettle', 2000, 1, {}, [8, 0, 6]),
      cable('cord', 'genny', 'kettle', 22, { wire: { mm2: 2.5 } }),
    ],
  },
);
const NIGHT = nightOf(PLAN);
const PACKING = packingOf(PLAN, NIGHT);

/** The device's clock in the night of the plan, twenty to eight in the evening. */
function inThatNight(): void {
  const { now } = Date;
  const ahead = Date.UTC(2026, 10, 20, 19, 40) - now();
  Date.now = () => now() + ahead;
}

const tab = (page: Page, name: string): Promise<void> =>
  page.getByRole('navigation', { name: 'Crew sheet' }).getByRole('button', { name, exact: true }).tap();
const text = async (page: Page, selector: string): Promise<string> =>
  (await page.locator(selector).first().textContent()) ?? '';
const saved = async (page: Page, name: string): Promise<readonly [string, string]> => {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name, exact: true }).tap(),
  ]);
  return [download.suggestedFilename(), readFileSync(await download.path(), 'utf8')];
};

test('power, times and lists say on a phone what core works out, and ticks stay', PATIENT, async () => {
  const page = await openPage({
    width: 390,
    height: 844,
    touch: true,
    address: `#${linkOfPlan(PLAN).fragment}`,
    before: [withoutPicture, withPlainFiles, inThatNight],
  });

  await tab(page, 'Times');
  await page.locator('.timeline').waitFor();
  const shot = NIGHT.schedule.setups.map(
    ({ shotFrom, until }) => `shot ${wallTime(NIGHT.clock, shotFrom)} to ${wallTime(NIGHT.clock, until)}`,
  );
  expect(await page.locator('.time-setup small').allInnerTexts()).toEqual(shot);
  const lines = await page.locator('.timeline > li').allInnerTexts();
  const now = lines.findIndex((line) => line.includes('now'));
  expect(lines[now]).toContain('19:40');
  // By the clock: what stands above has begun, what stands below has not.
  const times = lines.flatMap((line) => /^\d\d:\d\d/.exec(line)?.[0] ?? []);
  expect(times).toEqual(times.toSorted());
  expect(lines.some((line) => line.includes('Civil dusk'))).toBe(true);
  await page.getByText(/^Now: /).waitFor();
  await page.getByText('Will we wrap by 23:00?').waitFor();
  expect(await seriousViolations(page)).toEqual([]);
  await screenshot(page, 'crew-times');
  expect(await saved(page, 'Put it in a calendar')).toEqual([
    'night-on-the-small-roof-night.ics',
    nightCalendar(PLAN, NIGHT),
  ]);

  await tab(page, 'Lists');
  await page.locator('.pack-line').first().waitFor();
  expect(await page.locator('.pack-line').count()).toBe(PACKING.length);
  expect(await saved(page, 'Save it as a table')).toEqual([
    'night-on-the-small-roof-night.csv',
    nightCsv(PLAN, NIGHT, PACKING),
  ]);
  const [first] = PACKING;
  const box = page.getByRole('checkbox').first();
  expect(await text(page, '.pack-line')).toContain(first.label);
  await page.locator('.pack-line').first().tap();
  expect(await box.isChecked()).toBe(true);
  await page.getByText(/1 packed/).waitFor();
  await page.getByRole('button', { name: 'power', exact: true }).tap();
  const forPower = PACKING.filter(({ department }) => department === 'power' || department === 'safety');
  expect(await page.locator('.pack-line').count()).toBe(forPower.length);
  await page.getByRole('button', { name: 'all', exact: true }).tap();
  expect(await seriousViolations(page)).toEqual([]);
  await screenshot(page, 'crew-lists');

  await page.getByRole('button', { name: 'by setup' }).tap();
  await eventually(() => page.locator('.need-setup').count()).toBe(PLAN.setups.length);
  expect(await text(page, '.needs dl')).toContain('Large sensor');

  await page.getByRole('button', { name: 'cautions' }).tap();
  const cautions = cautionsOf(PLAN);
  await eventually(() => page.locator('.crew-cautions > li').count()).toBe(cautions.length);
  const told = await page.locator('.crew-cautions').allInnerTexts();
  for (const { sentence, decides } of cautions) {
    expect(told.join('\n')).toContain(sentence);
    expect(told.join('\n')).toContain(decides);
  }
  expect(await seriousViolations(page)).toEqual([]);
  await screenshot(page, 'crew-cautions');

  await tab(page, 'Power');
  await page.locator('.supply-card').first().waitFor();
  const power = powerReport(PLAN);
  expect(await text(page, '.crew-figure b')).toBe(wattWords(power.totals.watts));
  expect(await text(page, '.supply-share')).toBe(formatShare(power.sources[0].share ?? 0));
  expect(await text(page, '.crew-cords li')).toMatch(
    /22\.0\u00a0m of 2\.5\u00a0mm², from genny, circuit 1, to kettle/,
  );
  await page.getByRole('checkbox', { name: 'cord, set' }).tap();
  expect(await seriousViolations(page)).toEqual([]);
  await screenshot(page, 'crew-power');

  await page.reload({ waitUntil: 'commit' });
  await waitUntilReady(page);
  await tab(page, 'Power');
  expect(await page.getByRole('checkbox', { name: 'cord, set' }).isChecked()).toBe(true);
  await tab(page, 'Lists');
  expect(await box.isChecked()).toBe(true);
});
