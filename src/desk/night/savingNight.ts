import { fileSave } from 'browser-fs-access';
import type { PackingLine } from '../../core/night/packing/types';
import type { Night } from '../../core/night/types';
import type { Plan } from '../../core/plan/schema/plan';
import { nightCalendar } from '../../exchange/calendar/nightCalendar';
import { nightCsv } from '../../exchange/night/nightCsv';
import { isAbort } from '../assets/isAbort';
import { fileWord } from '../fileWord';
import { sentenceOf } from '../reasonOf';
import { toastStore } from '../toastStore';

/** Saves a text as a file, and says under which name. */
async function save(text: string, type: string, description: string, fileName: string): Promise<void> {
  const { say } = toastStore.getState();
  try {
    const handle = await fileSave(new Blob([text], { type }), {
      description,
      mimeTypes: [type],
      extensions: [fileName.slice(fileName.lastIndexOf('.'))],
      fileName,
    });
    say(`Saved as ${handle?.name ?? fileName}.`);
  } catch (error) {
    if (isAbort(error)) return;
    say(sentenceOf(`${description} was not saved`, error), { tone: 'warn' });
  }
}

/** Saves the night as a calendar file, the same that the command line makes. */
export const saveCalendar = (plan: Plan, night: Night): Promise<void> =>
  save(nightCalendar(plan, night), 'text/calendar', 'The calendar', `${fileWord(plan.title)}-night.ics`);

/** Saves the order of the night and the packing list as tables, the same that the command line makes. */
export const saveNightCsv = (plan: Plan, night: Night, packing: readonly PackingLine[]): Promise<void> =>
  save(nightCsv(plan, night, packing), 'text/csv', 'The list', `${fileWord(plan.title)}-night.csv`);
