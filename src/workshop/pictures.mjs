/// <reference lib="dom" />
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { findOrInstallChromium } from './chromium.mjs';
import { HOUSE } from './house.mjs';
import { install } from './install.mjs';

/**
 * @typedef {import('playwright-core').Page} Page
 * @typedef {object} Shot
 * @property {string} name of the file, without its ending
 * @property {'night' | 'day'} theme
 * @property {readonly [number, number]} size of the window, CSS pixels
 * @property {boolean} [phone] touch, and two pixels for each of the page's
 * @property {boolean} [crew] of the crew sheet that the demo's link opens, not of the desk
 * @property {(page: Page) => Promise<void>} [before] what is done on the page first
 */

const PICTURES = join(HOUSE, 'assets', 'pictures');
/** Both are in the wide, and lamp stand 2 shows at its right, column and legs; seconds of the action. */
const TELLING_SECONDS = '12.5';
/** Where no graphics card draws, a picture in full takes seconds. */
const PATIENCE_MS = 300_000;
/** Drawn in software, the same on every machine. */
const FLAGS = [
  '--no-sandbox',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
];

/** @type {readonly Shot[]} */
const SHOTS = [
  { name: 'desk-night', theme: 'night', size: [1440, 900] },
  { name: 'desk-day', theme: 'day', size: [1440, 900] },
  {
    name: 'walk-round',
    theme: 'night',
    size: [1280, 800],
    before: (page) => page.getByText('walk round', { exact: true }).click(),
  },
  { name: 'phone-night', theme: 'night', size: [390, 844], phone: true },
  { name: 'blocking', theme: 'day', size: [1440, 900], before: (page) => sheet(page, 'Blocking') },
  { name: 'light', theme: 'day', size: [1440, 900], before: (page) => sheet(page, 'Light') },
  { name: 'night', theme: 'day', size: [1440, 900], before: (page) => sheet(page, 'Night') },
  {
    name: 'remedies',
    theme: 'day',
    size: [1440, 900],
    before: async (page) => {
      await page.getByLabel('Reading the night').waitFor({ state: 'detached' });
      await page.locator('.strip .card').nth(1).click();
      await page.locator('.findings button[aria-expanded]', { hasText: 'Sandbag 2' }).click();
      await page.locator('.remedy-list > li').first().waitFor();
    },
  },
  {
    name: 'clear-ground',
    theme: 'day',
    size: [1440, 900],
    before: async (page) => {
      await page.getByRole('button', { name: 'clear ground', exact: true }).click();
      await page.getByText('no sign: it shows', { exact: true }).waitFor();
    },
  },
  {
    name: 'crew-setups',
    theme: 'night',
    size: [390, 844],
    crew: true,
    before: (page) => page.locator('.crew-card .crew-picture img').nth(2).waitFor(),
  },
  {
    name: 'crew-stand',
    theme: 'night',
    size: [390, 844],
    crew: true,
    before: async (page) => {
      await page.getByRole('button', { name: 'Overhead' }).click();
      await page.getByRole('button', { name: 'List', exact: true }).click();
      await page
        .getByRole('list', { name: 'On the roof' })
        .getByRole('button', { name: /^Lamp stand 1/ })
        .click();
      await page.locator('.crew-chosen').click();
      await page.getByRole('article', { name: 'Lamp stand 1' }).waitFor();
    },
  },
];

/**
 * Turns to a sheet of the desk.
 * @param {Page} page
 * @param {string} name
 */
const sheet = (page, name) => page.getByRole('tab', { name: new RegExp(name) }).click();

install();
const executablePath = findOrInstallChromium();
if (!executablePath) process.exit(1);
const { build, preview } = await import('vite');
const { chromium } = await import('playwright-core');

const configFile = join(HOUSE, 'src', 'vite.config.ts');
await build({ configFile, logLevel: 'warn' });
const server = await preview({ configFile, preview: { host: '127.0.0.1', port: 0, open: false } });
const address = server.resolvedUrls?.local[0];
if (!address) throw new Error('the preview server told no address');
const browser = await chromium.launch({ executablePath, args: FLAGS });
mkdirSync(PICTURES, { recursive: true });
/** Pieces of names choose pictures; without any, all are taken. */
const asked = process.argv.slice(2);
const chosen = SHOTS.filter(({ name }) => asked.length === 0 || asked.some((piece) => name.includes(piece)));
const link = chosen.some(({ crew }) => crew) ? await linkOfDemo(address) : '';
for (const shot of chosen) console.log(await take(shot, shot.crew ? link : address));
await browser.close();
await server.close();

/**
 * Opens the demo in a fresh profile, waits until all of it is drawn and judged, and saves its picture.
 * @param {Shot} shot
 * @param {string} home
 * @returns {Promise<string>} the picture's path
 */
async function take(
  { name, theme, size: [width, height], phone: isPhone = false, crew = false, before },
  home,
) {
  const phone = isPhone || crew;
  const context = await browser.newContext({
    viewport: { width, height },
    colorScheme: theme === 'day' ? 'light' : 'dark',
    deviceScaleFactor: phone ? 2 : 1,
    hasTouch: phone,
    isMobile: phone,
    locale: 'en-GB',
    timezoneId: 'UTC',
  });
  context.setDefaultTimeout(PATIENCE_MS);
  await context.addInitScript(() => localStorage.setItem('standclear.picture', 'full'));
  const page = await context.newPage();
  await page.goto(home, { waitUntil: 'commit' });
  await page.locator('html[data-ready="true"]').waitFor({ state: 'attached' });
  if (!crew) {
    const hints = page.getByRole('button', { name: 'No more', exact: true });
    if (!phone && (await hints.isVisible())) await hints.click();
    await page.getByLabel('Time in the move').fill(TELLING_SECONDS);
  }
  await before?.(page);
  if (!crew) {
    await page.locator('.strip .say', { hasText: 'being read' }).first().waitFor({ state: 'detached' });
    await page.getByLabel('Reading the night').waitFor({ state: 'detached' });
    await untilStill(page);
  }
  const path = join(PICTURES, `${name}.png`);
  await page.screenshot({ path });
  await context.close();
  return path;
}

/**
 * The link that the desk makes of the demo.
 * @param {string} home
 * @returns {Promise<string>} the whole address
 */
async function linkOfDemo(home) {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  context.setDefaultTimeout(PATIENCE_MS);
  const page = await context.newPage();
  await page.goto(home, { waitUntil: 'commit' });
  await page.locator('html[data-ready="true"]').waitFor({ state: 'attached' });
  await sheet(page, 'Crew');
  await page.getByRole('button', { name: 'Make the link' }).click();
  const made = await page.getByLabel('The link', { exact: true }).inputValue();
  await context.close();
  return made;
}

/**
 * Waits until the stage has drawn nothing for sixty of the browser's own frames.
 * @param {Page} page
 */
async function untilStill(page) {
  await page.evaluate(async () => {
    let [frames, still] = ['', 0];
    while (still < 60) {
      await new Promise(requestAnimationFrame);
      const now = document.documentElement.dataset.frames ?? '';
      still = now === frames ? still + 1 : 0;
      frames = now;
    }
  });
}
