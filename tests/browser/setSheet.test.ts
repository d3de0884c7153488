import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { seriousViolations } from './axe';
import { openPage, screenshot } from './harness';
import { withoutPicture } from './withoutPicture';
import { withoutReports } from './withoutReports';

/** Without a graphics card a page may take its time. */
const eventually = <Value>(read: () => Promise<Value>) => expect.poll(read, { timeout: 30_000 });

async function openSet(theme: 'day' | 'night' = 'night'): Promise<Page> {
  const page = await openPage({ width: 1440, height: 900, theme, before: [withoutPicture, withoutReports] });
  await page.getByRole('tab', { name: /Set/ }).click();
  return page;
}

const find = (page: Page): Locator => page.getByRole('searchbox', { name: 'find' });
const row = (page: Page, name: string): Locator => page.locator('.things .thing', { hasText: name }).first();
const panel = (page: Page): Locator => page.locator('.item-panel');
const field = (page: Page, label: string): Locator =>
  panel(page).getByRole('textbox', { name: label, exact: true });
const counted = (page: Page): Locator => page.getByRole('button', { name: /^on the roof, \d+$/ });

/** Finds a thing on the roof by its name and chooses it. */
async function choose(page: Page, name: string): Promise<void> {
  await find(page).fill(name);
  await row(page, name).click();
  await panel(page).locator('h3', { hasText: name }).waitFor();
}

async function type(page: Page, label: string, text: string): Promise<void> {
  await field(page, label).fill(text);
  await field(page, label).press('Enter');
}

/** A pressed cell takes its colour over an instant. */
const settled = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    await Promise.all(document.getAnimations().map((animation) => animation.finished));
  });

test('an entry that the search finds is put on the roof by a click, and its panel follows', async () => {
  const page = await openSet();
  const before = await counted(page).textContent();
  await find(page).fill('ladder');
  const entry = page.getByRole('button', { name: 'step ladder', exact: true });
  await entry.click();
  expect(await entry.getAttribute('aria-pressed')).toBe('true');
  await panel(page).getByText('Step ladder, in the hand').waitFor();

  const board = await page.locator('.sheet-drawing').boundingBox();
  if (!board) throw new Error('the roof is not drawn');
  await page.mouse.move(board.x + board.width * 0.4, board.y + board.height * 0.55, { steps: 3 });
  await page.mouse.down();
  await page.mouse.up();
  await panel(page)
    .locator('h3', { hasText: /^Step ladder 2, ladder/ })
    .waitFor();
  await find(page).fill('');
  await eventually(() => counted(page).textContent()).not.toBe(before);
  // Another is in the hand until it is put down.
  await page.getByText('Another step ladder is in the hand.').waitFor();
  await page.getByRole('button', { name: 'Put it down' }).last().click();
  expect(await entry.getAttribute('aria-pressed')).toBe('false');

  const high = await field(page, 'height').inputValue();
  await type(page, 'height', '2.1');
  await eventually(() => field(page, 'height').inputValue()).toBe('2.10');
  await field(page, 'height').press('ControlOrMeta+z');
  await eventually(() => field(page, 'height').inputValue()).toBe(high);
});

test('by keys: the palette is one stop, arrows go from cell to cell, Enter picks and puts down again', async () => {
  const page = await openSet();
  await counted(page).focus();
  await page.keyboard.press('Tab');
  const first = page.getByRole('button', { name: 'deck', exact: true });
  expect(await first.evaluate((cell) => cell === document.activeElement)).toBe(true);
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowRight');
  const fence = page.getByRole('button', { name: 'mesh fence', exact: true });
  expect(await fence.evaluate((cell) => cell === document.activeElement)).toBe(true);
  await page.keyboard.press('Enter');
  expect(await fence.getAttribute('aria-pressed')).toBe('true');
  await panel(page).getByText('Mesh fence, to be drawn').waitFor();

  // The mesh's light is worked out from what is typed.
  await type(page, 'wire', '5');
  await panel(page)
    .getByText(/a lamp behind it loses 0\.3.stop/)
    .waitFor();
  await type(page, 'wire', '-1');
  await panel(page).getByText('This takes 0.0002 to 0.05 metres.').waitFor();
  await fence.focus();
  await page.keyboard.press('Enter');
  expect(await fence.getAttribute('aria-pressed')).toBe('false');
});

test('a height in feet and inches is metres; what cannot be keeps the old value and says what can', async () => {
  const page = await openSet();
  await choose(page, 'Lamp stand 2');
  await type(page, 'height', `10'6"`);
  await eventually(() => field(page, 'height').inputValue()).toBe('3.20');

  const fault = panel(page).getByRole('alert');
  for (const [text, sentence] of [
    ['abc', '"abc" is not a length: type metres, such as 3.2 m'],
    ['1e9 m', '"1e9 m" is not a length'],
    ['99 m', 'This stand goes from 1.40\u00a0m to 4.40\u00a0m.'],
    ['0.2', 'This stand goes from 1.40\u00a0m'],
  ] as const) {
    await type(page, 'height', text);
    await fault.filter({ hasText: sentence }).waitFor();
    expect(await field(page, 'height').getAttribute('aria-invalid')).toBe('true');
    await field(page, 'height').press('Escape');
    await fault.waitFor({ state: 'detached' });
    expect(await field(page, 'height').inputValue()).toBe('3.20');
  }

  // One typed value is one step, whatever was refused in between.
  await field(page, 'height').press('ControlOrMeta+z');
  await eventually(() => field(page, 'height').inputValue()).toBe('3.85');
  await page.getByRole('button', { name: 'ft-in' }).click();
  await eventually(() => field(page, 'height').inputValue()).toBe('12′\u00a07½″');
  await type(page, 'height', '40');
  await fault.filter({ hasText: 'This stand goes from 4′' }).waitFor();
});

test('a lamp goes onto another stand and is aimed at a face', async () => {
  const page = await openSet();
  await choose(page, 'Head 2, backlight');
  const stand = panel(page).getByRole('combobox', { name: 'on stand' });
  await stand.selectOption({ label: 'Lamp stand 4' });
  await panel(page).getByText('Where it stands, on Lamp stand 4').waitFor();
  const height = field(page, 'aim height');
  const before = await height.inputValue();
  const aimed = panel(page).getByRole('combobox', { name: 'aimed at' });
  await aimed.selectOption({ label: 'the face of Vera' });
  await eventually(() => height.inputValue()).not.toBe(before);
  expect(Number(await height.inputValue())).toBeGreaterThan(1.4);
  await type(page, 'aim height', '0.1');
  await eventually(() => aimed.evaluate((select) => (select as HTMLSelectElement).value)).toBe('');

  await choose(page, 'Lamp stand 4');
  const takeOff = panel(page).getByRole('button', { name: 'Take it off Head 2, backlight' });
  await takeOff.click();
  await takeOff.waitFor({ state: 'detached' });
  await choose(page, 'Head 2, backlight');
  expect(await stand.evaluate((select) => (select as HTMLSelectElement).value)).toBe('');
});

test('an opening is cut, measured within its run, and closed', async () => {
  const page = await openSet();
  await choose(page, 'Loft yard fence');
  await panel(page).getByRole('button', { name: 'Cut an opening' }).click();
  await eventually(() => field(page, 'width').inputValue()).toBe('0.90');
  await type(page, 'width', '1.2');
  await eventually(() => field(page, 'width').inputValue()).toBe('1.20');
  await type(page, 'width', '99');
  await panel(page).getByRole('alert').filter({ hasText: 'In this fence it goes from 0.00' }).waitFor();
  await field(page, 'width').press('Escape');
  expect(await field(page, 'width').inputValue()).toBe('1.20');

  const leg = field(page, 'leg 2');
  const long = await leg.inputValue();
  await type(page, 'leg 2', '5.5');
  await eventually(() => leg.inputValue()).toBe('5.50');
  await leg.press('ControlOrMeta+z');
  await eventually(() => leg.inputValue()).toBe(long);
  await panel(page).getByRole('button', { name: 'Close it opening 1' }).click();
  await panel(page).getByText('No opening yet').waitFor();
});

test('the list: several by Shift, marks that hold, a new name in its place', async () => {
  const page = await openSet();
  await counted(page).click();
  await row(page, 'Lamp stand 1').click();
  await row(page, 'Lamp stand 3').click({ modifiers: ['Shift'] });
  await panel(page)
    .getByText(/^\d things chosen$/)
    .waitFor();
  await row(page, 'Lamp stand 3').click();
  await row(page, 'Lamp stand 1').click({ modifiers: ['ControlOrMeta'] });
  await panel(page).getByText('2 stands chosen').waitFor();
  expect(await field(page, 'height').getAttribute('placeholder')).toBe('mixed');
  await type(page, 'heading', '90');
  await eventually(() => field(page, 'heading').inputValue()).toBe('90.0');
  await field(page, 'heading').press('ControlOrMeta+z');
  await eventually(() => field(page, 'heading').inputValue()).toBe('');

  const listed = page.locator('.things');
  const hide = listed.getByRole('button', { name: 'hide Lamp stand 1' });
  await hide.click();
  await eventually(() => hide.getAttribute('aria-pressed')).toBe('true');
  await find(page).fill('hidden');
  await eventually(() => listed.locator('.thing').count()).toBe(1);
  await hide.click();
  await find(page).fill('Lamp stand 1');
  const lock = listed.getByRole('button', { name: 'lock Lamp stand 1' });
  await lock.click();
  await eventually(() => lock.getAttribute('aria-pressed')).toBe('true');

  await row(page, 'Lamp stand 1').focus();
  await page.keyboard.press('F2');
  const name = page.getByRole('textbox', { name: 'new name of Lamp stand 1' });
  await name.fill('');
  await name.press('Enter');
  await listed.getByRole('alert').filter({ hasText: 'at least one character' }).waitFor();
  await name.fill('Lamp stand 1, moonlight');
  await name.press('Enter');
  await row(page, 'Lamp stand 1, moonlight').waitFor();
});

test('with nothing chosen, the night and the ground are typed', async () => {
  const page = await openSet();
  await page.getByRole('button', { name: 'the roof', exact: true }).click();
  const date = page.getByRole('textbox', { name: 'date', exact: true });
  const before = await date.inputValue();
  await date.fill('soon');
  await date.press('Enter');
  await page.locator('.err', { hasText: 'This takes a date such as 2026-11-20.' }).waitFor();
  await date.press('Escape');
  expect(await date.inputValue()).toBe(before);
  await page.getByRole('combobox', { name: 'wetness' }).selectOption('puddled');
  const title = page.getByRole('textbox', { name: 'title', exact: true });
  await title.fill('Another night');
  await title.press('Enter');
  await page.locator('.top h2', { hasText: 'Another night' }).waitFor();
});

test.each(['night', 'day'] as const)(
  'by %s nobody trips over the palette, a panel or the list',
  async (theme) => {
    const page = await openSet(theme);
    await screenshot(page, `set-palette-${theme}`);
    expect(await seriousViolations(page)).toEqual([]);
    await page.getByRole('button', { name: 'mesh fence', exact: true }).click();
    await settled(page);
    expect(await seriousViolations(page)).toEqual([]);
    await page.getByRole('button', { name: 'mesh fence', exact: true }).click();
    await counted(page).click();
    await row(page, 'Head 2, backlight').click();
    await type(page, 'dim', '400');
    await panel(page).getByRole('alert').waitFor();
    await screenshot(page, `set-things-${theme}`);
    expect(await seriousViolations(page)).toEqual([]);
    await find(page).fill('Vera');
    await page.locator('.things .thing', { hasText: /^Vera\s*performer/ }).click();
    expect(await seriousViolations(page)).toEqual([]);
  },
);

test.each(['night', 'day'] as const)(
  'by %s on a phone every target of the sheet fits a thumb',
  async (theme) => {
    const page = await openPage({
      width: 390,
      height: 844,
      theme,
      touch: true,
      before: [withoutPicture, withoutReports],
    });
    await page.getByRole('tab', { name: /Set/ }).tap();
    const small = (): Promise<string[]> =>
      page.locator('.sheet :is(button, select), .sheet .field').evaluateAll((targets) =>
        targets
          .filter((target) => !target.parentElement?.closest('.field'))
          .map((target) => ({ name: target.textContent, box: target.getBoundingClientRect() }))
          .filter(({ box }) => box.height > 0 && (box.height < 48 || box.width < 40))
          .map(({ name, box }) => `${name}: ${box.width} × ${box.height}`),
      );
    expect(await small()).toEqual([]);
    await counted(page).tap();
    await row(page, 'Head 2, backlight').tap();
    await panel(page).waitFor();
    expect(await small()).toEqual([]);
    expect(
      await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
    ).toBeLessThanOrEqual(0);
    await screenshot(page, `set-phone-${theme}`);
    expect(await seriousViolations(page)).toEqual([]);
  },
);
