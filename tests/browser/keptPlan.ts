import type { Page } from 'playwright-core';
import { parsePlan } from '../../src/core/plan/parse';
import type { Plan } from '../../src/core/plan/schema/plan';
import { DEMO, readPlan } from '../plans/readPlan';
import { shelfContents } from './shelfContents';

/** The plan as the device keeps it; the demo until something was changed. */
export async function keptPlan(page: Page): Promise<Plan> {
  const { documents, lastOpen } = await shelfContents(page);
  const document = lastOpen === null ? undefined : documents[lastOpen];
  if (document === undefined) return readPlan(DEMO);
  const read = parsePlan(document);
  if (!read.ok) throw new Error(read.faults.map(({ sentence }) => sentence).join(' '));
  return read.value;
}
