import { fileOpen } from 'browser-fs-access';
import { modelSize } from '../../core/form/models/modelShapes';
import { addItem } from '../../core/plan/edits/addItem';
import { freeId } from '../../core/plan/edits/freeId';
import { itemsOf } from '../../core/plan/items';
import { named } from '../../core/plan/named';
import type { Piece } from '../../core/plan/schema/pieces';
import type { Plan } from '../../core/plan/schema/plan';
import { surfaceUnder } from '../../core/plan/surfaces';
import { thinnedWords } from '../../core/report/modelNotices';
import { planStore } from '../planStore';
import { sessionStore } from '../sessionStore';
import { toastStore } from '../toastStore';
import { fileLabel, labelFrom } from './fileLabel';
import { isAbort } from './isAbort';
import { sizeWords } from './modelWords';
import { roofMiddle } from './roofMiddle';
import { type TakenIn, takeInModel } from './takeInModel';

type Model = Extract<Piece, { kind: 'model' }>;

export const MODEL_FILES = {
  description: 'Models as binary glTF',
  mimeTypes: ['model/gltf-binary'],
  extensions: ['.glb'],
};
/** One toast speaks of what was imported last, or was not. */
export const IMPORTING = 'importing';

/** Asks for a GLB file and puts it on the roof. Says whether it did. */
export async function chooseModelFile(): Promise<boolean> {
  try {
    return await importModel(await fileOpen(MODEL_FILES));
  } catch (error) {
    if (!isAbort(error)) warn('The file could not be opened. Choose it once more.');
    return false;
  }
}

const warn = (sentence: string): void =>
  toastStore.getState().say(sentence, { tone: 'warn', about: IMPORTING });

/** Puts a GLB file on the roof as a set piece. Says whether it did; what went wrong is said in a toast. */
export async function importModel(file: File): Promise<boolean> {
  const { documentNumber } = planStore.getState();
  const taken = await takeInModel(file);
  const name = fileLabel(file.name);
  if (!('asset' in taken)) {
    if (taken.sentence !== null) warn(`${name} was not imported. ${taken.sentence}`);
    return false;
  }
  if (planStore.getState().documentNumber !== documentNumber) {
    warn(`${name} was not imported, since another plan was opened meanwhile. Import it into this one.`);
    return false;
  }
  return putOnRoof(taken);
}

function putOnRoof({ asset, read }: TakenIn): boolean {
  const { plan, edit, undo } = planStore.getState();
  const record = recordFor(plan, { asset, read });
  const faults = edit(`import ${record.label}`, (before) => addItem(before, { section: 'piece', record }));
  const { say } = toastStore.getState();
  if (faults[0] || planStore.getState().plan === plan) {
    warn(`${asset.name} was not imported. ${faults[0]?.sentence ?? 'The plan is full.'}`);
    return false;
  }
  const { setSelectedId, setSheet, lengths } = sessionStore.getState();
  setSelectedId(record.id);
  setSheet('set');
  const words = [
    `${named(record.label)} is on the roof: ${sizeWords(record, lengths)}.`,
    guessWords(record.metresPerUnit),
    thinnedWords(record, read.model) ?? '',
    ...read.notes,
  ];
  say(words.filter(Boolean).join(' '), { about: IMPORTING, action: { word: 'Undo', act: undo } });
  return true;
}

/** Larger than this, metres, and a model is not taken to be in metres. */
const LARGEST_PLAUSIBLE_METRES = 400;

/** The unit that a file is likely to be in: metres, as glTF has it, unless that made it larger than a city block. */
function likelyUnit(extent: Model['extent']): number {
  const [x, y, z] = modelSize({ extent, up: 'y', metresPerUnit: 1 });
  const units = [1, 0.01, 0.001];
  return units.find((unit) => Math.max(x, y, z) * unit <= LARGEST_PLAUSIBLE_METRES) ?? 0.001;
}

function guessWords(metresPerUnit: number): string {
  if (metresPerUnit === 1) return '';
  const unit = metresPerUnit === 0.01 ? 'centimetres' : 'millimetres';
  return `It was taken to be in ${unit}, since it is so large. Scale it by two points.`;
}

function recordFor(plan: Plan, { asset, read }: TakenIn): Model {
  const [x, z] = roofMiddle(plan);
  const records = itemsOf(plan).map((item) => item.record);
  const { lowest, highest } = read.extent;
  return {
    id: freeId(records, 'model'),
    label: labelFrom(asset.name),
    kind: 'model',
    at: [x, surfaceUnder(plan, [x, z]).metres, z],
    headingDegrees: 0,
    asset,
    up: 'y',
    metresPerUnit: likelyUnit(read.extent),
    extent: { lowest: [...lowest], highest: [...highest] },
  };
}
