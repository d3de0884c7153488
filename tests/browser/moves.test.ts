import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { seriousViolations } from './axe';
import { openPage } from './harness';
import { withoutPicture } from './withoutPicture';
import { withoutReports } from './withoutReports';

/** Without a graphics card a page may take its time. */
const eventually = <Value>(read: () => Promise<Value>) => expect.poll(read, { timeout: 30_000 });

/** The demo at the panel of its first setup, read or unread. */
async function openSetup(theme: 'day' | 'night', read: boolean): Promise<Page> {
  const before = read ? [withoutPicture] : [withoutPicture, withoutReports];
  const page = await openPage({ width: 1440, height: 900, theme, before });
  await page.getByRole('tab', { name: /Set/ }).click();
  await page.getByRole('region', { name: 'Move' }).waitFor();
  return page;
}

const move = (page: Page): Locator => page.getByRole('region', { name: 'Move' });
const focus = (page: Page): Locator => page.getByRole('region', { name: 'Focus', exact: true });
const diamond = (page: Page, index: number): Locator =>
  page.getByRole('slider', { name: new RegExp(`^Key ${index} of `) });
const goTo = (page: Page, seconds: number): Promise<void> =>
  page.getByRole('slider', { name: 'Time in the move' }).fill(String(seconds));

async function type(within: Locator, label: string, text: string): Promise<void> {
  const field = within.getByRole('textbox', { name: label, exact: true });
  await field.fill(text);
  await field.press('Enter');
}

test('a move on curved track is keyed by hand, retimed on its diamonds, and warned of past a walking pace', async () => {
  const page = await openSetup('night', false);
  expect(await move(page).getByRole('listitem').count()).toBe(2);
  await goTo(page, 14);
  await move(page).getByRole('button', { name: 'Key it here' }).click();
  await move(page).getByRole('heading', { name: 'Move, 3 keys' }).waitFor();
  // Half a metre off the straight line, so that there is something to bend around.
  const x = move(page).getByRole('textbox', { name: 'z, down', exact: true });
  const before = Number(await x.inputValue());
  await x.fill(String(before - 0.3));
  await x.press('Enter');
  await page.getByRole('button', { name: 'Lay it in a curve' }).click();
  await move(page).getByRole('textbox', { name: 'along the track', exact: true }).waitFor();
  expect(await page.getByLabel('track', { exact: true }).locator('option:checked').textContent()).toMatch(
    /^Curved track/,
  );
  await move(page)
    .getByText(/at most 0\.\d/)
    .waitFor();
  expect(
    await move(page)
      .getByText(/faster than a walking pace/)
      .count(),
  ).toBe(0);

  // The last key's diamond is taken by its arrows, a second a press, until the dolly would have to run.
  await diamond(page, 3).focus();
  for (const said of ['17.0 s', '16.0 s', '15.0 s']) {
    await page.keyboard.press('Shift+ArrowLeft');
    await eventually(() => diamond(page, 3).getAttribute('aria-valuetext')).toMatch(
      new RegExp(`^${said.replace(' ', '\\s')}`),
    );
  }
  for (let frames = 0; frames < 16; frames += 1) await page.keyboard.press('ArrowLeft');
  await move(page)
    .getByText(/faster than a walking pace/)
    .waitFor();

  // And dragged back by the mouse: one step of the history.
  const box = await diamond(page, 3).boundingBox();
  if (!box) throw new Error('the key is not drawn');
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2 + 160, box.y + box.height / 2, { steps: 4 });
  await page.mouse.up();
  await eventually(() =>
    move(page)
      .getByText(/faster than a walking pace/)
      .count(),
  ).toBe(0);
  await page.getByRole('button', { name: 'Undo' }).click();
  await move(page)
    .getByText(/faster than a walking pace/)
    .waitFor();
});

test('a performer is held at a third, typed and by the cross in the frame', async () => {
  const page = await openSetup('day', false);
  await move(page).getByLabel('operator holds').selectOption({ label: 'Nuno' });
  await type(move(page), 'from frame left', '33.3');
  const cross = page.getByRole('button', { name: /^Nuno held 33 % from frame left/ });
  await cross.waitFor();
  const box = await cross.boundingBox();
  const picture = await page.locator('.picture').boundingBox();
  if (!box || !picture) throw new Error('the cross is not drawn');
  await page.mouse.move(box.x + 24, box.y + 24);
  await page.mouse.down();
  // The other third catches.
  await page.mouse.move(box.x + 24 + picture.width * 0.302, box.y + 24, { steps: 5 });
  await page.mouse.up();
  const other = page.getByRole('button', { name: /^Nuno held 67 % from frame left/ });
  await other.waitFor();
  await eventually(() =>
    move(page).getByRole('textbox', { name: 'from frame left', exact: true }).inputValue(),
  ).toBe('66.7');
  await other.focus();
  await page.keyboard.press('ArrowRight');
  await page.getByRole('button', { name: /^Nuno held 68 % from frame left/ }).waitFor();
  expect(await seriousViolations(page)).toEqual([]);
});

test('focus is racked at a beat, its depth is read along the move, and nearer than the lens goes is refused', async () => {
  const page = await openSetup('night', false);
  await focus(page).getByRole('button', { name: 'Rack in this setup' }).click();
  await goTo(page, 18);
  await focus(page).getByRole('button', { name: 'Rack it here' }).click();
  await focus(page)
    .getByRole('button', { name: /^Racks to \w+, 18\.0/ })
    .waitFor();
  await focus(page).getByText('near', { exact: true }).waitFor();
  await eventually(() =>
    focus(page)
      .getByText(/, sharp, blur/)
      .count(),
  ).toBeGreaterThan(0);

  const bar = page.getByRole('button', { name: /^Focus along the move/ });
  const box = await bar.boundingBox();
  if (!box) throw new Error('the focus is not drawn');
  await page.mouse.move(box.x + box.width * 0.1, box.y + 12);
  await page.locator('.focus-reading', { hasText: /focus .* sharp from/ }).waitFor();
  const early = await page.locator('.focus-reading').textContent();
  await page.mouse.move(box.x + box.width * 0.9, box.y + 12);
  await eventually(() => page.locator('.focus-reading').textContent()).not.toBe(early);

  await focus(page).getByLabel('focus', { exact: true }).selectOption('held');
  const on = focus(page).getByLabel('focus', { exact: true });
  await on.selectOption('a distance');
  await type(focus(page), 'distance', '0.1');
  await focus(page)
    .getByText(/^This lens focuses from/)
    .waitFor();
  await focus(page)
    .getByRole('button', { name: /^Focus at/ })
    .click();
  await eventually(() =>
    focus(page)
      .getByText(/^This lens focuses from/)
      .count(),
  ).toBe(0);
});

test("a dolly that is put in shows in its own shot's report where the lens looks down at it", async () => {
  const page = await openSetup('night', true);
  await page.getByRole('button', { name: 'Lay track under it' }).click();
  await page.getByRole('button', { name: 'Put the dolly in' }).click();
  await eventually(() =>
    page.getByLabel('dolly', { exact: true }).locator('option:checked').textContent(),
  ).toBe('Dolly 1');
  await type(move(page), 'tilt', '-75');
  await page.getByRole('tab', { name: /Frames/ }).click();
  await page.locator('.sheet').getByText('Dolly 1', { exact: false }).first().waitFor();
});
