import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { parsePlanText } from '../../src/core/plan/parse';
import { linkOfPlan } from '../../src/exchange/link/link';
import { smallRoof } from '../unit/smallRoof';
import { seriousViolations } from './axe';
import { breakable, breakPart, loadBreakable, ON_PURPOSE } from './breaking';
import { eventually, savedPlan } from './building';
import { openPage, screenshot } from './harness';
import { keptPlan } from './keptPlan';
import { withPlainFiles } from './plainFiles';
import { withoutPicture } from './withoutPicture';
import { withoutReports } from './withoutReports';

/** Beside others a page may take its time. */
const PATIENT = { timeout: 600_000 };

/** Of what draws each part an element's class, what it is called, and what of it is seen while it is whole. */
interface Part {
  readonly drawn: string;
  readonly said: string;
  readonly seen: string;
}
const OVERHEAD: Part = { drawn: 'furniture', said: 'The roof stopped.', seen: '.sheet-drawing' };
const SHEET: Part = { drawn: 'two', said: 'The sheet stopped.', seen: '.sheet-panel .two' };
const FRAME: Part = { drawn: 'q glass', said: 'The frame stopped.', seen: '.frame-pane .glass' };
const TIME: Part = { drawn: 'scrub', said: 'The time bar stopped.', seen: '.scrub' };
const BLOCKING: Part = { drawn: 'times', said: 'This part stopped.', seen: '.sheet-panel .times' };
const HEADER: Part = { drawn: 'top', said: 'The header stopped.', seen: 'header.top' };

const SAFE = 'The others go on. The plan is saved on this device.';
const stopped = (page: Page, { said }: Part): Locator => page.locator('.stopped', { hasText: said });

/** Has everything drawn once more that draws the plan. */
const edit = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const type of ['keydown', 'keyup'])
      window.dispatchEvent(new KeyboardEvent(type, { key: 'ArrowRight', bubbles: true, cancelable: true }));
  });

async function acrossKept(page: Page): Promise<number> {
  const stand = (await keptPlan(page)).gear.find(({ id }) => id === 'stand-1');
  return stand && 'at' in stand ? stand.at[0] : Number.NaN;
}

test(
  'a part of the desk that throws says so in its place and gives the plan; the others go on, the edit is kept',
  PATIENT,
  async () => {
    const page = await openPage({
      width: 1440,
      height: 900,
      before: [withoutPicture, withoutReports, withPlainFiles, breakable],
    });
    const parts = [OVERHEAD, FRAME, TIME, SHEET, HEADER];
    await loadBreakable(
      page,
      [...parts, BLOCKING].map(({ drawn }) => drawn),
    );
    await page.getByRole('tab', { name: 'Set' }).click();
    await page.locator('[data-target="stand-1"]').focus();
    await page.keyboard.press('Enter');
    await page.getByRole('tab', { name: 'Frames' }).click();
    let across = await acrossKept(page);
    for (const part of parts) {
      await breakPart(page, part.drawn);
      // Some are drawn anew by an edit, the others by what is chosen or turned.
      if (part === SHEET || part === HEADER) await page.getByRole('tab', { name: 'Light' }).click();
      if (part === SHEET) await page.getByRole('tab', { name: 'Frames' }).click();
      if (part === HEADER) await page.getByRole('button', { name: /^Turn to/ }).click();
      if (part === FRAME || part === TIME) await page.locator('.strip .card').nth(1).click();
      await edit(page);
      await stopped(page, part).waitFor();
      await expect.poll(() => page.locator('.stopped').count()).toBe(1);
      await eventually(() => stopped(page, part).textContent()).toContain(SAFE);
      expect(await stopped(page, part).textContent()).toContain(ON_PURPOSE);
      for (const other of parts)
        if (other !== part && !(part === FRAME && other === TIME) && other !== SHEET)
          expect(await page.locator(other.seen).first().isVisible(), `${part.said} ${other.seen}`).toBe(true);
      await eventually(() => acrossKept(page)).toBeCloseTo(across + 0.1);
      across += 0.1;
      const file = await savedPlan(page, () =>
        stopped(page, part).getByRole('button', { name: 'Save the plan' }).click(),
      );
      expect(file).toEqual(await keptPlan(page));
      await breakPart(page, null);
      await stopped(page, part).getByRole('button', { name: 'Draw it again' }).click();
      await page.locator(part.seen).first().waitFor();
      expect(await page.locator('.stopped').count()).toBe(0);
    }

    // A sheet that comes in a script of its own: the tabs still lead to the others.
    await breakPart(page, BLOCKING.drawn);
    await page.getByRole('tab', { name: 'Blocking' }).click();
    await stopped(page, BLOCKING).waitFor();
    expect(await seriousViolations(page)).toEqual([]);
    await screenshot(page, 'fault-in-timeline');
    await page.getByRole('tab', { name: 'Set' }).click();
    await page.getByRole('searchbox', { name: 'find' }).waitFor();
    await breakPart(page, null);
    await page.getByRole('tab', { name: 'Blocking' }).click();
    await page.locator(BLOCKING.seen).waitFor();
  },
);

test(
  'a part of the crew sheet that throws gives the plan, and the rest of the sheet goes on',
  PATIENT,
  async () => {
    const plan = smallRoof();
    const page = await openPage({
      width: 390,
      height: 844,
      touch: true,
      address: `#${linkOfPlan(plan).fragment}`,
      before: [withoutPicture, withPlainFiles, breakable],
    });
    await loadBreakable(page, ['crew-page crew-times', 'crew-setup', 'crew-broken']);
    const tab = (name: string): Promise<void> =>
      page.getByRole('navigation', { name: 'Crew sheet' }).getByRole('button', { name, exact: true }).tap();
    await breakPart(page, 'crew-page crew-times');
    await tab('Times');
    const fault = page.locator('.crew-none', { hasText: 'This part of the sheet stopped.' });
    await fault.getByRole('alert').filter({ hasText: 'The plan is safe in its link.' }).waitFor();
    expect(await seriousViolations(page)).toEqual([]);
    await screenshot(page, 'fault-in-crew-sheet');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      fault.getByRole('button', { name: 'Save the plan' }).tap(),
    ]);
    expect(download.suggestedFilename()).toBe('small-roof.plan.json');
    const read = parsePlanText(readFileSync(await download.path(), 'utf8'));
    expect(read.ok && read.value.setups.map(({ label }) => label)).toEqual(
      plan.setups.map(({ label }) => label),
    );
    await fault.getByRole('status').filter({ hasText: 'Saved as small-roof.plan.json.' }).waitFor();
    expect(await fault.locator('[role="alert"] [role="status"]').count()).toBe(0);

    await tab('Setups');
    await breakPart(page, 'crew-setup');
    await page.getByRole('button', { name: /Master from the stairs$/ }).tap();
    await fault.waitFor();
    await breakPart(page, null);
    await fault.getByRole('button', { name: 'Try again' }).tap();
    await page.getByRole('heading', { name: 'A, Master from the stairs' }).waitFor();

    // A link that does not open gives no plan, and none is offered.
    await breakPart(page, 'crew-broken');
    await page.evaluate(() => location.replace('#1nothing'));
    await fault.waitFor();
    expect(await fault.textContent()).not.toContain('plan');
    await breakPart(page, null);
    await fault.getByRole('button', { name: 'Try again' }).tap();
    await page.getByRole('heading', { name: 'This link does not open' }).waitFor();
  },
);
