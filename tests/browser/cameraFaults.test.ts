import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { parsePlan } from '../../src/core/plan/parse';
import type { Plan } from '../../src/core/plan/schema/plan';
import { serialisePlan } from '../../src/core/plan/serialise';
import { smallRoofDocument } from '../unit/smallRoof';
import { BUILDING, eventually } from './building';
import { openPage, screenshot } from './harness';

/** Beside others a page may take its time. */
const PATIENT = { timeout: 240_000 };

const base = smallRoofDocument();
const key = (atSeconds: number, alongMetres: number) => ({
  atSeconds,
  position: [alongMetres - 2.5, 1.5, 6],
  headingDegrees: 0,
  tiltDegrees: 0,
  rollDegrees: 0,
  alongMetres,
});

/** A plan that can be read and that no camera department would shoot: every one of its first setup's numbers is off. */
function offPlan(): Plan {
  const [first, second] = base.setups;
  const read = parsePlan({
    ...base,
    title: 'All wrong',
    kit: {
      ...base.kit,
      lenses: base.kit.lenses.map((lens, k) =>
        k === 0 ? { ...lens, widestStop: 2.3 } : { ...lens, longestMm: 170 },
      ),
    },
    pieces: [
      ...base.pieces,
      {
        id: 'vent',
        label: 'Vent',
        kind: 'box',
        at: [0, 0, 7.2],
        headingDegrees: 0,
        size: [2, 1, 1],
        material: 'timber',
      },
    ],
    gear: [
      ...base.gear,
      {
        id: 'rails',
        label: 'Rails',
        kind: 'track',
        at: [0, 0, 6],
        headingDegrees: 90,
        lengthMetres: 5,
        gaugeMetres: 0.62,
      },
    ],
    setups: [
      {
        ...first,
        stop: 1.4,
        focus: { metres: 0.3 },
        support: 'dolly',
        track: 'rails',
        move: { ease: 'linear', keys: [key(0, 1), key(1, 4.9), key(99, 4.5)] },
      },
      {
        ...second,
        span: { from: 'start', to: 'end' },
        focus: {
          racks: [
            { atSeconds: 0, pullSeconds: 0, on: { metres: 8 } },
            { atSeconds: 1, pullSeconds: 0.5, on: { metres: 5 } },
          ],
        },
      },
    ],
  });
  if (!read.ok) throw new Error(read.faults[0]?.sentence);
  return read.value;
}

async function openPlan(page: Page, plan: Plan): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open', exact: true }).click(),
  ]);
  await chooser.setFiles({
    name: 'off.plan.json',
    mimeType: 'application/json',
    buffer: Buffer.from(serialisePlan(plan)),
  });
  await page.getByRole('heading', { name: plan.title }).waitFor();
}

/** Each fault: what is said in both places, and the button beside the field that mends it. */
const FAULTS: readonly { readonly said: RegExp; readonly offer: RegExp }[] = [
  { said: /asks for T1\.4, and its lens opens no wider than T2\.3\./, offer: /^Take T2\.3$/ },
  {
    said: /lies at 99\.0\u00a0s, outside of what it covers\. The nearest moment is 2\.0\u00a0s\./,
    offer: /^Take 2\.0/,
  },
  { said: /to 4\.90\u00a0m along Rails, .* The nearest place is 4\.55\u00a0m\./, offer: /^Take 4\.55/ },
  {
    said: /comes to a focus of 0\.30\u00a0m at .*, and its lens focuses from 0\.90\u00a0m on\./,
    offer: /^Focus at 0\.90/,
  },
  {
    said: /needs 0\.93\u00a0m beside the middle of Rails, .*; Vent leaves 0\.70\u00a0m\./,
    offer: /^Move the track 0\.25/,
  },
];

test(
  'what a camera cannot do is said beside its field and in the report, and mended by its button in both',
  PATIENT,
  async () => {
    const page = await openPage({ width: 1440, height: 900, theme: 'day', before: BUILDING });
    await openPlan(page, offPlan());
    const panel = page.locator('.sections');
    const notices: Locator = page.getByRole('region', { name: 'Before the findings' });
    const tab = (name: RegExp): Promise<void> => page.getByRole('tab', { name }).click();
    await tab(/Frames/);
    await notices.waitFor();
    for (const { said } of FAULTS) expect(await notices.getByText(said).count(), String(said)).toBe(1);
    await tab(/Set/);
    for (const { said } of FAULTS) expect(await panel.getByText(said).count(), String(said)).toBe(1);
    await page.getByText(/Vent leaves/).scrollIntoViewIfNeeded();
    await screenshot(page, 'camera-faults');
    for (const { said, offer } of FAULTS) {
      const button = panel.getByRole('button', { name: offer });
      // A key's offer is in its own fields, which its name opens.
      for (const name of ['Key 2', 'Key 3'])
        if ((await button.count()) === 0)
          await panel.getByRole('button', { name: new RegExp(`^${name}`) }).click();
      await button.click();
      await eventually(() => panel.getByText(said).count()).toBe(0);
    }
    await tab(/Frames/);
    for (const { said } of FAULTS)
      await eventually(() => page.locator('.sheet').getByText(said).count()).toBe(0);

    // Racks: lettered on the bar, and told to whoever hears it.
    await page.locator('.strip .card').nth(1).click();
    const bar = page.getByRole('button', { name: /^Focus along the move/ });
    await page.locator('.rack-name', { hasText: 'to 5.00\u00a0m' }).waitFor();
    const id = await bar.getAttribute('aria-describedby');
    expect(await page.locator(`[id="${id}"]`).textContent()).toBe(
      'Racks: begins on 8.00\u00a0m; at 1.0\u00a0s from 8.00\u00a0m to 5.00\u00a0m, pulled over 0.5\u00a0s.',
    );
    // The zoom is tried at both of its ends.
    await page.getByRole('button', { name: 'lens test', exact: true }).click();
    await page.locator('.lens-card .use', { hasText: 'at its long end, 170\u00a0mm' }).waitFor();
    await page.locator('.answer').waitFor();
    await screenshot(page, 'camera-racks-zoom');
    await expect.poll(() => page.locator('.lens-card').count()).toBe(3);
  },
);
