import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { smallRoof } from '../unit/smallRoof';
import { seriousViolations } from './axe';
import { DESK_VIEWS, showView } from './deskViews';
import { dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { brokenWords, clippedWords, sidewaysScrolls, smallTargets } from './measured';
import { stopFaults, tabWalk } from './tabWalk';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';
import { withoutReports } from './withoutReports';

/** Runs in the page before its own code: that no worker starts is this test's own doing, and no fault of the page. */
function answersLeftOut(): void {
  addEventListener('unhandledrejection', (event) => {
    if (event.reason instanceof Error && event.reason.message === 'left out of this test')
      event.preventDefault();
  });
}

const DESK = { width: 1440, height: 900, before: [withoutPicture, withoutReports, answersLeftOut] };
/** Charts along a clock are wider than their room where they have to be. */
const CHARTS = '.coverage-scroll, .timeline';
/** Least side of a target, CSS pixels. `Source:` WCAG 2.2, success criterion 2.5.8. */
const LEAST_TARGET = 24;

const named = (view: (typeof DESK_VIEWS)[number]): string => view.filter(Boolean).join(', ');

async function hintsAway(page: Page): Promise<void> {
  const noMore = page.getByRole('button', { name: 'No more' });
  await noMore.waitFor();
  await noMore.click();
}

test('Tab comes to everything on the desk, goes on from everywhere, and what it comes to is in sight, ringed and named', async () => {
  const page = await openPage(DESK);
  await page.locator('.sheet-drawing [data-target]').first().waitFor({ state: 'attached' });
  const stops = await tabWalk(page);
  expect(stopFaults(stops)).toEqual([]);
  const roles = new Set(stops.map(({ role }) => role));
  for (const role of ['button', 'tab', 'slider']) expect(roles).toContain(role);
  expect(stops.filter(({ name }) => /^Lamp stand \d, stand/.test(name)).length).toBe(4);

  for (const view of DESK_VIEWS) {
    await showView(page, view);
    const own = await tabWalk(page, { from: '.sheet' });
    expect(stopFaults(own), named(view)).toEqual([]);
    expect(own.length, named(view)).toBeGreaterThan(8);
  }

  // What opens over the page: the focus goes in, stays in while it is open, and comes back.
  for (const [opener, dialog] of [
    ['Plans', 'Plans on this device'],
    ['Keys', 'Keys'],
  ] as const) {
    const button = page.locator('.top').getByRole('button', { name: opener, exact: true });
    await button.press('Enter');
    await page.getByRole('dialog', { name: dialog }).waitFor();
    expect(await page.evaluate(() => document.activeElement?.closest('dialog') !== null), dialog).toBe(true);
    expect(stopFaults(await tabWalk(page, { from: 'dialog[open]', most: 60 })), dialog).toEqual([]);
    await page.keyboard.press('Escape');
    await page.getByRole('dialog', { name: dialog }).waitFor({ state: 'hidden' });
    await expect.poll(() => button.evaluate((each) => each === document.activeElement)).toBe(true);
  }
}, 600_000);

test('every sheet by day has targets large enough, whole words, one way to scroll, and nothing that a weak eye or a screen reader trips over', async () => {
  const page = await openPage({ ...DESK, theme: 'day' });
  await hintsAway(page);
  for (const view of DESK_VIEWS) {
    await showView(page, view);
    expect(await smallTargets(page, LEAST_TARGET), named(view)).toEqual([]);
    expect(await clippedWords(page), named(view)).toEqual([]);
    expect(await brokenWords(page), named(view)).toEqual([]);
    expect(await sidewaysScrolls(page, CHARTS), named(view)).toEqual([]);
    expect(await seriousViolations(page), named(view)).toEqual([]);
  }

  // The headings go down by one at a time, and the page has its landmarks.
  const levels = await page
    .locator('h1, h2, h3, h4')
    .evaluateAll((all) =>
      all.filter((each) => each.checkVisibility()).map(({ tagName }) => Number(tagName[1])),
    );
  expect(levels[0]).toBe(1);
  for (const [place, level] of levels.entries())
    expect(level - (levels[place - 1] ?? 0), `heading ${place + 1}`).toBeLessThanOrEqual(1);
  for (const role of ['banner', 'main', 'navigation'] as const)
    expect(await page.getByRole(role).count(), role).toBe(1);
  for (const table of await page.getByRole('table').all())
    expect(await table.locator('th[scope]').count()).toBeGreaterThan(0);
}, 600_000);

/** The lines of controls over the panes. */
const BARS = '.top, .bar, .tabs, .night-bar, .column-head, .frames-head, .blocking-tools';

test('on a tablet on its side no bar runs out of its pane, and words and fields keep whole', async () => {
  const page = await openPage({ ...DESK, width: 1024, height: 768 });
  await hintsAway(page);
  for (const view of DESK_VIEWS) {
    await showView(page, view);
    expect(await clippedWords(page), named(view)).toEqual([]);
    expect(await brokenWords(page), named(view)).toEqual([]);
    expect(await sidewaysScrolls(page, `${CHARTS}, .strip`), named(view)).toEqual([]);
    const over = await page
      .locator(BARS)
      .evaluateAll((bars) =>
        bars
          .filter((bar) => bar.checkVisibility() && bar.scrollWidth > bar.clientWidth + 1)
          .map(({ className }) => className),
      );
    expect(over, named(view)).toEqual([]);
  }
  expect(await page.locator('.desk').evaluate((desk) => desk.scrollLeft)).toBe(0);
}, 600_000);

test('at twice its size the desk loses nothing: all of it is come to, and only the strip of setups goes sideways', async () => {
  const page = await openPage({ ...DESK, width: 720, height: 450 });
  await page.locator('.strip .card').first().waitFor();
  for (const view of DESK_VIEWS) {
    await showView(page, view);
    expect(await sidewaysScrolls(page, `${CHARTS}, .strip`), named(view)).toEqual([]);
    const seen = await page.locator('#sheet-panel').evaluate((panel) => {
      panel.scrollIntoView();
      const { top } = panel.getBoundingClientRect();
      return innerHeight - top;
    });
    // Room to read in, under the header and the picture.
    expect(seen, named(view)).toBeGreaterThan(200);
  }
  await screenshot(page, 'desk-at-twice-its-size');
  for (const name of ['Keys', 'Plans'] as const) {
    await page.locator('.top summary', { hasText: 'more' }).click();
    await page.locator('.top .more').getByRole('button', { name, exact: true }).click();
    await page.locator('dialog[open]').waitFor();
    expect(await sidewaysScrolls(page, '.strip'), name).toEqual([]);
    await page.keyboard.press('Escape');
    await page.locator('dialog[open]').waitFor({ state: 'detached' });
  }
  await page.getByRole('button', { name: 'walk round' }).click();
  await page.getByRole('button', { name: 'overhead' }).click();
  await page.locator('.sheet-drawing').scrollIntoViewIfNeeded();
}, 600_000);

test('letters alone do nothing once they are turned off, and no change of the page moves where motion is not wanted', async () => {
  const page = await openPage(DESK);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  const sheet = page.locator('[role="tab"][aria-selected="true"]');
  await page.keyboard.press('1');
  await expect.poll(() => sheet.textContent()).toMatch(/Set$/);
  await page.getByRole('button', { name: 'Keys', exact: true }).click();
  await page.getByRole('checkbox', { name: /^Letters, digits and signs/ }).uncheck();
  await page.keyboard.press('Escape');
  await page.keyboard.press('2');
  await page.keyboard.press('?');
  await page.keyboard.press('ControlOrMeta+a');
  expect(await sheet.textContent()).toMatch(/Set$/);
  expect(await page.locator('dialog[open]').count()).toBe(0);

  await page.getByRole('button', { name: /^Turn to/ }).click();
  await page.locator('#tab-light').hover();
  await page.locator('#tab-light').click();
  const moving = await page.evaluate(() =>
    document
      .getAnimations()
      .filter(({ effect }) => Number(effect?.getComputedTiming().duration ?? 0) > 1)
      .map((animation) => (animation instanceof CSSTransition ? animation.transitionProperty : animation.id)),
  );
  expect(moving).toEqual([]);
});

test('an edit that changes findings is spoken once, with what went; the picture says what it holds', async () => {
  const page = await openPage({ ...DESK, before: [withoutPicture, withoutDemo] });
  await dropPlan(page, smallRoof());
  const live = page.locator('p[aria-live="polite"]', { hasText: /^Setup A, Master from the stairs: / });
  await live.waitFor({ state: 'attached', timeout: 300_000 });
  // Only once the night is read whole can an edit be told from it.
  await expect.poll(() => page.locator('.reading').count(), { timeout: 300_000 }).toBe(0);
  // Whatever a region says aloud, whether it was there before or comes with its words.
  await page.evaluate(() => {
    const said: string[] = [];
    Object.assign(window, { said });
    const LIVE = '[aria-live="polite"], [role="status"], [role="alert"]';
    new MutationObserver((changes) => {
      const regions = changes.flatMap(({ target, addedNodes }) =>
        [target, ...addedNodes].flatMap((node) => {
          const element = node instanceof Element ? node : node.parentElement;
          return [element?.closest(LIVE) ?? [], ...(element?.querySelectorAll(LIVE) ?? [])].flat();
        }),
      );
      for (const region of new Set(regions)) {
        const words = region.textContent ?? '';
        if (words !== '' && said.at(-1) !== words) said.push(words);
      }
    }).observe(document.body, { childList: true, subtree: true, characterData: true });
  });
  /** All that says that something shows no longer, is in the way or out of it. */
  const said = (): Promise<readonly string[]> =>
    page.evaluate(() => {
      const { said } = window as unknown as { said: readonly string[] };
      return said.filter((words) => /^Setup A|No longer|New:|the way/.test(words));
    });
  const holds = page.locator('.picture p.vh');
  expect(await holds.textContent()).toMatch(/^In frame: .*Lamp stand 1/);

  // The stand goes, and its head with it.
  await page
    .locator('.sheet-drawing')
    .getByRole('button', { name: /^Lamp stand 1, stand/ })
    .press('Enter');
  await page.keyboard.press('Delete');
  await expect.poll(said, { timeout: 300_000 }).not.toEqual([]);
  // Seen by whoever looks, at the same time.
  await page.locator('.toast', { hasText: 'the way' }).waitFor();
  const words = await said();
  expect(words.length).toBe(1);
  expect(words[0]).toContain('No longer: Lamp stand 1');
  await expect.poll(() => holds.textContent()).not.toContain('Lamp stand 1');
}, 600_000);
