import { fileOpen, fileSave } from 'browser-fs-access';
import { parsePlanText } from '../core/plan/parse';
import { serialisePlan } from '../core/plan/serialise';
import { keepingStore } from './keepingStore';
import { planStore } from './planStore';
import { toastStore } from './toastStore';

const MIME = 'application/json';
const PLAN_FILES = { description: 'Standclear plan', mimeTypes: [MIME], extensions: ['.json'] };

/** Where each opened document was last saved or opened, to save there again: undo may bring an earlier one back. */
const handles = new Map<number, FileSystemFileHandle>();

/** One toast speaks of what was opened last, or was not. */
const OPENING = 'opening';

const isAbort = (error: unknown): boolean => error instanceof DOMException && error.name === 'AbortError';
const reasonOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** Opens a plan from a file's text. What is no plan is said in a toast, and the plan that is open stays. */
export async function openPlanFile(file: File, handle?: FileSystemFileHandle): Promise<void> {
  const { say } = toastStore.getState();
  const read = parsePlanText(await file.text());
  if (!read.ok) {
    const others = read.faults.length - 1;
    const more =
      others === 0 ? '' : ` There ${others === 1 ? 'is 1 more fault' : `are ${others} more faults`}.`;
    say(`${file.name} was not opened. ${read.faults[0]?.sentence ?? ''}${more}`, {
      tone: 'warn',
      about: OPENING,
    });
    return;
  }
  planStore.getState().openPlan(read.value, file.name);
  const { documentNumber } = planStore.getState();
  if (handle) handles.set(documentNumber, handle);
  say(`${read.value.title} is open.`, {
    about: OPENING,
    action: { word: 'Undo', act: () => planStore.getState().undo() },
  });
}

/** Asks for a file and opens it. */
export async function choosePlanFile(): Promise<void> {
  try {
    const file = await fileOpen(PLAN_FILES);
    await openPlanFile(file, file.handle);
  } catch (error) {
    if (!isAbort(error)) {
      toastStore.getState().say(`The file could not be opened: ${reasonOf(error)}`, { tone: 'warn' });
    }
  }
}

/** Saves the plan to the file that it came from, or asks where. */
export async function savePlanFile(): Promise<void> {
  const { plan, fileName, documentNumber, setFileName } = planStore.getState();
  try {
    const text = serialisePlan(plan);
    const handle = await fileSave(
      new Blob([text], { type: MIME }),
      { ...PLAN_FILES, fileName },
      handles.get(documentNumber) ?? null,
    );
    if (handle) handles.set(documentNumber, handle);
    const savedAs = handle?.name ?? fileName;
    setFileName(savedAs);
    keepingStore.setState({ safePlan: plan });
    toastStore.getState().say(`Saved as ${savedAs}.`);
  } catch (error) {
    if (!isAbort(error)) {
      toastStore.getState().say(`The plan was not saved: ${reasonOf(error)}`, { tone: 'warn' });
    }
  }
}
