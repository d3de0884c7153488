import { fileOpen } from 'browser-fs-access';
import { candelaTable } from '../../core/form/photometry/candelaTable';
import { setHeadLight } from '../../core/plan/edits/setHeadLight';
import { itemOf } from '../../core/plan/items';
import type { HeadClass } from '../../core/plan/schema/kit';
import type { Plan } from '../../core/plan/schema/plan';
import { formatNumber, NBSP } from '../../core/units/numbers';
import { type Lm63File, LONGEST_LM63, readLm63 } from '../../exchange/lm63/readLm63';
import { fileLabel } from '../assets/fileLabel';
import { isAbort } from '../assets/isAbort';
import { planStore } from '../planStore';
import { sessionStore } from '../sessionStore';
import { toastStore } from '../toastStore';
import { lumenText, spreadText } from './words';

const FILES = {
  description: 'Photometric files',
  mimeTypes: ['application/x-ies'],
  extensions: ['.ies'],
};
/** Later words about a file take the place of earlier ones. */
const READING = 'photometry';
/** A file whose lamp draws this much more or less than the class is one of another lamp. */
const ODD_WATTS = 0.25;

const say = (sentence: string, tone: 'plain' | 'warn', undo: (() => void) | null = null): void =>
  toastStore
    .getState()
    .say(sentence, { tone, about: READING, action: undo ? { word: 'Undo', act: undo } : null });

/** Whether a file is a photometric one, by its name. */
export const isPhotometric = ({ name }: File): boolean => name.toLowerCase().endsWith('.ies');

/** The class of head of a lamp, a practical or a string; null for anything else. */
export function headClassOfItem(plan: Plan, id: string | null): HeadClass | null {
  const item = id === null ? null : itemOf(plan, id);
  if (item?.section !== 'gear' || !('head' in item.record)) return null;
  const { head } = item.record;
  return plan.kit.heads.find((each) => each.id === head) ?? null;
}

/** Text of UTF-8, else of the Western bytes that older programs write. */
function textOf(bytes: ArrayBuffer): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

function readWords(name: string, { distribution, remarks, watts }: Lm63File, own: HeadClass): string {
  const odd =
    watts !== null && own.watts > 0 && Math.abs(watts / own.watts - 1) > ODD_WATTS
      ? [`The file says ${formatNumber(watts, 0)}${NBSP}W, the class ${formatNumber(own.watts, 0)}${NBSP}W.`]
      : [];
  const lumens = lumenText(candelaTable(distribution).lumens);
  const found = `${name} read: ${lumens}, beam ${spreadText(distribution, 0.5)}, field ${spreadText(distribution, 0.1)}.`;
  return [found, ...remarks, ...odd].join(' ');
}

/** Reads a photometric file into a class of head of the plan, as one step that can be undone. Says in a toast how it went. */
export async function takePhotometricFile(file: File, headId: string): Promise<boolean> {
  const name = fileLabel(file.name);
  const refuse = (sentence: string): false => {
    say(`${name} was not read. ${sentence}`, 'warn');
    return false;
  };
  if (file.size > LONGEST_LM63)
    return refuse(`The file: found ${file.size} bytes, expected at most ${LONGEST_LM63}.`);
  const read = readLm63(textOf(await file.arrayBuffer()), name);
  if (!read.ok) return refuse(read.faults[0].sentence);
  const { plan, edit, undo } = planStore.getState();
  const own = plan.kit.heads.find(({ id }) => id === headId);
  if (!own) return refuse('Its lamp is gone from the plan.');
  const { distribution } = read.value;
  const faults = edit(`read ${name}`, (before) => setHeadLight(before, { headId, light: { distribution } }));
  if (faults[0]) return refuse(faults[0].sentence);
  const isSame = planStore.getState().plan === plan;
  say(
    isSame ? `${name} is what the lamp has already.` : readWords(name, read.value, own),
    'plain',
    isSame ? null : undo,
  );
  return true;
}

/** Asks for a photometric file and reads it into a class of head. Says whether it did. */
export async function choosePhotometricFile(headId: string): Promise<boolean> {
  try {
    return await takePhotometricFile(await fileOpen(FILES), headId);
  } catch (error) {
    if (!isAbort(error)) say('The file could not be opened. Choose it once more.', 'warn');
    return false;
  }
}

/** Takes in a photometric file that was dropped on the page: for the class of the lamp that is chosen. */
export async function dropPhotometricFile(file: File): Promise<boolean> {
  const own = headClassOfItem(planStore.getState().plan, sessionStore.getState().selectedId);
  if (own) return takePhotometricFile(file, own.id);
  say(`${fileLabel(file.name)} is the light of a lamp. Choose the lamp, then drop it again.`, 'warn');
  return false;
}
