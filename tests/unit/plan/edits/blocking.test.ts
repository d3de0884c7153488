import { describe, expect, test } from 'vitest';
import { addLine } from '../../../../src/core/plan/edits/addLine';
import { addMarkAt } from '../../../../src/core/plan/edits/addMarkAt';
import { addPass } from '../../../../src/core/plan/edits/addPass';
import { addWayPoint } from '../../../../src/core/plan/edits/addWayPoint';
import { changeLine } from '../../../../src/core/plan/edits/changeLine';
import { changeMark, removeMark } from '../../../../src/core/plan/edits/changeMark';
import { changePass } from '../../../../src/core/plan/edits/changePass';
import { moveWayPoint } from '../../../../src/core/plan/edits/moveWayPoint';
import { removeCheat } from '../../../../src/core/plan/edits/removeCheat';
import { removeLine } from '../../../../src/core/plan/edits/removeLine';
import { removePass } from '../../../../src/core/plan/edits/removePass';
import { removeWayPoint } from '../../../../src/core/plan/edits/removeWayPoint';
import { setCheat } from '../../../../src/core/plan/edits/setCheat';
import { setWay } from '../../../../src/core/plan/edits/setWay';
import { setWayLine } from '../../../../src/core/plan/edits/setWayLine';
import { markOf, sound, twoOnARoof } from './blockingPlan';

const ABEL = { performerId: 'abel', markId: 'm2' } as const;
const BEA = { performerId: 'bea', markId: 'm2' } as const;

describe('marks', () => {
  test('one at a beat comes among the others in the order of time', () => {
    const plan = twoOnARoof();
    const after = sound(
      addMarkAt(plan, { performerId: 'abel', beatId: 'middle', at: [1, 5], stance: 'sit' }),
    );
    expect(after.cast[0].marks.map(({ beat }) => beat)).toEqual(['begin', 'middle', 'end']);
    expect(after.cast[0].marks[1]).toEqual({
      id: 'mark-1',
      beat: 'middle',
      at: [1, 5],
      headingDegrees: 90,
      stance: 'sit',
      holdSeconds: 0,
    });
    expect(addMarkAt(plan, { performerId: 'abel', beatId: 'never', at: [1, 5] })).toBe(plan);
    expect(
      addMarkAt(plan, { performerId: 'abel', beatId: 'end', at: [0, 0], faces: { who: 'nobody' } }),
    ).toBe(plan);
  });

  test('fields come and go, and nobody is turned to who is not there', () => {
    const plan = twoOnARoof();
    const after = sound(changeMark(plan, { ...ABEL, patch: { faces: undefined, looks: { who: 'bea' } } }));
    expect(markOf(after, 'abel', 'm2')).not.toHaveProperty('faces');
    expect(markOf(after, 'abel', 'm2').looks).toEqual({ who: 'bea' });
    expect(changeMark(plan, { ...ABEL, patch: { looks: { who: 'nobody' } } })).toBe(plan);
    expect(changeMark(plan, { ...ABEL, patch: { holdSeconds: undefined } })).toBe(plan);
  });

  test('one that goes takes what setups cheat of it', () => {
    expect(sound(removeMark(twoOnARoof(), BEA)).setups[0].cheats).toHaveLength(1);
  });
});

describe('ways', () => {
  const throughOf = (plan: ReturnType<typeof twoOnARoof>) => markOf(sound(plan), 'abel', 'm2').way?.through;

  test('a place comes where it makes the way least longer, or where it is told to', () => {
    const plan = twoOnARoof();
    expect(throughOf(addWayPoint(plan, { ...ABEL, at: [2, 1.5] }))).toEqual([
      [1, 1],
      [2, 1.5],
      [3, 1],
    ]);
    expect(throughOf(addWayPoint(plan, { ...ABEL, at: [2, 1.5], index: 9 }))?.[2]).toEqual([2, 1.5]);
  });

  test('places move and go, and the last takes the way along', () => {
    const plan = twoOnARoof();
    expect(throughOf(moveWayPoint(plan, { ...ABEL, index: 1, to: [3, 2] }))?.[1]).toEqual([3, 2]);
    expect(moveWayPoint(plan, { ...ABEL, index: 5, to: [3, 2] })).toBe(plan);
    const one = removeWayPoint(plan, { ...ABEL, index: 0 });
    expect(throughOf(one)).toEqual([[3, 1]]);
    expect(markOf(sound(removeWayPoint(one, { ...ABEL, index: 0 })), 'abel', 'm2')).not.toHaveProperty('way');
  });

  test('a line is of a way, and nobody walks to a first mark', () => {
    const plan = twoOnARoof();
    expect(markOf(setWayLine(plan, { ...ABEL, line: 'straight' }), 'abel', 'm2').way?.line).toBe('straight');
    expect(setWayLine(plan, { ...ABEL, line: 'curved' })).toBe(plan);
    expect(setWayLine(plan, { ...BEA, line: 'curved' }), 'a straight walk').toBe(plan);
    expect(addWayPoint(plan, { performerId: 'abel', markId: 'm1', at: [1, 1] })).toBe(plan);
    expect(throughOf(setWay(plan, { ...ABEL, through: [[9, 9]], line: 'straight' }))).toEqual([[9, 9]]);
  });
});

describe('passes', () => {
  test('come, change and go', () => {
    const plan = twoOnARoof();
    const two = sound(addPass(plan, { beatId: 'end', from: 'bea', to: 'abel' }));
    expect(two.passes?.[1]).toEqual({ id: 'pass-1', beat: 'end', from: 'bea', to: 'abel' });
    expect(changePass(two, { passId: 'p', patch: { beat: 'begin' } }).passes?.[0].beat).toBe('begin');
    expect(removePass(plan, { passId: 'p' })).not.toHaveProperty('passes');
    expect(addPass(plan, { beatId: 'end', from: 'bea', to: 'bea' })).toBe(plan);
    expect(changePass(plan, { passId: 'p', patch: { to: 'nobody' } })).toBe(plan);
    expect(removePass(plan, { passId: 'none' })).toBe(plan);
  });
});

describe('lines', () => {
  test('come, change and go; a pair has one', () => {
    const plan = twoOnARoof();
    expect(addLine(plan, { pair: ['bea', 'abel'] })).toBe(plan);
    expect(addLine(plan, { pair: ['bea', 'bea'] })).toBe(plan);
    const none = removeLine(plan, { lineId: 'l' });
    expect(none).not.toHaveProperty('lines');
    expect(sound(addLine(none, { pair: ['bea', 'abel'] })).lines).toEqual([
      { id: 'line-1', pair: ['bea', 'abel'] },
    ]);
    expect(changeLine(plan, { lineId: 'l', patch: { establishedBy: undefined } }).lines).toEqual([
      { id: 'l', pair: ['abel', 'bea'] },
    ]);
    expect(changeLine(plan, { lineId: 'l', patch: { establishedBy: 'nobody' } })).toBe(plan);
  });
});

describe('cheats', () => {
  const AT = { setupId: 'a', ...BEA } as const;

  test('a heading stays as it was cheated until it is taken back', () => {
    const plan = twoOnARoof();
    const moved = sound(setCheat(plan, { ...AT, at: [3, -1] }));
    expect(moved.setups[0].cheats?.[0]).toEqual({
      performer: 'bea',
      mark: 'm2',
      at: [3, -1],
      headingDegrees: 100,
    });
    const back = sound(setCheat(moved, { ...AT, at: [3, -1], headingDegrees: null }));
    expect(back.setups[0].cheats?.[0]).not.toHaveProperty('headingDegrees');
  });

  test('one that comes back to the mark is none', () => {
    const plan = twoOnARoof();
    const cheats = sound(setCheat(plan, { ...AT, at: [2, -1], headingDegrees: null })).setups[0].cheats;
    expect(cheats?.map(({ performer }) => performer)).toEqual(['abel']);
    expect(setCheat(plan, { ...AT, markId: 'none', at: [2, -1] })).toBe(plan);
  });

  test('they go one by one, by performer, or all', () => {
    const plan = twoOnARoof();
    expect(removeCheat(plan, AT).setups[0].cheats).toHaveLength(1);
    expect(removeCheat(plan, { setupId: 'a', performerId: 'abel' }).setups[0].cheats).toHaveLength(1);
    expect(removeCheat(plan, { setupId: 'a' }).setups[0]).not.toHaveProperty('cheats');
    expect(removeCheat(plan, { setupId: 'a', performerId: 'nobody' })).toBe(plan);
  });
});
