import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Plan } from '../../src/core/plan/schema/plan';
import { DEMO, readPlan } from '../plans/readPlan';
import { seriousViolations } from './axe';
import { BUILDING, eventually } from './building';
import { between, fingers } from './fingers';
import { openPage, screenshot } from './harness';
import { keptPlan } from './keptPlan';
import { withoutReports } from './withoutReports';

const demo = readPlan(DEMO);
const markOf = (plan: Plan, markId: string) =>
  plan.cast.find(({ id }) => id === 'vera')?.marks.find(({ id }) => id === markId);
const cheatsOf = (plan: Plan) => plan.setups.find(({ id }) => id === 'ring')?.cheats;

const tape = (page: Page, markId: string): Locator => page.locator(`[data-mark="${markId}"]`);
const handle = (page: Page, key: string): Locator => page.locator(`[data-handle="${key}"]`);

async function middleOf(thing: Locator): Promise<{ x: number; y: number }> {
  const box = await thing.boundingBox();
  if (!box) throw new Error('it is not drawn');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** CSS pixels that a metre takes, by the scale in the title block. */
async function pixelsPerMetre(page: Page): Promise<number> {
  const scale = await page.locator('.titleblock dd').last().textContent();
  return 96 / 0.0254 / Number(/1\s*:\s*(\d+)/.exec(scale ?? '')?.[1]);
}

/** Drags with nothing to catch on. */
async function drag(page: Page, thing: Locator, by: readonly [number, number]): Promise<void> {
  const { x, y } = await middleOf(thing);
  await page.keyboard.down('Alt');
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + by[0] / 2, y + by[1] / 2);
  await page.mouse.move(x + by[0], y + by[1], { steps: 3 });
  await page.mouse.up();
  await page.keyboard.up('Alt');
}

test('a mark is dragged with its walk, a way gets a place and loses it by a key, a cheat leaves the master', async () => {
  const page = await openPage({
    width: 1440,
    height: 900,
    before: [...BUILDING, withoutReports],
  });
  await page.keyboard.press('2');
  await page.getByRole('button', { name: 'Only in A' }).waitFor();
  const metre = await pixelsPerMetre(page);
  const v2 = markOf(demo, 'v2')?.at ?? [0, 0];

  // Held, it tells how long the walk to it has become; let go, it is one step.
  const from = await middleOf(tape(page, 'v2'));
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + metre / 2, from.y + metre / 2, { steps: 3 });
  await eventually(() => page.locator('.readout text').textContent()).toMatch(
    /walk \d\.\d\u00a0m in 5\.\d\u00a0s/,
  );
  await page.mouse.move(from.x - metre, from.y + metre, { steps: 3 });
  await page.mouse.up();
  await eventually(async () => markOf(await keptPlan(page), 'v2')?.at[0]).toBeCloseTo(v2[0] - 1, 0);
  await page.keyboard.press('Control+z');
  await eventually(async () => markOf(await keptPlan(page), 'v2')?.at).toEqual(v2);

  // What was pressed is chosen: its walks have their dots.
  await drag(page, handle(page, 'insert v2 0'), [0, metre]);
  await eventually(async () => markOf(await keptPlan(page), 'v2')?.way?.through.length).toBe(1);
  await handle(page, 'bend v2').press('Enter');
  await eventually(async () => markOf(await keptPlan(page), 'v2')?.way?.line).toBe('curved');
  await screenshot(page, 'blocking-on-roof');
  await handle(page, 'way v2 0').press('Delete');
  await eventually(async () => markOf(await keptPlan(page), 'v2')?.way).toBeUndefined();

  await page.getByRole('button', { name: /^Camera of setup F/ }).press('Enter');
  await page.getByRole('button', { name: 'Only in F' }).click();
  await drag(page, tape(page, 'v2'), [0, metre]);
  await eventually(async () => cheatsOf(await keptPlan(page))?.map(({ mark }) => mark)).toEqual(['v2']);
  expect((await keptPlan(page)).cast).toEqual(demo.cast);
  // The camera pans to 15.6°: a metre down the sheet is 0.96 m towards it and 0.27 m to its right.
  await eventually(() => page.locator('.lettering', { hasText: 'in F only' }).textContent()).toMatch(
    /0\.9\d\u00a0m towards and 0\.2\d\u00a0m to the right in F only/,
  );
  await screenshot(page, 'blocking-only-in');
  await page.getByRole('button', { name: 'fields', exact: true }).click();
  await page.locator('#blocking-panel').waitFor();
  expect(await seriousViolations(page)).toEqual([]);

  await handle(page, 'back v2').press('Enter');
  await eventually(async () => cheatsOf(await keptPlan(page))).toBeUndefined();
});

test('a finger drags a mark', async () => {
  const page = await openPage({
    width: 1180,
    height: 820,
    touch: true,
    theme: 'day',
    before: [...BUILDING, withoutReports],
  });
  const { x, y } = await middleOf(tape(page, 'r3'));
  await page.touchscreen.tap(x, y);
  await handle(page, 'mark r3').waitFor({ state: 'attached' });
  await fingers(page, between([{ x, y }], [{ x: x + 60, y }]));
  const before = demo.cast.find(({ id }) => id === 'rui')?.marks[2]?.at[0] ?? 0;
  await eventually(
    async () => (await keptPlan(page)).cast.find(({ id }) => id === 'rui')?.marks[2]?.at[0] ?? 0,
  ).toBeGreaterThan(before + 1);
});
