import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { itemsOf } from '../../src/core/plan/items';
import { parsePlan } from '../../src/core/plan/parse';
import type { Plan } from '../../src/core/plan/schema/plan';
import { setupReport } from '../../src/core/report/setupReport';
import { DEMO, readPlan } from '../plans/readPlan';
import { openPage, screenshot } from './harness';
import { shelfContents } from './shelfContents';
import { withoutPicture } from './withoutPicture';
import { withoutReports } from './withoutReports';

const DESK = { width: 1440, height: 900, before: [withoutPicture, withoutReports] };
const eventually = <Value>(read: () => Promise<Value>) => expect.poll(read, { timeout: 60_000 });

/** The plan as the device keeps it; the demo until something was changed. */
async function kept(page: Page): Promise<Plan> {
  const { documents, lastOpen } = await shelfContents(page);
  const document = lastOpen === null ? undefined : documents[lastOpen];
  if (document === undefined) return readPlan(DEMO);
  const read = parsePlan(document);
  if (!read.ok) throw new Error(read.faults.map(({ sentence }) => sentence).join(' '));
  return read.value;
}

const labelled = (plan: Plan, label: string) => {
  const item = itemsOf(plan).find(({ record }) => record.label === label);
  if (!item) throw new Error(`the plan has no ${label}`);
  return item.record;
};
const placeOf = (plan: Plan, label: string): readonly [number, number] => {
  const record = labelled(plan, label);
  if (!('at' in record)) throw new Error(`${label} stands nowhere`);
  return [record.at[0], record.at[2]];
};

const thing = (page: Page, name: string): Locator =>
  page.locator('.sheet-drawing').getByRole('button', { name: new RegExp(`^${name}, `) });

/** The middle of what is drawn of a thing, in pixels of the page. */
async function middle(page: Page, name: string): Promise<{ x: number; y: number }> {
  const drawn = thing(page, name);
  const tube = drawn.locator('.tube');
  const box = await ((await tube.count()) > 0 ? tube.first() : drawn).boundingBox();
  if (!box) throw new Error(`${name} is not drawn`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** The place of a handle, in pixels of the page. */
async function handleAt(page: Page, key: string): Promise<{ x: number; y: number }> {
  const box = await page.locator(`[data-handle="${key}"] .handle-area`).first().boundingBox();
  if (!box) throw new Error(`there is no handle ${key}`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

const chosen = (page: Page): Promise<readonly string[]> =>
  page
    .locator('.sheet-drawing .choice:not(.camera)[aria-pressed="true"]')
    .evaluateAll((all) => all.map((each) => each.getAttribute('aria-label')?.split(',')[0] ?? '').sort());

const steps = async (
  page: Page,
  undo: number,
  then: (plan: Plan) => unknown,
  expected: unknown,
): Promise<void> => {
  for (let k = 0; k < undo; k += 1) await page.keyboard.press('Control+z');
  await eventually(async () => then(await kept(page))).toEqual(expected);
};

test('with a mouse: choose several, move, group, duplicate, mirror, lay a row, lock and hide; each is one step', async () => {
  const page = await openPage(DESK);
  const demo = readPlan(DEMO);
  const count = (plan: Plan): number => itemsOf(plan).length;
  const crate = (plan: Plan) => placeOf(plan, 'Crate 3');

  // Beside what is chosen, and out of it again.
  const [a, b] = [await middle(page, 'Crate 3'), await middle(page, 'Water tank')];
  await page.mouse.click(a.x, a.y);
  await eventually(() => chosen(page)).toEqual(['Crate 3']);
  await page.keyboard.down('Shift');
  await page.mouse.click(b.x, b.y);
  await page.keyboard.up('Shift');
  await eventually(() => chosen(page)).toEqual(['Crate 3', 'Water tank']);

  // One drag moves both by the same way.
  await page.mouse.move(a.x, a.y);
  await page.mouse.down();
  await page.mouse.move(a.x + 30, a.y + 40, { steps: 4 });
  await page.keyboard.down('Alt');
  await page.mouse.move(a.x + 31, a.y + 41);
  await page.mouse.up();
  await page.keyboard.up('Alt');
  await eventually(async () => crate(await kept(page))).not.toEqual(crate(demo));
  const moved = await kept(page);
  const by = (label: string) =>
    placeOf(moved, label).map((value, axis) => value - (placeOf(demo, label)[axis] ?? 0));
  expect(by('Crate 3')[0]).toBeCloseTo(by('Water tank')[0] ?? 0, 6);
  expect(by('Crate 3')[1]).toBeCloseTo(by('Water tank')[1] ?? 0, 6);
  await steps(page, 1, crate, crate(demo));

  // A group is chosen by one of it, and Alt takes one out of it.
  await page.keyboard.press('Control+g');
  await eventually(async () => labelled(await kept(page), 'Crate 3').group).toBeDefined();
  await page.keyboard.press('Escape');
  await page.mouse.click(a.x, a.y);
  await eventually(() => chosen(page)).toEqual(['Crate 3', 'Water tank']);
  await page.keyboard.down('Alt');
  await page.mouse.click(a.x, a.y);
  await page.keyboard.up('Alt');
  await eventually(() => chosen(page)).toEqual(['Crate 3']);
  await page.mouse.click(b.x, b.y);
  await page.keyboard.press('Control+Shift+g');
  await eventually(async () => labelled(await kept(page), 'Crate 3').group).toBeUndefined();

  // Duplicate, from the menu where it is pressed.
  await page.mouse.click(a.x, a.y);
  await page.mouse.click(a.x, a.y, { button: 'right' });
  await page.getByRole('menuitem', { name: 'Duplicate' }).click();
  await eventually(async () => count(await kept(page))).toBe(count(demo) + 1);
  await steps(page, 1, count, count(demo));

  // Mirrored at the line through its middle it turns the other way.
  await page.mouse.click(a.x, a.y);
  const heading = (plan: Plan): number => {
    const record = labelled(plan, 'Crate 3');
    return 'headingDegrees' in record ? record.headingDegrees : Number.NaN;
  };
  await page.keyboard.press('m');
  await page.getByRole('menuitem', { name: 'Left to right on the plan' }).click();
  await eventually(async () => (heading(await kept(page)) + heading(demo)) % 360).toBeCloseTo(0, 6);
  await steps(page, 1, heading, heading(demo));

  // A row of four, shown before it is laid.
  await page.keyboard.press('a');
  await page.getByLabel('how many').fill('4');
  await page.keyboard.press('Tab');
  await eventually(() => page.locator('.sheet-drawing .choice.draft').count()).toBe(3);
  await screenshot(page, 'handling-row');
  await page.getByRole('button', { name: 'Lay the row' }).click();
  await eventually(async () => count(await kept(page))).toBe(count(demo) + 3);
  await steps(page, 1, count, count(demo));

  // What is locked says so and stays; what is hidden is not drawn.
  await page.mouse.click(a.x, a.y);
  await page.keyboard.press('l');
  await eventually(async () => labelled(await kept(page), 'Crate 3').locked).toBe(true);
  await page.mouse.move(a.x, a.y);
  await page.mouse.down();
  await page.mouse.move(a.x + 20, a.y + 12, { steps: 3 });
  await eventually(() => page.locator('.sheet-drawing .chip').textContent()).toBe('Crate 3 is locked');
  await page.mouse.up();
  expect(crate(await kept(page))).toEqual(crate(demo));
  await page.keyboard.press('l');
  await page.keyboard.press('h');
  await eventually(() => thing(page, 'Crate 3').count()).toBe(0);
  await page.keyboard.press('Shift+h');
  await eventually(() => thing(page, 'Crate 3').count()).toBe(1);
});

test('a rectangle drawn with Shift chooses what it takes in; Delete takes all out at once, and one undo brings it back', async () => {
  const page = await openPage(DESK);
  const board = await page.locator('.sheet-drawing').boundingBox();
  const loft = await middle(page, 'Water tank');
  if (!board) throw new Error('there is no drawing');
  await page.keyboard.down('Shift');
  await page.mouse.move(board.x + 20, loft.y + 110);
  await page.mouse.down();
  await page.mouse.move(loft.x + 120, loft.y - 50, { steps: 4 });
  await eventually(() => page.locator('.choosing-frame').count()).toBe(1);
  await page.mouse.up();
  await page.keyboard.up('Shift');
  await eventually(async () => (await chosen(page)).length).toBeGreaterThan(1);
  const taken = await chosen(page);
  expect(taken).toContain('Water tank');
  await page.keyboard.press('Delete');
  await eventually(() => thing(page, 'Water tank').count()).toBe(0);
  await page.keyboard.press('Control+z');
  await eventually(() => thing(page, 'Water tank').count()).toBe(1);
  for (const name of taken) expect(await thing(page, name).count(), name).toBeGreaterThan(0);
});

test('by keyboard alone: choose, choose beside, nudge, turn by a handle, type a height, copy and paste, use the menu', async () => {
  const page = await openPage(DESK);
  const demo = readPlan(DEMO);
  await thing(page, 'Flag stand').focus();
  await page.keyboard.press('Enter');
  await thing(page, 'Bounce stand').focus();
  await page.keyboard.press('Shift+Enter');
  await eventually(() => chosen(page)).toEqual(['Bounce stand', 'Flag stand']);
  await page.keyboard.press('Shift+ArrowRight');
  await eventually(async () => placeOf(await kept(page), 'Flag stand')[0]).toBeCloseTo(
    placeOf(demo, 'Flag stand')[0] + 1,
    6,
  );
  expect(placeOf(await kept(page), 'Bounce stand')[0]).toBeCloseTo(placeOf(demo, 'Bounce stand')[0] + 1, 6);
  await steps(page, 1, (plan) => placeOf(plan, 'Bounce stand'), placeOf(demo, 'Bounce stand'));

  // The camera that has the focus goes by itself, whatever is chosen.
  const [camera] = demo.setups;
  const stands = (plan: Plan): readonly number[] => plan.setups[0].move.keys[0].position;
  await page.locator(`[data-target="camera:${camera.id}"]`).focus();
  await page.keyboard.press('Shift+ArrowDown');
  await eventually(async () => stands(await kept(page))[2]).toBeCloseTo(stands(demo)[2] + 1, 6);
  expect(placeOf(await kept(page), 'Bounce stand')).toEqual(placeOf(demo, 'Bounce stand'));
  await steps(page, 1, stands, stands(demo));

  // From the thing to its handles, along them, and a value typed at one.
  await page.keyboard.press('Escape');
  await thing(page, 'Flag stand').focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Enter');
  await eventually(() =>
    page.locator('[data-handle="turn"]').evaluate((each) => each === document.activeElement),
  ).toBe(true);
  const heading = (plan: Plan): number => {
    const record = labelled(plan, 'Flag stand');
    return 'headingDegrees' in record ? record.headingDegrees : Number.NaN;
  };
  await page.keyboard.press('Shift+ArrowRight');
  await eventually(async () => heading(await kept(page))).toBeCloseTo((heading(demo) + 10) % 360, 6);
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  const field = page.getByRole('textbox', { name: 'Raise flag stand' });
  await field.fill('99 m');
  await page.keyboard.press('Enter');
  await eventually(() => page.locator('.figure-input [role="alert"]').textContent()).toMatch(/out of reach/);
  await field.fill('2.5 m');
  await page.keyboard.press('Enter');
  const height = (plan: Plan): number => {
    const record = labelled(plan, 'Flag stand');
    return 'heightMetres' in record ? record.heightMetres : Number.NaN;
  };
  await eventually(async () => height(await kept(page))).toBe(2.5);
  await steps(page, 2, (plan) => [height(plan), heading(plan)], [height(demo), heading(demo)]);

  // Copied as text that is a plan by itself, and put in again beside it.
  await thing(page, 'Flag stand').focus();
  await page.keyboard.press('Control+c');
  await page.keyboard.press('Control+v');
  await eventually(async () => itemsOf(await kept(page)).length).toBeGreaterThan(itemsOf(demo).length);
  await steps(page, 1, (plan) => itemsOf(plan).length, itemsOf(demo).length);

  // The menu key opens the menu over what has the focus; Escape gives the focus back.
  await thing(page, 'Flag stand').focus();
  await page.keyboard.press('Shift+F10');
  await page.getByRole('menu').waitFor();
  await page.keyboard.press('Escape');
  await eventually(() => page.getByRole('menu').count()).toBe(0);
  await eventually(() => thing(page, 'Flag stand').evaluate((each) => each === document.activeElement)).toBe(
    true,
  );
  await page.keyboard.press('Shift+F10');
  await page.keyboard.press('End');
  await page.keyboard.press('ArrowUp');
  const lastButOne = page.getByRole('menuitem').nth(-2);
  await eventually(() => lastButOne.evaluate((each) => each === document.activeElement)).toBe(true);
  await page.keyboard.press('Escape');

  // F2 gives it another name.
  await page.keyboard.press('F2');
  await page.getByRole('form', { name: 'A name for flag stand' }).getByLabel('name').fill('Tall flag stand');
  await page.keyboard.press('Enter');
  await thing(page, 'Tall flag stand').waitFor({ state: 'attached' });
});

test('put to the line of a frame, it meets that line in the report', async () => {
  const page = await openPage(DESK);
  await thing(page, 'Flag stand').focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('f');
  await page.getByRole('menuitem', { name: 'On the frame line at the right of A' }).click();
  await page.locator('.toast', { hasText: 'is on the frame line at the right of A' }).waitFor();
  const at = (plan: Plan) => placeOf(plan, 'Flag stand');
  await eventually(async () => at(await kept(page))).not.toEqual(at(readPlan(DEMO)));
  const plan = await kept(page);
  const [setup] = plan.setups;
  if (!setup) throw new Error('the demo has no setup');
  const seconds = plan.beats.find(({ id }) => id === setup.span.from)?.atSeconds ?? 0;
  const { id } = labelled(plan, 'Flag stand');
  const extent = setupReport(plan, setup, { at: seconds }).items.find((item) => item.id === id)?.extent;
  expect(extent?.[2]).toBeGreaterThan(0.999);
  expect(extent?.[0]).toBeLessThan(1);
  await steps(page, 1, at, at(readPlan(DEMO)));
});

test('handles are pulled: a corner moves, a dot makes another, Delete takes it out, a ring turns', async () => {
  const page = await openPage(DESK);
  const demo = readPlan(DEMO);
  const path = (plan: Plan) => {
    const record = labelled(plan, 'Loft yard fence');
    return 'path' in record ? record.path : [];
  };
  await thing(page, 'Loft yard fence').focus();
  await page.keyboard.press('Enter');
  await page.locator('[data-handle="corner  2"]').waitFor({ state: 'attached' });
  const corner = await handleAt(page, 'corner  2');
  await page.mouse.move(corner.x, corner.y);
  await page.mouse.down();
  await page.mouse.move(corner.x + 30, corner.y + 20, { steps: 4 });
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await page.mouse.move(corner.x, corner.y);
  await page.mouse.down();
  await page.mouse.move(corner.x + 30, corner.y + 20, { steps: 4 });
  await page.mouse.up();
  await eventually(async () => path(await kept(page))[2]).not.toEqual(path(demo)[2]);
  expect(path(await kept(page))[1]).toEqual(path(demo)[1]);
  await screenshot(page, 'handling-corners');
  await steps(page, 1, path, path(demo));

  const dot = page.locator('[data-handle^="insert"]').first();
  await dot.focus();
  await page.keyboard.press('Enter');
  await eventually(async () => path(await kept(page)).length).toBe(path(demo).length + 1);
  await page.locator('[data-handle="corner  2"]').focus();
  await page.keyboard.press('Delete');
  await eventually(async () => path(await kept(page)).length).toBe(path(demo).length);

  await page.keyboard.press('Escape');
  await thing(page, 'Crate 3').focus();
  await page.keyboard.press('Enter');
  const ring = await handleAt(page, 'turn');
  const { x, y } = await middle(page, 'Crate 3');
  await page.mouse.move(ring.x, ring.y);
  await page.mouse.down();
  await page.mouse.move(x + 70, y, { steps: 4 });
  await page.mouse.up();
  await eventually(async () => {
    const record = labelled(await kept(page), 'Crate 3');
    return 'headingDegrees' in record ? Math.abs(record.headingDegrees - 90) : Number.NaN;
  }).toBeLessThan(2);
});

test('by touch alone: a finger that rests asks for actions, or draws a rectangle; the ring turns under it', async () => {
  const page = await openPage({
    width: 390,
    height: 844,
    touch: true,
    theme: 'day',
    before: [withoutPicture, withoutReports],
  });
  const demo = readPlan(DEMO);
  await page.locator('.overhead').scrollIntoViewIfNeeded();
  const session = await page.context().newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', ...points: { x: number; y: number }[]) =>
    session.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: points.map((point, id) => ({ ...point, id })),
    });

  // Rested on a thing, the finger is answered before it is lifted.
  const tank = await middle(page, 'Water tank');
  await touch('touchStart', tank);
  await page.getByRole('menu').waitFor();
  await touch('touchEnd');
  await screenshot(page, 'handling-touch-menu');
  const size = await page.getByRole('menuitem').first().boundingBox();
  expect(size?.height).toBeGreaterThanOrEqual(48);
  await page.getByRole('menuitem', { name: 'Lock', exact: true }).tap();
  await eventually(async () => labelled(await kept(page), 'Water tank').locked).toBe(true);
  await eventually(() => page.locator('.handle').count()).toBe(0);

  // Rested on the empty ground, and drawn on from there.
  await page.getByRole('button', { name: 'Put away' }).first().tap();
  const board = await page.locator('.overhead').boundingBox();
  if (!board) throw new Error('there is no overhead');
  const corner = { x: board.x + board.width - 10, y: tank.y + 25 };
  await touch('touchStart', corner);
  await eventually(() => page.locator('.choosing-frame').count()).toBe(1);
  for (const share of [0.3, 0.6, 1]) {
    await touch('touchMove', { x: corner.x - 240 * share, y: corner.y - 90 * share });
  }
  await touch('touchEnd');
  await eventually(async () => (await chosen(page)).length).toBeGreaterThan(0);
  expect(await chosen(page)).not.toContain('Water tank');

  // Pulled by its ring.
  const crate = await middle(page, 'Crate 3');
  await page.touchscreen.tap(crate.x, crate.y);
  await eventually(() => chosen(page)).toEqual(['Crate 3']);
  const ring = await handleAt(page, 'turn');
  await touch('touchStart', ring);
  for (const share of [0.3, 0.6, 1]) {
    await touch('touchMove', {
      x: ring.x + (crate.x + 60 - ring.x) * share,
      y: ring.y + (crate.y - ring.y) * share,
    });
  }
  await touch('touchEnd');
  const heading = (plan: Plan): number => {
    const record = labelled(plan, 'Crate 3');
    return 'headingDegrees' in record ? record.headingDegrees : Number.NaN;
  };
  await eventually(async () => heading(await kept(page))).not.toBe(heading(demo));
});
