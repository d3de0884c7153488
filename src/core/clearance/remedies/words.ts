import { towardsWhat } from '../../continuity/reframing';
import { itemOf } from '../../plan/items';
import { named } from '../../plan/named';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import { setupLetter } from '../../plan/setupLetter';
import type { Verdict } from '../../report/types';
import { formatLength } from '../../units/lengths';
import { formatNumber, NBSP } from '../../units/numbers';
import { formatStopCount } from '../../units/stops';
import type { LampChange } from './lampOnSubject';
import type { VerdictChange } from './types';
import type { Watch } from './watch';

/** A label within a sentence: `the stair house`, but `Vera` and `Head 2` as they are written. */
const within = (label: string): string =>
  /^[A-Z][a-z ]+$/.test(label) ? `the ${label.charAt(0).toLowerCase()}${label.slice(1)}` : named(label);

/** Which way a move goes: towards what stands there, else as the camera of a setup has it. */
export function wayWords(plan: Plan, setupId: string, watch: Watch, from: Spot, to: Spot): string {
  const what = towardsWhat(plan, from, to);
  if (what !== null) return `towards ${within(what)}`;
  const { right, forward } = watch.camera.pose;
  const [x, z] = [to[0] - from[0], to[1] - from[1]];
  const [across, deep] = [x * right[0] + z * right[2], x * forward[0] + z * forward[2]];
  const letter = letterOf(plan, setupId);
  if (Math.abs(across) >= Math.abs(deep)) return `to frame ${across > 0 ? 'right' : 'left'} of ${letter}`;
  return deep > 0 ? `away from the camera of ${letter}` : `towards the camera of ${letter}`;
}

/** The letter of a setup. */
export const letterOf = (plan: Plan, setupId: string): string =>
  setupLetter(plan.setups.findIndex(({ id }) => id === setupId));

/** A length of a remedy to read: to a decimetre, to a centimetre under one. */
export const lengthWords = (metres: number): string =>
  formatLength(metres, 'm', { decimals: metres < 0.095 ? 2 : 1 });

/** `1 degree`, `4 degrees`; to a tenth under ten. */
export function degreesWords(degrees: number): string {
  const number = formatNumber(degrees, degrees < 9.95 ? 1 : 0);
  return `${number}${NBSP}${number === '1.0' ? 'degree' : 'degrees'}`;
}

/** Less than this is not worth a word, stops. */
const WORTH_SAYING = 0.05;

/** What a remedy does to the lamp that it moves, as a sentence with a space before it; empty where there is none. */
export function lampWords(changes: readonly LampChange[]): string {
  const most = changes.reduce<LampChange | null>(
    (worst, each) => (!worst || Math.abs(each.lossStops) > Math.abs(worst.lossStops) ? each : worst),
    null,
  );
  if (!most?.onWhom) return '';
  const { onWhom, lossStops } = most;
  const name = named(most.label);
  if (Math.abs(lossStops) < WORTH_SAYING) return ` ${name} keeps its level on ${onWhom}.`;
  return ` ${name} ${lossStops > 0 ? 'loses' : 'gains'} ${formatStopCount(lossStops)} on ${onWhom}.`;
}

/** Where a remedy clears the item: `in all setups`, `in A`. */
export const whereWords = (plan: Plan, setupId: string, isEverywhere: boolean): string =>
  isEverywhere && plan.setups.length > 1 ? 'in all setups' : `in ${letterOf(plan, setupId)}`;

/** What a remedy does to the item, from its verdict afterwards: `clears it in A`, `hides it in A`. */
export function doesWords(after: Verdict, where: string): string {
  if (after === 'covered') return `hides it ${where}`;
  return after === 'close' ? `clears it ${where}, within the safety margin` : `clears it ${where}`;
}

/** What it makes worse elsewhere, as a sentence with a space before it; empty where there is nothing. */
export function newsWords(plan: Plan, news: readonly VerdictChange[]): string {
  const [first] = news;
  if (!first) return '';
  const label = named(itemOf(plan, first.itemId)?.record.label ?? first.itemId);
  const more = news.length > 1 ? `, and ${news.length - 1} more` : '';
  return ` It makes ${label} ${first.after} in ${letterOf(plan, first.setupId)}${more}.`;
}
