import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { PerspectiveCamera } from 'three';
import { expect, test } from 'vitest';
import { parsePlanText } from '../../src/core/plan/parse';
import type { Plan } from '../../src/core/plan/schema/plan';
import { standOf } from '../../src/scene/walk/standpoints';
import { WalkView } from '../../src/scene/walk/walkView';
import { smallRoof } from '../unit/smallRoof';
import { dropPlan } from './dropping';
import { openPage, type PageOptions, screenshot, waitUntilReady } from './harness';
import { brightness, framePicture, untilStill } from './picture';
import { walkRound } from './walking';
import { withoutDemo } from './withoutDemo';
import { withoutReports } from './withoutReports';

type Place = readonly [number, number, number];
interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Of one setup, so that no other picture is drawn beside the walk-round but the frame's. */
const ROOF = smallRoof();
const plan: Plan = { ...ROOF, setups: ROOF.setups.slice(0, 1) };
const STAND = 'stand-out';

async function openRoof(opened: Plan, options: PageOptions = {}): Promise<Page> {
  const page = await openPage({
    width: 1000,
    height: 640,
    before: [withoutDemo, withoutReports],
    ...options,
  });
  await show(page, opened);
  await walkRound(page);
  await page.getByRole('button', { name: 'Look from above' }).click();
  await untilStill(page);
  return page;
}

async function show(page: Page, opened: Plan): Promise<void> {
  await dropPlan(page, opened);
  await putAway(page, `${opened.title} is open.`);
}

/** What is said lies over the roof. It goes by itself too, maybe before a slow hand has reached it. */
async function putAway(page: Page, sentence: string): Promise<void> {
  const toast = page.locator('.toast', { hasText: sentence });
  await toast.waitFor({ state: 'attached' });
  await toast.getByRole('button', { name: 'Put away' }).evaluateAll((buttons) => {
    for (const button of buttons) if (button instanceof HTMLElement) button.click();
  });
  await toast.waitFor({ state: 'detached' });
}

/** Where a place appears in the window, looked at from above. */
async function seen(page: Page, place: Place): Promise<Spot> {
  const box = await page.locator('.walk-round').boundingBox();
  if (!box) throw new Error('the walk-round is not shown');
  const camera = new PerspectiveCamera(42, box.width / box.height, 0.1, 4000);
  const up = Math.tan((42 * Math.PI) / 360);
  const stand = standOf('from above', {
    plan,
    seconds: 0,
    setup: null,
    rooms: [],
    from: { eye: [0, 9, 9], target: [0, 0, 0] },
    halves: [up * camera.aspect, up],
  });
  if (!stand) throw new Error('one can stand above');
  camera.position.set(...stand.eye);
  camera.lookAt(...stand.target);
  const pixel = new WalkView(camera, box.width, box.height).pixelOf(place);
  if (!pixel) throw new Error('the place lies before the eye');
  return { x: box.x + pixel[0], y: box.y + pixel[1] };
}

/** The middle of a grip in the window. */
async function gripOf(page: Page, kind: string): Promise<Spot> {
  const box = await page.locator(`.walk-hands .grip.${kind}`).first().boundingBox();
  if (!box) throw new Error(`there is no grip to ${kind}`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

async function drag(page: Page, from: Spot, to: Spot): Promise<void> {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2);
  await page.mouse.move(to.x, to.y);
  await page.mouse.up();
}

/** The plan as the page would save it. */
async function saved(page: Page): Promise<Plan> {
  await page.evaluate(() => {
    const picker = async (): Promise<FileSystemFileHandle> =>
      (await navigator.storage.getDirectory()).getFileHandle('roof.plan.json', { create: true });
    Object.assign(window, { showSaveFilePicker: picker });
  });
  await page.keyboard.press('Control+s');
  await putAway(page, 'Saved as roof.plan.json.');
  const text = await page.evaluate(async () => {
    const folder = await navigator.storage.getDirectory();
    return (await (await folder.getFileHandle('roof.plan.json')).getFile()).text();
  });
  const read = parsePlanText(text);
  if (!read.ok) throw new Error(read.faults[0]?.sentence);
  return read.value;
}

function standIn(after: Plan) {
  const stand = after.gear.find(({ id }) => id === STAND);
  if (stand?.kind !== 'stand') throw new Error('the stand has stayed a stand');
  return stand;
}

test('a stand is chosen by a press, moved over the deck by a drag, raised and turned by its grips, each in one step', async () => {
  const page = await openRoof(plan);
  const foot = await seen(page, [-3, 0, 7.5]);
  await page.mouse.click(foot.x, foot.y);
  await page.locator('.walk-hands .grip.raise').waitFor();
  await drag(page, foot, await seen(page, [-1, 0, 5.2]));
  // Looked at from above, a height is pulled up the picture as far as it would look from the side.
  const raise = await gripOf(page, 'raise');
  await drag(page, raise, { x: raise.x, y: raise.y - 40 });
  const turn = await gripOf(page, 'turn');
  await drag(page, turn, { x: turn.x + 60, y: turn.y + 50 });
  await untilStill(page);
  await screenshot(page, 'walk-round-handles');
  const after = standIn(await saved(page));
  expect(Math.hypot(after.at[0] + 1, after.at[2] - 5.2)).toBeLessThan(0.2);
  expect(after.at[1]).toBe(0);
  expect(after.heightMetres).toBeGreaterThan(2.1);
  expect(after.headingDegrees).not.toBe(0);
  for (let step = 0; step < 3; step += 1) await page.keyboard.press('Control+z');
  expect(standIn(await saved(page))).toEqual(standIn(plan));
});

test('a post is dragged out of the palette onto the roof, and a drag of the bare deck turns the view', async () => {
  const page = await openRoof(plan, { width: 1280, height: 800 });
  await page.keyboard.press('1');
  const post = page.getByRole('toolbar', { name: 'Palette' }).getByRole('button', { name: /^post$/i });
  // Clear of the line that says that there is more below.
  await post.evaluate((each) => each.scrollIntoView({ block: 'center' }));
  const from = await post.boundingBox();
  if (!from) throw new Error('the palette has a post');
  await drag(page, { x: from.x + from.width / 2, y: from.y + from.height / 2 }, await seen(page, [4, 0, 3]));
  await page.locator('.walk-hands .grip.raise').waitFor();
  const put = (await saved(page)).pieces.find(({ kind }) => kind === 'post');
  if (put?.kind !== 'post') throw new Error('a post has been put');
  expect(Math.hypot(put.at[0] - 4, put.at[2] - 3)).toBeLessThan(0.3);

  const before = await gripOf(page, 'raise');
  const deck = await seen(page, [-6, 0, 2]);
  await drag(page, deck, { x: deck.x + 80, y: deck.y - 60 });
  await untilStill(page);
  const after = await gripOf(page, 'raise');
  expect(Math.hypot(after.x - before.x, after.y - before.y)).toBeGreaterThan(10);
  expect((await saved(page)).pieces.find(({ kind }) => kind === 'post')).toEqual(put);
});

test('a finger that rests on a thing asks what can be done with it; one that moves turns the view and moves nothing', async () => {
  const page = await openRoof(plan, { touch: true });
  const foot = await seen(page, [-3, 0, 7.5]);
  const finger = await page.context().newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', at: Spot | null) =>
    finger.send('Input.dispatchTouchEvent', { type, touchPoints: at ? [at] : [] });
  await touch('touchStart', foot);
  await touch('touchMove', { x: foot.x + 60, y: foot.y - 30 });
  await touch('touchEnd', null);
  await untilStill(page);
  expect(standIn(await saved(page))).toEqual(standIn(plan));
  await page.getByRole('button', { name: 'Look from above' }).click();
  await untilStill(page);
  await touch('touchStart', foot);
  await page.getByRole('menu').waitFor();
  await touch('touchEnd', null);
  await screenshot(page, 'walk-round-menu');
});

test('what is hidden is not in the walk-round, and is in the frame all the same', async () => {
  const box = {
    at: [-0.9, 0, -0.4] as [number, number, number],
    size: [0.8, 0.8, 0.8] as [number, number, number],
  };
  const withBox = (hidden: boolean): Plan => ({
    ...plan,
    title: hidden ? 'Box hidden' : 'Box shown',
    pieces: [
      ...plan.pieces,
      { id: 'box', label: 'Box', kind: 'box', headingDegrees: 20, material: 'render', hidden, ...box },
    ],
  });
  const page = await openRoof(plan);
  const emptyFrame = await framePicture(page);
  const pictures = async (opened: Plan) => {
    await show(page, opened);
    await untilStill(page);
    await page.getByRole('button', { name: 'Look from above' }).click();
    await untilStill(page);
    const walk = PNG.sync.read(await page.locator('.walk-round').screenshot());
    return { walk, frame: await framePicture(page) };
  };
  const shown = await pictures(withBox(false));
  const hidden = await pictures(withBox(true));
  const pane = await page.locator('.walk-round').boundingBox();
  const top = await seen(page, [-0.9, 0.8, -0.4]);
  const middle = { x: top.x - (pane?.x ?? 0), y: top.y - (pane?.y ?? 0) };
  expect(differing(shown.walk, hidden.walk, middle, 5)).toBeGreaterThan(20);
  const { width, height } = hidden.frame;
  expect(differing(emptyFrame, hidden.frame, { x: width / 2, y: height / 2 }, width)).toBeGreaterThan(100);
  expect(differing(shown.frame, hidden.frame, { x: width / 2, y: height / 2 }, width)).toBe(0);
});

/** How many pixels around a place differ between two pictures. */
function differing(a: PNG, b: PNG, { x, y }: Spot, reach: number): number {
  let count = 0;
  const [left, top] = [Math.max(0, Math.round(x - reach)), Math.max(0, Math.round(y - reach))];
  for (let row = top; row < Math.min(a.height, y + reach); row += 1) {
    for (let column = left; column < Math.min(a.width, x + reach); column += 1) {
      const pixel = row * a.width + column;
      if (Math.abs(brightness(a, pixel) - brightness(b, pixel)) > 0.02) count += 1;
    }
  }
  return count;
}

test('until the script of the walk-round is here its place says so, and then the roof is looked at as was asked', async () => {
  const page = await openPage({ width: 1000, height: 640, before: [withoutDemo, withoutReports] });
  let letCome = (): void => {};
  const held = new Promise<void>((resolve) => {
    letCome = resolve;
  });
  await page.route(/walkStage-[^/]+\.js$/, async (route) => {
    await held;
    await route.continue();
  });
  await page.reload({ waitUntil: 'commit' });
  await waitUntilReady(page);
  await show(page, plan);
  await page.getByText('walk round', { exact: true }).click();
  const place = page.getByRole('region', { name: 'Walk round the roof' });
  await place.getByText('The roof to walk round is on its way.').waitFor();
  const before = await place.boundingBox();
  await page.getByRole('button', { name: 'Look from above' }).click();
  letCome();
  await page.locator('.walk-hands').waitFor({ state: 'attached' });
  expect(await place.getByText('on its way').count()).toBe(0);
  expect(await place.boundingBox()).toEqual(before);
  await untilStill(page);
  const foot = await seen(page, [-3, 0, 7.5]);
  await page.mouse.click(foot.x, foot.y);
  await page.locator('.walk-hands .grip.raise').waitFor();
});
