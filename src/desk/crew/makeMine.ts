import type { Plan } from '../../core/plan/schema/plan';
import { rememberOpen } from '../plans/lastOpen';
import { newPlanId } from '../plans/planId';
import { nextInstant } from '../plans/rows';
import { tellTabs } from '../plans/tabs';
import { titleWith } from '../plans/titles';
import { planRows, writePlan } from '../plans/writing';

/** A title that none of the others is: with words after it where it is there already. */
export function freeTitle(title: string, taken: ReadonlySet<string>): string {
  if (!taken.has(title)) return title;
  for (let number = 1; ; number += 1) {
    const found = titleWith(title, number === 1 ? 'from a link' : `from a link ${number}`);
    if (!taken.has(found)) return found;
  }
}

/**
 * Puts a copy of a link's plan among the plans of this device, as the one to open next. Nothing that is kept is written
 * over: it gets an id of its own, and a title of its own where another plan has its title.
 * @returns the title that it is kept under
 * @throws what the browser throws when it refuses storage
 */
export async function makeMine(plan: Plan): Promise<string> {
  const taken = new Set((await planRows()).map(({ title }) => title));
  const title = freeTitle(plan.title, taken);
  const planId = newPlanId();
  await writePlan({
    planId,
    plan: { ...plan, title },
    fileName: 'from-a-link.plan.json',
    changedAt: nextInstant(),
  });
  rememberOpen(planId);
  tellTabs({ type: 'listed', planId, writing: 0 });
  return title;
}
