import { bagsThatHold } from '../../cautions/wind/ballast';
import { pressureOf } from '../../cautions/wind/drag';
import { gustOf, SAFETY } from '../../cautions/wind/gust';
import { type OnStands, onStandsOf, standingOf } from '../../cautions/wind/standingOf';
import { ballastNeeded } from '../../cautions/wind/tipping';
import { type Stand, standClassOf } from '../../form/gear/references';
import type { Gear } from '../../plan/schema/gear';
import type { Plan } from '../../plan/schema/plan';
import { formatLength } from '../../units/lengths';
import { formatNumber, NBSP } from '../../units/numbers';
import { formatShare } from '../../units/shares';
import { BAG_KILOGRAMS } from './rules';
import { type Counted, oneLine, tallied } from './tally';
import type { PackingNeed } from './types';

const metres = (value: number): string => formatLength(value, 'm', { decimals: 2 });
const sized = ([width, height]: readonly [number, number]): string =>
  `${formatNumber(width, 2)} × ${metres(height)}`;
const bagLabel = (kilograms: number): string =>
  `Sandbag, ${formatNumber(kilograms, kilograms % 1 === 0 ? 0 : 1)}${NBSP}kg`;

/** A cloth in its frame, by what it is and its size. */
function clothOf(gear: Gear): Counted | null {
  const one = (label: string): Counted => ({ label, itemId: gear.id, note: gear.label });
  switch (gear.kind) {
    case 'flag':
      return one(
        gear.transmission
          ? `Net, ${formatShare(gear.transmission)} through, ${sized(gear.size)}`
          : `Flag, ${sized(gear.size)}`,
      );
    case 'frame':
      return one(`Frame, ${formatShare(gear.transmission)} through, ${sized(gear.size)}`);
    case 'bounce':
      return one(`Bounce, ${sized(gear.size)}`);
    default:
      return null;
  }
}

/** Bags of one stand: its own, and as many more as the gust asks for, or heavier ones in their place. */
function bagsOf(plan: Plan, stand: Stand, on: OnStands, gust: number | null): readonly Counted[] {
  const { id: itemId } = stand;
  const count = (kilograms: number, bags: number, note: string): Counted[] =>
    bags > 0 ? [{ label: bagLabel(kilograms), itemId, note, count: bags }] : [];
  const own = stand.bags ?? { count: 0, kilograms: BAG_KILOGRAMS };
  const asPlanned = count(own.kilograms, own.count, `on ${stand.label}`);
  if (gust === null) return asPlanned;
  const holding = bagsThatHold(plan, stand, on);
  if (holding && holding.kilograms !== own.kilograms)
    return count(holding.kilograms, holding.count, `on ${stand.label} by the forecast`);
  // Where more than bags would be needed it is lowered or struck; what it lacks is packed by its weight.
  const lacking = ballastNeeded(standingOf(plan, stand, on), pressureOf(gust), SAFETY);
  const more = holding?.added ?? Math.ceil(lacking / own.kilograms - 1e-9);
  return [...asPlanned, ...count(own.kilograms, more, `${more} more on ${stand.label} by the forecast`)];
}

/** Bags that lie on the plan, and those that the forecast asks for on top of them, as the cautions count them. */
function bags(plan: Plan): readonly PackingNeed[] {
  const gust = gustOf(plan);
  const on = onStandsOf(plan);
  const found = plan.gear.flatMap((gear): readonly Counted[] => {
    if (gear.kind === 'sandbag')
      return [{ label: bagLabel(gear.kilograms), itemId: gear.id, note: gear.label }];
    return gear.kind === 'stand' ? bagsOf(plan, gear, on, gust) : [];
  });
  return tallied('grip', 'bags', found);
}

/** Stands with how high they go, cloths, ballast, ladders, black. */
export function ofGrip(plan: Plan): readonly PackingNeed[] {
  const { gear } = plan;
  const stands = gear.filter((each) => each.kind === 'stand');
  const cloths = (kinds: readonly Gear['kind'][]): Counted[] =>
    gear.flatMap((each) => (kinds.includes(each.kind) ? (clothOf(each) ?? []) : []));
  const blacked = gear.filter((each) => each.blacked);
  return [
    ...tallied(
      'grip',
      'stands',
      stands.map((stand) => ({
        label: standClassOf(stand, plan).label,
        itemId: stand.id,
        note: `${stand.label} at ${metres(stand.heightMetres)}`,
      })),
    ),
    ...tallied(
      'grip',
      'stands',
      stands.flatMap(({ id, label, arm }) =>
        arm
          ? [{ label: `Arm with grip head, ${metres(arm.lengthMetres)}`, itemId: id, note: `on ${label}` }]
          : [],
      ),
    ),
    ...bags(plan),
    ...tallied('grip', 'flags', cloths(['flag'])),
    ...tallied('grip', 'frames', cloths(['frame', 'bounce'])),
    ...tallied(
      'grip',
      null,
      gear.flatMap((each) =>
        each.kind === 'ladder'
          ? [{ label: `Ladder, ${metres(each.heightMetres)}`, itemId: each.id, note: each.label }]
          : [],
      ),
    ),
    ...oneLine('grip', 'Things to be put under black tape or cloth', blacked.length, {
      detail: blacked.map(({ label }) => label).join(', '),
      itemIds: blacked.map(({ id }) => id),
    }),
  ];
}
