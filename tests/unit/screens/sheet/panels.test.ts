import { expect, test } from 'vitest';
import { paletteEntryOf } from '../../../../src/core/kit/palette';
import { addMark, changeMark, removeMark } from '../../../../src/core/plan/edits/changeMark';
import { itemsOf } from '../../../../src/core/plan/items';
import { parsePlan } from '../../../../src/core/plan/parse';
import type { Opening, Piece } from '../../../../src/core/plan/schema/pieces';
import { EMPTY_STROKE, HAND } from '../../../../src/desk/tools/toolStore';
import { inLengths } from '../../../../src/screens/parts/faultSentence';
import { changedFields, draftOf, fieldsTyped } from '../../../../src/screens/sheet/drawing/draft';
import { reshaped } from '../../../../src/screens/sheet/fields/build';
import { commonOf, numberOf, sharedOf } from '../../../../src/screens/sheet/panels/common';
import { newOpening, openingRoom } from '../../../../src/screens/sheet/panels/openingRoom';
import { DEMO, readPlan } from '../../../plans/readPlan';

const plan = readPlan(DEMO);

type Run = Extract<Piece, { kind: 'wall' }>;
const WALL: Run = {
  kind: 'wall',
  id: 'wall',
  label: 'Wall',
  path: [
    [0, 0],
    [6, 0],
  ],
  closed: false,
  baseMetres: 0,
  heightMetres: 2.4,
  thicknessMetres: 0.2,
  material: 'brick',
};
const door = (alongMetres: number, widthMetres = 0.9): Opening => ({
  id: `at-${alongMetres}`,
  alongMetres,
  widthMetres,
  sillMetres: 0,
  heightMetres: 2.1,
});

test('a new opening is a door in the widest stretch that is left, no larger than the run', () => {
  expect(newOpening(WALL, 6)).toEqual({ alongMetres: 3, widthMetres: 0.9, sillMetres: 0, heightMetres: 2.1 });
  expect(newOpening({ ...WALL, openings: [door(1.5)] }, 6).alongMetres).toBeCloseTo((1.95 + 6) / 2);
  expect(newOpening({ ...WALL, openings: [door(3, 5)] }, 6).widthMetres).toBeCloseTo(0.5);
  expect(newOpening({ ...WALL, heightMetres: 1 }, 0.4)).toMatchObject({ widthMetres: 0.4, heightMetres: 1 });
});

test('an opening stays within its run by any of its lengths', () => {
  const opening = door(3);
  expect(openingRoom(WALL, opening, 'alongMetres')).toEqual([0.45, 5.55]);
  expect(openingRoom(WALL, opening, 'widthMetres')[1]).toBe(6);
  expect(openingRoom(WALL, { ...opening, sillMetres: 1 }, 'heightMetres')[1]).toBeCloseTo(1.4);
});

test('several things have in common what each of them has, and mixed where they differ', () => {
  const stands = itemsOf(plan).filter(({ record }) => 'kind' in record && record.kind === 'stand');
  const heading = commonOf(stands, (item) => numberOf(item, 'headingDegrees'));
  expect(heading).toBe('mixed');
  expect(sharedOf(heading)).toBeNull();
  expect(commonOf(stands, (item) => numberOf(item, 'dim'))).toBeNull();
  expect(sharedOf(commonOf(stands.slice(0, 1), (item) => numberOf(item, 'heightMetres')))).toBeGreaterThan(0);
  expect(commonOf([], () => 1)).toBeNull();
});

test('a mark is added at the beat after the last, changed and taken out, and the plan stays good', () => {
  const performer = plan.cast[0];
  if (!performer) throw new Error('the demo has no cast');
  const more = addMark(plan, { performerId: performer.id });
  const added = more.cast[0]?.marks.at(-1);
  expect(more.cast[0]?.marks.length).toBe(performer.marks.length + 1);
  expect(parsePlan(more).ok).toBe(true);
  if (!added) throw new Error('no mark was added');
  const of = { performerId: performer.id, markId: added.id };
  const changed = changeMark(more, { ...of, patch: { holdSeconds: 2.5 } });
  expect(changed.cast[0]?.marks.at(-1)?.holdSeconds).toBe(2.5);
  expect(changed.pieces, 'what has nothing to do with it stays the same').toBe(plan.pieces);
  expect(removeMark(changed, of).cast[0]?.marks).toEqual(performer.marks);
});

const FENCE = paletteEntryOf('fence');
const STATE = {
  tool: { type: 'draw', entryId: 'fence' },
  stroke: null,
  entry: null,
  refusal: null,
  asksDistance: null,
  fields: {},
} as const;

test('what is to be drawn shows its numbers before the first corner, and takes typed ones', () => {
  if (!FENCE) throw new Error('the palette has lost its fence');
  const draft = draftOf(plan, STATE, FENCE);
  if (!draft) throw new Error('there is no draft of a fence');
  const { id } = draft.item.record;
  const typed = fieldsTyped(draft, (before) => reshaped(before, id, { heightMetres: 2.2 }));
  expect(typed).toEqual({ fields: { heightMetres: 2.2 } });
  const refused = fieldsTyped(draft, (before) => reshaped(before, id, { heightMetres: -1 }));
  expect(refused).toEqual({ sentence: 'This takes 0.001 to 500 metres.' });
  const next = draftOf(plan, { ...STATE, fields: { heightMetres: 2.2 } }, FENCE);
  expect(next?.item.record).toMatchObject({ heightMetres: 2.2 });
});

test('a draft goes where the stroke goes, and a bare hand has none', () => {
  if (!FENCE) throw new Error('the palette has lost its fence');
  const stroke = {
    ...EMPTY_STROKE,
    corners: [[1, 2]] as [number, number][],
    next: [4, 2] as [number, number],
  };
  const draft = draftOf(plan, { ...STATE, stroke }, FENCE);
  expect(draft?.item.record).toMatchObject({
    path: [
      [1, 2],
      [4, 2],
    ],
  });
  expect(draftOf(plan, { ...STATE, tool: HAND }, FENCE)).toBeNull();
});

test('changed fields are those of other values, and those that went', () => {
  expect(changedFields({ a: 1, b: 2, c: 3 }, { a: 1, b: 5 })).toEqual({ b: 5, c: undefined });
});

test('metres of a sentence are said in feet where feet are typed', () => {
  expect(inLengths('This takes 0.3048 to 3.048 metres.', 'ft-in')).toBe(
    'This takes 1′\u00a00″ to 10′\u00a00″.',
  );
  expect(inLengths('This takes 0.001 to 500 metres.', 'm')).toBe('This takes 0.001 to 500 metres.');
  expect(inLengths('This takes brick or timber.', 'ft-in')).toBe('This takes brick or timber.');
});
