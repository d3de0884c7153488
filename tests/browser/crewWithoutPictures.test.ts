import { expect, test } from 'vitest';
import { linkOfPlan } from '../../src/exchange/link/link';
import { smallRoof } from '../unit/smallRoof';
import { seriousViolations } from './axe';
import { openPage } from './harness';
import { withoutPicture } from './withoutPicture';

test('without WebGL the sheet says why there are no pictures, offers another try, and goes on', async () => {
  const page = await openPage({
    width: 390,
    height: 844,
    touch: true,
    theme: 'day',
    address: `#${linkOfPlan(smallRoof()).fragment}`,
    before: withoutPicture,
  });
  const sentence = /^This browser offers no WebGL 2, so there are no pictures\. Everything else/;
  const notice = page.locator('.crew-no-pictures');
  await notice.getByText(sentence).waitFor();
  expect(await page.locator('.crew-picture').getByText('No picture', { exact: true }).count()).toBe(3);
  // Nothing of what draws was loaded for that.
  expect(
    await page.evaluate(
      () =>
        performance.getEntriesByType('resource').filter(({ name }) => /three|crewStage/.test(name)).length,
    ),
  ).toBe(0);
  await notice.getByRole('button', { name: 'Try again' }).tap();
  await notice.getByText(sentence).waitFor();

  await page.getByRole('button', { name: /Master from the stairs$/ }).tap();
  await page.getByRole('button', { name: 'Fill the window with what A sees' }).tap();
  const dialog = page.getByRole('dialog', { name: 'A, Master from the stairs' });
  await dialog.getByText(sentence).waitFor();
  await page.getByRole('slider', { name: 'Time in the move' }).press('End');
  await dialog.getByText('2.0\u00a0s', { exact: true }).waitFor();
  await page.getByRole('button', { name: 'Look around' }).tap();
  expect(await seriousViolations(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await dialog.waitFor({ state: 'detached' });
  await page.getByRole('heading', { name: 'A, Master from the stairs' }).waitFor();
});
