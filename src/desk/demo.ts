import { parsePlanText } from '../core/plan/parse';
import type { Plan } from '../core/plan/schema/plan';
import { sentenceOf } from './reasonOf';
import { toastStore } from './toastStore';

export const DEMO_FILE = 'loft-night.plan.json';

/** The demonstration night, read like any other file; null with a toast when it is not to be had. */
export async function fetchDemo(): Promise<Plan | null> {
  const { say } = toastStore.getState();
  try {
    const answer = await fetch(`${import.meta.env.BASE_URL}${DEMO_FILE}`);
    if (!answer.ok) throw new Error(`the server answered ${answer.status}`);
    const read = parsePlanText(await answer.text());
    if (read.ok) return read.value;
    say(`The demonstration night cannot be read. ${read.faults[0]?.sentence ?? ''}`, { tone: 'warn' });
  } catch (error) {
    say(`${sentenceOf('The demonstration night did not come', error)} Open a plan file to begin.`, {
      tone: 'warn',
    });
  }
  return null;
}
