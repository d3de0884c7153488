import { createStore } from 'zustand/vanilla';
import type { Plan } from '../../../core/plan/schema/plan';
import { storageStore, store, stored } from './storage';

/** By what was set, the mark of how it was asked for then. */
type Ticks = Readonly<Record<string, string>>;

/** Checked by hand: a schema would bring its library along before anything can be read. */
const isTicks = (value: unknown): value is Ticks =>
  typeof value === 'object' &&
  value !== null &&
  !Array.isArray(value) &&
  Object.values(value).every((mark) => typeof mark === 'string');

interface TickState {
  /** Where the ticks of the open plan lie. */
  readonly key: string;
  readonly ticks: Ticks;
}

export const tickStore = createStore<TickState>()(() => ({ key: '', ticks: {} }));

/** How something stands: not set, set, or set before the plan was changed about it. */
export type Standing = 'not set' | 'set' | 'changed since';

/** A short mark of how something is asked for: another where it is asked for otherwise. FNV-1a over its JSON. */
export function markOf(of: unknown): string {
  let hash = 0x811c9dc5;
  for (const letter of JSON.stringify(of) ?? '')
    hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 0x01000193) >>> 0;
  return hash.toString(36);
}

/** Under which name the ticks of a night lie. */
export const ticksKey = (date: string, title: string): string => `ticks ${date} ${title}`;

/**
 * Takes up what was ticked for a plan on this device. A later link of the same night, told by title and date, finds it
 * again, and what was changed in the plan since is no longer set.
 */
export function takeUpTicks({ title, place }: Pick<Plan, 'title' | 'place'>): void {
  const key = ticksKey(place.date, title);
  const read = stored(key);
  tickStore.setState({ key, ticks: isTicks(read) ? read : {} });
}

/** How something stands, by its id and the record that it is asked for by. */
export const standingOf = (found: Ticks, id: string, of: unknown): Standing => {
  const mark = Object.hasOwn(found, id) ? found[id] : undefined;
  if (mark === undefined) return 'not set';
  return mark === markOf(of) ? 'set' : 'changed since';
};

/** Ticks something as set, or takes the tick away. What another tab ticked meanwhile stays. */
export function toggleTick(id: string, of: unknown): void {
  const { key, ticks: shown } = tickStore.getState();
  const read = stored(key);
  // Where the browser refused to keep them, what it has is older than what is here.
  const before = isTicks(read) && !storageStore.getState().refused ? read : shown;
  const { [id]: _, ...others } = before;
  const changed = standingOf(shown, id, of) === 'set' ? others : { ...others, [id]: markOf(of) };
  tickStore.setState({ ticks: changed });
  store(key, changed);
}
