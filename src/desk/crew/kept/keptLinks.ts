import { createStore } from 'zustand/vanilla';
import { LINKS, MOST_LINKS } from './names';
import { store, stored, unstore } from './storage';
import { tickStore, ticksKey } from './ticks';

/** Longer than this all fragments together are not kept, characters: a browser gives a page some five million. */
const MOST_CHARACTERS = 2_000_000;

/** A link whose sheet this device keeps. */
export interface KeptLink {
  readonly fragment: string;
  readonly title: string;
  readonly date: string;
}

/** Checked by hand: a schema would bring its library along before anything can be read. */
function isKeptLink(value: unknown): value is KeptLink {
  if (typeof value !== 'object' || value === null) return false;
  const { fragment, title, date }: Partial<Record<keyof KeptLink, unknown>> = value;
  return [fragment, title, date].every((each) => typeof each === 'string');
}

/** The kept links, the one opened last first; empty where what is stored cannot be read. */
function readLinks(): readonly KeptLink[] {
  const read = stored(LINKS);
  return Array.isArray(read) && read.every(isKeptLink) ? read.slice(0, MOST_LINKS) : [];
}

export const keptLinksStore = createStore<{ readonly links: readonly KeptLink[] }>()(() => ({
  links: readLinks(),
}));

function write(changed: readonly KeptLink[]): void {
  keptLinksStore.setState({ links: changed });
  store(LINKS, changed);
}

/** As many of the first as there is room for. */
function fitting(links: readonly KeptLink[]): readonly KeptLink[] {
  let room = MOST_CHARACTERS;
  const over = links.findIndex(({ fragment }) => {
    room -= fragment.length;
    return room < 0;
  });
  return links.slice(0, over < 0 ? MOST_LINKS : Math.min(over, MOST_LINKS));
}

/**
 * Keeps a link as the one opened last; the oldest beyond twenty, and beyond the room for all, go. One that is too long
 * by itself is not kept. What another tab kept meanwhile stays.
 */
export function keepLink(opened: KeptLink): void {
  if (opened.fragment.length > MOST_CHARACTERS) return;
  const others = readLinks().filter(({ fragment }) => fragment !== opened.fragment);
  write(fitting([opened, ...others]));
}

/** Forgets a link, and what was ticked for its night unless another sheet of it is kept or open. */
export function forgetLink(fragment: string): void {
  const before = readLinks();
  const others = before.filter((each) => each.fragment !== fragment);
  write(others);
  const inUse = new Set([
    tickStore.getState().key,
    ...others.map(({ date, title }) => ticksKey(date, title)),
  ]);
  for (const { date, title } of before) if (!inUse.has(ticksKey(date, title))) unstore(ticksKey(date, title));
}
