import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { tapesOf } from '../../src/core/form/tape/tape';
import { formatLength } from '../../src/core/units/lengths';
import { linkOfPlan } from '../../src/exchange/link/link';
import { quickDemo } from '../plans/quickDemo';
import { seriousViolations } from './axe';
import { fingers, type Touch } from './fingers';
import { openPage } from './harness';
import { withoutPicture } from './withoutPicture';

const plan = quickDemo();
const address = `#${linkOfPlan(plan).fragment}`;

/** Where a thing of the drawing is on the screen: the middle of its symbol. */
async function middleOf(page: Page, thing: string): Promise<Touch> {
  const box = await page.locator(`[data-thing="${thing}"] .tube`).boundingBox();
  if (!box) throw new Error(`${thing} is not drawn`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

test('the roof under fingers: pinched, tapped, filtered, and read by tape', async () => {
  const page = await openPage({ address, width: 390, height: 844, touch: true, before: withoutPicture });
  await page.getByRole('button', { name: 'Overhead' }).tap();
  const drawing = page.locator('.crew-drawing');
  await drawing.waitFor();

  // Two fingers that go apart come nearer: the scale bar stands for less.
  const bar = page.getByRole('img', { name: /scale bar/ });
  const before = await bar.getAttribute('aria-label');
  const box = await drawing.boundingBox();
  if (!box) throw new Error('no drawing');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const apart = (by: number): readonly Touch[] => [
    { x: x - by, y },
    { x: x + by, y },
  ];
  await fingers(page, [apart(30), apart(60), apart(90), apart(120)]);
  await expect.poll(() => bar.getAttribute('aria-label')).not.toBe(before);
  const metres = (label: string | null): number => Number(/([\d.]+)/.exec(label ?? '')?.[1]);
  expect(metres(await bar.getAttribute('aria-label'))).toBeLessThan(metres(before));

  // The keys zoom as well, and put all of it back.
  await drawing.press('0');
  await expect.poll(() => bar.getAttribute('aria-label')).toBe(before);
  for (let press = 0; press < 6; press += 1) await drawing.press('+');
  await expect.poll(() => bar.getAttribute('aria-label')).not.toBe(before);
  await page.getByRole('button', { name: 'Fit' }).tap();

  // A tap on a stand tells its two tapes.
  await page.touchscreen.tap(...pair(await middleOf(page, 'stand-1')));
  const chosen = page.locator('.crew-chosen');
  await chosen.waitFor();
  const tapes = tapesOf(plan, 'stand-1');
  expect(tapes).toHaveLength(2);
  const words = (await chosen.textContent()) ?? '';
  expect(words).toContain('Lamp stand 1');
  for (const { metres: long, fromLabel } of tapes)
    expect(words).toContain(`${formatLength(long, 'm')} from ${fromLabel}`);
  await expect.poll(() => page.locator('.crew-tapes .dim-line').count()).toBe(2);
  expect(await seriousViolations(page)).toEqual([]);

  // Somebody else's things step back, and leave the list.
  await page.getByRole('button', { name: 'power', exact: true }).tap();
  const opacity = (thing: string): Promise<string> =>
    page.locator(`[data-thing="${thing}"]`).evaluate((element) => getComputedStyle(element).opacity);
  expect(await opacity('stand-1')).toBe('0.34');
  expect(await opacity('generator-1')).toBe('1');
  await page.getByRole('button', { name: 'List', exact: true }).tap();
  const list = page.getByRole('list', { name: 'On the roof' });
  expect(await list.getByRole('button').allTextContents()).toEqual(
    plan.gear
      .filter(({ kind }) => kind === 'generator' || kind === 'distro')
      .map(({ label }) => expect.stringContaining(label)),
  );
  // A layer that is left out is not drawn.
  expect(await page.locator('.crew-drawing .cable').count()).toBeGreaterThan(0);
  await page.getByRole('button', { name: 'cables' }).tap();
  expect(await page.locator('.crew-drawing .cable').count()).toBe(0);

  // Tapped again, the whole card.
  await page.getByRole('button', { name: 'all', exact: true }).tap();
  await chosen.tap();
  const card = page.getByRole('article', { name: 'Lamp stand 1' });
  await card.waitFor();
  for (const { metres: long, fromLabel } of tapes)
    await card.getByText(`${formatLength(long, 'm')} from ${fromLabel}`).waitFor();
  await card.getByText('at Nuno and Vera').waitFor();
  await card
    .getByText('4 across', { exact: false })
    .or(card.getByText(/across, one to/))
    .waitFor();
  await card.getByText(/A from generator 2/).waitFor();
  expect(await seriousViolations(page)).toEqual([]);

  // The tick stays when the card is opened again.
  await card.getByRole('checkbox').tap();
  await card.getByRole('button', { name: 'Back' }).tap();
  await card.waitFor({ state: 'detached' });
  await chosen.tap();
  expect(await card.getByRole('checkbox').isChecked()).toBe(true);
});

test('a performer and a camera have cards of their own, in the other theme and in two columns', async () => {
  const page = await openPage({ address, width: 1024, height: 768, theme: 'day', before: withoutPicture });
  await page.getByRole('button', { name: 'Overhead' }).click();
  const list = page.getByRole('list', { name: 'On the roof' });
  const nuno = list.getByRole('button', { name: /^Nuno/ });
  await nuno.click();
  await page.locator('.crew-chosen').click();
  const card = page.getByRole('article', { name: 'Nuno' });
  await card.waitFor();
  const tapes = tapesOf(plan, 'nuno');
  expect(tapes).toHaveLength(2 * plan.cast[0].marks.length);
  // The second mark lies on the tape of the first: it is not measured twice.
  await card.getByText('On the tape of N1.').waitFor();
  expect(await card.getByRole('img', { name: /^Where N\d stands/ }).count()).toBe(
    plan.cast[0].marks.length - 1,
  );
  await card.getByRole('button', { name: 'Back' }).click();
  await list.getByRole('button', { name: /^Camera G/ }).click();
  await page.locator('.crew-chosen').click();
  const camera = page.getByRole('article', { name: 'Camera G' });
  await camera
    .getByText(/roof corner/)
    .first()
    .waitFor();
  await camera.getByText(/the stair house, 2.72/).waitFor();
  expect(await seriousViolations(page)).toEqual([]);
});

const pair = ({ x, y }: Touch): [number, number] => [x, y];
