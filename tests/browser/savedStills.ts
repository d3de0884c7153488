import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import type { Plan } from '../../src/core/plan/schema/plan';
import { folderIn } from './chosenFolder';
import { openPlan } from './plainFiles';

/**
 * The delivered frames of a plan's setups, of which there are several, by setup id: saved into a folder (`withFolder`)
 * as pictures 1920 pixels wide, their slates cut off. Each setup covers one instant, and its id is its label.
 */
export async function savedStills(page: Page, plan: Plan): Promise<ReadonlyMap<string, PNG>> {
  await openPlan(page, plan);
  await page.getByRole('button', { name: 'contact sheet', exact: true }).click();
  await page.getByRole('button', { name: 'Save each picture', exact: true }).click();
  const count = plan.setups.length;
  await page.locator('.toasts').getByText(`Saved as ${count} pictures in Stills.`).waitFor();
  const files = Object.entries((await folderIn(page)).files);
  return new Map(
    plan.setups.map(({ id, delivery }) => {
      const [, text] = files.find(([name]) => name.includes(id)) ?? [];
      if (text === undefined) throw new Error(`no picture of ${id} among ${files.map(([name]) => name)}`);
      const whole = PNG.sync.read(Buffer.from(text, 'base64'));
      const frame = new PNG({ width: whole.width, height: Math.round(whole.width / delivery) });
      PNG.bitblt(whole, frame, 0, 0, frame.width, frame.height, 0, 0);
      return [id, frame] as const;
    }),
  );
}
