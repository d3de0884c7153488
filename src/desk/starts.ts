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
  /** Whether nothing of the roof itself is taken over, only its kit and its action's clock. */
  readonly bare?: true;
}

/** What a new plan can begin with, the emptiest first. */
export const STARTS: readonly Start[] = [
  {
    file: 'starts/empty-roof.plan.json',
    word: 'Nothing yet',
    about: 'Bare paper: draw your own deck, corner by corner, from a tape measure.',
    bare: true,
  },
  {
    file: 'starts/empty-roof.plan.json',
    word: 'Empty roof',
    about: 'A deck of 20 by 14 metres and a parapet, to be pulled to size.',
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
 * The plan that a start begins with.
 * @throws as `fetchStart`
 */
export async function planOfStart({ file, bare }: Start): Promise<Plan> {
  const plan = await fetchStart(file);
  return bare ? { ...plan, title: 'New roof', notes: '', pieces: [] } : plan;
}

/**
 * Fetches a start and reads it like any other file; asked again, it is the same plan.
 * @throws an error with a sentence when it does not come or cannot be read
 */
function fetchStart(file: string): Promise<Plan> {
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
