import { expect, test } from 'vitest';
import { openPage } from './harness';

test('a full picture that cannot keep up with a move is drawn lighter, and says so', async () => {
  const page = await openPage({
    width: 900,
    height: 600,
    // The page would begin with the light picture here: it is told that a graphics card draws.
    before: () => {
      const { getParameter } = WebGL2RenderingContext.prototype;
      WebGL2RenderingContext.prototype.getParameter = function named(parameter: number): unknown {
        // UNMASKED_RENDERER_WEBGL
        return parameter === 37446 ? 'A graphics card' : getParameter.call(this, parameter);
      };
    },
  });
  await page.locator('.desk').press('Space');
  const toast = page.locator('.toast', { hasText: 'The picture is drawn lighter' });
  await toast.waitFor({ timeout: 100_000 });
  expect(await toast.getByRole('button', { name: 'Draw it in full' }).isVisible()).toBe(true);
}, 200_000);
