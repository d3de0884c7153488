import type { Page } from 'playwright-core';
import type { Plan } from '../../src/core/plan/schema/plan';
import { serialisePlan } from '../../src/core/plan/serialise';

/** A file by its name and what is in it: text, or bytes. */
export type Dropped = readonly [name: string, content: string | Uint8Array];

/** Drops files on the page, as a hand does that brings them from a folder. */
export async function drop(page: Page, ...files: readonly Dropped[]): Promise<void> {
  const encoded = files.map(([name, content]) => [name, Buffer.from(content).toString('base64')] as const);
  await page.evaluate((dropped) => {
    const dataTransfer = new DataTransfer();
    for (const [name, text] of dropped) {
      const bytes = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
      dataTransfer.items.add(new File([bytes], name));
    }
    window.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
  }, encoded);
}

/** Drops a plan's file on the page, and waits until its title stands at the top. */
export async function dropPlan(page: Page, plan: Plan): Promise<void> {
  await drop(page, ['dropped.plan.json', serialisePlan(plan)]);
  const title = page.locator('.top h2', { hasText: new RegExp(`^${plan.title}$`) });
  // Where the frame is shown alone the title is there, and not to be seen.
  await title.waitFor({ state: 'attached' });
}
