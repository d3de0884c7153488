import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Gear } from '../../src/core/plan/schema/gear';
import type { Plan } from '../../src/core/plan/schema/plan';
import { keyedFace, keyOn } from '../plans/keyedFace';
import { seriousViolations } from './axe';
import { dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { keptPlan } from './keptPlan';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';

/** Beside others a page may take its time. */
const PATIENT = { timeout: 600_000 };
const BEFORE = [withoutPicture, withoutDemo];

const wallLamp: Gear = {
  id: 'wall',
  label: 'Wall lamp',
  kind: 'practical',
  head: 'globe',
  at: [3, 2, 2],
  headingDegrees: 180,
  dim: 1,
};

/** Vera between a key and a backlight, seen from before, and a lamp that hangs on the mains. */
function litFace(): Plan {
  const plan = keyedFace({
    gear: [...keyOn('1', [-2.5, 2.5], [0, 0]), ...keyOn('2', [1, -4], [0, 0], 0.2), wallLamp],
    cameras: [{ id: 'wide', label: 'Wide', at: [0, 6], headingDegrees: 0, lens: 'wide' }],
  });
  // A little down, so that the floor before her feet is in frame.
  const setups = plan.setups.map((setup) => ({
    ...setup,
    move: { ...setup.move, keys: setup.move.keys.map((key) => ({ ...key, tiltDegrees: -12 })) },
  }));
  return { ...plan, setups, title: 'Lit' };
}

const sheet = (page: Page): Locator => page.locator('.light-sheet');
const level = (page: Page, word: string): Locator =>
  page.locator('.level-row', { has: page.getByRole('rowheader', { name: word, exact: true }) });
const stops = async (page: Page, word: string): Promise<number> =>
  Number((await level(page, word).locator('.stops').textContent())?.replace('\u2212', '-'));
const look = (page: Page, view: string): Promise<void> =>
  sheet(page).getByRole('button', { name: view, exact: true }).click();
const press = (page: Page, name: string | RegExp): Promise<void> =>
  sheet(page).getByRole('button', { name, exact: true }).click();
const dimSlider = (page: Page, label: string): Locator =>
  page.getByRole('slider', { name: `${label}, dim`, exact: true });
const undo = (page: Page): Promise<void> => page.locator('body').press('Control+z');

async function keptGear(page: Page, id: string): Promise<Gear | undefined> {
  return (await keptPlan(page)).gear.find((gear) => gear.id === id);
}
async function keptBefore(page: Page, id: string): Promise<object> {
  const gear = await keptGear(page, id);
  return (gear && 'before' in gear && gear.before) || {};
}
async function keptDim(page: Page, id: string): Promise<number | null> {
  const gear = await keptGear(page, id);
  return gear && 'dim' in gear ? gear.dim : null;
}

test(
  'levels follow a hand on a dimmer, which is one step; keys, feet and an empty roof are understood',
  async () => {
    const page = await openPage({ width: 1440, height: 900, before: BEFORE });
    await page.locator('body').press('4');
    expect(await page.getByRole('tab', { name: /Light/ }).getAttribute('aria-selected')).toBe('true');
    await sheet(page).getByText('Nobody is cast yet.').waitFor();
    await sheet(page).getByText('No lamps on the roof yet.').waitFor();
    // The key of the drawing has only what is drawn.
    const thrown = page.locator('.furniture .keys').getByText(/^throws to/);
    expect(await thrown.count()).toBe(0);
    await look(page, 'exposure');
    await sheet(page).getByText('No setup yet.').waitFor();
    await look(page, 'faces');

    await dropPlan(page, litFace());
    await page.getByRole('button', { name: /Vera.*key from camera left/ }).waitFor();
    await thrown.waitFor();
    expect(await level(page, 'key').locator('td').first().textContent()).toMatch(/^\d+\u00a0lx$/);
    const [key, back] = [await stops(page, 'key'), await stops(page, 'back')];
    await sheet(page)
      .getByText(/^Key: Head 1\. An edge 0\.50\u00a0m before the face throws a shadow 0\.0\d\u00a0m soft\./)
      .waitFor();
    // She faces the camera, and the head is to the left of the frame.
    expect(await page.locator('.lamp-name', { hasText: 'Head 1' }).locator('small').textContent()).toMatch(
      /lx on Vera, \d+\u00a0%, 4\d° to their own right, \d+° up, 3\.\d\d\u00a0m$/,
    );

    // While the hand is on it the levels follow, and the plan is as it was.
    const slider = dimSlider(page, 'Head 1');
    const box = await slider.boundingBox();
    if (!box) throw new Error('the dimmer is not on the page');
    const at = (share: number): [number, number] => [box.x + box.width * share, box.y + box.height / 2];
    await page.mouse.move(...at(0.24));
    await page.mouse.down();
    for (const share of [0.3, 0.4, 0.6]) await page.mouse.move(...at(share));
    await expect.poll(() => stops(page, 'key'), PATIENT).toBeGreaterThan(key + 1.5);
    expect(await stops(page, 'back')).toBe(back);
    expect(await keptDim(page, '1')).toBe(0.05);
    await page.mouse.up();
    await expect.poll(() => keptDim(page, '1'), PATIENT).toBeGreaterThan(0.2);
    await undo(page);
    await expect.poll(() => keptDim(page, '1'), PATIENT).toBe(0.05);
    await expect.poll(() => stops(page, 'key'), PATIENT).toBe(key);

    // By keys, and off and on again by its switch.
    await slider.focus();
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => keptDim(page, '1'), PATIENT).toBeGreaterThan(0.05);
    await undo(page);
    await expect.poll(() => keptDim(page, '1'), PATIENT).toBe(0.05);
    await page.locator('.lamp-name', { hasText: 'Head 1' }).click();
    await press(page, 'Turn it off');
    await sheet(page)
      .getByText(/^Key: Wall lamp\./)
      .waitFor();
    await press(page, 'Turn it on');
    await sheet(page)
      .getByText(/^Key: Head 1\./)
      .waitFor();
    await expect.poll(() => keptDim(page, '1'), PATIENT).toBe(0.05);

    // Who reads feet reads footcandles.
    await page.getByRole('button', { name: 'ft-in', exact: true }).click();
    expect(await level(page, 'key').locator('td').first().textContent()).toMatch(/^\d+\u00a0fc$/);
    await page.getByRole('button', { name: 'm', exact: true }).click();
    expect(await seriousViolations(page)).toEqual([]);
    await screenshot(page, 'light-faces');
  },
  PATIENT.timeout,
);

test(
  'what would mend the light is tried, done and taken back: the key, the mains, a highlight, black tape',
  async () => {
    const page = await openPage({ width: 1440, height: 900, theme: 'day', before: BEFORE });
    // Colours are measured: none may be on its way.
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await dropPlan(page, litFace());
    await page.locator('body').press('4');
    await page.getByRole('button', { name: /Vera.*key from camera left/ }).waitFor();

    await look(page, 'exposure');
    const dim = sheet(page).getByRole('button', { name: /^Dim Head 1 to [\d.]+\s%$/ });
    await dim.waitFor();
    await expect.poll(() => dim.isEnabled(), PATIENT).toBe(true);
    const output = page.locator('.lamps li', { hasText: 'Head 1' }).locator('output');
    const shown = await output.textContent();
    await press(page, /^Preview: Dim Head 1/);
    await expect.poll(() => output.textContent(), PATIENT).not.toBe(shown);
    expect(await keptDim(page, '1')).toBe(0.05);
    await press(page, /^Put it back: Dim Head 1/);
    await expect.poll(() => output.textContent(), PATIENT).toBe(shown);
    await press(page, /^Preview: Back it off/);
    await page.locator('.proposed-place', { hasText: 'Head 1' }).waitFor();
    await press(page, /^Put it back: Back it off/);
    await dim.click();
    await page.locator('.toast', { hasText: /Vera’s key is 1\sstop under\./ }).waitFor();
    await expect.poll(() => keptDim(page, '1'), PATIENT).toBeLessThan(0.05);
    await sheet(page)
      .getByText(/^Head 1 gives .*, 1\sstop under\.$/)
      .waitFor();
    await undo(page);
    await expect.poll(() => keptDim(page, '1'), PATIENT).toBe(0.05);

    // Scrims and gel are real: they go into the lamp, and its dim stays.
    const scrims = sheet(page).getByRole('button', { name: /^(One|Two|Three) (double|single)/ });
    await expect.poll(() => scrims.isEnabled(), PATIENT).toBe(true);
    await scrims.click();
    await expect
      .poll(async () => Object.keys(await keptBefore(page, '1')).length, PATIENT)
      .toBeGreaterThan(0);
    await undo(page);
    const row = page.locator('.lamps li', { hasText: 'Head 1' });
    await row.locator('.lamp-name').click();
    await row.getByRole('combobox', { name: 'gel', exact: true }).selectOption({ value: 'full blue' });
    await row.getByText(/^\d+\sK, full blue, less \d\.\d\sstops/).waitFor();
    await expect.poll(() => keptBefore(page, '1'), PATIENT).toEqual({ mired: -131 });
    expect(await keptDim(page, '1')).toBe(0.05);
    await undo(page);
    const loss = sheet(page).getByRole('textbox', { name: 'filter loss', exact: true });
    await loss.fill('0.7');
    await loss.press('Enter');
    await sheet(page)
      .getByText(/^Filters take 0\.7\sstops of it\./)
      .waitFor();
    await undo(page);

    // 24 frames a second on 60 Hz are safe at 180°, on 50 Hz at 172.8°.
    await sheet(page).getByText('may flicker').waitFor();
    await press(page, 'Set the shutter to 172.8°');
    await expect
      .poll(async () => (await keptPlan(page)).setups[0].shutterDegrees, PATIENT)
      .toBeCloseTo(172.8, 9);
    await sheet(page)
      .getByText(/takes in whole pulses of 50\sHz mains\./)
      .waitFor();
    await press(page, /^60\sHz$/);
    await expect.poll(async () => (await keptPlan(page)).place.mainsHertz, PATIENT).toBe(60);
    expect(await seriousViolations(page)).toEqual([]);
    await screenshot(page, 'light-exposure');

    await look(page, 'floor');
    await page.locator('.lamp-name', { hasText: 'Head 2' }).click();
    const move = sheet(page).getByRole('button', { name: /^Move it [\d.]+\sm$/ });
    await move.waitFor();
    await move.click();
    await page.locator('.toast', { hasText: 'Head 2 has its highlight at Vera’s feet.' }).waitFor();
    await undo(page);

    await look(page, 'dark');
    await sheet(page)
      .getByRole('button', { name: /Stand of 2.*: the / })
      .click();
    await press(page, 'Black tape on it');
    await expect.poll(async () => (await keptGear(page, '2-stand'))?.blacked, PATIENT).toBe(true);
    await sheet(page).getByRole('button', { name: 'Take the black tape off', exact: true }).waitFor();
    const under = sheet(page).getByRole('textbox', { name: 'or under grey by' });
    await under.fill('5');
    await under.press('Enter');
    await expect.poll(async () => (await keptPlan(page)).dark?.stopsUnder, PATIENT).toBe(5);
    // What passes for an upright has limits too; beyond them the nearest is offered.
    const among = sheet(page).getByRole('textbox', { name: 'beside others, at least' });
    await among.fill('80');
    await among.press('Enter');
    await press(page, 'Take 50');
    await expect.poll(async () => (await keptPlan(page)).dark?.uprights?.among, PATIENT).toBe(50);
    const tall = sheet(page).getByRole('textbox', { name: 'stands in frame at least' });
    await tall.fill('12.5');
    await tall.press('Enter');
    await expect.poll(async () => (await keptPlan(page)).dark?.uprights?.leastHeight, PATIENT).toBe(0.125);
    await press(page, 'Back to 8.5°, 2 to 1 and 1 stop');
    await expect.poll(async () => (await keptPlan(page)).dark?.uprights, PATIENT).toBeUndefined();
    expect((await keptPlan(page)).dark?.stopsUnder).toBe(5);
    expect(await seriousViolations(page)).toEqual([]);
    await screenshot(page, 'light-dark');
  },
  PATIENT.timeout,
);

test(
  'a thumb reaches all of it on a phone, and nothing runs out of the page',
  async () => {
    const page = await openPage({ width: 390, height: 844, touch: true, before: BEFORE });
    await dropPlan(page, litFace());
    await page.getByRole('tab', { name: /Light/ }).tap();
    await page.getByRole('button', { name: /Vera.*key from camera left/ }).waitFor();
    await page.locator('.lamp-name', { hasText: 'Head 1' }).tap();
    for (const view of ['faces', 'exposure', 'floor', 'dark']) {
      await sheet(page).getByRole('button', { name: view, exact: true }).tap();
      const small = await sheet(page)
        .locator('button, input[type="range"]')
        .evaluateAll((all) =>
          all
            .filter((each) => each.getBoundingClientRect().height > 0)
            .filter((each) => each.getBoundingClientRect().height < 47.5)
            .map((each) => each.textContent || each.getAttribute('aria-label')),
        );
      expect([view, small]).toEqual([view, []]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    }
    await screenshot(page, 'light-phone');
  },
  PATIENT.timeout,
);
