import { expect, test } from 'vitest';
import { smallRoof } from '../unit/smallRoof';
import { dropPlan } from './dropping';
import { openPage } from './harness';
import { untilStill } from './picture';
import { withoutDemo } from './withoutDemo';
import { withoutReports } from './withoutReports';

/** Low frames have few pixels: without a graphics card each of them takes its time. */
const ROOF = smallRoof();
const PLAN = { ...ROOF, setups: ROOF.setups.map((setup) => ({ ...setup, delivery: 4 })) };

function aCardDraws(): void {
  const { getParameter } = WebGL2RenderingContext.prototype;
  WebGL2RenderingContext.prototype.getParameter = function named(parameter: number): unknown {
    // UNMASKED_RENDERER_WEBGL
    return parameter === 37446 ? 'A graphics card' : getParameter.call(this, parameter);
  };
}

test('a full picture that cannot keep up with a move is drawn lighter, and says so', async () => {
  const page = await openPage({
    width: 900,
    height: 600,
    // The page would begin with the light picture here: it is told that a graphics card draws.
    before: [withoutReports, withoutDemo, aCardDraws],
  });
  await dropPlan(page, PLAN);
  await untilStill(page);
  await page.locator('.desk').press('Space');
  const toast = page.locator('.toast', { hasText: 'The picture is drawn lighter' });
  await toast.waitFor({ timeout: 300_000 });
  expect(await toast.getByRole('button', { name: 'Draw it in full' }).isVisible()).toBe(true);
}, 600_000);

test('the strip plays along: small pictures of setups change while the move plays, and keep still once it rests', async () => {
  const page = await openPage({ width: 900, height: 600, before: [withoutReports, withoutDemo] });
  await dropPlan(page, PLAN);
  await untilStill(page);
  // Every picture that a canvas of the strip has while it is as small as pictures are that play, and no other.
  await page.evaluate(() => {
    const seen: Record<string, Set<string>> = {};
    const look = (): void => {
      for (const [k, canvas] of [
        ...document.querySelectorAll<HTMLCanvasElement>('.strip canvas'),
      ].entries()) {
        if (canvas.width !== canvas.clientWidth) continue;
        const { data } = canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height) ?? {
          data: [],
        };
        let sum = 7;
        for (let at = 0; at < data.length; at += 4) sum = (sum * 31 + (data[at + 1] ?? 0)) % 2147483647;
        seen[k] = (seen[k] ?? new Set()).add(String(sum));
      }
      requestAnimationFrame(look);
    };
    Object.assign(window, { counts: () => Object.values(seen).map((pictures) => pictures.size) });
    look();
  });
  const counts = (): Promise<readonly number[]> =>
    page.evaluate(() => (Reflect.get(window, 'counts') as () => number[])());
  const most = async (): Promise<readonly number[]> => (await counts()).toSorted((a, b) => b - a);
  await page.locator('.desk').press('Space');
  await expect.poll(async () => (await most())[1] ?? 0, { timeout: 300_000 }).toBeGreaterThan(3);
  expect(
    await page
      .getByRole('button', { name: /^Pause/ })
      .first()
      .isVisible(),
  ).toBe(true);

  await page.locator('.desk').press('Space');
  await untilStill(page);
  const atRest = await counts();
  await page.mouse.move(300, 20);
  await untilStill(page);
  expect(await counts()).toEqual(atRest);
}, 600_000);
