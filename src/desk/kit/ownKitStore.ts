import * as v from 'valibot';
import { createStore } from 'zustand/vanilla';
import { MOST_OWN, type OwnKit, ownKitText, readOwnKit } from '../../core/kit/ownKit';
import { putEntry } from '../../core/plan/edits/putEntry';
import { type Body, body as bodySchema, type Lens, lens as lensSchema } from '../../core/plan/schema/kit';

const KEY = 'standclear.kit';
/** What could not be read is laid aside under this key before anything is written over it. */
const ASIDE = 'standclear.kit.unread';

const REFUSED =
  'This browser does not let the page keep the kit: it lasts as long as the page. Export it to have it again.';

interface OwnKitState extends OwnKit {
  /** Why the kit is not kept, or was not read; null while all is well. */
  readonly trouble: string | null;
  /** The page's sheet of bodies and lenses. */
  readonly open: boolean;
}

const NOTHING: OwnKit = { bodies: [], lenses: [] };

function readKept(): OwnKitState {
  let text: string | null;
  try {
    text = localStorage.getItem(KEY);
  } catch {
    return { ...NOTHING, trouble: REFUSED, open: false };
  }
  if (text === null) return { ...NOTHING, trouble: null, open: false };
  const read = readOwnKit(text);
  if (read.ok) return { ...read.value, trouble: null, open: false };
  const [{ sentence }] = read.faults;
  try {
    localStorage.setItem(ASIDE, text);
  } catch {
    // There is no room to lay it aside; it stays where it is until something is kept.
  }
  return { ...NOTHING, trouble: `The kit that was kept here cannot be read. ${sentence}`, open: false };
}

/** The bodies and lenses that this person keeps for all plans, in this browser. */
export const ownKitStore = createStore<OwnKitState>()(readKept);

/** Another page of this browser has kept something: both show the same. */
export function watchOwnKit(): () => void {
  const hear = (event: StorageEvent): void => {
    if (event.key !== KEY) return;
    const { bodies, lenses, trouble } = readKept();
    ownKitStore.setState({ bodies, lenses, trouble });
  };
  window.addEventListener('storage', hear);
  return () => window.removeEventListener('storage', hear);
}

function keep(kit: OwnKit): void {
  try {
    localStorage.setItem(KEY, ownKitText(kit));
    ownKitStore.setState({ ...kit, trouble: null });
  } catch {
    ownKitStore.setState({ ...kit, trouble: REFUSED });
  }
}

const without = <Entry extends { readonly id: string }>(list: readonly Entry[], id: string): Entry[] =>
  list.filter((entry) => entry.id !== id);

/** Why a lens is none, as a sentence; null for one that is. */
export function lensRefusal(lens: Lens): string | null {
  const read = v.safeParse(lensSchema, lens, { abortPipeEarly: true });
  if (!read.success) return `This takes ${read.issues[0].message}.`;
  if (lens.narrowestStop >= lens.widestStop) return null;
  return `The narrowest stop is T${lens.widestStop} or more, the widest.`;
}

/** Why a body is none, as a sentence; null for one that is. */
export function bodyRefusal(body: Body): string | null {
  const read = v.safeParse(bodySchema, body, { abortPipeEarly: true });
  return read.success ? null : `This takes ${read.issues[0].message}.`;
}

const full = (most: number, what: string): string =>
  `${most} ${what} are kept, which is all that there is room for.`;

/** Keeps a lens, in the place of one with its id; why not, as a sentence. */
export function keepLens(lens: Lens): string | null {
  const refusal = lensRefusal(lens);
  if (refusal !== null) return refusal;
  const { bodies, lenses } = ownKitStore.getState();
  const next = putEntry([...lenses], lens, MOST_OWN.lenses);
  if (!next.some(({ id }) => id === lens.id)) return full(MOST_OWN.lenses, 'lenses');
  keep({ bodies, lenses: next });
  return null;
}

/** Keeps a body, in the place of one with its id; why not, as a sentence. */
export function keepBody(body: Body): string | null {
  const refusal = bodyRefusal(body);
  if (refusal !== null) return refusal;
  const { bodies, lenses } = ownKitStore.getState();
  const next = putEntry([...bodies], body, MOST_OWN.bodies);
  if (!next.some(({ id }) => id === body.id)) return full(MOST_OWN.bodies, 'bodies');
  keep({ bodies: next, lenses });
  return null;
}

export function forgetLens(id: string): void {
  const { bodies, lenses } = ownKitStore.getState();
  keep({ bodies, lenses: without(lenses, id) });
}

export function forgetBody(id: string): void {
  const { bodies, lenses } = ownKitStore.getState();
  keep({ bodies: without(bodies, id), lenses });
}

/** Puts the kept kit back as it was, after something was forgotten or taken in. */
export const restoreOwnKit = ({ bodies, lenses }: OwnKit): void => keep({ bodies, lenses });

/** Takes in what a file has, each in the place of one with its id; how many of each are new or changed. */
export function takeIn(kit: OwnKit): { readonly bodies: number; readonly lenses: number } {
  const before = ownKitStore.getState();
  let bodies = [...before.bodies];
  let lenses = [...before.lenses];
  let [changedBodies, changedLenses] = [0, 0];
  for (const body of kit.bodies) {
    const next = putEntry(bodies, body, MOST_OWN.bodies);
    if (next !== bodies) changedBodies += 1;
    bodies = next;
  }
  for (const lens of kit.lenses) {
    const next = putEntry(lenses, lens, MOST_OWN.lenses);
    if (next !== lenses) changedLenses += 1;
    lenses = next;
  }
  if (changedBodies + changedLenses > 0) keep({ bodies, lenses });
  return { bodies: changedBodies, lenses: changedLenses };
}

export const openKit = (): void => ownKitStore.setState({ open: true });
export const closeKit = (): void => ownKitStore.setState({ open: false });
