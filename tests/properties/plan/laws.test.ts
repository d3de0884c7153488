import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arrayItems, rowPlaces } from '../../../src/core/plan/edits/arrayItems';
import { duplicateItems } from '../../../src/core/plan/edits/duplicateItems';
import { mirrorItems } from '../../../src/core/plan/edits/mirrorItems';
import { moveItems } from '../../../src/core/plan/edits/moveItems';
import { raiseItems } from '../../../src/core/plan/edits/raiseItems';
import { turnItems } from '../../../src/core/plan/edits/turnItems';
import { itemOf, itemsOf } from '../../../src/core/plan/items';
import { parsePlan } from '../../../src/core/plan/parse';
import { metresBetween, runLength } from '../../../src/core/plan/runs';
import type { Spot } from '../../../src/core/plan/schema/numbers';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { type Draw, drawFrom } from '../../plans/draw';
import { fullRoof } from '../../plans/fullRoof';

const ROOF = fullRoof();
const ALL = itemsOf(ROOF).map(({ record }) => record.id);

const someIds = (draw: Draw): string[] => {
  const ids = Array.from({ length: draw.whole(1, 6) }, () => draw.pick(ALL));
  return draw.chance(0.15) ? ALL : [...new Set(ids)];
};
const someSpot = (draw: Draw): Spot => [draw.between(-12, 12), draw.between(-12, 12)];

/** Holds a law for seeded draws; a smaller seed is no simpler case. */
function always(law: (draw: Draw) => void, numRuns = 150): void {
  fc.assert(
    fc.property(fc.noShrink(fc.integer({ min: 0, max: 1e9 })), (seed) => law(drawFrom(seed))),
    { numRuns },
  );
}

/** Where two values differ by more than what rounding to a micrometre leaves; whole turns apart is the same heading. */
function differences(a: unknown, b: unknown, where = ''): readonly string[] {
  if (typeof a === 'number' && typeof b === 'number') {
    const off = Math.abs(a - b);
    const isSame = off < 1e-5 || (where.endsWith('headingDegrees') && Math.abs(off - 360) < 1e-5);
    return isSame ? [] : [`${where}: ${a} and ${b}`];
  }
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null)
    return a === b ? [] : [`${where}: ${String(a)} and ${String(b)}`];
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].flatMap((key) => differences(Reflect.get(a, key), Reflect.get(b, key), `${where}.${key}`));
}

test('there and back is where it was', () => {
  always((draw) => {
    const ids = someIds(draw);
    const [x, z] = someSpot(draw);
    const there = moveItems(ROOF, { ids, by: [x, z] });
    expect(parsePlan(there)).toEqual({ ok: true, value: there });
    expect(moveItems(there, { ids, by: [-x, -z] })).toEqual(ROOF);
  });
});

test('up and down is where it was', () => {
  always((draw) => {
    // What a stand carries goes up with the stand, which goes only so high.
    const ids = someIds(draw).filter((id) => !isCarried(ROOF, id));
    const byMetres = draw.between(0.05, 3);
    const there = raiseItems(ROOF, { ids, byMetres });
    expect(parsePlan(there)).toEqual({ ok: true, value: there });
    expect(differences(ROOF, raiseItems(there, { ids, byMetres: -byMetres }))).toEqual([]);
  });
});

const isCarried = (plan: Plan, id: string): boolean =>
  plan.gear.some((gear) => gear.id === id && 'place' in gear && 'on' in gear.place);

test('a whole turn changes nothing, four quarters end where they began, and so does a turn undone', () => {
  always((draw) => {
    const ids = someIds(draw);
    const about = someSpot(draw);
    expect(turnItems(ROOF, { ids, byDegrees: 360 * draw.whole(-2, 2), about })).toBe(ROOF);
    let turned = ROOF;
    for (let k = 0; k < 4; k += 1) turned = turnItems(turned, { ids, byDegrees: 90, about });
    expect(differences(ROOF, turned)).toEqual([]);
    const byDegrees = draw.between(-180, 180);
    const there = turnItems(ROOF, { ids, byDegrees, about });
    expect(parsePlan(there)).toEqual({ ok: true, value: there });
    expect(differences(ROOF, turnItems(there, { ids, byDegrees: -byDegrees, about }))).toEqual([]);
  });
});

test('mirrored twice is what it was', () => {
  always((draw) => {
    const ids = someIds(draw);
    const bearingDegrees = draw.chance(0.5) ? draw.pick([0, 45, 90, 180]) : draw.between(-360, 360);
    const axis = { at: someSpot(draw), bearingDegrees };
    const once = mirrorItems(ROOF, { ids, axis, copy: false }).plan;
    expect(parsePlan(once)).toEqual({ ok: true, value: once });
    const twice = mirrorItems(once, { ids, axis, copy: false }).plan;
    expect(differences(ROOF, twice)).toEqual([]);
  });
});

test('a mirrored copy lies where the item would lie, and the item stays', () => {
  always((draw) => {
    const ids = [draw.pick(ALL.filter((id) => itemOf(ROOF, id)?.section === 'piece'))];
    const axis = { at: someSpot(draw), bearingDegrees: draw.between(0, 360) };
    const copied = mirrorItems(ROOF, { ids, axis, copy: true });
    const itself = mirrorItems(ROOF, { ids, axis, copy: false }).plan;
    const strip = (plan: Plan, id: string) => ({ ...itemOf(plan, id)?.record, id: '', label: '' });
    expect(strip(copied.plan, copied.ids[0])).toEqual(strip(itself, ids[0]));
    expect(itemOf(copied.plan, ids[0])?.record).toBe(itemOf(ROOF, ids[0])?.record);
  });
});

test('copies are their own: other ids and names, and what happens to them does not happen to the items', () => {
  always((draw) => {
    const ids = someIds(draw);
    const { plan, ids: copies } = duplicateItems(ROOF, { ids, by: someSpot(draw) });
    expect(parsePlan(plan)).toEqual({ ok: true, value: plan });
    expect(copies.length).toBeGreaterThanOrEqual(ids.length);
    expect(itemsOf(plan)).toHaveLength(ALL.length + copies.length);
    const labels = itemsOf(plan).map(({ record }) => record.label);
    const doubled = labels.length - new Set(labels).size;
    expect(doubled).toBe(ALL.length - new Set(itemsOf(ROOF).map(({ record }) => record.label)).size);
    // Far away, so that nothing stands on anything of the other lot.
    const far = moveItems(plan, { ids: copies, by: [200, 0] });
    for (const id of ALL) expect(itemOf(far, id)?.record, id).toBe(itemOf(ROOF, id)?.record);
  });
});

test('copies of what belongs together belong together', () => {
  const cable = ROOF.gear.find((gear) => gear.kind === 'cable' && gear.plugs);
  if (cable?.kind !== 'cable' || !cable.plugs?.from || !cable.plugs.to) throw new Error('no plugged cable');
  const { plan, ids } = duplicateItems(ROOF, {
    ids: [cable.id, cable.plugs.from, cable.plugs.to],
    by: [0, 1],
  });
  const copy = ids.map((id) => itemOf(plan, id)?.record).find((record) => record && 'path' in record);
  expect(copy).toMatchObject({ path: cable.path.map(([x, z]) => [x, z + 1]) });
  const plugs = copy && 'plugs' in copy ? copy.plugs : {};
  expect(ids).toEqual(expect.arrayContaining([plugs?.from, plugs?.to]));
  const alone = duplicateItems(ROOF, { ids: [cable.id], by: [0, 1] });
  expect(itemOf(alone.plan, alone.ids[0])?.record).not.toHaveProperty('plugs');
});

test('a row has as many as were asked for, or as many as fit, evenly apart', () => {
  always((draw) => {
    const along = Array.from({ length: draw.whole(2, 5) }, () => someSpot(draw));
    const count = draw.whole(2, 9);
    const id = draw.pick(['tank', 'riser-1', 'stair-house-1', 'post-1'].filter((each) => ALL.includes(each)));
    const even = arrayItems(ROOF, { ids: [id], along, count, follow: false });
    expect(even.ids).toHaveLength(count - 1);
    expect(parsePlan(even.plan)).toEqual({ ok: true, value: even.plan });
    const spacingMetres = draw.between(0.3, 6);
    const places = rowPlaces({ along, count, spacingMetres });
    const length = runLength(along, false);
    expect(places).toHaveLength(Math.min(count, Math.floor(length / spacingMetres + 1e-9) + 1));
    expect(arrayItems(ROOF, { ids: [id], along, count, spacingMetres, follow: true }).ids).toHaveLength(
      places.length - 1,
    );
    const straight = rowPlaces({ along: along.slice(0, 2), count });
    const gaps = straight.slice(1).map(({ spot }, k) => metresBetween(straight[k].spot, spot));
    for (const gap of gaps) expect(gap).toBeCloseTo(metresBetween(along[0], along[1]) / (count - 1), 6);
  }, 80);
});
