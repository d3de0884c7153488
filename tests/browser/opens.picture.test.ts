import { expect, test } from 'vitest';
import { openPage, screenshot } from './harness';

test('the built page opens and shows its name', async () => {
  const page = await openPage({ width: 1000, height: 640 });
  expect(await page.getByRole('heading', { name: 'Standclear' }).first().isVisible()).toBe(true);
  await screenshot(page, 'opens');
});
