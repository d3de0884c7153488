import { describe, expect, test } from 'vitest';
import { clippingOf, pasteClipping } from '../../../src/core/plan/clipping';
import { itemsOf } from '../../../src/core/plan/items';
import { parsePlan, parsePlanText } from '../../../src/core/plan/parse';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { serialisePlan } from '../../../src/core/plan/serialise';
import { EMPTY_PLAN } from '../../../src/desk/emptyPlan';
import { DEMO, readPlan } from '../../plans/readPlan';

const demo = readPlan(DEMO);
const carried = demo.gear.find((gear) => 'place' in gear && 'on' in gear.place);
if (!carried || !('place' in carried) || !('on' in carried.place))
  throw new Error('the demo carries nothing');
const standId = carried.place.on;
const faultsOf = (plan: Plan) => {
  const parsed = parsePlan(plan);
  return parsed.ok ? [] : parsed.faults.map(({ sentence }) => sentence);
};
const clipped = (ids: readonly string[]): Plan => {
  const clipping = clippingOf(demo, ids);
  if (!clipping) throw new Error('nothing was clipped');
  return clipping;
};

describe('a clipping', () => {
  test('is a plan by itself, with the stand of a lamp and its classes', () => {
    const clipping = clipped([carried.id]);
    expect(faultsOf(clipping)).toEqual([]);
    expect(clipping.gear.map(({ id }) => id)).toEqual(expect.arrayContaining([carried.id, standId]));
    expect(clipping.setups).toEqual([]);
    const read = parsePlanText(serialisePlan(clipping));
    expect(read.ok && read.value).toEqual(clipping);
  });

  test('of nothing is none', () => expect(clippingOf(demo, ['nobody'])).toBeNull());

  test('leaves a cable unplugged from what does not come along', () => {
    const cable = demo.gear.find((gear) => gear.kind === 'cable');
    const power = demo.gear.find((gear) => gear.kind === 'generator');
    if (!cable || !power) throw new Error('the demo has no power');
    const plugged: Plan = {
      ...demo,
      gear: demo.gear.map((gear) => (gear === cable ? { ...cable, plugs: { from: power.id } } : gear)),
    };
    expect(clippingOf(plugged, [cable.id])?.gear[0]).not.toHaveProperty('plugs');
    const both = clippingOf(plugged, [cable.id, power.id]);
    expect(both?.gear.find(({ id }) => id === cable.id)).toMatchObject({ plugs: { from: power.id } });
  });
});

describe('pasted', () => {
  test('it has ids and names of its own, stands on the copy of its stand, and lies where it is put', () => {
    const pasted = pasteClipping(demo, clipped([carried.id]), [1, -2]);
    expect(faultsOf(pasted.plan)).toEqual([]);
    expect(pasted.plan.gear.length).toBe(demo.gear.length + pasted.ids.length);
    const labels = itemsOf(pasted.plan).map(({ record }) => record.label);
    expect(new Set(labels).size).toBe(labels.length);
    const copies = pasted.plan.gear.filter(({ id }) => pasted.ids.includes(id));
    const stand = copies.find(({ kind }) => kind === 'stand');
    const before = demo.gear.find(({ id }) => id === standId);
    if (stand?.kind !== 'stand' || before?.kind !== 'stand') throw new Error('no stand came');
    expect(stand.at[0]).toBeCloseTo(before.at[0] + 1, 9);
    expect(stand.at[2]).toBeCloseTo(before.at[2] - 2, 9);
    const lamp = copies.find(({ kind }) => kind === carried.kind);
    expect(lamp).toMatchObject({ place: { on: stand.id } });
    // What was there is untouched, by identity.
    for (const gear of demo.gear) expect(pasted.plan.gear).toContain(gear);
  });

  test('into an empty plan it brings its classes and its beats', () => {
    const performer = demo.cast[0];
    if (!performer) throw new Error('the demo has no cast');
    const pasted = pasteClipping(EMPTY_PLAN, clipped([carried.id, performer.id]), [0, 0]);
    expect(faultsOf(pasted.plan)).toEqual([]);
    expect(pasted.plan.cast).toHaveLength(1);
    expect(pasted.plan.beats.length).toBeGreaterThan(0);
    expect(pasted.plan.kit.stands.length).toBeGreaterThan(0);
  });

  test('a plan without any items pastes nothing', () => {
    expect(pasteClipping(demo, EMPTY_PLAN, [0, 0])).toEqual({ plan: demo, ids: [] });
  });
});
