import { parsePlanText } from '../core/plan/parse';
import type { Plan } from '../core/plan/schema/plan';
import { DEMO_FILE } from './demo';

/** A roof to begin with. */
export interface Start {
  /** Below the page's own address. */
  readonly file: string;
  readonly word: string;
  /** One line: what is there. */
  readonly about: string;
}

/** What a new plan can begin with, the emptiest first. */
export const STARTS: readonly Start[] = [
  {
    file: 'starts/empty-roof.plan.json',
    word: 'Empty roof',
    about: 'A deck of 20 by 14 metres and a parapet, to be drawn over.',
  },
  {
    file: 'starts/tenement-roof.plan.json',
    word: 'Tenement roof',
    about: 'Long and plain: stair house, tank, loft and washing lines.',
  },
  {
    file: 'starts/l-shaped-warehouse.plan.json',
    word: 'Warehouse, L-shaped',
    about: 'Two wings round a light well, a plant deck, chimneys and a sign.',
  },
  {
    file: 'starts/terrace-and-tower.plan.json',
    word: 'Terrace and tower',
    about: 'Two decks at two heights, joined by a stair house.',
  },
  {
    file: DEMO_FILE,
    word: 'Loft Night',
    about: 'The demonstration: a whole night with cast, lamps and cameras.',
  },
];

const kept = new Map<string, Promise<Plan>>();

/**
 * Fetches a start and reads it like any other file; asked again, it is the same plan.
 * @throws an error with a sentence when it does not come or cannot be read
 */
export function fetchStart(file: string): Promise<Plan> {
  const known = kept.get(file);
  if (known) return known;
  const coming = readStart(file);
  kept.set(file, coming);
  coming.catch(() => kept.delete(file));
  return coming;
}

async function readStart(file: string): Promise<Plan> {
  const answer = await fetch(`${import.meta.env.BASE_URL}${file}`);
  if (!answer.ok) throw new Error(`${file} did not come: the server answered ${answer.status}`);
  const read = parsePlanText(await answer.text());
  if (!read.ok) throw new Error(`${file} cannot be read. ${read.faults[0]?.sentence ?? ''}`);
  return read.value;
}
