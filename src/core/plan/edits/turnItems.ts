import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { carrierOf } from './anchorOf';
import { applyMotion, landings } from './applyMotion';
import { entourageOf } from './entourage';
import { middleOf } from './extent';
import { type Motion, rotation } from './motion';

interface Turn {
  readonly ids: readonly string[];
  /** Clockwise seen from above. */
  readonly byDegrees: number;
  /** What they turn about, [x, z]; the middle of them (see `middleOf`) where left out. */
  readonly about?: Spot;
  readonly evenLocked?: boolean;
}

/**
 * Turns items about a place, with all that goes along (see `moveItems`); aims turn too. One item alone turns about its
 * own place: what a stand carries then turns by itself and leaves the stand, and a stand turns its legs and its arm,
 * while lamps on it stay aimed. Whole turns change nothing; coordinates end at 5 km. Locked items stay, unless
 * `evenLocked`.
 */
export function turnItems(plan: Plan, { ids, byDegrees, about, evenLocked = false }: Turn): Plan {
  const middle = about ?? middleOf(plan, ids);
  if (!middle || byDegrees % 360 === 0) return plan;
  const motion = rotation(middle, byDegrees);
  const single = about === undefined && ids.length === 1 ? ids[0] : null;
  const entourage = entourageOf(plan, ids, { evenLocked, decks: false });
  const carrier = single === null ? null : carrierOf(plan, single);
  if (single !== null && carrier !== null) {
    const alone = { ...entourage, carriers: keyed(entourage.carriers, (id) => id === single) };
    return applyMotion(plan, alone, motion, landings(plan, alone, motion));
  }
  const record = single === null ? null : entourage.items.get(single)?.record;
  if (record && 'stand' in record && record.kind === 'stand') {
    const calm: Motion = { ...motion, aim: (spot) => spot };
    const onArm = record.arm !== undefined;
    const turned = keyed(entourage.carriers, (id) => onArm || carrierOf(plan, id) !== single);
    const some = { ...entourage, carriers: turned };
    return applyMotion(plan, some, calm, landings(plan, some, calm));
  }
  return applyMotion(plan, entourage, motion, landings(plan, entourage, motion));
}

/** The entries of a map whose key passes. */
const keyed = <Value>(map: ReadonlyMap<string, Value>, passes: (key: string) => boolean) =>
  new Map([...map].filter(([key]) => passes(key)));
