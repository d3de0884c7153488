import { expect, test } from 'vitest';
import { HARD_NAMES } from '../plans/longNames';
import { DEMO, readPlan } from '../plans/readPlan';
import { dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';
import { withoutReports } from './withoutReports';

const demo = readPlan(DEMO);

/** The demo night, its setups called by these names in turn. */
const called = (names: readonly string[]) => ({
  ...demo,
  setups: demo.setups.map((setup, k) => ({ ...setup, label: names[k % names.length] ?? setup.label })),
});

test('in the strip a long name has two lines, beside its focal length, and all of it is what the card is called', async () => {
  const page = await openPage({
    width: 1440,
    height: 900,
    before: [withoutPicture, withoutReports, withoutDemo],
  });
  const low = await page.locator('.strip').evaluate((strip) => strip.clientHeight);
  await dropPlan(page, called(['High, from the stairs behind them', 'Wide, both', ...HARD_NAMES]));
  const cards = page.locator('.strip .card');
  await expect.poll(() => cards.count()).toBe(demo.setups.length);
  const drawn = await cards.evaluateAll((all) =>
    all.map((card) => {
      const name = card.querySelector('.cap .name');
      const [own, beside, under] = [name, card.querySelector('.cap .q'), card.querySelector('.say')].map(
        (each) => each?.getBoundingClientRect() ?? new DOMRect(),
      );
      const room = card.getBoundingClientRect();
      return {
        name: name?.textContent ?? '',
        title: card.getAttribute('title') ?? '',
        isCut: (name?.scrollHeight ?? 0) > (name?.clientHeight ?? 0) + 2,
        lines: Math.round(own.height / 16),
        top: Math.round((card.querySelector('.shot')?.getBoundingClientRect().top ?? 0) - room.top),
        isClear: own.right <= beside.left && own.bottom <= under.top + 2,
        isInLine: Math.abs((card.querySelector('.cap')?.getBoundingClientRect().left ?? 0) - under.left) < 2,
        isWithin: own.left >= room.left && beside.right <= room.right && under.bottom <= room.bottom,
      };
    }),
  );
  for (const { name, title, lines, isClear, isInLine, isWithin } of drawn) {
    expect(title.startsWith(name), name).toBe(true);
    expect(lines, name).toBeLessThanOrEqual(2);
    expect(isClear && isInLine && isWithin, name).toBe(true);
  }
  expect(drawn[0]).toMatchObject({ name: 'High, from the stairs behind them', isCut: false, lines: 2 });
  expect(drawn[1]).toMatchObject({ name: 'Wide, both', isCut: false, lines: 1 });
  expect(new Set(drawn.map(({ top }) => top)).size, 'the pictures stand in one row').toBe(1);
  // Where a name has two lines, all cards have room for them; nothing is taken where none has.
  expect(await page.locator('.strip').evaluate((strip) => strip.clientHeight)).toBeGreaterThan(low);
  await screenshot(page, 'strip-hard-names');
});

test('the head of the frame keeps the letter and the lens beside whatever its setup is called', async () => {
  const page = await openPage({
    width: 1440,
    height: 900,
    before: [withoutPicture, withoutReports, withoutDemo],
  });
  await dropPlan(page, called(HARD_NAMES.slice(2)));
  const cards = page.locator('.strip .card');
  await expect.poll(() => cards.count()).toBe(demo.setups.length);
  for (const [k, { id, label }] of called(HARD_NAMES.slice(2)).setups.entries()) {
    await cards.nth(k).click();
    const head = page.locator('.frame-pane .bar h2');
    await expect.poll(() => head.textContent(), { message: id }).toContain(label);
    const [letter, own, glass] = await Promise.all([
      head.locator('.letter').boundingBox(),
      head.boundingBox(),
      page.locator('.frame-pane .bar .glass').boundingBox(),
    ]);
    expect(letter?.x, id).toBeCloseTo(own?.x ?? 0, 0);
    expect((own?.x ?? 0) + (own?.width ?? 0), id).toBeLessThanOrEqual(glass?.x ?? 0);
    expect(glass?.width, id).toBeGreaterThan(60);
  }
});
