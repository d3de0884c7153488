import type { CDPSession, Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { whereabouts } from '../../src/core/form/figure/whereabouts';
import type { Mark } from '../../src/core/plan/schema/cast';
import type { Plan } from '../../src/core/plan/schema/plan';
import { DEMO, readPlan } from '../plans/readPlan';
import { seriousViolations } from './axe';
import { openPage, screenshot } from './harness';
import { keptPlan } from './keptPlan';
import { withoutPicture } from './withoutPicture';
import { withoutReports } from './withoutReports';

/** Without a graphics card a page may take its time. */
const eventually = <Value>(read: () => Promise<Value>) => expect.poll(read, { timeout: 30_000 });
const BEFORE = [withoutPicture, withoutReports];

const demo = readPlan(DEMO);
const markOf = (plan: Plan, performerId: string, markId: string): Mark | undefined =>
  plan.cast.find(({ id }) => id === performerId)?.marks.find(({ id }) => id === markId);
const secondsOf = (plan: Plan): readonly number[] => plan.beats.map(({ atSeconds }) => atSeconds);

const thing = (page: Page, key: string): Locator => page.locator(`[data-thing="${key}"]`);
const valueNow = (of: Locator): Promise<number> =>
  of.evaluate((each) => Number(each.getAttribute('aria-valuenow')));
const panel = (page: Page): Locator => page.locator('.blocking-panel');
const clock = async (page: Page): Promise<number> =>
  Number.parseFloat((await page.locator('.blocking-tools .clock').textContent()) ?? '');

async function openBlocking(theme: 'day' | 'night' = 'night'): Promise<Page> {
  const page = await openPage({ width: 1440, height: 900, theme, before: BEFORE });
  await page.keyboard.press('2');
  await page.locator('.times').waitFor();
  return page;
}

/** Where a moment lies, pixels of the page, by two beats of the demo. */
async function pixelAt(page: Page, seconds: number): Promise<number> {
  const places = await Promise.all(
    ['loft', 'alone'].map(async (id) => {
      const box = await thing(page, `beat ${id}`).locator('.dot').boundingBox();
      if (!box) throw new Error(`the beat ${id} is not drawn`);
      return box.x;
    }),
  );
  const [from = 0, to = 0] = places;
  return from + ((to - from) * seconds) / 40;
}

async function dragTo(page: Page, key: string, seconds: number, modifier?: 'Alt' | 'Shift'): Promise<void> {
  const box = await thing(page, key).locator('i').first().boundingBox();
  if (!box) throw new Error(`${key} is not drawn`);
  const y = box.y + box.height / 2;
  const from = box.x + box.width / 2;
  const to = await pixelAt(page, seconds);
  if (modifier) await page.keyboard.down(modifier);
  await page.mouse.move(from, y);
  await page.mouse.down();
  await page.mouse.move((from + to) / 2, y);
  await page.mouse.move(to, y);
  await page.locator('.held-line').waitFor();
  await page.mouse.up();
  if (modifier) await page.keyboard.up(modifier);
}

test('a mark is dragged to a beat and the end of a hold onto a second, each one step', async () => {
  const page = await openBlocking();
  await dragTo(page, 'mark vera v3', 13.2);
  await eventually(async () => markOf(await keptPlan(page), 'vera', 'v3')?.beat).toBe('closer');
  await page.keyboard.press('Control+z');
  await eventually(() => valueNow(thing(page, 'mark vera v3'))).toBe(18);

  // It catches on the whole second, and says so while it is held.
  await dragTo(page, 'hold vera v2', 12.1);
  await eventually(() => valueNow(thing(page, 'hold vera v2'))).toBe(12);
  await eventually(async () => markOf(await keptPlan(page), 'vera', 'v2')?.holdSeconds).toBe(3);
});

test('a beat that is dragged with Shift, or with ripple on, takes along all that comes after', async () => {
  const page = await openBlocking();
  await dragTo(page, 'beat turn', 30, 'Shift');
  await eventually(async () => secondsOf(await keptPlan(page))).toEqual([
    0, 5, 9, 14, 18, 22, 26, 30, 33, 38,
  ]);
  await page.keyboard.press('Control+z');
  await eventually(() => valueNow(thing(page, 'beat alone'))).toBe(40);

  // The button does what Shift does.
  await page.getByRole('button', { name: 'ripple', exact: true }).click();
  await dragTo(page, 'beat cross', 36);
  await eventually(async () => secondsOf(await keptPlan(page)).slice(-2)).toEqual([36, 41]);
});

test('the span of a setup ends at another beat, and Escape in the middle of a drag leaves all as it was', async () => {
  const page = await openBlocking();
  await page.locator('.timeline').evaluate((each) => each.scrollTo(0, 160));
  await dragTo(page, 'span wide to', 22.4);
  await eventually(async () => (await keptPlan(page)).setups[0]?.span.to).toBe('ring');

  const held = await thing(page, 'span wide to').locator('i').first().boundingBox();
  if (!held) throw new Error('the end of the span is not drawn');
  await page.mouse.move(held.x, held.y + 8);
  await page.mouse.down();
  await page.mouse.move(held.x - 90, held.y + 8, { steps: 3 });
  await page.locator('.held-line').waitFor();
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await eventually(() => valueNow(thing(page, 'span wide to'))).toBe(22);
});

test('by keys: a beat is added at the playhead, named in its place, nudged, and taken out', async () => {
  const page = await openBlocking();
  await page.getByRole('slider', { name: 'Playhead' }).focus();
  await page.keyboard.press('Control+ArrowRight');
  await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('Shift+ArrowRight');
  // From the beat at 9 s to the next, and two seconds on.
  await eventually(() => clock(page)).toBe(16);
  await page.getByRole('button', { name: 'Add a beat' }).focus();
  await page.keyboard.press('Enter');
  const name = page.getByRole('textbox', { name: /^name of beat/ });
  await name.waitFor();
  await name.fill('');
  await name.press('Enter');
  await page.locator('.name-input [role="alert"]').waitFor();
  await name.fill('The bird stirs');
  await name.press('Enter');
  const own = page.getByRole('slider', { name: 'Beat 5, The bird stirs, 16.0\u00a0s' });
  await own.waitFor();
  await eventually(() => own.evaluate((each) => each === document.activeElement)).toBe(true);
  await page.keyboard.press('ArrowRight');
  const nudged = page.getByRole('slider', { name: /^Beat 5, The bird stirs/ });
  await eventually(() => valueNow(nudged)).toBeCloseTo(16 + 1 / 24, 3);
  await page.keyboard.press('Shift+ArrowLeft');
  await eventually(() => valueNow(nudged)).toBeCloseTo(15 + 1 / 24, 3);
  await page.keyboard.press('Delete');
  await eventually(async () => secondsOf(await keptPlan(page))).toEqual(secondsOf(demo));

  // Down and up go from lane to lane; a mark goes from beat to beat.
  await thing(page, 'mark nuno n3').focus();
  await page.keyboard.press('ArrowDown');
  await eventually(() =>
    thing(page, 'mark vera v3').evaluate((each) => each === document.activeElement),
  ).toBe(true);
  expect(await thing(page, 'mark vera v3').getAttribute('aria-label')).toBe(
    "Vera's mark V3 at beat 5, 18.0\u00a0s, faces 90°",
  );
  await page.keyboard.press('ArrowLeft');
  await eventually(async () => markOf(await keptPlan(page), 'vera', 'v3')?.beat).toBe('closer');

  // Enter opens its fields: she faces Nuno.
  await page.keyboard.press('Enter');
  await panel(page).getByRole('combobox', { name: 'faces', exact: true }).selectOption({ label: 'Nuno' });
  await eventually(() => thing(page, 'mark vera v3').getAttribute('aria-label')).toMatch(/faces Nuno$/);
  await panel(page)
    .getByRole('combobox', { name: 'looks', exact: true })
    .selectOption({ label: 'by angles' });
  await panel(page).getByRole('textbox', { name: 'head turned' }).fill('20');
  await panel(page).getByRole('textbox', { name: 'head turned' }).press('Enter');
  await panel(page).getByRole('combobox', { name: 'comes' }).selectOption('curved');
  await eventually(async () => markOf(await keptPlan(page), 'vera', 'v3')).toMatchObject({
    faces: { who: 'nuno' },
    looks: { turnDegrees: 20, tiltDegrees: 0 },
    way: { line: 'curved' },
  });
});

test('ready moves are shown before they are done; a pass and a line are set; all are single steps', async () => {
  const page = await openBlocking();
  await page.getByRole('button', { name: 'fields', exact: true }).click();
  await panel(page).getByRole('button', { name: 'Draw a line' }).click();
  await panel(page).getByRole('combobox', { name: 'established by' }).selectOption({ label: 'A Wide, both' });
  await eventually(async () => (await keptPlan(page)).lines?.[0]).toMatchObject({
    pair: ['nuno', 'vera'],
    establishedBy: 'wide',
  });

  // The playhead is at Vera's second mark, at 9 s: there the move goes, from 2.5 m away to 0.6 m.
  await page.locator('.lane-name').getByRole('button', { name: /^Vera/ }).click();
  await panel(page).getByText('Stop face to face').click();
  const move = panel(page).locator('details[open]');
  await move.getByRole('textbox', { name: 'between their eyes' }).fill('0.6');
  await move.getByRole('combobox', { name: 'at beat' }).selectOption({ label: '5 Face to face' });
  await move.getByRole('button', { name: 'Preview' }).click();
  await page.locator('.lane.proposed').waitFor();
  await move.getByText('Their eyes are 0.60\u00a0m apart there.').waitFor();
  expect(markOf(await keptPlan(page), 'vera', 'v3')?.faces).toBeUndefined();
  await screenshot(page, 'blocking-proposed');
  await move.getByRole('button', { name: 'Do it' }).click();
  await eventually(async () => {
    const plan = await keptPlan(page);
    const [a, b] = plan.cast.map((performer) => whereabouts(performer, plan, 18)?.eyes);
    return a && b ? Math.hypot(a[0] - b[0], a[2] - b[2]) : Number.NaN;
  }).toBeCloseTo(0.6, 2);
  await page.keyboard.press('Control+z');
  await eventually(async () => markOf(await keptPlan(page), 'vera', 'v3')?.faces).toBeUndefined();

  // What is only shown is gone when it is left.
  await panel(page).getByText('Circle', { exact: true }).click();
  const circle = panel(page).locator('details[open]').first();
  await circle.getByRole('button', { name: 'Preview' }).click();
  await page.locator('.lane.proposed').waitFor();
  await circle.getByRole('button', { name: 'Leave it' }).click();
  await page.locator('.lane.proposed').waitFor({ state: 'detached' });

  await thing(page, 'mark nuno n4').click();
  await panel(page).getByRole('combobox', { name: 'hands it to' }).selectOption({ label: 'Vera' });
  const pass = page.getByRole('slider', { name: /^Nuno hands over to Vera at beat 7/ });
  await pass.waitFor();
  await pass.focus();
  await page.keyboard.press('ArrowRight');
  await eventually(async () => (await keptPlan(page)).passes?.[0]?.beat).toBe('turn');
});

test('it plays past React: the clock runs, starts again at the end of its loop, and stops', async () => {
  const page = await openBlocking();
  await page.getByText(/^Plays/).click();
  await page.getByRole('radio', { name: 'from beat to beat' }).check();
  await page
    .locator('.loop-menu')
    .getByRole('combobox', { name: 'from' })
    .selectOption({ label: '8 She turns for the stairs' });
  await page
    .locator('.loop-menu')
    .getByRole('combobox', { name: 'to' })
    .selectOption({ label: '9 Rui crosses behind' });
  await page.getByText(/^Plays/).click();
  // All that the clock says while it plays, from 32 to 35 s and over again.
  await page.evaluate(() => {
    const said: number[] = [];
    Object.assign(window, { said });
    const text = document.querySelector('.blocking-tools .clock');
    if (text)
      new MutationObserver(() => said.push(Number.parseFloat(text.textContent ?? ''))).observe(text, {
        childList: true,
      });
  });
  const said = (): Promise<readonly number[]> => page.evaluate(() => Reflect.get(window, 'said') as number[]);
  await page.getByRole('button', { name: 'Play the action' }).click();
  await eventually(async () => {
    const all = await said();
    return all.some((seconds, k) => k > 0 && seconds < all[k - 1]);
  }).toBe(true);
  await page.getByRole('button', { name: 'Pause the action' }).click();
  // It was at 9 s, and comes into the loop as soon as it plays.
  const all = (await said()).filter((seconds) => seconds !== 9);
  expect(all[0]).toBe(32);
  expect(Math.min(...all)).toBeGreaterThanOrEqual(32);
  expect(Math.max(...all)).toBeLessThanOrEqual(35);
  // The line of the playhead is where the clock is.
  const now = await clock(page);
  const line = await page.locator('.playhead-line').boundingBox();
  expect(Math.abs((line?.x ?? 0) + 1 - (await pixelAt(page, now)))).toBeLessThan(2);
  await page.getByRole('button', { name: 'A frame on' }).click();
  await eventually(() => clock(page)).not.toBe(now);
  await page.getByRole('button', { name: 'Next beat' }).click();
  await eventually(async () => [35, 32].includes(await clock(page))).toBe(true);
});

/** One finger that goes from a place to another. */
async function finger(session: CDPSession, from: { x: number; y: number }, toX: number): Promise<void> {
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: { x: number; y: number }[]) =>
    session.send('Input.dispatchTouchEvent', { type, touchPoints: points });
  await send('touchStart', [from]);
  for (const share of [0.2, 0.5, 0.8, 1])
    await send('touchMove', [{ x: from.x + (toX - from.x) * share, y: from.y }]);
  await send('touchEnd', []);
}

test('on a phone a mark is tapped and dragged by a finger, its fields stand below, and every target fits', async () => {
  const page = await openPage({ width: 390, height: 844, touch: true, theme: 'day', before: BEFORE });
  await page.getByRole('tab', { name: /Blocking/ }).tap();
  await page.locator('.times').waitFor();
  await page.locator('.timeline').scrollIntoViewIfNeeded();
  const v3 = thing(page, 'mark vera v3');
  const from = await v3.locator('.tick').boundingBox();
  if (!from) throw new Error('the mark is not drawn');
  await page.touchscreen.tap(from.x + 1, from.y + 8);
  await eventually(() => v3.getAttribute('class')).toContain('chosen');
  await panel(page).getByText('Vera, mark V3').waitFor();
  await screenshot(page, 'blocking-phone');
  const at = await v3.locator('.tick').boundingBox();
  if (!at) throw new Error('the mark is not drawn');
  const session = await page.context().newCDPSession(page);
  await finger(session, { x: at.x + 1, y: at.y + 8 }, await pixelAt(page, 14));
  await eventually(async () => markOf(await keptPlan(page), 'vera', 'v3')?.beat).toBe('closer');

  const small = await page
    .locator('.sheet :is(button, select, summary), .sheet .field')
    .evaluateAll((targets) =>
      targets
        .filter((target) => !target.parentElement?.closest('.field') && !target.hasAttribute('aria-hidden'))
        .map((target) => ({ name: target.textContent, box: target.getBoundingClientRect() }))
        .filter(({ box }) => box.height > 0 && (box.height < 48 || box.width < 40))
        .map(({ name, box }) => `${name}: ${box.width} × ${box.height}`),
    );
  expect(small).toEqual([]);
  expect(
    await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
  ).toBeLessThanOrEqual(0);
  expect(await seriousViolations(page)).toEqual([]);
});

test.each(['night', 'day'] as const)('by %s nobody trips over the timeline and its fields', async (theme) => {
  const page = await openBlocking(theme);
  await screenshot(page, `blocking-${theme}`);
  await thing(page, 'mark vera v2').dblclick();
  await panel(page).getByText('Vera, mark V2').waitFor();
  expect(await seriousViolations(page)).toEqual([]);
  await page.locator('.lane-name').getByRole('button', { name: /^Nuno/ }).click();
  await panel(page).getByText('Come from a corner').click();
  await screenshot(page, `blocking-fields-${theme}`);
  expect(await seriousViolations(page)).toEqual([]);
});
