import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { whereabouts } from '../../src/core/form/figure/whereabouts';
import type { Mark } from '../../src/core/plan/schema/cast';
import type { Plan } from '../../src/core/plan/schema/plan';
import { parseLength } from '../../src/core/units/lengths';
import { DEMO, readPlan } from '../plans/readPlan';
import { seriousViolations } from './axe';
import { between, fingers } from './fingers';
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
const cuesOf = (plan: Plan, id: string): readonly unknown[] =>
  plan.gear.flatMap((gear) => (gear.id === id && 'cues' in gear ? (gear.cues ?? []) : []));
const secondsOf = (plan: Plan): readonly number[] => plan.beats.map(({ atSeconds }) => atSeconds);

const thing = (page: Page, key: string): Locator => page.locator(`[data-thing="${key}"]`);
const valueNow = (of: Locator): Promise<number> =>
  of.evaluate((each) => Number(each.getAttribute('aria-valuenow')));
const panel = (page: Page): Locator => page.locator('.blocking-panel');
const clock = async (page: Page): Promise<number> =>
  Number.parseFloat((await page.locator('.blocking-tools .clock').textContent()) ?? '');

async function openBlocking(): Promise<Page> {
  const page = await openPage({ width: 1440, height: 900, before: BEFORE });
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

test('by mouse: marks, holds, beats, spans and cues are dragged, each one step, and Escape leaves all as it was', async () => {
  const page = await openBlocking();
  await dragTo(page, 'mark vera v3', 13.2);
  await eventually(async () => markOf(await keptPlan(page), 'vera', 'v3')?.beat).toBe('closer');
  await page.keyboard.press('Control+z');
  await eventually(() => valueNow(thing(page, 'mark vera v3'))).toBe(18);

  // It catches on the whole second, and says so while it is held.
  await dragTo(page, 'hold vera v2', 12.1);
  await eventually(() => valueNow(thing(page, 'hold vera v2'))).toBe(12);
  await eventually(async () => markOf(await keptPlan(page), 'vera', 'v2')?.holdSeconds).toBe(3);

  // A beat that is dragged with Shift takes along all that comes after.
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
  await page.keyboard.press('Control+z');

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

  // The sign is put out at a moment, and goes on a beat with its fade.
  const sign = thing(page, 'lamp sign');
  await sign.scrollIntoViewIfNeeded();
  await sign.click();
  await page.getByRole('button', { name: 'fields', exact: true }).click();
  // By its key: what is being read may push the panel along between a press and its release.
  await panel(page).getByRole('button', { name: 'Add a cue at the playhead' }).press('Enter');
  await thing(page, 'cue sign 0').waitFor();
  await thing(page, 'cue sign 0').scrollIntoViewIfNeeded();
  await dragTo(page, 'cue sign 0', 18.2);
  await eventually(async () => cuesOf(await keptPlan(page), 'sign')).toEqual([
    { atSeconds: 0, beat: 'face', dim: 0, fadeSeconds: 2 },
  ]);
  await panel(page).getByRole('textbox', { name: 'dims to' }).fill('5');
  await panel(page).getByRole('textbox', { name: 'dims to' }).press('Enter');
  await thing(page, 'fade sign 0').focus();
  await page.keyboard.press('Shift+ArrowRight');
  await eventually(async () => cuesOf(await keptPlan(page), 'sign')).toEqual([
    { atSeconds: 0, beat: 'face', dim: 0.05, fadeSeconds: 3 },
  ]);
  await screenshot(page, 'blocking-cue');
  await page.keyboard.press('Delete');
  await eventually(async () => cuesOf(await keptPlan(page), 'sign')).toEqual([]);
});

test('a flicker ends on one beat and begins again on another, by buttons and fields, each one step', async () => {
  const page = await openBlocking();
  const sign = thing(page, 'lamp sign');
  await sign.scrollIntoViewIfNeeded();
  await sign.click();
  await page.getByRole('button', { name: 'fields', exact: true }).click();
  const ragged = page.locator('[data-lane="sign"] path.flickers');
  const widths = () =>
    ragged.evaluate((each) =>
      [...(each.getAttribute('d') ?? '').matchAll(/M([\d.]+) [\d.]+H([\d.]+)/g)].map(
        ([, from, to]) => Number(to) - Number(from),
      ),
    );
  const [whole = 0] = await widths();
  expect(whole).toBeGreaterThan(200);

  // The playhead is on the beat at 9 s: there it ends.
  await panel(page).getByRole('button', { name: 'Begin or end its flicker at the playhead' }).press('Enter');
  await thing(page, 'cue sign 0').waitFor();
  await eventually(async () => cuesOf(await keptPlan(page), 'sign')).toEqual([
    { atSeconds: 0, beat: 'stop', fadeSeconds: 0, flickers: false },
  ]);
  await eventually(() => widths().then(([first = 0]) => first / whole)).toBeCloseTo(9 / 43, 1);
  expect(await panel(page).getByRole('textbox', { name: 'dims to' }).inputValue()).toBe('');
  expect(await panel(page).getByRole('textbox', { name: 'fades over' }).count()).toBe(0);
  // A cue changes one of the two: what it dims to comes first where its flicker is to stay.
  await panel(page).getByRole('textbox', { name: 'dims to' }).fill('40');
  await panel(page).getByRole('textbox', { name: 'dims to' }).press('Enter');
  await panel(page).getByRole('textbox', { name: 'fades over' }).waitFor();

  await page.getByRole('slider', { name: 'Playhead' }).focus();
  await page.keyboard.press('Control+ArrowRight');
  await page.keyboard.press('Control+ArrowRight');
  await eventually(() => clock(page)).toBe(18);
  await panel(page)
    .getByRole('button', { name: /^All of / })
    .click();
  await panel(page).getByRole('button', { name: 'Begin or end its flicker at the playhead' }).press('Enter');
  await eventually(async () => cuesOf(await keptPlan(page), 'sign')).toEqual([
    { atSeconds: 0, beat: 'stop', dim: 0.4, fadeSeconds: 0, flickers: false },
    { atSeconds: 0, beat: 'face', fadeSeconds: 0, flickers: true },
  ]);
  await eventually(() => widths().then((all) => all.length)).toBe(2);
  await sign.scrollIntoViewIfNeeded();
  expect(await sign.getAttribute('aria-label')).toMatch(
    /flickers from 0\.0\u00a0s to 9\.0\u00a0s and from 18\.0\u00a0s on$/,
  );
  await screenshot(page, 'blocking-flicker');
  expect(await seriousViolations(page)).toEqual([]);

  // The cue's own field has it end there too; undo takes back one step at a time.
  await thing(page, 'cue sign 1').click();
  await panel(page).getByRole('combobox', { name: 'its flicker' }).selectOption({ label: 'ends' });
  await eventually(() => widths().then((all) => all.length)).toBe(1);
  await page.keyboard.press('Escape');
  await page.keyboard.press('Control+z');
  await eventually(() => widths().then((all) => all.length)).toBe(2);
  await page.keyboard.press('Control+z');
  await eventually(async () => cuesOf(await keptPlan(page), 'sign').length).toBe(1);
});

test('the scale grows and shrinks about the playhead, by mouse and by key, and all of it comes back', async () => {
  const page = await openBlocking();
  const spread = async (): Promise<number> => (await pixelAt(page, 40)) - (await pixelAt(page, 0));
  const head = async (): Promise<number> =>
    (await page.locator('.playhead-line').boundingBox())?.x ?? Number.NaN;
  const pane = await page.locator('.timeline').boundingBox();
  if (!pane) throw new Error('the timeline is not drawn');
  const [first, at] = [await spread(), await head()];
  const nearer = page.getByRole('button', { name: 'Nearer', exact: true });
  const farther = page.getByRole('button', { name: 'Farther', exact: true });
  await nearer.click();
  await eventually(spread).toBeCloseTo(1.6 * first, -0.5);
  // The playhead, at 9 s, stays under the eye.
  await eventually(async () => Math.abs((await head()) - at)).toBeLessThan(2);
  await nearer.focus();
  await page.keyboard.press('Enter');
  await eventually(spread).toBeCloseTo(1.6 * 1.6 * first, -0.5);
  await page.keyboard.press('Space');
  await eventually(spread).toBeCloseTo(1.6 ** 3 * first, -1);
  expect(Math.abs((await head()) - at)).toBeLessThan(2);
  expect(await head()).toBeGreaterThan(pane.x);
  expect(await head()).toBeLessThan(pane.x + pane.width);
  // The line of the playhead still is where the clock says, and the ruler has finer numbers.
  expect(Math.abs((await head()) + 1 - (await pixelAt(page, await clock(page))))).toBeLessThan(2);

  await farther.click();
  await eventually(spread).toBeCloseTo(1.6 * 1.6 * first, -0.5);
  await farther.focus();
  await page.keyboard.press('Enter');
  await eventually(spread).toBeCloseTo(1.6 * first, -0.5);
  await nearer.click();
  await page.getByRole('button', { name: 'All of it', exact: true }).click();
  await eventually(spread).toBeCloseTo(first, -0.5);
  // It goes no farther than all of it.
  await farther.click();
  await eventually(spread).toBeCloseTo(first, -0.5);
});

test('walks say how far and how many seconds, in metres or in feet as lengths are set', async () => {
  const page = await openBlocking();
  await page.getByRole('button', { name: 'Nearer', exact: true }).click();
  const walks = () => page.locator('.lane.of-performer .lettering.under').allTextContents();
  await eventually(async () =>
    (await walks()).some((text) => /\d m in \d+\.\d+ s/.test(text.replaceAll('\u00a0', ' '))),
  ).toBe(true);
  const metric = await walks();
  const seconds = (text: string): string | undefined => / in ([\d.]+)\u00a0s/.exec(text)?.[1];
  await page.getByRole('button', { name: 'ft-in', exact: true }).click();
  const FEET = /(?:\d+′\u00a0)?[\d¼½¾]+″/;
  await eventually(async () => (await walks()).filter((text) => FEET.test(text)).length).toBeGreaterThan(2);
  const feet = await walks();
  expect(feet.length).toBe(metric.length);
  let compared = 0;
  for (const [k, text] of metric.entries()) {
    const [, metres] = /([\d.]+)\u00a0m/.exec(text) ?? [];
    const [own] = FEET.exec(feet[k] ?? '') ?? [];
    if (metres === undefined || own === undefined) continue;
    const read = parseLength(own, 'ft-in');
    // Metres are said to a tenth, feet to a quarter of an inch.
    expect(Math.abs((read.ok ? read.value : Number.NaN) - Number(metres))).toBeLessThan(0.06);
    const [said, saidInFeet] = [seconds(text), seconds(feet[k] ?? '')];
    if (said !== undefined && saidInFeet !== undefined) {
      expect(saidInFeet).toBe(said);
      compared += 1;
    }
  }
  expect(compared).toBeGreaterThan(1);
  await screenshot(page, 'blocking-feet');
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
    'Vera’s mark V3 at beat 5, 18.0\u00a0s, faces 90°',
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

  // A point that somebody faces is picked on the roof: Escape leaves it, the arrows and Enter take it.
  await thing(page, 'mark nuno n3').click();
  await panel(page).getByRole('combobox', { name: 'faces', exact: true }).selectOption({ label: 'a point' });
  const faced = async () => (await keptPlan(page)).cast[0]?.marks[2]?.faces;
  await eventually(faced).toMatchObject({ point: [expect.anything(), expect.anything(), expect.anything()] });
  const first = await faced();
  const pick = panel(page).getByRole('button', { name: /^Pick it on the roof/ });
  await pick.click();
  await page.keyboard.press('Escape');
  await pick.click();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Enter');
  await pick.waitFor();
  await eventually(faced).not.toEqual(first);
  await page.locator('.lane-name').getByRole('button', { name: /^Vera/ }).click();

  // What is only shown is gone when it is left.
  await panel(page).getByText('Circle', { exact: true }).click();
  const circle = panel(page).locator('details[open]').first();
  await circle.getByRole('button', { name: 'Preview' }).click();
  await page.locator('.lane.proposed').waitFor();
  await circle.getByRole('button', { name: 'Leave it' }).click();
  await page.locator('.lane.proposed').waitFor({ state: 'detached' });
  await eventually(() =>
    circle.getByRole('button', { name: 'Preview' }).evaluate((button) => button === document.activeElement),
  ).toBe(true);

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
  const held = { x: at.x + 1, y: at.y + 8 };
  await fingers(page, between([held], [{ x: await pixelAt(page, 14), y: held.y }]));
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

test('by night and by day nobody trips over the timeline and its fields', async () => {
  const page = await openBlocking();
  const tripsNobody = async (): Promise<void> => {
    for (const colorScheme of ['light', 'dark'] as const) {
      // Colours are measured: none may be on its way.
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      expect([colorScheme, await seriousViolations(page)]).toEqual([colorScheme, []]);
    }
  };
  await thing(page, 'mark vera v2').dblclick();
  await panel(page).getByText('Vera, mark V2').waitFor();
  await tripsNobody();
  await screenshot(page, 'blocking-night');
  await page.locator('.lane-name').getByRole('button', { name: /^Nuno/ }).click();
  await panel(page).getByText('Come from a corner').click();
  await tripsNobody();
  await page.emulateMedia({ colorScheme: 'light' });
  await screenshot(page, 'blocking-fields-day');
});
