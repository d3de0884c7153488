import { describe, expect, test } from 'vitest';
import { nightOf } from '../../../../src/core/night/nightOf';
import type { PackingLine } from '../../../../src/core/night/packing/types';
import { groupsFor, type isFor, tickedLines } from '../../../../src/screens/crew/lists/packing';
import { toldNeeds } from '../../../../src/screens/crew/lists/setupNeeds';
import { isInNight, minuteAt, setupAt } from '../../../../src/screens/crew/parts/now/nightMinutes';
import { begunBy, timelineOf } from '../../../../src/screens/crew/times/timeline';
import { neededCast, nowWords } from '../../../../src/screens/crew/times/words';
import { EVEN_NIGHT, nightRoof } from '../../../plans/nightRoof';

const line = (department: PackingLine['department'], label: string, detail = ''): PackingLine => ({
  department,
  label,
  count: 1,
  unit: 'pieces',
  spared: null,
  spare: 0,
  detail,
  itemIds: [],
});

describe('packing', () => {
  const lines = tickedLines([
    line('camera', 'Lens'),
    line('grip', 'Stand'),
    line('floor', 'Water'),
    line('safety', 'Lamp', 'one'),
    line('safety', 'Lamp', 'two'),
  ]);

  test('lines of one name have ids of their own', () => {
    expect(new Set(lines.map(({ id }) => id)).size).toBe(lines.length);
  });

  test('safety is for everybody, the floor for the grips', () => {
    const of = (asked: Parameters<typeof isFor>[0]) =>
      groupsFor(asked, lines).map(({ department }) => department);
    expect(of('all')).toEqual(['camera', 'grip', 'floor', 'safety']);
    expect(of('grip')).toEqual(['grip', 'floor', 'safety']);
    expect(of('cast')).toEqual(['safety']);
  });
});

test('what stays as it was names the setup that has it written out', () => {
  const light = (...words: string[]) => [{ department: 'light', words } as const];
  const told = toldNeeds(
    [light('Head 1', 'Head 2, low'), light('Head 1', 'Head 2, low'), light('Head 1'), light('Head 1')],
    ['A', 'C', 'B', 'D'],
  );
  expect(told.map(([need]) => need.words)).toEqual(['Head 1; Head 2, low', 'as for A', 'Head 1', 'as for B']);
});

describe('the night by the clock', () => {
  const plan = nightRoof({ ...EVEN_NIGHT, cast: [{ performer: 'ana', until: '22:00' }] });
  const night = nightOf(plan);
  const rows = timelineOf(night);

  test('lines are in the order of the clock, from the call to the wrap, a setup before its work', () => {
    expect(rows.map(({ from }) => from)).toEqual(rows.map(({ from }) => from).toSorted((a, b) => a - b));
    expect(rows.filter(({ kind }) => kind === 'setup')).toHaveLength(plan.setups.length);
    const setup = rows.findIndex(({ kind }) => kind === 'setup');
    expect(rows[setup + 1]).toMatchObject({ kind: 'doing', doing: 'rig' });
    expect(rows.filter(({ kind }) => kind === 'mark').map((row) => 'word' in row && row.word)).toEqual([
      'Call',
      'Wrap',
    ]);
  });

  test('a device’s clock is a minute of the night, ahead of universal time as the plan is', () => {
    const at = Date.UTC(2026, 10, 20, 17, 30);
    expect(minuteAt({ ...night.clock, utcOffsetHours: 1 }, at)).toBe(18 * 60 + 30);
    expect(minuteAt({ ...night.clock, utcOffsetHours: 0 }, Date.UTC(2026, 10, 21, 1))).toBe(25 * 60);
    expect(isInNight(night, 18 * 60)).toBe(true);
    expect(isInNight(night, 18 * 60 + 1440)).toBe(false);
  });

  test('a setup is on while it is worked on, and none while everybody eats or before the call', () => {
    const { setups, stretches, meal } = night.schedule;
    for (const { from, until, job } of stretches.filter((each) => each.job !== null))
      for (const minutes of [from, until - 0.5])
        expect(setupAt(night, minutes)).toBe(setups.find((each) => each.job === job)?.setupId);
    for (const minutes of [night.call - 1, night.schedule.wrap, ...(meal ? [meal.from] : [])])
      expect(setupAt(night, minutes)).toBeNull();
  });

  test('now stands after what has begun, and is told in words', () => {
    const now = 18 * 60 + 5;
    expect(rows.slice(0, begunBy(rows, now)).every(({ from }) => from <= now)).toBe(true);
    expect(rows[begunBy(rows, now)].from).toBeGreaterThan(now);
    expect(nowWords(night, now)).toBe('rig, A, until 18:10');
    expect(nowWords(night, 17 * 60 + 30)).toBe('call at 18:00');
    expect(nowWords(night, night.schedule.wrap + 5)).toBe('everyone is off');
  });

  test('who is in no frame is told so, with what the plan says of their times', () => {
    expect(neededCast(plan, night, new Map())).toEqual(
      plan.cast.map(({ id, label }) => ({
        performerId: id,
        label,
        words: id === 'ana' ? 'in no frame, out by 22:00' : 'in no frame',
      })),
    );
  });
});
