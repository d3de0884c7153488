import { describe, expect, test } from 'vitest';
import { addOpening } from '../../../../src/core/plan/edits/addOpening';
import { lockItems } from '../../../../src/core/plan/edits/lockItems';
import { itemOf } from '../../../../src/core/plan/items';
import { parsePlan } from '../../../../src/core/plan/parse';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import type { Spot } from '../../../../src/screens/overhead/geometry/spots';
import { handlesOf } from '../../../../src/screens/overhead/handles/handlesOf';
import type { Handle, Pull } from '../../../../src/screens/overhead/handles/types';
import { DEMO, readPlan } from '../../../plans/readPlan';

const demo = readPlan(DEMO);
const byKind = (kind: string): string => {
  const found = [...demo.pieces, ...demo.gear].find((record) => record.kind === kind);
  if (!found) throw new Error(`the demo has no ${kind}`);
  return found.id;
};
const handles = (plan: Plan, ids: readonly string[], setupId: string | null = null) =>
  handlesOf({
    plan,
    ids,
    setupId,
    seconds: 10,
    lengths: 'm',
    perMetre: 25,
    at: ([x, z]) => [400 + x * 25, 300 + z * 25],
  });
const handle = (plan: Plan, ids: readonly string[], key: string, setupId: string | null = null): Handle => {
  const found = handles(plan, ids, setupId).find((each) => each.key === key);
  if (!found) throw new Error(`no handle ${key} among ${handles(plan, ids).map((each) => each.key)}`);
  return found;
};
const pull = (to: Spot, more: Partial<Pull> = {}): Pull => ({
  to,
  moved: [0, 0],
  straight: false,
  free: false,
  reachMetres: 0,
  ...more,
});
const recordOf = (plan: Plan, id: string) => {
  const record = itemOf(plan, id)?.record;
  if (!record) throw new Error(`${id} is gone`);
  return record;
};
const numberOf = (record: object, field: string): number => {
  const value: unknown = Reflect.get(record, field);
  if (typeof value !== 'number') throw new Error(`${field} is no number`);
  return value;
};
const isSound = (plan: Plan): boolean => parsePlan(plan).ok;

describe('turning', () => {
  const id = byKind('chimney');
  const turn = handle(demo, [id], 'turn');
  const [x, z] = turn.at;

  test('goes to the bearing of the pull, in whole degrees, with Shift in steps of 15', () => {
    expect(numberOf(recordOf(turn.pull(demo, pull([x + 1, z])), id), 'headingDegrees')).toBeCloseTo(90, 6);
    const near: Spot = [x + Math.sin(0.7), z - Math.cos(0.7)];
    expect(numberOf(recordOf(turn.pull(demo, pull(near)), id), 'headingDegrees')).toBeCloseTo(40, 6);
    const straight = turn.pull(demo, pull(near, { straight: true }));
    expect(numberOf(recordOf(straight, id), 'headingDegrees')).toBeCloseTo(45, 6);
  });

  test('takes a typed bearing, and says what it would take', () => {
    const typed = turn.typed?.(demo, '32', 'm');
    if (!typed || typeof typed === 'string') throw new Error('32 was not taken');
    expect(numberOf(recordOf(typed, id), 'headingDegrees')).toBeCloseTo(32, 6);
    expect(turn.typed?.(demo, 'north', 'm')).toMatch(/^A bearing in degrees/);
  });

  test('of several goes about the middle of them', () => {
    const ids = [id, byKind('tank')];
    const both = handle(demo, ids, 'turn');
    const turned = both.pull(demo, pull([both.at[0] + 1, both.at[1]]));
    expect(isSound(turned)).toBe(true);
    const [a, b] = ids.map((each) => recordOf(turned, each));
    if (!a || !b || !('at' in a) || !('at' in b)) throw new Error('they are gone');
    expect((a.at[0] + b.at[0]) / 2).toBeCloseTo(both.at[0], 5);
    expect((a.at[2] + b.at[2]) / 2).toBeCloseTo(both.at[1], 5);
  });
});

describe('raising', () => {
  const id = byKind('stand');
  const raise = handle(demo, [id], 'raise');
  const before = numberOf(recordOf(demo, id), 'heightMetres');

  test('a pull of 20 pixels up raises the stand by 20 cm, on its steps', () => {
    const raised = raise.pull(demo, pull([0, 0], { moved: [3, -20] }));
    expect(numberOf(recordOf(raised, id), 'heightMetres')).toBeCloseTo(
      Math.round((before + 0.2) / 0.05) * 0.05,
      6,
    );
  });

  test('a stand goes no farther than its class', () => {
    const raised = raise.pull(demo, pull([0, 0], { moved: [0, -5000] }));
    const record = recordOf(raised, id);
    const standClass = demo.kit.stands.find((each) => 'stand' in record && each.id === record.stand);
    expect(numberOf(record, 'heightMetres')).toBe(standClass?.highestMetres);
    expect(raise.typed?.(demo, '90 m', 'm')).toMatch(/out of reach/);
  });

  test('what has no stand gets another base', () => {
    const box = byKind('box');
    const typed = handle(demo, [box], 'raise').typed?.(demo, '0.5', 'm');
    if (!typed || typeof typed === 'string') throw new Error('0.5 was not taken');
    const record = recordOf(typed, box);
    expect('at' in record && record.at[1]).toBeCloseTo(0.5, 9);
  });
});

describe('corners', () => {
  const id = byKind('fence');
  const fence = recordOf(demo, id);
  if (!('path' in fence)) throw new Error('the fence has no path');

  test('are pulled, stepped, put in and taken out', () => {
    const corner = handle(demo, [id], 'corner  1');
    const pulled = recordOf(corner.pull(demo, pull([3.21, 4.56], { free: true })), id);
    expect('path' in pulled && pulled.path[1]).toEqual([3.21, 4.56]);
    const stepped = recordOf(corner.step(demo, [1, 0]), id);
    expect('path' in stepped && stepped.path[1]?.[0]).toBeCloseTo((fence.path[1]?.[0] ?? 0) + 0.05, 9);
    const removed = corner.remove?.(demo);
    expect(removed && 'path' in recordOf(removed, id)).toBe(true);
    const fewer = removed ? recordOf(removed, id) : null;
    expect(fewer && 'path' in fewer && fewer.path.length).toBe(fence.path.length - 1);
    const insert = handles(demo, [id]).find(({ kind }) => kind === 'insert');
    const more = insert?.press ? recordOf(insert.press(demo), id) : null;
    expect(more && 'path' in more && more.path.length).toBe(fence.path.length + 1);
  });

  test('of the building are all that it has; what is locked has none', () => {
    const kinds = new Set(handles(demo, [byKind('parapet')]).map(({ kind }) => kind));
    expect(kinds).toEqual(new Set(['corner', 'insert']));
    const locked = lockItems(demo, { ids: [id], locked: true });
    expect(handles(locked, [id])).toEqual([]);
  });
});

test('an opening slides along its run and is as wide as its edge is pulled', () => {
  const id = byKind('fence');
  const open = addOpening(demo, {
    id,
    alongMetres: 1,
    widthMetres: 0.8,
    sillMetres: 0,
    heightMetres: 1,
  });
  const record = recordOf(open, id);
  const opening = 'openings' in record ? record.openings?.[0] : undefined;
  if (!opening) throw new Error('nothing was opened');
  const width = handle(open, [id], `width ${opening.id}`);
  const typed = width.typed?.(open, '1.1', 'm');
  if (!typed || typeof typed === 'string') throw new Error(`1.1 was not taken: ${typed}`);
  const wider = recordOf(typed, id);
  expect('openings' in wider && wider.openings?.[0]?.widthMetres).toBeCloseTo(1.1, 9);
  const slid = recordOf(handle(open, [id], `slide ${opening.id}`).step(open, [1, 0]), id);
  expect('openings' in slid && slid.openings?.[0]?.alongMetres).toBeCloseTo(opening.alongMetres + 0.05, 9);
  const closed = recordOf(width.remove?.(open) ?? open, id);
  expect(closed).not.toHaveProperty('openings');
});

test('a lamp is aimed where its aim is pulled, at the height that it had', () => {
  const id = byKind('head');
  const head = recordOf(demo, id);
  if (!('aim' in head)) throw new Error('the head has no aim');
  const aimed = recordOf(handle(demo, [id], 'aim').pull(demo, pull([1, 2], { free: true })), id);
  expect('aim' in aimed && aimed.aim).toEqual([1, head.aim[1], 2]);
  expect(handles(demo, [id]).some(({ key }) => key === 'turn')).toBe(false);
});

test('either end of a track changes its length, and its middle stays', () => {
  const id = byKind('track');
  const end = handle(demo, [id], 'length 1');
  const track = recordOf(demo, id);
  if (!('gaugeMetres' in track)) throw new Error('the track is gone');
  const middle: Spot = [track.at[0], track.at[2]];
  const twice: Spot = [2 * end.at[0] - middle[0], 2 * end.at[1] - middle[1]];
  const longer = recordOf(end.pull(demo, pull(twice, { free: true })), id);
  expect(numberOf(longer, 'lengthMetres')).toBeCloseTo(2 * track.lengthMetres, 6);
  expect('at' in longer && longer.at).toEqual(track.at);
});

test('the camera that is looked through is panned while nothing is chosen', () => {
  const setup = demo.setups[0];
  if (!setup) throw new Error('the demo has no setup');
  const pan = handle(demo, [], 'pan', setup.id);
  const panned = pan.step(demo, [2, 0]).setups[0];
  expect(panned?.move.keys[0]?.headingDegrees).toBeCloseTo((setup.move.keys[0]?.headingDegrees ?? 0) + 1, 9);
  expect(handles(demo, [byKind('tank')], setup.id).some(({ key }) => key === 'pan')).toBe(false);
});

test('every handle of every single thing keeps the plan sound, whatever is done with it', () => {
  let pulled = 0;
  for (const { id } of [...demo.pieces, ...demo.gear, ...demo.cast]) {
    for (const each of handles(demo, [id])) {
      pulled += 1;
      const plans = [
        each.pull(demo, pull([7.7, -3.3], { moved: [40, 60] })),
        each.step(demo, [1, 1]),
        each.press?.(demo),
        each.remove?.(demo),
      ];
      for (const plan of plans) expect(plan === undefined || isSound(plan), each.name).toBe(true);
    }
  }
  expect(pulled).toBeGreaterThan(100);
});
