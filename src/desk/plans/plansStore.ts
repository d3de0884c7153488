import { createStore } from 'zustand/vanilla';
import { parsePlan } from '../../core/plan/parse';
import { planStore, sittingsLeft } from '../planStore';
import { sentenceOf } from '../reasonOf';
import { readPictures, takePicture } from './pictures';
import type { PlanRow } from './shelfTypes';
import { findPlan, planRows } from './writing';

/** A plan as the list shows it. */
export interface PlanCard {
  readonly id: string;
  readonly title: string;
  /** The night's date, `2026-11-20`, or an empty text. */
  readonly date: string;
  /** Null while the device does not keep it. */
  readonly changedAt: number | null;
  /** Size of its file; null until it has been read. */
  readonly bytes: number | null;
  /** Why it cannot be read, as a sentence, or null. */
  readonly trouble: string | null;
  readonly picture: Blob | null;
  readonly takenOut: boolean;
}

export interface PlansState {
  readonly open: boolean;
  /** The plan whose versions are looked at, or null for the list. */
  readonly versionsOf: string | null;
  readonly cards: readonly PlanCard[];
  /** Why the list may lack plans, as a sentence, or null. */
  readonly trouble: string | null;
}

export const plansStore = createStore<PlansState>()(() => ({
  open: false,
  versionsOf: null,
  cards: [],
  trouble: null,
}));

/** What a look into a document told, good for one writing of it. */
interface Look {
  readonly writing: number;
  readonly bytes: number;
  readonly trouble: string | null;
}

const looks = new Map<string, Look>();

const cardOf = (row: PlanRow, picture: Blob | null): PlanCard => {
  const look = looks.get(row.id);
  const known = look?.writing === row.writing ? look : null;
  const { id, title, date, changedAt, takenOut } = row;
  return {
    id,
    title,
    date,
    changedAt,
    takenOut,
    picture,
    bytes: known?.bytes ?? null,
    trouble: known?.trouble ?? null,
  };
};

/** The plans of this page that the shelf does not hold: one that nobody has changed yet, and all while storage is refused. */
function unkeptCards(kept: ReadonlySet<string>, pictures: ReadonlyMap<string, Blob>): PlanCard[] {
  const { planId, plan, opened } = planStore.getState();
  const inPage = [...(opened ? [[planId, { plan }] as const] : []), ...sittingsLeft()];
  return inPage
    .filter(([id]) => !kept.has(id))
    .map(([id, { plan }]) => ({
      id,
      title: plan.title,
      date: plan.place.date,
      changedAt: null,
      bytes: null,
      trouble: null,
      picture: pictures.get(id) ?? null,
      takenOut: false,
    }));
}

/** The list as it is now, the plan changed last first. */
export async function listPlans(): Promise<readonly PlanCard[]> {
  const [rows, pictures] = await Promise.all([planRows(), readPictures()]);
  return [
    ...unkeptCards(new Set(rows.map(({ id }) => id)), pictures),
    ...rows.map((row) => cardOf(row, pictures.get(row.id) ?? null)),
  ];
}

/** Reads the documents one after another, to say which cannot be read and how large they are. */
async function lookInto(): Promise<void> {
  for (const { id } of plansStore.getState().cards) {
    const found = await findPlan(id);
    if (!found || looks.get(id)?.writing === found.row.writing) continue;
    const read = parsePlan(found.document);
    const bytes = new TextEncoder().encode(JSON.stringify(found.document, null, 2) ?? '').length + 1;
    looks.set(id, {
      writing: found.row.writing,
      bytes,
      trouble: read.ok ? null : read.faults[0].sentence,
    });
    plansStore.setState(({ cards }) => ({
      cards: cards.map((card) => (card.id === id ? cardOf(found.row, card.picture) : card)),
    }));
  }
}

/** Reads the list anew while it lies open. */
export async function refreshPlans(): Promise<void> {
  if (!plansStore.getState().open) return;
  try {
    plansStore.setState({ cards: await listPlans(), trouble: null });
    await lookInto();
  } catch (error) {
    plansStore.setState({
      cards: unkeptCards(new Set(), new Map()),
      trouble: sentenceOf('The plans kept on this device cannot be listed', error),
    });
  }
}

/** Lays the list of plans over the page. */
export async function openPlans(): Promise<void> {
  plansStore.setState({ open: true, versionsOf: null });
  await takePicture();
  await refreshPlans();
}
