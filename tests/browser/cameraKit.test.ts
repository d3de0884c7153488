import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { coverageOf } from '../../src/core/optics/coverage';
import { deliveryWithin } from '../../src/core/optics/frameLines';
import { extraction } from '../../src/core/optics/gate';
import { formatShare } from '../../src/core/units/shares';
import { seriousViolations } from './axe';
import { BUILDING, eventually } from './building';
import { openPage, screenshot, waitUntilReady } from './harness';
import { withoutReports } from './withoutReports';

const kit = (page: Page): Locator => page.locator('dialog.kit');

async function openSet(options: { theme?: 'day' | 'night'; phone?: boolean } = {}): Promise<Page> {
  const { theme = 'night', phone = false } = options;
  const [width, height] = phone ? [390, 844] : [1440, 900];
  const page = await openPage({ width, height, theme, touch: phone, before: [...BUILDING, withoutReports] });
  await page.getByRole('tab', { name: /Set/ }).click();
  return page;
}

async function openKit(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Bodies and lenses' }).click();
  await kit(page).getByRole('heading', { name: 'Bodies and lenses' }).waitFor();
}

async function type(within: Locator, label: string, text: string): Promise<void> {
  const field = within.getByRole('textbox', { name: label, exact: true });
  await field.fill(text);
  await field.press('Enter');
}

/** Waits until something has the focus. */
const focused = (place: Locator): Promise<void> =>
  eventually(() => place.evaluate((element) => element === document.activeElement)).toBe(true);

const settled = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    // What a closed menu hides stands still in the middle of its change.
    const seen = document.getAnimations().filter(({ effect }) => {
      const target = effect instanceof KeyframeEffect ? effect.target : null;
      return target?.checkVisibility() ?? false;
    });
    await Promise.all(seen.map((animation) => animation.finished));
  });

async function boxOf(place: Locator): Promise<{ x: number; y: number; width: number; height: number }> {
  const box = await place.boundingBox();
  if (!box) throw new Error('it is not on the page');
  return box;
}

/** The bounds of a drawn path, from its own numbers: no stroke counts. */
const drawn = (path: Locator) =>
  path.evaluate((element) => {
    const { x, y, width, height } = (element as SVGGraphicsElement).getBBox();
    return { x, y, width, height };
  });

test('an own lens is entered once, kept over a reload, used, and where its circle cuts is shown', async () => {
  const page = await openSet();
  await openKit(page);
  await page.getByRole('button', { name: 'Add a lens' }).click();
  // It is to be named first.
  await focused(kit(page).getByRole('textbox', { name: 'name', exact: true }));
  await type(kit(page), 'name', 'Small circle');
  await type(kit(page), 'squeeze', '0');
  await kit(page).getByText('Squeezes run from 1 × to 3 ×.').waitFor();
  await kit(page).getByRole('button', { name: 'Take 1 ×' }).click();
  await type(kit(page), 'focal', '5,000');
  await kit(page).getByRole('button', { name: 'Take 3,000 mm' }).waitFor();
  // What was there is typed again: nothing is wrong any more.
  await type(kit(page), 'focal', '40');
  await eventually(() => kit(page).locator('.offer').count()).toBe(0);
  await type(kit(page), 'image circle', '20');

  await page.reload({ waitUntil: 'commit' });
  await waitUntilReady(page);
  await page.getByRole('tab', { name: /Set/ }).click();
  await openKit(page);
  await kit(page)
    .getByRole('button', { name: /^Small circle/ })
    .click();
  await kit(page).getByRole('button', { name: 'Use it for setup A' }).click();
  await eventually(() => kit(page).getByText('setup A', { exact: true }).count()).toBe(1);
  await kit(page).getByRole('button', { name: 'Close' }).click();

  const gate = [22, 18.59] as const;
  const { usedMm } = extraction(gate, 40, 1, 2.39);
  const share = formatShare(coverageOf(usedMm, 20).darkShare);
  await page.locator('.cover-line', { hasText: `cuts the frame: ${share} of it stays dark` }).waitFor();
  await page.locator('.image-circle', { hasText: `the circle cuts, ${share} dark` }).waitFor();
  await page.locator('.strip .dark-share', { hasText: `circle cuts ${share}` }).waitFor();
  const frame = await drawn(page.locator('.frame-lines .delivery path').last());
  const edge = await drawn(page.locator('.image-circle .edge'));
  expect(edge.width / frame.width).toBeCloseTo(20 / usedMm[0], 3);
  expect(edge.height / frame.height).toBeCloseTo(20 / usedMm[1], 3);
  await screenshot(page, 'image-circle');

  // In the way of nothing: a stop that this lens lacks is offered as its nearest.
  await type(page.locator('.sections'), 'stop', '1.4');
  await page.getByRole('button', { name: 'Take T2', exact: true }).click();
  await eventually(() => page.locator('.sections').getByRole('textbox', { name: 'stop' }).inputValue()).toBe(
    'T2',
  );
});

test('a table with a broken row says which, keeps the others when asked to, and all of it goes out again', async () => {
  const page = await openSet({ theme: 'day' });
  await openKit(page);
  const table = [
    'set,label,focalMm,squeeze,widestStop,narrowestStop,closeFocusMetres,imageCircleMm',
    'Old glass,28 mm,28,1,2.1,22,0.3,31',
    'Old glass,40 mm,0,1,2.1,22,0.4,31',
    '"=SUM(A1)",50 mm,50,1,2.1,22,0.6,31',
  ].join('\n');
  const [dialog] = await Promise.all([
    page.waitForEvent('filechooser'),
    kit(page).getByRole('button', { name: 'Import', exact: true }).click(),
  ]);
  await dialog.setFiles({ name: 'old.csv', mimeType: 'text/csv', buffer: Buffer.from(table) });
  await kit(page).getByText('Line 3, focalMm: found "0", expected 1 to 3000.').waitFor();
  expect(await seriousViolations(page)).toEqual([]);
  await kit(page).getByRole('button', { name: 'Keep the 2 lenses that can be read' }).click();
  await kit(page)
    .getByRole('status')
    .getByText(/2 lenses of old\.csv kept\./)
    .waitFor();
  // What had the focus is gone with what it was about.
  await focused(kit(page).getByRole('button', { name: 'Import', exact: true }));
  await screenshot(page, 'kit-day');

  await kit(page).getByText('export what is kept').click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    kit(page).getByRole('button', { name: 'lenses, CSV' }).click(),
  ]);
  const written = readFileSync(await download.path(), 'utf8');
  expect(written).toContain("'=SUM(A1),50 mm,50,1,2.1,22,0.6,,31");

  const [second] = await Promise.all([
    page.waitForEvent('download'),
    kit(page).getByRole('button', { name: 'all of it, JSON' }).click(),
  ]);
  const document: unknown = JSON.parse(readFileSync(await second.path(), 'utf8'));
  // A copy is at its first act, and what is forgotten leaves the focus in the list.
  const rows = kit(page).locator('.kit-row');
  await rows.filter({ hasText: /^Old glass, 28/ }).focus();
  await page.keyboard.press('Enter');
  await kit(page).getByRole('button', { name: 'Copy it' }).focus();
  await page.keyboard.press('Enter');
  await focused(kit(page).locator('.kit-form button:visible').first());
  await kit(page).getByRole('button', { name: 'Forget it' }).focus();
  await page.keyboard.press('Enter');
  await focused(rows.first());
  expect(document).toMatchObject({
    standclearKit: 1,
    bodies: [],
    lenses: [{ set: 'Old glass' }, { set: '=SUM(A1)' }],
  });
});

test('a browser that refuses storage says so, and the kit lasts as long as the page', async () => {
  const page = await openPage({
    width: 1440,
    height: 900,
    before: [
      ...BUILDING,
      withoutReports,
      () => {
        Storage.prototype.setItem = () => {
          throw new DOMException('no', 'QuotaExceededError');
        };
      },
    ],
  });
  await page.getByRole('tab', { name: /Set/ }).click();
  await openKit(page);
  await page.getByRole('button', { name: 'Add a lens' }).click();
  await kit(page).getByRole('alert').getByText('This browser does not let the page keep the kit').waitFor();
  await kit(page).getByRole('button', { name: 'Use it for setup A' }).click();
  await eventually(() => kit(page).getByText('setup A', { exact: true }).count()).toBe(1);
});

test('the second delivery, the mask and own lines lie where core says, also as on the sensor, and the pane stays', async () => {
  const page = await openSet();
  const sections = page.locator('.sections');
  await sections.getByRole('combobox', { name: 'second' }).selectOption({ label: '9:16' });
  const delivery = page.locator('.frame-lines .delivery path').last();
  const second = page.locator('.frame-lines .second-delivery path').last();
  await second.waitFor({ state: 'attached' });
  const room = await boxOf(page.locator('.picture-room'));

  const holdsToCore = async (): Promise<void> => {
    const outer = await drawn(delivery);
    const [left, top, right, bottom] = deliveryWithin(2.39, 9 / 16);
    const inner = await drawn(second);
    expect(inner.x).toBeCloseTo(outer.x + left * outer.width, 1);
    expect(inner.y).toBeCloseTo(outer.y + top * outer.height, 1);
    expect(inner.width).toBeCloseTo((right - left) * outer.width, 1);
    expect(inner.height).toBeCloseTo((bottom - top) * outer.height, 1);
  };
  await holdsToCore();
  const wide = await drawn(delivery);
  expect(wide.width / wide.height).toBeCloseTo(2.39, 1);

  await page.getByRole('button', { name: 'Add a frame line' }).click();
  await type(sections, 'left', '25');
  const own = page.locator('.own-line .drawn');
  await eventually(async () => (await drawn(own)).x).toBeCloseTo(wide.x + 0.25 * wide.width, 1);

  await page.getByText('guides', { exact: true }).click();
  await page.getByRole('button', { name: 'the second', exact: true }).click();
  await page.getByRole('button', { name: 'as on the sensor' }).click();
  await eventually(async () => (await drawn(delivery)).width).toBeCloseTo(wide.width / 2, 1);
  expect((await drawn(delivery)).height).toBeCloseTo(wide.height, 1);
  expect(await boxOf(page.locator('.picture-room'))).toEqual(room);
  await holdsToCore();
  await page.keyboard.press('Escape');
  await settled(page);
  await screenshot(page, 'as-on-the-sensor');

  // A hand takes the line's right side along, in the narrow picture as in the wide one.
  const before = await drawn(own);
  const outer = await drawn(delivery);
  const figure = await boxOf(page.locator('figure.picture'));
  const at = { x: figure.x + before.x + before.width, y: figure.y + before.y + before.height / 2 };
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x - outer.width / 4, at.y, { steps: 4 });
  await page.mouse.up();
  await eventually(() => sections.getByRole('textbox', { name: 'right', exact: true }).inputValue()).toMatch(
    /^6[45]/,
  );
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await eventually(() => sections.getByRole('textbox', { name: 'right', exact: true }).inputValue()).toBe(
    '90',
  );
});

test('which lines are shown, and what the mask leaves free, is kept for this person', async () => {
  const page = await openSet();
  const free = page.getByRole('button', { name: 'the second', exact: true });
  await page.locator('.sections').getByRole('combobox', { name: 'second' }).selectOption({ label: '9:16' });
  await page.getByText('guides', { exact: true }).click();
  await free.click();
  await page.getByLabel('thirds').check();
  await page.reload({ waitUntil: 'commit' });
  await waitUntilReady(page);
  await page.getByText('guides', { exact: true }).click();
  expect(await free.getAttribute('aria-pressed')).toBe('true');
  expect(await page.getByLabel('thirds').isChecked()).toBe(true);
});

test('what is read off the camera goes with the clock, in metres and in feet', async () => {
  const page = await openSet();
  const tape = page.locator('[data-read$=" tape"]').first();
  await tape.waitFor();
  const before = await tape.textContent();
  expect(before).toMatch(/^\d+\.\d\d\u00a0m$/);
  const slider = page.locator('.scrub input[type="range"]');
  await slider.focus();
  await slider.press('End');
  await eventually(() => tape.textContent()).not.toBe(before);
  await page.getByRole('button', { name: 'ft-in' }).click();
  await eventually(() => tape.textContent()).toMatch(/′/);
});

test('on a phone the kit is a page: one is chosen, seen, used by touch, and the list comes back', async () => {
  const page = await openSet({ phone: true });
  await openKit(page);
  await kit(page)
    .getByRole('button', { name: /^32.mm spherical/ })
    .tap();
  await kit(page).getByRole('button', { name: 'Use it for setup A' }).tap();
  expect(await kit(page).locator('.kit-list').isVisible()).toBe(false);
  await screenshot(page, 'kit-phone');
  for (const button of await kit(page).locator('.kit-form .acts button').all()) {
    const { height } = await boxOf(button);
    expect(height).toBeGreaterThanOrEqual(48);
  }
  expect(await seriousViolations(page)).toEqual([]);
  await kit(page).getByRole('button', { name: 'Back to the list' }).tap();
  await kit(page).getByRole('button', { name: 'bodies', exact: true }).tap();
  await kit(page)
    .getByRole('button', { name: /^16 mm film camera/ })
    .tap();
  await kit(page).getByText('It comes with the program and stays as it is.').waitFor();
});
