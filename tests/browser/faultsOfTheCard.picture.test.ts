import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { linkOfPlan } from '../../src/exchange/link/link';
import { smallRoof } from '../unit/smallRoof';
import { eventually } from './building';
import { dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { keptPlan } from './keptPlan';
import { framePicture, meanBrightness, untilStill } from './picture';
import { withoutDemo } from './withoutDemo';
import { withoutReports } from './withoutReports';

/** Without a graphics card a page may take its time. */
const PATIENT = { timeout: 600_000 };

/** Three setups whose low frames have few pixels. */
const ROOF = smallRoof();
const PLAN = { ...ROOF, setups: ROOF.setups.map((setup) => ({ ...setup, delivery: 3 })) };

/** Runs in the page before its own code: pictures are drawn as light as they can be, and the card can be taken away. */
function withACard(): void {
  if (location.protocol === 'about:') return;
  localStorage.setItem('standclear.picture', 'light');
  const { getContext } = HTMLCanvasElement.prototype;
  const cards: WEBGL_lose_context[] = [];
  Object.assign(window, { cards });
  Object.assign(HTMLCanvasElement.prototype, {
    getContext(this: HTMLCanvasElement, kind: string, ...rest: unknown[]): unknown {
      const context: unknown = Reflect.apply(getContext, this, [kind, ...rest]);
      const card = context instanceof WebGL2RenderingContext && context.getExtension('WEBGL_lose_context');
      if (card && !cards.includes(card)) cards.push(card);
      return context;
    },
  });
}

const takeCard = (page: Page): Promise<void> =>
  page.evaluate(() => (window as unknown as { cards: WEBGL_lose_context[] }).cards.at(-1)?.loseContext());
const giveCard = (page: Page): Promise<void> =>
  page.evaluate(() => (window as unknown as { cards: WEBGL_lose_context[] }).cards.at(-1)?.restoreContext());

test(
  'a card that stays away leaves the desk at work, which says what to do; should it come back, what was done meanwhile is drawn',
  PATIENT,
  async () => {
    const page = await openPage({
      width: 1000,
      height: 640,
      before: [withACard, withoutDemo, withoutReports],
    });
    await dropPlan(page, PLAN);
    await untilStill(page);
    const lit = meanBrightness(await framePicture(page));
    await takeCard(page);
    const notice = page.locator('.no-picture');
    await notice.filter({ hasText: 'if it does not, load the page again. The rest goes on' }).waitFor();

    // Everything else goes on: an edit, another setup, time, the walk-round's place, a setup of its own.
    const [item] = PLAN.gear.flatMap((each) => ('at' in each ? [each] : []));
    await page.locator(`[data-target="${item.id}"]`).focus();
    await page.keyboard.press('Enter');
    await page.keyboard.press('Shift+ArrowRight');
    await eventually(async () => {
      const found = (await keptPlan(page)).gear.find(({ id }) => id === item.id);
      return found && 'at' in found ? found.at[0] : Number.NaN;
    }).toBeCloseTo(item.at[0] + 1);
    await page.locator('.strip .card').nth(1).click();
    await page.getByRole('heading', { name: /^B / }).waitFor();
    await page.getByText('walk round', { exact: true }).click();
    await page.locator('.walk-round', { hasText: 'has dropped the picture' }).waitFor();
    await page.getByText('overhead', { exact: true }).click();
    await page.locator('.strip .card').first().click();
    await screenshot(page, 'card-lost');

    await giveCard(page);
    await notice.waitFor({ state: 'detached' });
    await untilStill(page);
    expect(meanBrightness(await framePicture(page))).toBeGreaterThan(lit / 2);
  },
);

test(
  'a card that drops the crew’s picture is said in its place, and another try draws it again',
  PATIENT,
  async () => {
    const page = await openPage({
      width: 390,
      height: 844,
      touch: true,
      address: `#${linkOfPlan({ ...PLAN, setups: PLAN.setups.slice(0, 1) }).fragment}`,
      before: withACard,
    });
    page.context().setDefaultTimeout(240_000);
    await page.getByText('1 picture drawn', { exact: true }).waitFor({ state: 'attached' });
    await page.getByRole('button', { name: /Master from the stairs$/ }).tap();
    await page.getByRole('button', { name: 'Fill the window with what A sees' }).tap();
    const place = page.getByRole('application');
    const drawn = async (): Promise<number> => Number(await place.getAttribute('data-paintings'));
    await eventually(drawn).toBeGreaterThan(0);
    await takeCard(page);
    const notice = page.getByRole('dialog').getByText(/^The graphics card dropped the pictures\./);
    await notice.waitFor();
    await screenshot(page, 'card-lost-crew');
    await page.getByRole('dialog').getByRole('button', { name: 'Try again' }).tap();
    await notice.waitFor({ state: 'detached' });
    await eventually(drawn).toBeGreaterThan(0);
    await page.locator('canvas').waitFor();
  },
);
