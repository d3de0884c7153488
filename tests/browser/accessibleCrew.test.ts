import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { linkOfPlan } from '../../src/exchange/link/link';
import { hardNamed } from '../plans/longNames';
import { DEMO, readPlan } from '../plans/readPlan';
import { seriousViolations } from './axe';
import { openPage, screenshot } from './harness';
import { brokenWords, clippedWords, sidewaysScrolls, smallTargets } from './measured';
import { stopFaults, tabWalk } from './tabWalk';
import { withoutPicture } from './withoutPicture';

/** Least side of a target under a thumb, CSS pixels. */
const LEAST_TARGET = 44;
/** The drawing's layers are pushed along with a thumb, as one line. */
const LAYERS = '.crew-roof-tools';

const plan = readPlan(DEMO);

type Step = readonly [screen: string, open: (page: Page) => Promise<unknown>];
const press =
  (name: string | RegExp) =>
  (page: Page): Promise<void> =>
    page
      .getByRole('button', { name, exact: typeof name === 'string' })
      .first()
      .click();

/** Every screen of the crew sheet, each from the one before. */
const SCREENS: readonly Step[] = [
  ['setups', (page) => page.locator('.crew-card').first().waitFor()],
  ['search', press('Search')],
  ['more', (page) => press('Close')(page).then(() => press('More')(page))],
  [
    'setup',
    async (page) => {
      await press('Close')(page);
      await page.locator('.crew-card h2 button').first().click();
      await page.locator('[aria-label="Watch for"][aria-busy="false"]').waitFor();
    },
  ],
  ['frame', press(/^Fill the window/)],
  [
    'item',
    async (page) => {
      await press('Close')(page);
      await page.locator('.crew-rigs .link').first().click();
      await page.locator('.crew-over h2, .crew-over h1').last().waitFor();
    },
  ],
  ['overhead', (page) => page.goBack().then(() => press('Overhead')(page))],
  ['power', press('Power')],
  ['times', press('Times')],
  ['packing', press('Lists')],
  ['by setup', press('by setup')],
  ['cautions', press('cautions')],
];

test('on the narrowest phone every screen is read in one direction, by Tab and with a thumb, by day', async () => {
  const page = await openPage({
    width: 320,
    height: 640,
    theme: 'day',
    touch: true,
    before: withoutPicture,
    address: `#${linkOfPlan(plan).fragment}`,
  });
  if ((await page.locator('html').getAttribute('data-theme')) !== 'day')
    await page.getByRole('button', { name: 'Day theme' }).click();
  for (const [screen, open] of SCREENS) {
    await open(page);
    expect(await sidewaysScrolls(page, LAYERS), screen).toEqual([]);
    expect(await clippedWords(page), screen).toEqual([]);
    expect(await brokenWords(page), screen).toEqual([]);
    expect(await smallTargets(page, LEAST_TARGET), screen).toEqual([]);
    expect(await seriousViolations(page), screen).toEqual([]);
    const stops = await tabWalk(page);
    expect(stopFaults(stops), screen).toEqual([]);
    expect(stops.length, screen).toBeGreaterThan(1);
  }
}, 600_000);

test('the longest names, from right to left too, and wide letters stay on every screen', async () => {
  const page = await openPage({
    width: 390,
    height: 844,
    touch: true,
    before: withoutPicture,
    address: `#${linkOfPlan(hardNamed(plan)).fragment}`,
  });
  const read = async (screen: string): Promise<void> => {
    expect(await sidewaysScrolls(page, LAYERS), screen).toEqual([]);
    expect(await clippedWords(page), screen).toEqual([]);
    expect(await smallTargets(page, LEAST_TARGET), screen).toEqual([]);
    await screenshot(page, `crew-hard-names-${screen.replaceAll(' ', '-')}`);
  };
  for (const [screen, open] of SCREENS) {
    await open(page);
    await read(screen);
  }
  await page.evaluate(() => {
    const spaced = new CSSStyleSheet();
    spaced.replaceSync(
      '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-bottom: 2em !important }',
    );
    document.adoptedStyleSheets.push(spaced);
  });
  for (const screen of ['Setups', 'Power', 'Times', 'Lists']) {
    await press(screen)(page);
    await page.locator('.crew-foot [aria-current]', { hasText: screen }).waitFor();
    await read(`${screen}, wide letters`);
  }
}, 600_000);
