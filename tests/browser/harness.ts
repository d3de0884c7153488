import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { inject } from 'vitest';
import { findChromium } from '../../src/workshop/chromium.mjs';
import { HOUSE } from '../../src/workshop/house.mjs';
import { FLAGS, WITHOUT_CARD } from './flags';
import { withoutPicture } from './withoutPicture';

const PATIENCE_MS = 60_000;

/** A function, or a script in words. */
type Script = (() => void) | string;

export interface PageOptions {
  /** Of the window, in CSS pixels. */
  readonly width?: number;
  readonly height?: number;
  /** What the system asks for: light by day, dark by night. */
  readonly theme?: 'day' | 'night';
  /** A phone: touch instead of a mouse. */
  readonly touch?: boolean;
  /** What follows the page's address: a query or a fragment. */
  readonly address?: string;
  /** Runs in the page before anything of its own, to make a browser that lacks something. */
  readonly before?: Script | readonly Script[];
  /** Where the page is served; the built page of all tests where nothing is said. */
  readonly home?: string;
  /** Whether the page may keep itself on the device, which takes the processor from other tests. */
  readonly keepsOffline?: boolean;
  /** Lets scripts in that are not the page's own, for tests that bring theirs along. */
  readonly withoutPolicy?: boolean;
}

/** The pages of one try of a test, and what went wrong in them: nothing of it reaches the next try. */
interface Try {
  readonly faults: string[];
  readonly contexts: BrowserContext[];
}
let running: Try = { faults: [], contexts: [] };
/** The browser that can draw pictures, and the one that cannot: for all files of a worker, which takes them along as it ends. */
const launching = new Map<readonly string[], Promise<Browser>>();

/**
 * Opens the built page in a fresh profile and waits until it says that it is ready.
 * The running test fails at its end on any error in the console, any uncaught error, and any request to another host.
 */
export async function openPage(options: PageOptions = {}): Promise<Page> {
  const { width = 1280, height = 720, theme = 'night', touch = false, address = '', before } = options;
  const { home = inject('pageAddress'), keepsOffline = false, withoutPolicy = false } = options;
  const scripts = [before ?? []].flat();
  const isDrawn = !scripts.includes(withoutPicture);
  const { faults, contexts } = running;
  const context = await (await browserWith(isDrawn ? FLAGS : WITHOUT_CARD)).newContext({
    viewport: { width, height },
    colorScheme: theme === 'day' ? 'light' : 'dark',
    hasTouch: touch,
    isMobile: touch,
    locale: 'en-GB',
    timezoneId: 'UTC',
    // What fades is drawn over and over, and nothing can be pressed before it has come to rest.
    reducedMotion: isDrawn ? 'no-preference' : 'reduce',
    bypassCSP: withoutPolicy,
  });
  contexts.push(context);
  context.setDefaultTimeout(PATIENCE_MS);
  context.on('console', (message) => {
    if (message.type() === 'error')
      faults.push(`console error: ${message.text()} (${message.location().url})`);
  });
  context.on('weberror', (error) =>
    faults.push(`uncaught error: ${error.error().stack ?? error.error().message}`),
  );
  context.on('request', (request) => {
    const { protocol, host } = new URL(request.url());
    if (protocol !== 'data:' && protocol !== 'blob:' && host !== new URL(home).host)
      faults.push(`request to another host: ${request.url()}`);
  });

  if (!keepsOffline) await context.addInitScript(withoutOfflineWorker);
  for (const script of scripts)
    await context.addInitScript(typeof script === 'string' ? { content: script } : script);
  const page = await context.newPage();
  // 'load' would wait for every module and picture; what counts is when the page itself says that it can be used.
  await page.goto(home + address, { waitUntil: 'commit' });
  await waitUntilReady(page);
  return page;
}

/** A browser that keeps no page, as an old one. */
export function withoutOfflineWorker(): void {
  Reflect.deleteProperty(Navigator.prototype, 'serviceWorker');
}

/** Waits for the page's own word that it can be used, and tells its errors if it never comes. */
export async function waitUntilReady(page: Page): Promise<void> {
  try {
    await page.locator('html[data-ready="true"]').waitFor({ state: 'attached' });
  } catch (error) {
    const errors = running.faults.join('\n') || 'none';
    throw new Error(`the page never got ready; its errors: ${errors}`, { cause: error });
  }
}

/** Keeps a picture of the page in .screenshots, for a person to look at, where `SCREENSHOTS=1` asks for it. */
export async function screenshot(page: Page, name: string): Promise<void> {
  if (process.env.SCREENSHOTS !== '1') return;
  const folder = join(HOUSE, '.screenshots');
  mkdirSync(folder, { recursive: true });
  await page.screenshot({ path: join(folder, `${name}.png`) });
}

/** The browser that runs with some flags, launched when the first page asks for it, and again where it is gone. */
function browserWith(flags: readonly string[]): Promise<Browser> {
  const known = launching.get(flags);
  if (known) return known;
  const launched = launch(flags);
  launching.set(flags, launched);
  const forget = (): void => {
    if (launching.get(flags) === launched) launching.delete(flags);
  };
  launched.then((browser) => browser.once('disconnected', forget), forget);
  return launched;
}

function launch(flags: readonly string[]): Promise<Browser> {
  const executablePath = findChromium();
  if (!executablePath) throw new Error('no Chromium found: run npm test, which installs or asks for one');
  return chromium.launch({ executablePath, args: [...flags] });
}

/** Closes the pages of a try of a test, and fails it where one of them was not clean. */
export async function endPages(): Promise<void> {
  const { faults, contexts } = running;
  running = { faults: [], contexts: [] };
  await Promise.all(contexts.map((context) => context.close()));
  if (faults.length > 0) throw new Error(`the page was not clean:\n${faults.join('\n')}`);
}
