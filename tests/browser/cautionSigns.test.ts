import { expect, test } from 'vitest';
import { openPage, screenshot } from './harness';
import { withoutPicture } from './withoutPicture';

test.each([
  [1024, 768],
  [1440, 900],
])('at %i × %i no sign of a caution lies over a name on the roof', async (width, height) => {
  const page = await openPage({ width, height, before: withoutPicture });
  await page.locator('#tab-night').click();
  await page.locator('.sheet').getByRole('button', { name: 'cautions', exact: true }).click();
  await page.locator('.caution-sign').first().waitFor();
  await expect
    .poll(() =>
      page.locator('.sheet-drawing').evaluate((drawing) => {
        const boxes = (what: string): readonly Element[] => [...drawing.querySelectorAll(what)];
        const names = boxes('.lettering text, .findings-layer text, .dimensions text');
        return boxes('.caution-sign .sign').flatMap((sign) => {
          const one = sign.getBoundingClientRect();
          return names.flatMap((name) => {
            const other = name.getBoundingClientRect();
            const across = Math.min(one.right, other.right) - Math.max(one.left, other.left);
            const down = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
            // The line of a sign and the room over small letters touch without harm.
            return across > 2 && down > 3 ? [name.textContent] : [];
          });
        });
      }),
    )
    .toEqual([]);
  expect(await page.locator('.caution-sign').count()).toBeGreaterThan(8);
  await screenshot(page, `caution-signs-${width}`);
});
