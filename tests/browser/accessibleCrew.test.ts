import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { linkOfPlan } from '../../src/exchange/link/link';
import { hardNamed } from '../plans/longNames';
import { quickDemo } from '../plans/quickDemo';
import { seriousViolations } from './axe';
import { openPage, screenshot } from './harness';
import { brokenWords, clippedWords, sidewaysScrolls, smallTargets } from './measured';
import { stopFaults, tabWalk } from './tabWalk';
import { withoutPicture } from './withoutPicture';

/** Least side of a target under a thumb, CSS pixels. */
const LEAST_TARGET = 44;
/** The drawing's layers are pushed along with a thumb, as one line. */
const LAYERS = '.crew-roof-tools';

const plan = quickDemo();

type Step = readonly [screen: string, open: (page: Page) => Promise<unknown>];
const press =
  (name: string | RegExp) =>
  (page: Page): Promise<void> =>
    page
      .getByRole('button', { name, exact: typeof name === 'string' })
      .first()
      .click();

/** Each screen may come in a script of its own: it is there once what it shows is. */
const opens =
  (name: string | RegExp, there: string) =>
  async (page: Page): Promise<void> => {
    await press(name)(page);
    await page.locator(there).first().waitFor();
  };
const leaves = async (page: Page, layer: string): Promise<void> => {
  await press('Close')(page);
  await page.locator(layer).waitFor({ state: 'detached' });
};
const MORE = '.crew-layer[aria-label="This sheet"]';
const SEARCH = '.crew-layer[aria-label="Search"]';

/** What a screen shows is laid out, timed and added up: what takes its place would move under what measures it. */
const settled = (page: Page): Promise<void> =>
  expect.poll(() => page.locator('.crew-waiting').count(), { timeout: 300_000 }).toBe(0);

/** Every screen of the crew sheet, each from the one before. */
const SCREENS: readonly Step[] = [
  ['setups', (page) => page.locator('.crew-card').first().waitFor()],
  ['search', opens('Search', SEARCH)],
  ['more', (page) => leaves(page, SEARCH).then(() => opens('More', MORE)(page))],
  [
    'setup',
    async (page) => {
      await leaves(page, MORE);
      await page.locator('.crew-card h2 button').first().click();
      await page.locator('[aria-label="Watch for"][aria-busy="false"]').waitFor();
    },
  ],
  ['frame', opens(/^Fill the window/, '.crew-full button')],
  [
    'item',
    async (page) => {
      await leaves(page, '.crew-full');
      await page.locator('.crew-rigs .link').first().click();
      await page.locator('.crew-item h2, .crew-item h1').first().waitFor();
    },
  ],
  ['overhead', (page) => page.goBack().then(() => opens('Overhead', '.crew-roof-map')(page))],
  ['power', opens('Power', '.crew-power')],
  ['times', opens('Times', '.crew-times')],
  ['packing', opens('Lists', '.crew-lists')],
  ['by setup', opens('by setup', '.crew-lists [aria-pressed="true"]:text-is("by setup")')],
  ['cautions', opens('cautions', '.crew-lists [aria-pressed="true"]:text-is("cautions")')],
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
    await settled(page);
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
    await settled(page);
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
    await settled(page);
    await read(`${screen}, wide letters`);
  }
}, 600_000);
