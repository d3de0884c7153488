import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { parsePlan } from '../../src/core/plan/parse';
import type { Plan } from '../../src/core/plan/schema/plan';
import { REAL_MODELS } from '../plans/realModels';
import { smallRoof } from '../unit/smallRoof';
import { pressAt } from './building';
import { type Dropped, drop, dropPlan } from './dropping';
import { openPage, screenshot, waitUntilReady } from './harness';
import { onlyWorkers } from './onlyWorkers';
import { shelfContents } from './shelfContents';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';

/** Without a graphics card a page may take its time. */
const PATIENT = { timeout: 60_000 };
const TITLE = 'Roof to be scanned';

/** A browser that opens files by an input of its own, as most do: its dialog can be answered here. */
function withFileInputs(): void {
  Reflect.deleteProperty(window, 'showOpenFilePicker');
}
const DESK = { width: 1440, height: 900, before: [withoutPicture, withoutDemo, withFileInputs] };

/** A bare deck, a camera at its foot that looks across, and behind the middle a post that should keep out. */
function bareRoof(): Plan {
  const roof = smallRoof();
  const [setup] = roof.setups;
  const at = { atSeconds: 0, headingDegrees: 0, tiltDegrees: 0, rollDegrees: 0 };
  return {
    ...roof,
    title: TITLE,
    cast: [],
    gear: [],
    setups: [
      {
        ...setup,
        label: 'Across',
        lens: 'long',
        move: { ease: 'linear', keys: [{ ...at, position: [0, 1, 9] }] },
      },
    ],
    pieces: [
      {
        id: 'deck',
        label: 'Deck',
        kind: 'deck',
        outline: [
          [-10, -10],
          [10, -10],
          [10, 10],
          [-10, 10],
        ],
        topMetres: 0,
        dropMetres: 10,
      },
      {
        id: 'post',
        label: 'Post',
        kind: 'post',
        wish: 'keep out',
        at: [0.3, 0, -3],
        headingDegrees: 0,
        heightMetres: 1.2,
        diameterMetres: 0.1,
        armMetres: 0,
      },
    ],
  };
}

const toast = (page: Page, text: string | RegExp) => page.locator('.toast', { hasText: text });

async function openRoof(page: Page): Promise<void> {
  await dropPlan(page, bareRoof());
  await page.getByRole('tab', { name: /Set/ }).click();
}

/** The plan as this device keeps it. */
async function keptPlan(page: Page): Promise<Plan> {
  const { rows, documents } = await shelfContents(page);
  const row = rows.find(({ title }) => title === TITLE);
  const read = row && parsePlan(documents[row.id]);
  if (!read?.ok) throw new Error('the plan is not kept');
  return read.value;
}

async function keptModel(page: Page) {
  const model = (await keptPlan(page)).pieces.find(({ kind }) => kind === 'model');
  return model?.kind === 'model' ? model : null;
}

/** Answers the dialog that a press opens with a file. */
async function answer(page: Page, press: string, name: string, bytes: Uint8Array): Promise<void> {
  const [dialog] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: press, exact: true }).click(),
  ]);
  await dialog.setFiles({ name, mimeType: '', buffer: Buffer.from(bytes) });
}

async function type(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByLabel(label, { exact: true });
  await field.fill(text);
  await field.press('Enter');
}

const card = (page: Page) => page.locator('.card').first();

/** A picture as PNG, made in the page: the drawing of a roof. */
const pictureOf = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const canvas = new OffscreenCanvas(400, 300);
    const ink = canvas.getContext('2d');
    if (!ink) throw new Error('no canvas');
    ink.fillStyle = '#ffffff';
    ink.fillRect(0, 0, 400, 300);
    ink.strokeRect(40, 40, 320, 220);
    const bytes = new Uint8Array(await (await canvas.convertToBlob({ type: 'image/png' })).arrayBuffer());
    return btoa(String.fromCharCode(...bytes));
  });

const forgetFiles = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.deleteDatabase('standclear-assets');
        request.onsuccess = () => resolve();
        request.onerror = () => reject(request.error);
      }),
  );

test('a model is imported, scaled, put on the deck and turned to north; it covers what stands behind it', async () => {
  const page = await openPage(DESK);
  await openRoof(page);
  await expect.poll(() => card(page).textContent(), PATIENT).toContain('post shows');

  await answer(page, 'Imported model: choose a file', 'bunny.glb', REAL_MODELS.bunny);
  await toast(page, 'bunny is on the roof').waitFor();
  await page.getByText('5,648 triangles, all of them judged and drawn.').waitFor();
  await expect.poll(() => card(page).textContent(), PATIENT).toContain('covered');
  await page.locator('.model-cut').waitFor({ state: 'attached' });

  const before = await keptModelAfter(page, (model) => model !== null);
  await page.getByRole('button', { name: 'Press two points' }).click();
  await pressAt(page, [-1, 0]);
  await pressAt(page, [1, 0]);
  const apart = page.getByLabel('apart', { exact: true });
  await apart.waitFor();
  const measured = Number(await apart.inputValue());
  expect(measured).toBeGreaterThan(1.5);
  await type(page, 'apart', '3');
  const scaled = await keptModelAfter(page, (model) => model?.metresPerUnit !== before?.metresPerUnit);
  expect(scaled?.metresPerUnit).toBeCloseTo((before?.metresPerUnit ?? 0) * (3 / measured), 2);

  await page.getByRole('button', { name: 'The second lies north' }).click();
  const turned = await keptModelAfter(page, (model) => model?.headingDegrees !== 0);
  expect(turned?.headingDegrees).toBeCloseTo(270, 0);

  await type(page, 'off the deck', '2');
  await keptModelAfter(page, (model) => model?.at[1] === 2);
  await page.getByRole('button', { name: 'Put its foot on the deck' }).click();
  await keptModelAfter(page, (model) => model?.at[1] === 0);
  await screenshot(page, 'import-model');

  await page.reload({ waitUntil: 'commit' });
  await waitUntilReady(page);
  await page.locator('.model-cut').waitFor({ state: 'attached' });
});

/** The model as it is kept once something is true of it. */
async function keptModelAfter(page: Page, holds: (model: Awaited<ReturnType<typeof keptModel>>) => boolean) {
  await expect.poll(async () => holds(await keptModel(page)), PATIENT).toBe(true);
  return keptModel(page);
}

test('a dropped model whose file is gone is said and boxed, and given its file again', async () => {
  const page = await openPage(DESK);
  await openRoof(page);
  await drop(page, ['bunny.glb', REAL_MODELS.bunny]);
  await toast(page, 'bunny is on the roof').waitFor();
  const { asset } = (await keptModelAfter(page, (model) => model !== null)) ?? {};

  await forgetFiles(page);
  await page.reload({ waitUntil: 'commit' });
  await waitUntilReady(page);
  await page.locator('.model-missing').first().waitFor({ state: 'attached' });
  await page
    .getByText(/The file of bunny, bunny\.glb, is not here: a box of its size stands for it/)
    .first()
    .waitFor();
  await page.getByRole('tab', { name: /Set/ }).click();
  await page.locator('[data-target="model-1"]').focus();
  await page.keyboard.press('Enter');
  await page.getByText('is not on this device: a box of its size stands for it').waitFor();
  await screenshot(page, 'import-missing');

  await answer(page, 'Give it the file', 'copy of bunny.glb', REAL_MODELS.bunny);
  await toast(page, 'bunny has its file again.').waitFor();
  await page.locator('.model-cut').waitFor({ state: 'attached' });
  expect((await keptModel(page))?.asset).toEqual(asset);
});

test('what is no model, is cut short or finds no room is a sentence, and the plan stays', async () => {
  const page = await openPage({
    ...DESK,
    before: [
      withoutPicture,
      withoutDemo,
      onlyWorkers('model'),
      () =>
        Object.assign(navigator.storage ?? {}, { estimate: async () => ({ quota: 30_000, usage: 15_000 }) }),
    ],
  });
  await openRoof(page);
  const { pieces } = await keptPlanOnce(page);
  const refusals: readonly (readonly [Dropped, RegExp])[] = [
    [['half.glb', REAL_MODELS.bunny.slice(0, 9000)], /half\.glb was not imported\. The file is cut short/],
    [['notes.glb', 'a note'], /notes\.glb was not imported\. The file is no GLB/],
    [['roof.gltf', '{"asset":{}}'], /Save the model as one binary file/],
    [['bunny.glb', REAL_MODELS.bunny], /There is room for 1 MB more on this device/],
    [['photo.jpg', 'no photo'], /photo\.jpg was not laid under the roof/],
  ];
  for (const [file, sentence] of refusals) {
    await drop(page, file);
    await toast(page, sentence).waitFor();
  }
  expect((await keptPlan(page)).pieces).toEqual(pieces);
});

async function keptPlanOnce(page: Page): Promise<Plan> {
  await expect
    .poll(async () => (await shelfContents(page)).rows.map(({ title }) => title), PATIENT)
    .toContain(TITLE);
  return keptPlan(page);
}

test('a picture is laid under the roof, scaled by two points, dimmed and taken away', async () => {
  const page = await openPage({ ...DESK, before: [...DESK.before, onlyWorkers('model')] });
  await openRoof(page);
  await drop(page, ['drawing.png', Buffer.from(await pictureOf(page), 'base64')]);
  await toast(page, 'drawing.png lies under the roof').waitFor();
  await page.locator('.underlay image').waitFor({ state: 'attached' });
  await keptPlanOnce(page);

  await page.getByRole('button', { name: 'the roof', exact: true }).click();
  await page.getByRole('button', { name: 'Press two points' }).click();
  await pressAt(page, [-4, 0]);
  await pressAt(page, [4, 0]);
  const apart = page.getByLabel('apart', { exact: true });
  await apart.waitFor();
  const measured = Number(await apart.inputValue());
  const before = (await keptPlan(page)).underlay?.metresPerPixel ?? 0;
  await type(page, 'apart', '4');
  await expect
    .poll(async () => (await keptPlan(page)).underlay?.metresPerPixel, PATIENT)
    .toBeCloseTo((before * 4) / measured, 3);
  await page.getByRole('button', { name: 'Done' }).click();

  await page.getByLabel('strength').focus();
  await page.keyboard.press('ArrowLeft');
  await expect.poll(async () => (await keptPlan(page)).underlay?.strength, PATIENT).toBe(0.45);
  await screenshot(page, 'import-underlay');

  await page.reload({ waitUntil: 'commit' });
  await waitUntilReady(page);
  await page.locator('.underlay image').waitFor({ state: 'attached' });
  await page.getByRole('tab', { name: /Set/ }).click();
  await page.getByRole('button', { name: 'the roof', exact: true }).click();
  await page.getByRole('button', { name: 'Take it away' }).click();
  await page.locator('.underlay').waitFor({ state: 'detached' });
});
