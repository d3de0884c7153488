import { expect, test } from 'vitest';
import { clippingOf, pasteClipping } from '../../../../src/core/plan/clipping';
import { duplicateItems } from '../../../../src/core/plan/edits/duplicateItems';
import { mirrorItems } from '../../../../src/core/plan/edits/mirrorItems';
import { moveItems } from '../../../../src/core/plan/edits/moveItems';
import { removeItems } from '../../../../src/core/plan/edits/removeItems';
import { removeSetup } from '../../../../src/core/plan/edits/removeSetup';
import { turnItems } from '../../../../src/core/plan/edits/turnItems';
import { startingFrom } from '../../../../src/core/plan/startingFrom';
import { markOf, sound, twoOnARoof } from './blockingPlan';
import { put } from './putting';

test('a move takes along the way and the cheats; what they face stays, like what a lamp is aimed at', () => {
  const after = sound(moveItems(twoOnARoof(), { ids: ['abel'], by: [10, 1] }));
  const mark = markOf(after, 'abel', 'm2');
  expect(mark.way?.through).toEqual([
    [11, 2],
    [13, 2],
  ]);
  expect(mark.faces).toEqual({ point: [4, 1, -5] });
  expect(mark.looks).toEqual({ turnDegrees: 30, tiltDegrees: -10 });
  expect(after.setups[0].cheats?.[1].at).toEqual([10, 1.4]);
  expect(after.setups[0].cheats?.[0], 'of another').toBe(after.setups[0].cheats?.[0]);
  expect(after.setups[0].cheats?.[0].at).toEqual([2.5, -1]);
});

test('a turn turns what they face and the way, a quarter clockwise about the middle of the roof', () => {
  // Clockwise as seen from above, (x, z) comes to (−z, x).
  const after = sound(turnItems(twoOnARoof(), { ids: ['abel', 'bea'], byDegrees: 90, about: [0, 0] }));
  const mark = markOf(after, 'abel', 'm2');
  expect(mark.way?.through).toEqual([
    [-1, 1],
    [-1, 3],
  ]);
  expect(mark.faces).toEqual({ point: [5, 1, 4] });
  expect(mark.facesOnTheWay).toEqual({ point: [-1, 1, 1] });
  expect(mark.looks).toEqual({ turnDegrees: 30, tiltDegrees: -10 });
  expect(after.setups[0].cheats?.[0]).toMatchObject({ at: [1, 2.5], headingDegrees: 190 });
});

test('a mirror turns heads the other way', () => {
  const axis = { at: [0, 0], bearingDegrees: 0 } as const;
  const { plan } = mirrorItems(twoOnARoof(), {
    ids: ['abel', 'bea'],
    axis: { ...axis, at: [0, 0] },
    copy: false,
  });
  const mark = markOf(sound(plan), 'abel', 'm2');
  expect(mark.looks).toEqual({ turnDegrees: -30, tiltDegrees: -10 });
  expect(mark.faces).toEqual({ point: [-4, 1, -5] });
  expect(mark.way?.through).toEqual([
    [-1, 1],
    [-3, 1],
  ]);
  expect(plan.setups[0].cheats?.[0]).toMatchObject({ at: [-2.5, -1], headingDegrees: 260 });
});

test('a riser takes along the cheat of the mark on it, and no way that comes from elsewhere', () => {
  const roof = put(put(twoOnARoof(), 'deck', [-20, -20], [20, -20], [20, 20], [-20, 20]), 'riser', [4, 0]);
  const riser = roof.pieces.find(({ kind }) => kind === 'riser');
  const top = riser?.kind === 'riser' ? riser.size[1] : 0;
  const [abel, bea] = roof.cast;
  const raised = { ...abel, marks: [abel.marks[0], { ...abel.marks[1], floorMetres: top }] };
  const [setup] = roof.setups;
  const plan = sound({
    ...roof,
    cast: [raised, bea],
    setups: [{ ...setup, cheats: [{ performer: 'abel', mark: 'm2', at: [4.1, 0] }] }],
  });
  const after = sound(moveItems(plan, { ids: [riser?.id ?? ''], by: [1, 0] }));
  expect(markOf(after, 'abel', 'm2').at).toEqual([5, 0]);
  expect(markOf(after, 'abel', 'm2').way).toEqual(markOf(plan, 'abel', 'm2').way);
  expect(markOf(after, 'abel', 'm1')).toBe(markOf(plan, 'abel', 'm1'));
  expect(after.setups[0].cheats?.[0].at).toEqual([5.1, 0]);
});

test('copies turn to each other, and a single copy to whom the first one turned to', () => {
  const both = duplicateItems(twoOnARoof(), { ids: ['abel', 'bea'], by: [0, 6] });
  const [abel, bea] = both.ids;
  sound(both.plan);
  expect(markOf(both.plan, abel, 'm1').looks).toEqual({ who: bea });
  expect(markOf(both.plan, bea, 'm1').faces).toEqual({ who: abel });
  expect(markOf(both.plan, abel, 'm2').way?.through[0]).toEqual([1, 7]);
  expect(both.plan.setups[0].cheats).toHaveLength(2);
  const one = duplicateItems(twoOnARoof(), { ids: ['bea'], by: [0, 6] });
  expect(markOf(sound(one.plan), one.ids[0], 'm1').faces).toEqual({ who: 'abel' });
});

test('a clipping is a plan of its own, whoever is in it', () => {
  const plan = twoOnARoof();
  const alone = clippingOf(plan, ['bea']);
  if (!alone) throw new Error('nothing was cut');
  expect(markOf(sound(alone), 'bea', 'm1').faces).toBeUndefined();
  const both = clippingOf(plan, ['abel', 'bea']);
  if (!both) throw new Error('nothing was cut');
  const pasted = pasteClipping(plan, sound(both), [1, 0]);
  const [abel, bea] = pasted.ids;
  expect(markOf(sound(pasted.plan), abel, 'm1').looks).toEqual({ who: bea });
  expect(markOf(pasted.plan, abel, 'm2').way?.through[1]).toEqual([4, 1]);
});

test('who is taken out is turned to, passed to and kept in line with no more', () => {
  const after = sound(removeItems(twoOnARoof(), { ids: ['bea'] }));
  expect(after).not.toHaveProperty('passes');
  expect(after).not.toHaveProperty('lines');
  expect(markOf(after, 'abel', 'm1').looks).toBeUndefined();
  expect(after.setups[0].cheats?.map(({ performer }) => performer)).toEqual(['abel']);
  const nobody = sound(removeItems(after, { ids: ['abel'] }));
  expect(nobody.setups[0]).not.toHaveProperty('cheats');
});

test('a line lives without the setup that established it', () => {
  expect(sound(removeSetup(twoOnARoof(), { setupId: 'a' })).lines).toEqual([
    { id: 'l', pair: ['abel', 'bea'] },
  ]);
});

test.each([
  [{ gear: false, cast: false, setups: false }],
  [{ gear: true, cast: true, setups: false }],
  [{ gear: false, cast: false, setups: true }],
  [{ gear: true, cast: true, setups: true }],
])('a plan that starts from another is sound with %o', (keeping) => {
  const started = sound(startingFrom(twoOnARoof(), 'Another', keeping));
  expect(started.passes !== undefined).toBe(keeping.cast);
  expect(started.lines?.[0].establishedBy).toBe(keeping.cast && keeping.setups ? 'a' : undefined);
});
