import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';
import { parsePlanText } from '../../src/core/plan/parse';
import { linkOfPlan } from '../../src/exchange/link/link';
import { findChromium } from '../../src/workshop/chromium.mjs';
import { FLAGS } from '../browser/flags';
import { OwnServer } from '../browser/ownServer';
import { DEMO } from '../plans/readPlan';
import { printTable } from './table';

/** The processor so many times slower than this machine's: a phone of the middle. */
const SLOWER = 4;
/** A street at night: bits a second, and milliseconds to and fro. */
const NETWORK = { bytesASecond: 1_600_000 / 8, latencyMs: 150 };
const PATIENCE_MS = 300_000;

interface Opening {
  readonly readableMs: number;
  readonly picturedMs: number;
  readonly bytesToRead: number;
  readonly bytes: number;
}

/** Opens a link with nothing on the device, and waits until its setups can be read and until one has its picture. */
async function open(browser: Browser, address: string, slow: boolean): Promise<Opening> {
  const context = await browser.newContext({
    viewport: { width: 390, height: 844 },
    deviceScaleFactor: 2,
    isMobile: true,
    hasTouch: true,
  });
  const page = await context.newPage();
  const tools = await context.newCDPSession(page);
  let bytes = 0;
  tools.on('Network.loadingFinished', ({ encodedDataLength }) => {
    bytes += encodedDataLength;
  });
  await tools.send('Network.enable');
  if (slow) {
    await tools.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
    await tools.send('Network.emulateNetworkConditions', {
      offline: false,
      latency: NETWORK.latencyMs,
      downloadThroughput: NETWORK.bytesASecond,
      uploadThroughput: NETWORK.bytesASecond,
    });
  }
  page.setDefaultTimeout(PATIENCE_MS);
  const from = performance.now();
  await page.goto(address, { waitUntil: 'commit' });
  await page.locator('html[data-ready="true"]').waitFor({ state: 'attached' });
  await page.getByRole('navigation').waitFor();
  const readableMs = performance.now() - from;
  const bytesToRead = bytes;
  await page.locator('img[src^="blob:"]').first().waitFor();
  const picturedMs = performance.now() - from;
  await context.close();
  return { readableMs, picturedMs, bytesToRead, bytes };
}

execFileSync(process.execPath, ['node_modules/vite/bin/vite.js', 'build', 'src', '--logLevel', 'error']);
const executablePath = findChromium();
if (!executablePath) throw new Error('no Chromium found: run npm test, which installs or asks for one');
const demo = parsePlanText(readFileSync(join(process.cwd(), DEMO), 'utf8'));
if (!demo.ok) throw new Error(demo.faults[0].sentence);
const server = new OwnServer(join(process.cwd(), 'dist'), '/', {}, true);
const address = `${await server.start()}#${linkOfPlan(demo.value).fragment}`;
const browser = await chromium.launch({ executablePath, args: FLAGS });
const seconds = (ms: number): string => `${(ms / 1000).toFixed(1)} s`;
const kilobytes = (bytes: number): string => `${(bytes / 1000).toFixed(0)} kB`;
try {
  const wired = await open(browser, address, false);
  const slow = await open(browser, address, true);
  console.log(
    `  The demonstration night's link, nothing kept, software drawing; slow: the processor ${SLOWER} times slower,` +
      ` ${(NETWORK.bytesASecond * 8) / 1e6} Mbit/s, ${NETWORK.latencyMs} ms to and fro`,
  );
  printTable([
    { what: 'setups can be read, here', reach: '', reached: seconds(wired.readableMs) },
    { what: 'first picture, here', reach: '', reached: seconds(wired.picturedMs) },
    { what: 'setups can be read, slow phone', reach: '', reached: seconds(slow.readableMs) },
    { what: 'first picture, slow phone', reach: '', reached: seconds(slow.picturedMs) },
    { what: 'came before setups could be read', reach: '', reached: kilobytes(slow.bytesToRead) },
    { what: 'came before the first picture', reach: '', reached: kilobytes(slow.bytes) },
  ]);
} finally {
  await browser.close();
  await server.stop();
}
