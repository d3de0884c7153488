import { readFileSync } from 'node:fs';
import ICAL from 'ical.js';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Plan } from '../../src/core/plan/schema/plan';
import { EVEN_NIGHT, nightRoof } from '../plans/nightRoof';
import { seriousViolations } from './axe';
import { dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { keptPlan } from './keptPlan';
import { withPlainFiles } from './plainFiles';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';

/** Beside others a page may take its time. */
const PATIENT = { timeout: 600_000 };
const BEFORE = [withoutPicture, withoutDemo, withPlainFiles, withOnlyTheNight];

/** Leaves out the workers that read what lenses see, as in `withoutReports`, and keeps those of the night. */
function withOnlyTheNight(): void {
  const { Worker } = window;
  class NoWorker extends EventTarget {
    postMessage(): void {
      setTimeout(() => this.dispatchEvent(new ErrorEvent('error', { message: 'left out of this test' })));
    }
    terminate(): void {}
  }
  Object.assign(window, {
    Worker: function start(address: string | URL, how?: WorkerOptions) {
      return String(address).includes('night.worker') ? new Worker(address, how) : new NoWorker();
    },
  });
}

/** Three setups of which the second is lit otherwise: shot between the others, the lighting is changed twice. */
const lightingNight = (): Plan => ({
  ...nightRoof(
    {
      ...EVEN_NIGHT,
      wrapBy: '22:10',
      costs: { ...EVEN_NIGHT.costs, lighting: 20 },
      setups: [{ setup: 'single', lighting: 'blue' }],
      order: ['master', 'single', 'still'],
    },
    { latitudeDegrees: 38.72, longitudeDegrees: -9.14, timeZone: 'Europe/Lisbon', date: '2026-11-27' },
  ),
  title: 'Lighting',
});

const sheet = (page: Page): Locator => page.locator('.night-sheet');
const look = (page: Page, view: string): Promise<void> =>
  sheet(page).locator('.night-bar').getByRole('button', { name: view, exact: true }).click();
const wrap = (page: Page, words: RegExp): Promise<void> =>
  sheet(page).locator('.wrap-figure').filter({ hasText: words }).waitFor();
const undo = (page: Page): Promise<void> => page.locator('body').press('Control+z');
const field = (page: Page, label: string): Locator => sheet(page).getByLabel(label, { exact: true });
async function type(page: Page, label: string, text: string): Promise<void> {
  await field(page, label).fill(text);
  await field(page, label).press('Enter');
}

/** The setups from the first that is shot, by their letters, as they are seen. */
const letters = (page: Page): Promise<string> =>
  sheet(page)
    .locator('.order-list li')
    .evaluateAll((rows) =>
      rows
        .toSorted((a, b) => a.getBoundingClientRect().top - b.getBoundingClientRect().top)
        .map((row) => row.querySelector('b')?.textContent)
        .join(''),
    );

test(
  'the order is changed by keys, buttons and hand, suggested, undone and saved as a calendar; the wrap follows',
  PATIENT,
  async () => {
    const page = await openPage({ width: 1440, height: 900, before: BEFORE });
    await page.locator('body').press('5');
    expect(await page.getByRole('tab', { name: /Night/ }).getAttribute('aria-selected')).toBe('true');
    await sheet(page).getByText('No setup yet.').waitFor();
    await dropPlan(page, lightingNight());

    await wrap(page, /Will we wrap by 22:10\?\s*10\u00a0min\s*too late, at 22:20/);
    expect(await letters(page)).toBe('ABC');
    await sheet(page).getByText('25\u00a0min to change: lighting.').first().waitFor();
    await sheet(page).getByText('Not everyone wraps by 22:10: it is 22:20, 10\u00a0min after it.').waitFor();

    // By keys.
    const second = sheet(page).getByRole('button', { name: /^B/ });
    await second.press('Alt+ArrowDown');
    await wrap(page, /10\u00a0min\s*to spare, at 22:00/);
    expect(await letters(page)).toBe('ACB');
    await sheet(page)
      .getByText(/is number 3 of 3 now/)
      .waitFor({ state: 'attached' });
    // The key stays with the setup that it moves.
    await page.keyboard.press('Alt+ArrowUp');
    await page.keyboard.press('Alt+ArrowUp');
    await sheet(page)
      .getByText(/is number 1 of 3 now/)
      .waitFor({ state: 'attached' });
    expect(await letters(page)).toBe('BAC');
    await undo(page);
    await undo(page);
    await undo(page);
    await wrap(page, /too late, at 22:20/);
    expect(await letters(page)).toBe('ABC');

    // By a button.
    await sheet(page)
      .getByRole('button', { name: /earlier/ })
      .nth(1)
      .click();
    await wrap(page, /to spare, at 22:00/);
    expect(await letters(page)).toBe('BAC');
    await undo(page);
    await wrap(page, /too late/);

    // By the hand: the night follows before it is put down, and Escape gives it back.
    await sheet(page).locator('.night-columns').scrollIntoViewIfNeeded();
    const last = sheet(page).locator('.order-list li').nth(2);
    await last.scrollIntoViewIfNeeded();
    const [from, to] = [
      await sheet(page).locator('.order-list li').nth(1).locator('.grip').boundingBox(),
      await last.boundingBox(),
    ];
    if (!from || !to) throw new Error('no place to drag from');
    const begin = async (): Promise<void> => {
      await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
      await page.mouse.down();
      await page.mouse.move(from.x + from.width / 2, to.y + to.height - 4, { steps: 4 });
    };
    await begin();
    await wrap(page, /to spare, at 22:00/);
    await page.keyboard.press('Escape');
    await wrap(page, /too late/);
    await page.mouse.up();
    expect(await letters(page)).toBe('ABC');
    await begin();
    await page.mouse.up();
    await wrap(page, /to spare, at 22:00/);
    expect(await letters(page)).toBe('ACB');
    await undo(page);
    await wrap(page, /too late/);

    // Suggested.
    await sheet(page).getByRole('button', { name: 'Suggest an order' }).click();
    await sheet(page)
      .getByText(/everyone wraps at 22:00, 20\u00a0min sooner than now\. No order is better\./)
      .waitFor();
    expect(await sheet(page).locator('.proposed rect').count()).toBe(3);
    await sheet(page).getByRole('button', { name: 'Take this order' }).click();
    await wrap(page, /to spare, at 22:00/);
    await undo(page);
    await wrap(page, /too late/);

    // Times are typed, and what is none is said.
    await type(page, 'wrap by', '25:00');
    await sheet(page).getByText('"25:00" is not a time: type one such as 22:30.').waitFor();
    await type(page, 'wrap by', '23:00');
    await wrap(page, /Will we wrap by 23:00\?\s*40\u00a0min\s*to spare/);

    // Somebody has to go: the sentence says what does not hold.
    await sheet(page).getByRole('button', { name: 'the setup', exact: true }).click();
    await second.click();
    await type(page, 'shot by', '19:30');
    await sheet(page)
      .getByText(/is to be shot by 19:30, and ends at 20:25, 55\u00a0min after 19:30\./)
      .waitFor();
    await expect
      .poll(() => keptPlan(page), { timeout: 30_000 })
      .toMatchObject({
        night: { setups: [{ setup: 'single', lighting: 'blue', until: '19:30' }] },
      });

    const [download] = await Promise.all([
      page.waitForEvent('download'),
      sheet(page).getByRole('button', { name: 'Save as a calendar' }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/\.ics$/);
    const calendar = readFileSync(await download.path(), 'utf8');
    // Read by somebody else's reader.
    const events = new ICAL.Component(ICAL.parse(calendar)).getAllSubcomponents('vevent');
    const setups = events
      .map((event) => new ICAL.Event(event))
      .filter(({ summary }) => /^[ABC]: /.test(summary));
    expect(setups.map(({ summary }) => summary[0]).join('')).toBe('ABC');
    expect(setups[0].startDate.toJSDate().toISOString()).toBe('2026-11-27T18:00:00.000Z');
    await page.getByText(/^Saved as .*\.ics\.$/).waitFor();
    expect(await seriousViolations(page)).toEqual([]);
    await screenshot(page, 'night-order');
  },
);

test(
  'the list is packed by rules and saved; a place is typed or chosen, and the dusk, the sun and its shadows follow',
  PATIENT,
  async () => {
    const page = await openPage({ width: 1440, height: 900, theme: 'day', before: BEFORE });
    await dropPlan(page, lightingNight());
    await page.locator('body').press('5');
    await look(page, 'packing');
    const row = (label: string): Locator => sheet(page).getByRole('row', { name: new RegExp(`^${label}`) });
    await row('First-aid kit').waitFor();
    const lenses = sheet(page).getByRole('row', { name: /mm/ }).first().locator('.amount');
    expect(await lenses.textContent()).toBe('1');
    await type(page, 'lenses', '1');
    await lenses.filter({ hasText: '21 of it spare' }).waitFor();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      sheet(page).getByRole('button', { name: 'Save as a table' }).click(),
    ]);
    expect(readFileSync(await download.path(), 'utf8')).toContain('packing,safety,First-aid kit,1,0');
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.printed-night').isVisible()).toBe(true);
    expect(await page.locator('.sheet').isVisible()).toBe(false);
    await page.emulateMedia({ media: 'screen' });

    await look(page, 'sky');
    const slider = page.getByRole('slider', { name: 'Time of the dusk' });
    await slider.waitFor();
    expect(await slider.getAttribute('aria-valuetext')).toMatch(/up, the sun at 16:\d\d, in the south-west/);
    await page
      .locator('.sun-mark')
      .getByText(/^last light 17:\d\d, 24\d°$/)
      .waitFor();
    await page.locator('.sun-shadow').first().waitFor();
    // A key moves the time; once the sun is down there are lux and no shadows.
    await sheet(page).getByRole('button', { name: 'Nautical dusk' }).click();
    await sheet(page)
      .locator('.dusk .figure')
      .filter({ hasText: /lx.*(11\.9|12\.[01])° down/ })
      .waitFor();
    await page.locator('.sun-shadow').first().waitFor({ state: 'detached' });
    const before = await slider.getAttribute('aria-valuetext');
    await slider.press('ArrowLeft');
    expect(await slider.getAttribute('aria-valuetext')).not.toBe(before);

    await type(page, 'latitude', '60.17');
    await page
      .locator('.sun-mark')
      .getByText(/^last light 1\d:\d\d, 2[23]\d°$/)
      .waitFor();
    await undo(page);
    await page
      .locator('.sun-mark')
      .getByText(/^last light 17:\d\d, 24\d°$/)
      .waitFor();
    await sheet(page).getByLabel('city').selectOption('Tokyo');
    await page
      .locator('.sun-mark')
      .getByText(/^last light 16:\d\d, /)
      .waitFor();
    await expect
      .poll(() => keptPlan(page), { timeout: 30_000 })
      .toMatchObject({
        place: { label: 'Tokyo', timeZone: 'Asia/Tokyo' },
        night: { utcOffsetHours: 9 },
      });
    await undo(page);
    // Nobody was asked for the device's place; now it is, and it is refused.
    await sheet(page).getByRole('button', { name: 'Use where this device is' }).click();
    await sheet(page)
      .getByRole('alert')
      .filter({ hasText: /browser was told not to say|does not know/ })
      .waitFor();
    await page.context().grantPermissions(['geolocation']);
    await page.context().setGeolocation({ latitude: 35.68, longitude: 139.69 });
    await sheet(page).getByRole('button', { name: 'Use where this device is' }).click();
    await sheet(page).getByRole('alert').waitFor({ state: 'detached' });
    await expect.poll(() => field(page, 'latitude').inputValue()).toBe('35.6800');

    await sheet(page).getByRole('button', { name: 'Find out' }).click();
    await sheet(page)
      .getByLabel('Lost in the dark')
      .getByText(/nothing to be lost|lost in the dark from|however dark/)
      .first()
      .waitFor();
    expect(await seriousViolations(page)).toEqual([]);
    await screenshot(page, 'night-sky-day');
  },
);

test('on a phone a finger puts the night in another order', PATIENT, async () => {
  const page = await openPage({ width: 390, height: 844, touch: true, before: BEFORE });
  await dropPlan(page, lightingNight());
  await page.getByRole('tab', { name: /Night/ }).tap();
  await wrap(page, /too late, at 22:20/);
  await sheet(page).locator('.order-list').scrollIntoViewIfNeeded();
  const rows = sheet(page).locator('.order-list li');
  // The frame stays over the list: the row that is taken and the one after it are both in sight under it.
  await rows.nth(1).evaluate((row) => row.scrollIntoView({ block: 'start' }));
  const [from, to] = [await rows.nth(1).locator('.grip').boundingBox(), await rows.nth(2).boundingBox()];
  if (!from || !to) throw new Error('no place to drag from');
  expect(Math.min(from.width, from.height)).toBeGreaterThanOrEqual(48);
  const finger = await page.context().newCDPSession(page);
  const touch = (kind: 'touchStart' | 'touchMove' | 'touchEnd', y: number): Promise<unknown> =>
    finger.send('Input.dispatchTouchEvent', {
      type: kind,
      touchPoints: kind === 'touchEnd' ? [] : [{ x: from.x + 20, y }],
    });
  const start = from.y + from.height / 2;
  await touch('touchStart', start);
  await touch('touchMove', start + 20);
  await touch('touchMove', to.y + to.height - 4);
  await wrap(page, /to spare, at 22:00/);
  await touch('touchEnd', 0);
  await wrap(page, /to spare, at 22:00/);
  expect(await letters(page)).toBe('ACB');
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  expect(await seriousViolations(page)).toEqual([]);
  await screenshot(page, 'night-phone');
});

test(
  'a search among many setups tells its best so far, and leaves it when it is stopped',
  PATIENT,
  async () => {
    const page = await openPage({ width: 1440, height: 900, before: BEFORE });
    const plan = lightingNight();
    const setups = Array.from({ length: 24 }, (_, k) => ({
      ...plan.setups[k % 3],
      id: `setup-${k}`,
      label: `Setup ${k}`,
    }));
    const blue = setups.filter((_, k) => k % 2 === 0).map(({ id }) => ({ setup: id, lighting: 'blue' }));
    await dropPlan(page, { ...plan, setups, night: { ...plan.night, order: [], setups: blue } });
    await page.locator('body').press('5');
    await sheet(page).locator('.order-list li').nth(23).waitFor();
    await sheet(page).getByRole('button', { name: 'Suggest an order' }).click();
    await sheet(page)
      .getByText(/^The best so far wraps at \d\d:\d\d\.$/)
      .waitFor();
    await sheet(page).getByRole('button', { name: 'Stop', exact: true }).click();
    await sheet(page)
      .getByText(/sooner than now\. The best so far: the search was stopped\.$/)
      .waitFor();
    expect(await sheet(page).locator('.proposed rect').count()).toBe(24);
    await sheet(page).getByRole('button', { name: 'Leave it' }).click();
    await sheet(page).locator('.proposed').waitFor({ state: 'detached' });
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.textContent))
      .toBe('Suggest an order');
    expect(await letters(page)).toBe('ABCDEFGHIJKLMNOPQRSTUVWX');
  },
);
