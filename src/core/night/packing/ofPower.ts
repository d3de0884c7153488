import type { Gear } from '../../plan/schema/gear';
import type { Plan } from '../../plan/schema/plan';
import type { Wire } from '../../plan/schema/power';
import { cordOfCable, SLACK } from '../../power/cords';
import { walkersOver } from '../../power/places';
import { powerOf } from '../../power/powerOf';
import { formatNumber, NBSP } from '../../units/numbers';
import { CORD_METRES, MAT_METRES, USUAL_PACKING } from './rules';
import { type Counted, oneLine, tallied } from './tally';
import type { PackingNeed } from './types';

const wireLabel = (wire: Wire): string => ('awg' in wire ? `${wire.awg}${NBSP}AWG` : `${wire.mm2}${NBSP}mm²`);

/** The cords that make up a length, longest first: as few of the longest as leave a shorter one for the rest. */
function cordsFor(metres: number): readonly number[] {
  const longest = CORD_METRES[CORD_METRES.length - 1];
  const whole = Math.max(0, Math.ceil((metres - longest) / longest - 1e-9));
  const rest = metres - whole * longest;
  const last = CORD_METRES.find((length) => length >= rest - 1e-9) ?? longest;
  return [...Array.from({ length: whole }, () => longest), last];
}

/** Cords by gauge and length, each as long as its way with slack or the next that is made. */
function cords(plan: Plan): readonly PackingNeed[] {
  const slack = plan.night?.packing?.slack ?? USUAL_PACKING.slack;
  const found = plan.gear.flatMap((gear): Counted[] => {
    if (gear.kind !== 'cable') return [];
    const { wire, lengthMetres } = cordOfCable(plan, gear);
    const metres = (lengthMetres / SLACK) * (1 + slack);
    return cordsFor(metres).map((length) => ({
      label: `Cord, ${wireLabel(wire)}, ${length}${NBSP}m`,
      itemId: gear.id,
      note: `${gear.label} (${formatNumber(metres, 1)}${NBSP}m)`,
    }));
  });
  return tallied('power', 'cables', found).toSorted((a, b) => (a.label < b.label ? -1 : 1));
}

/** One mat for everyone whose way crosses a cable. */
function mats(plan: Plan): readonly PackingNeed[] {
  const nameOf = (id: string): string => plan.cast.find((performer) => performer.id === id)?.label ?? id;
  const found = plan.gear.flatMap((gear): Counted[] =>
    gear.kind === 'cable'
      ? walkersOver(plan, gear).map((id) => ({
          label: `Mat over cable, ${MAT_METRES}${NBSP}m`,
          itemId: gear.id,
          note: `${nameOf(id)} over ${gear.label}`,
        }))
      : [],
  );
  return tallied('power', 'mats', found);
}

const SOURCES: readonly Gear['kind'][] = ['generator', 'battery', 'outlet'];
const BOXES = { generator: 'Generator', battery: 'Battery with inverter', distro: 'Distro' } as const;

/** Fuel beyond full tanks. */
function fuel(plan: Plan, hours: number): readonly PackingNeed[] {
  const found = powerOf(plan, plan.power?.hours ?? hours).sources.flatMap(
    ({ source, fuel: burnt }): Counted[] =>
      burnt && burnt.bringLitres > 0
        ? [
            {
              label: burnt.fuel === 'petrol' ? 'Petrol' : 'Diesel',
              itemId: source.id,
              note: `${source.label}, beyond a full tank`,
              count: Math.ceil(burnt.bringLitres),
            },
          ]
        : [],
  );
  return tallied('power', null, found, 'litres');
}

/** Sources, boxes, cords, mats, and what shuts a circuit off that leaks. @param hours that the lamps are on */
export function ofPower(plan: Plan, hours: number): readonly PackingNeed[] {
  const { gear } = plan;
  const boxes = gear.flatMap((each): Counted[] =>
    each.kind === 'generator' || each.kind === 'battery' || each.kind === 'distro'
      ? [{ label: BOXES[each.kind], itemId: each.id, note: each.label }]
      : each.kind === 'appliance'
        ? [{ label: each.label, itemId: each.id }]
        : [],
  );
  const supplies = gear.filter(({ kind }) => SOURCES.includes(kind));
  return [
    ...tallied('power', null, boxes),
    ...cords(plan),
    ...mats(plan),
    ...oneLine('power', 'GFCI, a circuit breaker that trips on leakage', supplies.length, {
      detail: supplies.map(({ label }) => `at ${label}`).join(', '),
      itemIds: supplies.map(({ id }) => id),
    }),
    ...fuel(plan, hours),
  ];
}
