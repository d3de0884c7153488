import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { findChromium } from './chromium.mjs';
import { HOUSE } from './house.mjs';

/** Makes the icons of the installed page, as pictures, from the drawn one: `node src/workshop/icons.mjs`. */
const ICONS = join(HOUSE, 'assets', 'icons');
const DRAWN = readFileSync(join(ICONS, 'icon.svg'), 'utf8');

/** A device may cut a maskable icon to any shape round a circle of four fifths of its width. */
const INSIDE_CIRCLE = DRAWN.replace(
  /(<rect width="32"[^>]*>)([\s\S]*)<\/svg>/,
  '$1<g transform="translate(16 16) scale(0.74) translate(-16.5 -15)">$2</g></svg>',
);

if (INSIDE_CIRCLE === DRAWN)
  throw new Error('icon.svg does not begin with its ground, a <rect width="32" …>');

const executablePath = findChromium();
if (!executablePath) throw new Error('no Chromium found: run npm test, which installs or asks for one');
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] });
for (const { name, pixels, drawing } of [
  { name: 'icon-192', pixels: 192, drawing: DRAWN },
  { name: 'icon-512', pixels: 512, drawing: DRAWN },
  { name: 'icon-maskable-512', pixels: 512, drawing: INSIDE_CIRCLE },
]) {
  const page = await browser.newPage({ viewport: { width: pixels, height: pixels } });
  await page.setContent(`<style>body{margin:0}svg{display:block;width:100vw}</style>${drawing}`);
  writeFileSync(join(ICONS, `${name}.png`), await page.screenshot());
}
await browser.close();
