import { expect, test } from 'vitest';
import { seriousViolations } from './axe';
import { openPage, screenshot } from './harness';
import { onlyWorkers } from './onlyWorkers';
import { withoutPicture } from './withoutPicture';

test('the Light sheet shows levels over the roof and in the frame, and meters both under pointer and keys', async () => {
  const page = await openPage({
    width: 1440,
    height: 900,
    before: [withoutPicture, onlyWorkers('levelMap')],
  });
  const roof = page.getByRole('region', { name: 'The roof', exact: true });
  await page.getByRole('tab', { name: /Light/ }).click();
  await roof.getByRole('button', { name: 'levels', exact: true }).click();
  await roof.locator('.contour').waitFor({ state: 'attached' });
  expect(await roof.locator('.throws').count()).toBe(0);
  await roof.getByText('stops from T2.8, ISO').waitFor();

  // By keys: the cross goes up the drawing, and says another level.
  const meter = roof.getByRole('button', { name: /^Meter on the roof: .* lx, .* stops?, / });
  await meter.focus();
  const before = await meter.getAttribute('aria-label');
  await page.keyboard.press('Shift+ArrowUp');
  await page.keyboard.press('Shift+ArrowUp');
  await expect.poll(() => meter.getAttribute('aria-label')).not.toBe(before);
  // Under the pointer: beside the roof there is nothing to meter.
  const board = await roof.locator('.overhead').boundingBox();
  if (!board) throw new Error('no overhead');
  await page.mouse.move(board.x + board.width / 2, board.y + board.height - 6);
  await roof.getByText('nothing is metered beside the roof').waitFor();

  const frame = page.getByRole('region', { name: 'The frame', exact: true });
  await frame.getByRole('button', { name: /^Spot meter: .* cd\/m²/ }).waitFor();
  await frame.getByText('guides', { exact: true }).click();
  await frame.getByLabel('levels, stops from middle grey').check();
  await frame.locator('.frame-levels .level').first().waitFor({ state: 'attached' });
  await frame.getByText('stops from middle grey', { exact: true }).last().waitFor();
  await screenshot(page, 'levels');
  expect(await seriousViolations(page)).toEqual([]);

  await roof.getByRole('button', { name: 'throws', exact: true }).click();
  await roof.locator('.throws').waitFor({ state: 'attached' });
  expect(await roof.locator('.level').count()).toBe(0);
});
