import type { Page } from 'playwright-core';
import type { Plan } from '../../src/core/plan/schema/plan';
import { serialisePlan } from '../../src/core/plan/serialise';

/** A browser that opens and saves files in the way that every browser can: its dialogs can be answered here. */
export function withPlainFiles(): void {
  for (const name of ['showOpenFilePicker', 'showSaveFilePicker', 'showDirectoryPicker'])
    Reflect.deleteProperty(window, name);
}

/** Opens a plan by the page's own button and its dialog. */
export async function openPlan(page: Page, plan: Plan): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open', exact: true }).click(),
  ]);
  await chooser.setFiles({
    name: 'night.plan.json',
    mimeType: 'application/json',
    buffer: Buffer.from(serialisePlan(plan)),
  });
  await page.getByRole('heading', { name: plan.title }).waitFor();
}
