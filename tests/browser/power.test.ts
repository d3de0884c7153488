import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { box, cable, drawing, generator, lamp, wired } from '../plans/wired';
import { seriousViolations } from './axe';
import { eventually } from './building';
import { dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { keptPlan } from './keptPlan';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';

const DECK = {
  kind: 'deck',
  id: 'deck',
  label: 'Deck',
  outline: [
    [-8, -5],
    [8, -5],
    [8, 5],
    [-8, 5],
  ],
  topMetres: 0,
  dropMetres: 10,
};

const small = (more: readonly object[] = []) =>
  wired(
    [
      generator(
        'genny',
        {
          circuits: [
            { amps: 20, sockets: 4 },
            { amps: 20, sockets: 4 },
          ],
        },
        [-6, 0, 3],
      ),
      box('box', {}, [0, 0, 3]),
      lamp('lamp', { place: { at: [5, 0, -3] } }),
      drawing('kettle', 1500, 1, {}, [6, 0, 3]),
      ...more,
    ],
    { title: 'Small power', pieces: [DECK] },
  );

async function openPower(page: Page): Promise<void> {
  await page.getByRole('tab', { name: /Night/ }).click();
  await page.getByRole('button', { name: 'power', exact: true }).click();
  await page.locator('.supplies').waitFor();
}

const cables = async (page: Page): Promise<number> =>
  (await keptPlan(page)).gear.filter(({ kind }) => kind === 'cable').length;

const words = (page: Page): Promise<string> =>
  page.locator('.sheet-drawing .lettering').evaluate((group) => group.textContent ?? '');

test('what has no cord is shown, tried, connected at a press, read in amps and volts, and undone', async () => {
  const page = await openPage({ width: 1440, height: 900, before: [withoutPicture, withoutDemo] });
  await dropPlan(page, small());
  await openPower(page);
  await page.getByText('2 loads have no power').waitFor();
  await eventually(() => words(page)).toContain('no power');

  // Tried by keys: dashed on the roof, in a list, and nothing of it in the plan.
  await page.getByRole('button', { name: 'Preview: Connect all' }).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('list', { name: 'What it lays' }).getByText('Cable to kettle').waitFor();
  await eventually(() => page.locator('.power-layer .flow.tried').count()).toBeGreaterThanOrEqual(2);
  await screenshot(page, 'power-preview-night');
  expect(await cables(page)).toBe(0);
  await page.keyboard.press('Enter');
  await eventually(() => page.locator('.power-layer .flow').count()).toBe(0);

  // Done: one step.
  await page.getByRole('button', { name: 'Connect all', exact: true }).press('Enter');
  await eventually(() => cables(page)).toBeGreaterThanOrEqual(2);
  await eventually(() => words(page)).toMatch(/12\.\d\s?A/);
  await page.getByRole('button', { name: 'loads', exact: true }).click();
  const kettle = page.getByRole('list', { name: 'Loads' }).getByRole('button', { name: /kettle/ });
  await eventually(() => kettle.textContent()).toMatch(
    /1500\sW, 1500\sVA.*12\.\d\sA, 11\d\.\d\sV, \d\.\d\s% lost/,
  );
  await page.getByRole('button', { name: 'cables', exact: true }).click();
  const run = page.getByRole('list', { name: 'Cables' }).getByRole('button', { name: /Cable to kettle/ });
  expect(await run.textContent()).toMatch(/mm² \(1\d\sAWG\)/);
  await page.getByRole('button', { name: 'ft-in', exact: true }).click();
  await eventually(() => run.textContent()).toMatch(/ of 1\d\sAWG, /);

  // If the only supply stops, both go dark: said, and drawn.
  const stops = page.getByRole('button', { name: 'If it stops: genny' });
  await stops.press('Enter');
  await page.getByText('There is no other supply.').first().waitFor();
  await eventually(() => words(page)).toContain('goes dark');
  await stops.press('Enter');

  await page.keyboard.press('Control+z');
  await eventually(() => cables(page)).toBe(0);
  expect(await seriousViolations(page)).toEqual([]);
});

test('a ring is told and mended at a press; a cord that is too thin gets thicker; on a phone by day', async () => {
  const page = await openPage({
    width: 390,
    height: 844,
    touch: true,
    theme: 'day',
    before: [withoutPicture, withoutDemo],
  });
  await dropPlan(
    page,
    small([
      cable('one', 'genny', 'box', 6),
      cable('two', 'box', 'kettle', 6, { wire: { awg: 18 } }),
      cable('three', 'genny', 'kettle', 40),
      cable('four', 'box', 'lamp', 8),
      drawing('fan', 0, 1, {}, [-2, 0, -3]),
      cable('five', 'genny', 'fan', 7),
    ]),
  );
  await openPower(page);
  await page
    .getByText(/make a ring/)
    .first()
    .waitFor();
  const pull = page.getByRole('button', { name: /^Pull three/ });
  await pull.click();
  await eventually(async () => {
    const three = (await keptPlan(page)).gear.find(({ id }) => id === 'three');
    return three?.kind === 'cable' ? (three.plugs ?? null) : 'gone';
  }).toBeNull();
  await page.getByText(/two carries 13\.\d\sA; 18\sAWG/).waitFor();
  await page
    .getByRole('button', { name: /^Take a thicker cord/ })
    .first()
    .click();
  await eventually(() => page.getByText(/two carries/).count()).toBe(0);
  await page.getByText('The local code and a licensed electrician decide', { exact: false }).waitFor();
  await page.locator('.power-view').scrollIntoViewIfNeeded();
  await screenshot(page, 'power-phone-day');
  const low = await page
    .locator('.power-view button:visible')
    .evaluateAll((buttons) =>
      buttons.filter((each) => each.getBoundingClientRect().height < 47.5).map((each) => each.textContent),
    );
  expect(low).toEqual([]);
  expect(await seriousViolations(page)).toEqual([]);

  // What draws nothing as the plan has it: its plate is typed on its panel.
  await page.getByRole('button', { name: /^Type what it draws/ }).click();
  const draws = page.getByLabel('draws', { exact: true });
  await draws.fill('250');
  await draws.press('Enter');
  await eventually(async () => {
    const fan = (await keptPlan(page)).gear.find(({ id }) => id === 'fan');
    return fan?.kind === 'appliance' ? fan.drawn.watts : null;
  }).toBe(250);
});
