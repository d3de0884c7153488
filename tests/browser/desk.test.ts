import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { parsePlanText } from '../../src/core/plan/parse';
import { serialisePlan } from '../../src/core/plan/serialise';
import { EMPTY_PLAN } from '../../src/desk/emptyPlan';
import { seriousViolations } from './axe';
import { drop } from './dropping';
import { openPage, screenshot } from './harness';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';
import { withoutReports } from './withoutReports';

const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);

test('a broken file is refused with a sentence, a good one is saved as it reads', async () => {
  const page = await openPage({
    width: 1440,
    height: 900,
    theme: 'day',
    before: [withoutPicture, withoutReports],
  });
  const plan = page.locator('.top h2');
  const title = await plan.textContent();
  await drop(page, ['broken.plan.json', '{"standclear": 1, "title": 7}']);
  const toast = page.locator('.toast');
  await toast.waitFor();
  expect(await toast.textContent()).toContain('broken.plan.json was not opened.');
  const [said, sheet] = [await toast.boundingBox(), await page.locator('.sheet').boundingBox()];
  expect((said?.x ?? 0) + (said?.width ?? 0), 'the toast leaves the sheet free').toBeLessThan(sheet?.x ?? 0);
  expect(await plan.textContent()).toBe(title);

  await page.evaluate(() => {
    const picker = async (): Promise<FileSystemFileHandle> =>
      (await navigator.storage.getDirectory()).getFileHandle('saved.plan.json', { create: true });
    Object.assign(window, { showSaveFilePicker: picker });
  });
  await page.keyboard.press('Control+s');
  await page.locator('.toast', { hasText: 'Saved as saved.plan.json.' }).waitFor();
  const text = await page.evaluate(async () => {
    const folder = await navigator.storage.getDirectory();
    return (await (await folder.getFileHandle('saved.plan.json')).getFile()).text();
  });
  const read = parsePlanText(text);
  expect(read.ok && read.value.title).toBe(title);
  await screenshot(page, 'desk-day-1440x900');

  await drop(page, ['other.plan.json', text.replace(`"title": "${title}"`, '"title": "Other night"')]);
  await page.locator('.toast', { hasText: 'Other night is open.' }).waitFor();
  await page.locator('.toast', { hasText: 'Other night' }).getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => plan.textContent(), { timeout: 30_000 }).toBe(title);
  expect(await seriousViolations(page)).toEqual([]);
});

test('an empty plan says the next act, and the act can be undone', async () => {
  const page = await openPage({ width: 1440, height: 900, before: [withoutPicture, withoutDemo] });
  await drop(page, ['empty.plan.json', serialisePlan(EMPTY_PLAN)]);
  await page.getByText('No setup yet.', { exact: true }).waitFor();
  // What makes the findings pointless stands above them.
  await page.getByRole('region', { name: 'Before the findings' }).getByText('no setup').waitFor();
  await page.getByRole('button', { name: 'Place a camera' }).first().click();
  await page.locator('.strip .card').waitFor();
  expect(await page.locator('.frame-pane h2').textContent()).toContain('A');
  await page.locator('.desk').press('Control+z');
  await page.getByText('No setup yet.', { exact: true }).waitFor();

  // On a phone nothing stands between the tabs and the notice, nor between that and the roof.
  await page.setViewportSize({ width: 390, height: 844 });
  const bounds = async (part: string) => {
    const box = await page.locator(part).last().boundingBox();
    return { top: box?.y ?? Number.NaN, bottom: (box?.y ?? Number.NaN) + (box?.height ?? Number.NaN) };
  };
  const [tabs, tab] = [await bounds('.tabs'), await bounds('.tabs [role="tablist"]')];
  expect(tabs.bottom - tab.bottom).toBeLessThan(4);
  expect((await bounds('.roof')).top - (await bounds('.notices')).bottom).toBeLessThan(24);
});

test.each(['night', 'day'] as const)('a phone by %s holds everything in its width', async (theme) => {
  const page = await openPage({ width: 390, height: 844, theme, touch: true, before: withoutPicture });
  await screenshot(page, `desk-${theme}-390x844`);
  expect(await overflow(page)).toBeLessThanOrEqual(0);
  const small = await page
    .locator('.top button, .top summary, .tabs button, .rows button, .strip button, .scrub button')
    .evaluateAll((targets) =>
      targets
        .map((target) => ({ name: target.textContent, box: target.getBoundingClientRect() }))
        .filter(({ box }) => box.height > 0 && (box.height < 48 || box.width < 40))
        .map(({ name, box }) => `${name}: ${box.width} × ${box.height}`),
    );
  expect(small).toEqual([]);
  expect(await seriousViolations(page)).toEqual([]);
  const top = async (part: string): Promise<number> =>
    (await page.locator(part).boundingBox())?.y ?? Number.NaN;
  expect(await top('.strip'), 'the setups come before the sheet').toBeLessThan(await top('.sheet'));
});

test('a browser without storage and WebGL says so on a phone, and the page goes on', async () => {
  const page = await openPage({
    width: 390,
    height: 844,
    touch: true,
    before: [
      withoutPicture,
      () => {
        IDBFactory.prototype.open = () => {
          throw new DOMException('refused', 'SecurityError');
        };
      },
    ],
  });
  expect(await page.locator('.top .kept').isVisible()).toBe(true);
  expect(await page.locator('.top .kept').textContent()).toContain('refuses storage');
  expect(await overflow(page)).toBeLessThanOrEqual(0);

  // The walk-round takes the whole window, and who comes back is still at the roof.
  await page.getByRole('button', { name: 'walk round' }).click();
  await page.locator('.walk-round', { hasText: 'WebGL' }).waitFor();
  expect((await page.locator('.roof').boundingBox())?.height).toBeGreaterThan(600);
  await page.getByRole('button', { name: 'overhead' }).click();
  const roof = await page.locator('.roof .bar').boundingBox();
  expect(roof?.y).toBeLessThan(844);

  await page.locator('.findings button').first().click();
  await page.getByRole('button', { name: 'Take it out', exact: true }).click();
  await page.locator('.toast', { hasText: 'is out of the plan.' }).waitFor();
});
