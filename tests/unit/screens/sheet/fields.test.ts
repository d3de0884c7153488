import { expect, test } from 'vitest';
import { makeItem, PALETTE } from '../../../../src/core/kit/palette';
import { type Item, itemOf, itemsOf, kindOf } from '../../../../src/core/plan/items';
import { parsePlan } from '../../../../src/core/plan/parse';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { areaText } from '../../../../src/screens/sheet/fields/areaText';
import { CLOTH_SIZES, clothSizeWord } from '../../../../src/screens/sheet/fields/clothSizes';
import { fieldsOf } from '../../../../src/screens/sheet/fields/fieldsOf';
import { lossText, shareOfStops, stopsText } from '../../../../src/screens/sheet/fields/lightLoss';
import type { FieldSpec } from '../../../../src/screens/sheet/fields/types';
import { DEMO, readPlan } from '../../../plans/readPlan';

const plan = readPlan(DEMO);

/** The demo's roof with one more of everything that the palette has. */
const full = PALETTE.reduce((before, entry, place) => {
  const x = -9 + (place % 10) * 1.7;
  const spots: readonly [number, number][] = [
    [x, 0],
    [x + 1.5, 0.5],
    [x + 1, 1.5],
  ];
  const taken = entry.how === 'spot' ? 1 : entry.how === 'outline' ? 3 : 2;
  return makeItem(before, entry.id, { spots: spots.slice(0, taken) })?.plan ?? before;
}, plan);

const specsOf = (of: Plan, item: Item): readonly FieldSpec[] =>
  fieldsOf(of, item, 'm').flatMap((group) => group.fields);

const specOf = (of: Plan, id: string, label: string): FieldSpec | undefined => {
  const item = itemOf(of, id);
  return item ? specsOf(of, item).find((spec) => spec.label === label) : undefined;
};

/** Another value that the field may have, and what the field shows of a value. */
function typedInto(
  spec: FieldSpec,
): { readonly after: (before: Plan) => Plan; readonly shows: unknown } | null {
  switch (spec.form) {
    case 'length': {
      const reach = spec.reach;
      const metres = reach
        ? reach.lowestMetres + (reach.highestMetres - reach.lowestMetres) * 0.4
        : Math.max(spec.metres, 0.002) * 1.25;
      return { after: (before) => spec.change(before, metres), shows: metres };
    }
    case 'heading':
      return { after: (before) => spec.change(before, 123), shows: 123 };
    case 'number': {
      // Nothing has a power factor of more than 1.
      const other = spec.label === 'power factor' ? 0.55 : spec.value + 1;
      return { after: (before) => spec.change(before, other), shows: other };
    }
    case 'share':
    case 'stops':
      return { after: (before) => spec.change(before, 0.25), shows: 0.25 };
    case 'choice': {
      const other = spec.choices.find(([value]) => value !== spec.value)?.[0];
      return other === undefined ? null : { after: (before) => spec.change(before, other), shows: other };
    }
    case 'colour':
      return { after: (before) => spec.change(before, '#123456'), shows: '#123456' };
    case 'shown':
      return null;
  }
}

function shownBy(spec: FieldSpec | undefined): unknown {
  switch (spec?.form) {
    case 'length':
      return spec.metres;
    case 'heading':
      return spec.degrees;
    case 'number':
    case 'choice':
      return spec.value;
    case 'share':
    case 'stops':
      return spec.share;
    case 'colour':
      return spec.colour;
    default:
      return undefined;
  }
}

/** One of each kind, and of each choice of fields that records of a kind have. */
const ITEMS = [
  ...new Map(
    itemsOf(full).map((item) => [`${kindOf(item)} ${Object.keys(item.record).toSorted().join()}`, item]),
  ).values(),
].map((item) => [`${item.record.label}, ${kindOf(item)}`, item] as const);

test('every kind of the palette and the demo has a panel to be tried', () => {
  const kinds = new Set(itemsOf(full).map(kindOf));
  expect(kinds.size).toBeGreaterThan(27);
});

test.each(ITEMS)('%s: no two fields share a label, and each takes another value and shows it', (_, item) => {
  const specs = specsOf(full, item);
  const labels = specs.map((spec) => spec.label);
  expect(new Set(labels).size).toBe(labels.length);
  for (const spec of specs) {
    const typed = typedInto(spec);
    if (!typed || spec.label === 'made size') continue;
    const after = typed.after(full);
    const read = parsePlan(after);
    expect(read.ok ? null : read.faults, spec.label).toBeNull();
    const shows = shownBy(specOf(after, item.record.id, spec.label));
    if (typeof typed.shows === 'number') expect(shows, spec.label).toBeCloseTo(typed.shows, 5);
    else expect(shows, spec.label).toBe(typed.shows);
  }
});

test('what the schema refuses comes through to it, so that somebody hears what would work', () => {
  const fence = specOf(full, full.pieces.find(({ kind }) => kind === 'fence')?.id ?? '', 'height');
  if (fence?.form !== 'length') throw new Error('the demo has no fence');
  const read = parsePlan(fence.change(full, 1e9));
  expect(read.ok).toBe(false);
  if (!read.ok) expect(read.faults[0]?.expected).toBe('0.001 to 500 metres');
  expect(fence.change(full, fence.metres), 'the same value changes nothing').toBe(full);
});

test('a made size of cloth is known by its measures, whatever their last millimetres', () => {
  expect(clothSizeWord([0.457, 0.61])).toBe('18 × 24 in');
  expect(clothSizeWord([1.22, 1.22])).toBe('4 × 4 ft');
  expect(clothSizeWord([1.23, 1.22])).toBe('free');
  expect(new Set(CLOTH_SIZES.map(({ word }) => word)).size).toBe(CLOTH_SIZES.length);
});

test.each([
  [1, 'loses next to nothing'],
  [0.84, 'loses 0.3\u00a0stop'],
  [0.5, 'loses 1.0\u00a0stop'],
  [0.25, 'loses 2.0\u00a0stops'],
  [0, 'does not come through'],
])('a lamp behind an openness of %d %s', (openness, words) => {
  expect(lossText(openness)).toBe(words);
});

test('stops and shares are each other', () => {
  expect(shareOfStops(-1)).toBe(0.5);
  expect(stopsText(0.5)).toBe('\u22121.0\u00a0stop');
  expect(stopsText(0)).toBe('all dark');
});

test('an area is read in the system of the lengths', () => {
  expect(areaText(384, 'm')).toBe('384.0\u00a0m²');
  expect(areaText(9.290304, 'ft-in')).toBe('100\u00a0sq\u00a0ft');
});
