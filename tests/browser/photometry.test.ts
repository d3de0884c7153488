import { expect, test } from 'vitest';
import { AXIAL_LM63 } from '../outside/exchange/lm63/axial';
import { seriousViolations } from './axe';
import { drop } from './dropping';
import { openPage } from './harness';
import { withoutPicture } from './withoutPicture';
import { withoutReports } from './withoutReports';

test('a photometric file is dropped on the chosen lamp, plotted, taken back, refused in words, and measured instead', async () => {
  const page = await openPage({ width: 1440, height: 900, before: [withoutPicture, withoutReports] });
  const toast = page.locator('.toast');
  await drop(page, ['axial.ies', AXIAL_LM63]);
  await toast.getByText('axial.ies is the light of a lamp. Choose the lamp, then drop it again.').waitFor();

  await page.getByRole('tab', { name: /Set/ }).click();
  await page.getByRole('searchbox', { name: 'find' }).fill('Head 3');
  await page.locator('.things .thing', { hasText: 'Head 3' }).first().click();
  const panel = page.locator('.item-panel');
  const plot = panel.getByRole('img', { name: /^Candela by the angle off the axis/ });
  await panel.getByText(/^45,000\u00a0cd as published of its class, about [\d,]+\u00a0lm\./).waitFor();

  await drop(page, ['axial.ies', AXIAL_LM63]);
  await toast
    .getByText(
      'axial.ies read: 532\u00a0lm, beam 87.1°, field 137.9°. The file says 8\u00a0W, the class 350\u00a0W.',
    )
    .waitFor();
  expect(await plot.getAttribute('aria-label')).toBe(
    'Candela by the angle off the axis: 269 along it, 269 at most; beam 87.1°, field 137.9°.',
  );
  await panel.getByText('“an axial lamp”').waitFor();
  expect(await plot.locator('text').allTextContents()).toEqual([
    'beam 87°',
    'field 138°',
    '100',
    '200',
    '300\u00a0cd',
  ]);
  expect(await seriousViolations(page)).toEqual([]);

  await page.keyboard.press('ControlOrMeta+z');
  await plot.waitFor({ state: 'detached' });
  await page.keyboard.press('ControlOrMeta+Shift+z');
  await plot.waitFor();

  await drop(page, ['broken.ies', AXIAL_LM63.replace('264 260', '264 -260')]);
  await toast
    .getByText('broken.ies was not read. Line 13: found "-260", expected candela, 0 to 100,000,000.')
    .waitFor();
  await plot.waitFor();

  await panel.getByRole('button', { name: 'Measured instead' }).focus();
  await page.keyboard.press('Enter');
  await plot.waitFor({ state: 'detached' });
  const lux = panel.getByRole('textbox', { name: 'meter read' });
  await lux.fill('1850');
  await lux.press('Enter');
  await panel.getByText('16,650\u00a0cd').waitFor();
  await lux.fill('0');
  await lux.press('Enter');
  await panel
    .getByRole('alert')
    .getByText(/0\.01 to 1/)
    .waitFor();
  await lux.press('Escape');

  await panel.getByRole('button', { name: 'Take the reading out' }).click();
  await panel.getByText(/^45,000\u00a0cd as published/).waitFor();
});
