import { named } from '../../plan/named';
import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import type { LightUnit } from '../../units/illuminance';
import type { LengthSystem } from '../../units/lengths';
import { formatNumber, NBSP } from '../../units/numbers';
import { formatStopCount } from '../../units/stops';
import type { SetupReport } from '../types';
import type { LightSentence, SetupLight } from './types';

/** What sentences about light are made of, and how they say lengths and levels. */
export interface LightStory {
  readonly plan: Plan;
  readonly setup: Setup;
  readonly light: Omit<SetupLight, 'sentences'>;
  readonly seen: SetupReport;
  readonly lengths: LengthSystem;
  readonly unit: LightUnit;
}

type Told = Pick<LightSentence, 'about' | 'name' | 'text'> & Partial<LightSentence>;

/** A sentence with what is not said of it left at nothing: said, with a colon, over the whole span. */
export const told = (sentence: Told): LightSentence => ({
  itemId: null,
  performerId: null,
  colon: true,
  standing: 'said',
  atSeconds: null,
  ...sentence,
});

/** A piece of gear or of the set by its label; its id where the plan does not have it. */
export const itemName = ({ gear, pieces }: Plan, itemId: string): string =>
  gear.find(({ id }) => id === itemId)?.label ?? pieces.find(({ id }) => id === itemId)?.label ?? itemId;

/** The same as it stands within a sentence. */
export const namedItem = (plan: Plan, itemId: string): string => named(itemName(plan, itemId));

/** `Head 1`, `Head 1 and Head 2`, `Head 1 and 3 more`. */
export function someNames(plan: Plan, itemIds: readonly string[]): string {
  const [first = '', second] = itemIds.map((id) => namedItem(plan, id));
  if (itemIds.length < 2) return first;
  return `${first} and ${itemIds.length === 2 ? second : `${itemIds.length - 1} more`}`;
}

/** `1.2 stops under T2.8`, `0.4 stops over it`, `at T2.8` where they are less than a twentieth apart. */
export const againstWords = (stops: number, what: string): string =>
  Math.abs(stops) < 0.05 ? `at ${what}` : `${formatStopCount(stops)} ${stops < 0 ? 'under' : 'over'} ${what}`;

/** `7.2 : 1`, `24 : 1`. */
export const ratioWords = (ratio: number): string =>
  `${formatNumber(ratio, ratio >= 9.95 ? 0 : 1)}${NBSP}:${NBSP}1`;
