import { describe, expect, test } from 'vitest';
import { moveItem } from '../../../src/core/plan/edits/moveItem';
import { itemsOf, wishOf } from '../../../src/core/plan/items';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { reportOf } from '../../../src/core/report/report';
import type { ItemReport, SetupReport, Verdict } from '../../../src/core/report/types';
import { DEMO, readPlan } from '../../plans/readPlan';
import { itemIn, setupIn } from './inReport';

/*
 * The demo is there to show what a report is good for: it has something of each verdict in it, and one stand that a
 * drag can clear everywhere. The skyline takes most of the time and changes nothing about the gear.
 */
const demo = readPlan(DEMO);
const roof: Plan = { ...demo, pieces: demo.pieces.filter(({ kind }) => kind !== 'skyline block') };
const report = reportOf(roof, { setupIds: ['wide', 'alongside', 'high', 'last-wide'] });

const setupOf = (id: string): SetupReport => setupIn(report, id);
const itemOf = (setup: string, id: string): ItemReport => itemIn(setupOf(setup), id);

test('lamp stand 2 shows at the right of the wide, until the dolly has gone past it', () => {
  const { verdict, spans, extent, parts } = itemOf('wide', 'stand-2');
  expect(verdict).toBe('showing');
  expect(parts.map(({ name }) => name)).toContain('column');
  expect(spans).toHaveLength(1);
  expect(spans[0]?.[0]).toBe(9);
  expect(spans[0]?.[1]).toBeGreaterThan(12);
  expect(spans[0]?.[1]).toBeLessThan(20);
  expect(extent?.[0]).toBeGreaterThan(0.85);
});

test('alongside, the dolly sees one stand as it starts and the other as it ends', () => {
  const [from, to] = setupOf('alongside').seconds;
  const [second] = itemOf('alongside', 'stand-2').spans;
  const [first] = itemOf('alongside', 'stand-1').spans;
  expect(second?.[0]).toBe(from);
  expect(second?.[1]).toBeLessThan(from + 4);
  expect(first?.[0]).toBeGreaterThan(to - 4);
  expect(first?.[1]).toBe(to);
});

test.each<[string, string, Verdict]>([
  ['wide', 'head-2', 'close'],
  ['alongside', 'generator-2', 'covered'],
  ['high', 'head-4', 'mirrored'],
  ['high', 'stand-4', 'mirrored'],
  ['last-wide', 'bounce', 'close'],
  ['last-wide', 'head-1', 'covered'],
  ['last-wide', 'ladder', 'covered'],
])('in %s, %s is %s', (setup, item, verdict) => expect(itemOf(setup, item).verdict).toBe(verdict));

test.each(['wide', 'alongside', 'high', 'last-wide'])('in %s most of what should keep out is clear', (id) => {
  const gear = setupOf(id).items.filter(({ wish }) => wish === 'keep out');
  const clear = gear.filter(({ verdict }) => verdict === 'clear');
  expect(clear.length).toBeGreaterThan(gear.length / 2);
});

test('no camera stands inside anything; its parapet is lower than a guard, and its shutter is safe under the sign', () => {
  const { notices } = reportOf(demo, { setupIds: [] });
  expect(notices.map(({ where }) => where)).toEqual(['Performer Rui']);
  expect(notices[0].sentence).toContain('without a guard of about 1.1');
});

test('there is gear that should keep out, and gear that may show', () => {
  const wishes = itemsOf(demo)
    .filter(({ section }) => section === 'gear')
    .map(wishOf);
  expect(new Set(wishes)).toEqual(new Set(['keep out', 'either']));
});

describe('lamp stand 2, dragged towards the corner', () => {
  /** Nothing but the floor stands in the way of a view of it, so what is clear here is clear on the whole roof. */
  const bare: Plan = {
    ...demo,
    pieces: demo.pieces.filter(({ kind }) => kind === 'deck'),
    cast: demo.cast.map((performer) => ({ ...performer, marks: [] })),
    gear: demo.gear.filter(({ id }) => id === 'stand-2' || id === 'head-2' || id.startsWith('bulbs')),
  };

  test.each([
    [8.4, -7.1],
    [8.9, -7],
    [9.3, -7],
  ])('is clear in each setup at %d, %d, with its head', (x, z) => {
    const { setups } = reportOf(moveItem(bare, { id: 'stand-2', to: [x, z] }));
    expect(setups).toHaveLength(8);
    for (const { id, items } of setups) {
      for (const item of items.filter((entry) => entry.wish === 'keep out')) {
        expect([id, item.id, item.verdict]).toEqual([id, item.id, 'clear']);
      }
    }
  });
});
