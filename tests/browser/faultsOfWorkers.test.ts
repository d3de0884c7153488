import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { smallRoof } from '../unit/smallRoof';
import { seriousViolations } from './axe';
import { eventually } from './building';
import { dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { keptPlan } from './keptPlan';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';

/** Beside others a page may take its time. */
const PATIENT = { timeout: 600_000 };

/** Runs in the page before its own code: a worker that reads plans can be killed, and silence is soon told. */
function killable(): void {
  const started: Worker[] = [];
  let answers = 0;
  const kill = (message: string): void => {
    answers = 0;
    for (const worker of started.splice(0)) {
      worker.terminate();
      worker.dispatchEvent(new ErrorEvent('error', { message }));
    }
  };
  const { setInterval } = window;
  Object.assign(window, {
    kill,
    answersOfTheLiving: () => answers,
    Worker: new Proxy(Worker, {
      construct: (native, [url, options]: ConstructorParameters<typeof Worker>) => {
        const worker = new native(url, options);
        if (!String(url).includes('/report.worker')) return worker;
        started.push(worker);
        worker.addEventListener('message', () => {
          if (started.includes(worker)) answers += 1;
        });
        return worker;
      },
    }),
    setInterval: (act: () => void, ms: number) => setInterval(act, ms === 1000 ? 70 : ms),
  });
}

/** Has the workers that read plans reckon without end. */
function hang(page: Page): void {
  // Fails when the worker is ended, which is what is wanted.
  for (const worker of page.workers().filter((each) => each.url().includes('/report.worker')))
    worker.evaluate('for (;;);').catch(() => undefined);
}

const kill = (page: Page, message: string): Promise<void> =>
  page.evaluate((said) => (window as unknown as { kill: (message: string) => void }).kill(said), message);

/** While a plan is read, or cannot be, a line says so. */
const everySetupIsJudged = (page: Page): Promise<void> =>
  eventually(() => page.locator('.reading').count()).toBe(0);

test(
  'a report whose workers hang or die says so, is made again on a press or with the next edit, and no edit is lost',
  PATIENT,
  async () => {
    const page = await openPage({
      width: 1440,
      height: 900,
      before: [withoutPicture, withoutDemo, killable],
    });
    await dropPlan(page, smallRoof());
    await everySetupIsJudged(page);
    const said = page.locator('.reading[role="alert"]');
    const again = said.getByRole('button', { name: 'Read again' });
    const [item] = (await keptPlan(page)).gear.flatMap((each) => ('at' in each ? [each] : []));
    const across = async (): Promise<number> => {
      const found = (await keptPlan(page)).gear.find(({ id }) => id === item.id);
      return found && 'at' in found ? found.at[0] : Number.NaN;
    };
    await page.locator(`[data-target="${item.id}"]`).focus();
    await page.keyboard.press('Enter');
    const edit = (): Promise<void> => page.keyboard.press('ArrowRight');

    // Where the tabs and what is under them begin, at the sizes of a desk, a tablet and a phone.
    const places = async (): Promise<readonly string[]> => {
      const found: string[] = [];
      for (const [width, height] of [
        [1024, 768],
        [390, 844],
        [1440, 900],
      ] as const) {
        await page.setViewportSize({ width, height });
        found.push(
          await page.evaluate(() =>
            ['.tabs', '.sheet-panel', '.sheet-panel h3']
              .map((each) => Math.round(document.querySelector(each)?.getBoundingClientRect().top ?? -1))
              .join(' '),
          ),
        );
      }
      return found;
    };
    const before = await places();

    // Hung in the middle of it: the page goes on and says what it waits for.
    hang(page);
    await edit();
    await said
      .filter({ hasText: 'has not answered for a minute. The plan is saved on this device.' })
      .waitFor();
    expect(await places()).toEqual(before);
    await edit();
    await eventually(across).toBeCloseTo(item.at[0] + 0.2);
    expect(await seriousViolations(page)).toEqual([]);
    await screenshot(page, 'report-hangs');
    await again.click();
    await everySetupIsJudged(page);

    // Killed while it is waited for.
    hang(page);
    await edit();
    await page.locator('.reading').waitFor();
    await kill(page, 'out of memory');
    await said.filter({ hasText: 'The report could not be made: out of memory' }).waitFor();
    await screenshot(page, 'report-killed');
    await again.click();
    await everySetupIsJudged(page);

    // Killed while nothing is asked of it: the next edit does not notice.
    await kill(page, 'out of memory');
    await edit();
    await eventually(() =>
      page.evaluate(() => (window as unknown as { answersOfTheLiving: () => number }).answersOfTheLiving()),
    ).toBeGreaterThan(0);
    await everySetupIsJudged(page);
    await eventually(across).toBeCloseTo(item.at[0] + 0.4);
  },
);
