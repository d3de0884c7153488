import { beforeEach, expect, test, vi } from 'vitest';
import { askedFor } from '../../../../src/desk/crew/kept/askedFor';
import { forgetLink, keepLink, keptLinksStore } from '../../../../src/desk/crew/kept/keptLinks';
import { storageStore } from '../../../../src/desk/crew/kept/storage';
import { markOf, standingOf, takeUpTicks, tickStore, toggleTick } from '../../../../src/desk/crew/kept/ticks';
import { freeTitle } from '../../../../src/desk/crew/makeMine';
import { DEMO, readPlan } from '../../../plans/readPlan';

const shelf = new Map<string, string>();
const storage = (full: boolean) => ({
  getItem: (key: string) => shelf.get(key) ?? null,
  setItem: (key: string, text: string) => {
    if (full) throw new DOMException('full', 'QuotaExceededError');
    shelf.set(key, text);
  },
  removeItem: (key: string) => shelf.delete(key),
});
const linkNumber = (n: number) => ({ fragment: `1x${n}`, title: `Night ${n}`, date: '2026-11-27' });
const night = { title: 'Night', place: { date: '2026-11-27' } } as Parameters<typeof takeUpTicks>[0];

beforeEach(() => {
  shelf.clear();
  storageStore.setState({ refused: false });
  vi.stubGlobal('localStorage', storage(false));
});

test('the last twenty links are kept, the one opened last first, each once', () => {
  for (let n = 0; n < 22; n += 1) keepLink(linkNumber(n));
  keepLink(linkNumber(5));
  const fragments = keptLinksStore.getState().links.map(({ fragment }) => fragment);
  expect(fragments).toHaveLength(20);
  expect(fragments.slice(0, 2)).toEqual(['1x5', '1x21']);
  expect(new Set(fragments).size).toBe(20);
  forgetLink('1x5');
  expect(keptLinksStore.getState().links[0].fragment).toBe('1x21');
});

test('what somebody else stored there is no list of links', () => {
  shelf.set('standclear.crew.links', '{"__proto__": [1], "length": 3}');
  keepLink(linkNumber(1));
  expect(keptLinksStore.getState().links).toEqual([linkNumber(1)]);
});

test('long links take the room of the oldest, and one that is longer than all room is not kept', () => {
  const long = (n: number, length: number) => ({ ...linkNumber(n), fragment: `1x${n}`.padEnd(length, 'a') });
  for (let n = 0; n < 3; n += 1) keepLink(long(n, 900_000));
  const titles = () => keptLinksStore.getState().links.map(({ title }) => title);
  expect(titles()).toEqual(['Night 2', 'Night 1']);
  keepLink(long(3, 2_000_001));
  expect(titles()).toEqual(['Night 2', 'Night 1']);
});

test('a forgotten link takes its ticks along, unless another of the same night is kept', () => {
  const [first, later] = [linkNumber(1), { ...linkNumber(1), fragment: '1x1later' }];
  const ticks = () => [...shelf.keys()].filter((key) => key.includes('ticks'));
  keepLink(first);
  keepLink(later);
  takeUpTicks({ title: first.title, place: { date: first.date } } as Parameters<typeof takeUpTicks>[0]);
  toggleTick('stand', {});
  tickStore.setState({ key: '', ticks: {} });
  forgetLink(first.fragment);
  expect(ticks()).toHaveLength(1);
  forgetLink(later.fragment);
  expect(ticks()).toEqual([]);
});

test('what another tab ticked meanwhile stays', () => {
  takeUpTicks(night);
  const here = tickStore.getState();
  toggleTick('theirs', {});
  tickStore.setState(here);
  toggleTick('ours', {});
  expect(Object.keys(tickStore.getState().ticks).sort()).toEqual(['ours', 'theirs']);
});

test('a tick stays with its night, and goes once the thing is asked for otherwise', () => {
  const stand = { id: 'stand', at: [1, 0, 2] };
  takeUpTicks(night);
  toggleTick('stand', stand);
  tickStore.setState({ key: '', ticks: {} });
  takeUpTicks(night);
  const { ticks } = tickStore.getState();
  expect(standingOf(ticks, 'stand', stand)).toBe('set');
  expect(standingOf(ticks, 'stand', { ...stand, at: [1, 0, 2.1] })).toBe('changed since');
  expect(standingOf(ticks, 'toString', stand)).toBe('not set');
  toggleTick('stand', stand);
  expect(standingOf(tickStore.getState().ticks, 'stand', stand)).toBe('not set');
  expect(markOf(stand)).not.toBe(markOf({ ...stand, id: 'other' }));
});

test('a tick is asked for by a setup itself, and by a thing with all that stands on it', () => {
  const plan = readPlan(DEMO);
  const [setup] = plan.setups;
  expect(askedFor(plan, setup.id)).toBe(setup);
  const head = plan.gear.find((gear) => gear.kind === 'head' && 'on' in gear.place);
  const standId = head && 'place' in head && 'on' in head.place ? head.place.on : '';
  const asked = askedFor(plan, standId);
  expect(asked).toEqual(expect.arrayContaining([expect.objectContaining({ id: standId }), head]));
  expect(askedFor(plan, 'no such thing')).toBeNull();
});

test('where storage is full it is noted, and ticks go on in the page', () => {
  vi.stubGlobal('localStorage', storage(true));
  takeUpTicks(night);
  toggleTick('stand', {});
  expect(storageStore.getState().refused).toBe(true);
  expect(standingOf(tickStore.getState().ticks, 'stand', {})).toBe('set');
});

test('a copy gets a title that no plan has', () => {
  expect(freeTitle('Night', new Set())).toBe('Night');
  expect(freeTitle('Night', new Set(['Night']))).toBe('Night, from a link');
  expect(freeTitle('Night', new Set(['Night', 'Night, from a link']))).toBe('Night, from a link 2');
  const long = 'n'.repeat(80);
  expect(freeTitle(long, new Set([long])).length).toBeLessThanOrEqual(80);
});
