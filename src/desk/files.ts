import { fileOpen, fileSave } from 'browser-fs-access';
import { named } from '../core/plan/named';
import { parsePlanText } from '../core/plan/parse';
import type { Plan } from '../core/plan/schema/plan';
import { serialisePlan } from '../core/plan/serialise';
import { failure, type Result } from '../core/units/result';
import { planTextIn } from '../exchange/html/planInFile';
import { isAbort } from './assets/isAbort';
import { planStore } from './planStore';
import { handleOf, planOfFile, rememberHandle } from './plans/handles';
import { isInFile } from './plans/keeper';
import { keepVersion } from './plans/keepVersion';
import { newPlanFrom, OPENING, openKept, tellOpen } from './plans/opening';
import { keepRecords } from './plans/same';
import { findPlan } from './plans/writing';
import { sentenceOf } from './reasonOf';
import { toastStore } from './toastStore';

const MIME = 'application/json';
const PLAN_FILES = { description: 'Standclear plan', mimeTypes: [MIME], extensions: ['.json'] };

/** More than any plan of the allowed size takes; a film that was meant for another window is not read to its end. */
const LARGEST_BYTES = 128 * 1024 * 1024;

/** What a plan may be opened from: a file pack and a crew sheet as one file too. */
export const OPENED_FILES = {
  ...PLAN_FILES,
  mimeTypes: [MIME, 'application/zip', 'text/html'],
  extensions: ['.json', '.zip', '.html'],
};

const isCrewFile = ({ name, type }: File): boolean => type === 'text/html' || /\.html?$/i.test(name);

const isPack = ({ name, type }: File): boolean => type === 'application/zip' || /\.zip$/i.test(name);

/** A file's text as a plan, or a sentence that says why it is none. */
export async function readPlanFile(file: File): Promise<Result<Plan, string>> {
  if (isPack(file)) return (await import('./openFiles/openPack')).openPack(file);
  if (file.size > LARGEST_BYTES) {
    return failure([`The file: found ${file.size} bytes, expected at most ${LARGEST_BYTES}.`]);
  }
  const text = await file.text();
  const read = parsePlanText((isCrewFile(file) ? planTextIn(text) : null) ?? text);
  if (read.ok) return read;
  const others = read.faults.length - 1;
  const more =
    others === 0 ? '' : ` There ${others === 1 ? 'is 1 more fault' : `are ${others} more faults`}.`;
  return failure([`${read.faults[0].sentence}${more}`]);
}

/** Opens a plan from a file's text as a kept plan. What is no plan is said in a toast, and the plan that is open stays. */
export async function openPlanFile(file: File, handle?: FileSystemFileHandle): Promise<void> {
  const { say } = toastStore.getState();
  const read = await readPlanFile(file);
  if (!read.ok) {
    say(`${file.name} was not opened. ${read.faults[0]}`, { tone: 'warn', about: OPENING });
    return;
  }
  // A pack or a crew sheet is never saved over: the plan goes on as one without a file.
  const own = isPack(file) || isCrewFile(file) ? undefined : handle;
  const known = own ? await planOfFile(own) : null;
  if (known !== null && (await openOver(known, read.value))) return;
  const before = planStore.getState().planId;
  const fileName = file.name.replace(/(\.standclear)?\.zip$|(-crew-sheet)?\.html?$/i, '.plan.json');
  const planId = await newPlanFrom(read.value, read.value.title, fileName);
  isInFile(read.value);
  if (own) await rememberHandle(planId, own);
  tellOpen(before);
}

/**
 * Opens a file whose plan is kept already: no second one comes, and what the file says is a step in the history of the
 * kept one, with a version before it. Says whether the plan was there to be opened.
 */
async function openOver(planId: string, plan: Plan): Promise<boolean> {
  const before = planStore.getState().planId;
  if (!(await openKept(planId))) return false;
  const open = planStore.getState();
  const after = keepRecords(open.plan, plan);
  if (after === open.plan) {
    if (before === planId)
      toastStore.getState().say(`${named(plan.title)} is open already.`, { about: OPENING });
    else tellOpen(before);
    return true;
  }
  await keepVersion('open the file again');
  open.edit('open the file again', () => after);
  toastStore.getState().say(`${named(plan.title)} is as in its file. What was here is kept as a version.`, {
    about: OPENING,
    action: { word: 'Undo', act: open.undo },
  });
  return true;
}

/** Asks for a file and opens it. */
export async function choosePlanFile(): Promise<void> {
  try {
    const file = await fileOpen(OPENED_FILES);
    await openPlanFile(file, file.handle);
  } catch (error) {
    if (!isAbort(error)) {
      toastStore.getState().say(sentenceOf('The file could not be opened', error), { tone: 'warn' });
    }
  }
}

/** Writes text into a file, to `handle` or where somebody chooses; the file's handle, or null for a download. */
const saveText = (
  text: string,
  fileName: string,
  handle: FileSystemFileHandle | null,
): Promise<FileSystemFileHandle | null> =>
  fileSave(new Blob([text], { type: MIME }), { ...PLAN_FILES, fileName }, handle);

/** Not every browser asks. */
interface AskingHandle extends FileSystemFileHandle {
  readonly requestPermission?: (wanted: { readonly mode: 'readwrite' }) => Promise<PermissionState>;
}

/** A handle from before a reload may be written through again only when somebody says so. */
async function mayWrite(handle: AskingHandle): Promise<boolean> {
  return (await handle.requestPermission?.({ mode: 'readwrite' })) !== 'denied';
}

async function telling(save: () => Promise<string>): Promise<void> {
  const { say } = toastStore.getState();
  try {
    say(`Saved as ${await save()}.`);
  } catch (error) {
    if (!isAbort(error)) say(sentenceOf('The plan was not saved', error), { tone: 'warn' });
  }
}

/** Saves the plan to the file that it came from, or asks where. */
export function savePlanFile(): Promise<void> {
  return telling(async () => {
    const { plan, fileName, planId, setFileName } = planStore.getState();
    const known = await handleOf(planId);
    const text = serialisePlan(plan);
    const handle = await saveText(text, fileName, known && (await mayWrite(known)) ? known : null);
    if (handle) await rememberHandle(planId, handle);
    const savedAs = handle?.name ?? fileName;
    isInFile(plan);
    if (planStore.getState().planId === planId) setFileName(savedAs);
    return savedAs;
  });
}

/** Saves the plan to another file and goes on with the one that it has. */
export function savePlanCopy(): Promise<void> {
  return telling(async () => {
    const { plan, fileName } = planStore.getState();
    const handle = await saveText(serialisePlan(plan), fileName, null);
    isInFile(plan);
    return handle?.name ?? fileName;
  });
}

/** Saves a plan of the list to a file, as it is kept, even where it cannot be read here. */
export async function saveKeptPlan(planId: string): Promise<void> {
  if (planStore.getState().planId === planId) {
    await savePlanCopy();
    return;
  }
  await telling(async () => {
    const found = await findPlan(planId);
    if (!found) throw new Error('it is not kept on this device');
    const { fileName } = found.row;
    const handle = await saveText(`${JSON.stringify(found.document, null, 2)}\n`, fileName, null);
    return handle?.name ?? fileName;
  });
}
