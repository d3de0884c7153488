import { supportOf } from '../../kit/supports';
import type { Plan } from '../../plan/schema/plan';
import { setupLetter } from '../../plan/setupLetter';
import { formatLength } from '../../units/lengths';
import { NBSP } from '../../units/numbers';
import { USUAL_PACKING } from './rules';
import { type Counted, oneLine, tallied } from './tally';
import type { PackingNeed } from './types';

/** The letters of the setups that use something: `for A, C`. */
const uses = (plan: Plan, has: (setup: Plan['setups'][number]) => boolean): string =>
  `for ${plan.setups.flatMap((setup, place) => (has(setup) ? [setupLetter(place)] : [])).join(', ')}`;

/** Glass before the lenses, by what it does. */
function filters(plan: Plan): readonly PackingNeed[] {
  const found = plan.setups.flatMap(({ id, filter, ndStops }, place): Counted[] => [
    ...(filter
      ? [
          {
            label: `Filter, ${filter.kind}, strength ${filter.strength}`,
            itemId: id,
            note: `for ${setupLetter(place)}`,
          },
        ]
      : []),
    ...(ndStops > 0
      ? [{ label: `Neutral density, ${ndStops} stops`, itemId: id, note: `for ${setupLetter(place)}` }]
      : []),
  ]);
  return tallied('camera', null, found).map((line) => ({ ...line, count: 1, itemIds: [] }));
}

/** The tracks by their bend, in metres along the middle. */
function tracks(plan: Plan): readonly PackingNeed[] {
  const found = plan.gear.flatMap((gear): Counted[] => {
    if (gear.kind !== 'track') return [];
    const label =
      gear.bendMetres === undefined
        ? 'Dolly track, straight'
        : `Dolly track, curved to ${formatLength(Math.abs(gear.bendMetres), 'm', { decimals: 1 })}`;
    return [{ label, itemId: gear.id, note: gear.label, count: gear.lengthMetres }];
  });
  return tallied('camera', null, found, 'metres');
}

/** What the camera department carries. @param hours that the camera is on */
export function ofCamera(plan: Plan, hours: number): readonly PackingNeed[] {
  const { kit, setups, gear, night } = plan;
  const bodies = kit.bodies.filter(({ id }) => setups.some(({ body }) => body === id));
  const lenses = kit.lenses.filter(({ id }) => setups.some(({ lens }) => lens === id));
  const supports = [...new Set(setups.map(({ support }) => support))];
  const each = night?.packing?.batteryHours ?? USUAL_PACKING.batteryHours;
  const batteries = bodies.length === 0 ? 0 : Math.ceil(hours / each - 1e-9);
  const monitors = gear.flatMap((item): Counted[] => {
    if (item.kind === 'monitor') return [{ label: 'Monitor', itemId: item.id, note: item.label }];
    if (item.kind !== 'cart' || item.monitors === 0) return [];
    return [{ label: 'Monitor', itemId: item.id, note: `on ${item.label}`, count: item.monitors }];
  });
  const of = (kind: 'dolly' | 'cart', label: string): readonly PackingNeed[] =>
    tallied(
      'camera',
      kind === 'dolly' ? 'supports' : null,
      gear.flatMap((item) => (item.kind === kind ? [{ label, itemId: item.id, note: item.label }] : [])),
    );
  const isDollyDrawn = gear.some(({ kind }) => kind === 'dolly');
  return [
    ...bodies.flatMap(({ id, label }) =>
      oneLine('camera', label, 1, { detail: uses(plan, ({ body }) => body === id) }),
    ),
    ...lenses.flatMap(({ id, label }) =>
      oneLine('camera', label, 1, { spared: 'lenses', detail: uses(plan, ({ lens }) => lens === id) }),
    ),
    ...filters(plan),
    ...supports
      .filter((support) => support !== 'dolly' || !isDollyDrawn)
      .flatMap((support) =>
        oneLine('camera', supportOf(support).label, 1, {
          spared: 'supports',
          detail: uses(plan, (setup) => setup.support === support),
        }),
      ),
    ...of('dolly', 'Dolly'),
    ...tracks(plan),
    ...oneLine('camera', 'Battery for the camera', batteries, {
      spared: 'batteries',
      detail: `${hours.toFixed(1)}${NBSP}h of work at ${each}${NBSP}h each`,
    }),
    ...of('cart', 'Monitor cart'),
    ...tallied('camera', null, monitors),
  ];
}
