import { describe, expect, test } from 'vitest';
import { cautionsOf } from '../../../src/core/cautions/cautions';
import { addWayOut } from '../../../src/core/plan/edits/addWayOut';
import { noteCaution } from '../../../src/core/plan/edits/noteCaution';
import { removeItems } from '../../../src/core/plan/edits/removeItems';
import { setRoofLoad } from '../../../src/core/plan/edits/setRoofLoad';
import { takeBackCautionNote } from '../../../src/core/plan/edits/takeBackCautionNote';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { startingFrom } from '../../../src/core/plan/startingFrom';
import { DEMO, readPlan } from '../../plans/readPlan';
import { about, DECK, figureOf, HOUSE, parapet, performerAt, roof, standAt } from './roof';

/** A wall across the roof at x = 2 with a gap in the middle, so wide. */
const wallWithGap = (metres: number) =>
  [-1, 1].map((side) => ({
    id: `wall${side}`,
    label: 'Wall',
    kind: 'wall',
    path: [
      [2, (side * metres) / 2],
      [2, side * 5.9],
    ],
    closed: false,
    baseMetres: 0,
    heightMetres: 2,
    thicknessMetres: 0.1,
    material: 'brick',
  }));

const WIDTH = 'width of the way out';
const pieces = (gap: number) => [DECK, parapet(1.2), HOUSE, ...wallWithGap(gap)];
const behind = (gap: number, more: object = {}) =>
  roof({ pieces: pieces(gap), cast: [performerAt('Ann', [6, 3])], more });

describe('ways out', () => {
  test('28 inches are wide enough, less is told with its width and place', () => {
    expect(about(behind(0.9), 'way-out-narrow')).toEqual([]);
    expect(about(behind(0.9), 'way-out-clear')[0]?.standing).toBe('holds');
    const [found] = about(behind(0.5), 'way-out-narrow');
    expect(found).toMatchObject({ standing: 'breaks', itemIds: ['Ann'] });
    expect(Math.abs(figureOf(found, WIDTH) - 0.5)).toBeLessThan(0.1);
    expect(Math.hypot((found?.place?.[0] ?? 9) - 2, found?.place?.[2] ?? 9)).toBeLessThan(0.6);
    expect(28 * 0.0254).toBeCloseTo(0.71, 2);
  });

  test.each([0.4, 0.6, 0.75, 1, 1.25])('a gap of %d m is told within a tenth', (gap) => {
    const [found] = about(behind(gap, { cautions: { wayOutMetres: 1.5 } }), 'way-out-narrow');
    expect(Math.abs(figureOf(found, WIDTH) - gap)).toBeLessThan(0.1);
  });

  test('where nobody gets through there is no way, unless one is named', () => {
    const shut = behind(0.1);
    expect(about(shut, 'way-out-blocked')[0]?.sentence).toContain('There is no way out from where Ann is');
    const named = addWayOut(shut, { at: [8, 0, 0] });
    expect(about(named, 'way-out-blocked')).toEqual([]);
    expect(about(roof({ cast: [performerAt('Ann', [0, 0])] }), 'way-out-none')).toHaveLength(1);
    expect(about(roof({}), 'way-out-none')).toEqual([]);
  });

  test('gear in the way narrows it', () => {
    const cart = {
      id: 'cart',
      label: 'Cart',
      kind: 'cart',
      at: [2.5, 0, 0],
      headingDegrees: 90,
      size: [1.4, 1, 0.5],
      monitors: 0,
    };
    const plan = roof({ pieces: pieces(1.2), cast: [performerAt('Ann', [6, 3])], gear: [cart] });
    expect(about(plan, 'way-out-narrow')).toHaveLength(1);
  });

  test('a cable through the gap lies across it, one along the wall does not', () => {
    const cable = (id: string, path: number[][]) => ({
      id,
      label: id,
      kind: 'cable',
      path,
      baseMetres: 0,
      diameterMetres: 0.014,
    });
    const gear = [
      cable('across', [
        [2, -1],
        [2, 1],
      ]),
      cable('along', [
        [2.3, 1],
        [2.3, 5],
      ]),
    ];
    const [found] = about(
      roof({ pieces: pieces(1.2), cast: [performerAt('Ann', [6, -3])], gear }),
      'way-out-across',
    );
    expect(found?.itemIds).toEqual(['across']);
  });

  test('a door that is too narrow, and somebody on another level', () => {
    const narrow = { ...HOUSE, door: { ...HOUSE.door, widthMetres: 0.6 } };
    const marks = [{ ...performerAt('Ann', [-8, 0]).marks[0], floorMetres: 2.72 }];
    const plan = roof({ pieces: [DECK, parapet(1.2), narrow], cast: [{ ...performerAt('Ann'), marks }] });
    expect(figureOf(about(plan, 'way-out-door')[0], 'width of the door')).toBe(0.6);
    expect(about(plan, 'way-out-level')[0]?.itemIds).toEqual(['Ann']);
  });
});

describe('loads', () => {
  const generator = {
    id: 'engine',
    label: 'Engine',
    kind: 'generator',
    at: [0, 0, 0],
    headingDegrees: 0,
    size: [1, 0.8, 0.7],
  };

  test('the heaviest is told with what ordinary roofs are reckoned for, and who has to say', () => {
    const [found] = about(roof({ gear: [generator] }), 'load-most');
    expect(found?.standing).toBe('said');
    // 196 kg on a square metre, a quarter of it under each foot.
    expect(figureOf(found, 'spread over its feet, a square metre at least')).toBeCloseTo(1.92, 2);
    expect(figureOf(found, 'under one foot or wheel, standing still')).toBeCloseTo(0.48, 2);
    // 20 lbf/ft².
    expect(found?.figures[1].expected).toBeCloseTo((20 * 4.4482216) / 0.3048 ** 2 / 1000, 2);
  });

  test('what the roof is said to carry decides, over the deck and under a foot', () => {
    const plan = roof({ gear: [generator] });
    const carrying = (roofLoad: object) => setRoofLoad(plan, { roofLoad });
    expect(about(carrying({ kilonewtonsPerSquareMetre: 1.5 }), 'load-over')).toHaveLength(1);
    const [underFoot] = about(carrying({ kilonewtons: 0.4 }), 'load-over');
    // Nothing is said of what it carries spread out, so that is held against nothing.
    expect(underFoot?.figures.map(({ expected }) => expected)).toEqual([undefined, undefined, 0.4]);
    const strong = carrying({ kilonewtonsPerSquareMetre: 4, kilonewtons: 1 });
    expect(about(strong, 'load-over')).toEqual([]);
    expect(about(strong, 'load-most')[0]?.standing).toBe('holds');
  });

  test('people who stand close are one load', () => {
    const cast = ['Ann', 'Bea', 'Cid', 'Dot'].map((name, k) => performerAt(name, [0.4 * k, 0]));
    const [found] = about(roof({ cast }), 'load-most');
    expect(found?.itemIds).toHaveLength(4);
    expect(figureOf(found, 'weighs')).toBe(360);
  });
});

describe('notes', () => {
  const plan = roof({
    gear: [{ id: 'd', label: 'D', kind: 'distro', at: [0, 0, 0], headingDegrees: 0, size: [1, 1, 1] }],
  });
  const [first] = cautionsOf(plan);

  test('a caution with a note stays, with its note, until that is taken back', () => {
    const noted = noteCaution(plan, { key: first.id, note: '  Tested at six. ' });
    expect(cautionsOf(noted)).toHaveLength(cautionsOf(plan).length);
    expect(cautionsOf(noted).find(({ id }) => id === first.id)?.note).toBe('Tested at six.');
    expect(takeBackCautionNote(noted, { key: first.id })).toEqual(plan);
  });

  test('without a note nothing is noted', () => {
    expect(noteCaution(plan, { key: first.id, note: '  ' })).toBe(plan);
    expect(noteCaution(plan, { key: 'no key', note: 'Well' })).toBe(plan);
  });
});

describe('notes and what is gone', () => {
  const plan = noteCaution(
    noteCaution(
      roof({
        pieces: [DECK],
        gear: [standAt('stand', [9, 0, 0])],
        cast: [performerAt('Ann', [0, 5])],
        more: { cautions: { wind: { metresPerSecond: 4 }, wayOutMetres: 1 } },
      }),
      { key: 'wind/stand', note: 'Struck at nine' },
    ),
    { key: 'edge-people/Ann', note: 'On a line' },
  );
  const keys = (changed: Plan) => (changed.cautions?.notes ?? []).map(({ key }) => key);

  test('a note goes with its item', () => {
    expect(keys(plan)).toEqual(['wind/stand', 'edge-people/Ann']);
    expect(keys(removeItems(plan, { ids: ['stand'] }))).toEqual(['edge-people/Ann']);
    expect(keys(removeItems(plan, { ids: ['Ann', 'stand'] }))).toEqual([]);
  });

  test('another night on the same roof has its ways out, not the forecast nor the notes', () => {
    const again = startingFrom(plan, 'Again', { gear: true, cast: true, setups: true });
    expect(again.cautions).toEqual({ wayOutMetres: 1 });
  });
});

describe('the demo', () => {
  const cautions = cautionsOf(readPlan(DEMO));

  test('each caution has its own key, says it in two sentences at most, and who decides', () => {
    expect(new Set(cautions.map(({ id }) => id)).size).toBe(cautions.length);
    for (const { sentence, decides, id } of cautions) {
      expect(sentence.match(/\. [A-Z]/g)?.length ?? 0, sentence).toBeLessThanOrEqual(1);
      expect(sentence, id).toMatch(/^[A-Z0-9].*\.$/);
      expect(sentence, id).not.toMatch(/NaN|undefined|Infinity|!|please/);
      expect(decides).toMatch(/local code and a licensed or competent person/);
    }
  });

  test('its low parapet, its step ladder and its loft beside a generator are told first', () => {
    const broken = cautions.filter(({ standing }) => standing === 'breaks').map(({ id }) => id);
    for (const id of [
      'edge-open/deck',
      'edge-people/rui',
      'ladder-edge/ladder',
      'exhaust-openings/generator-2',
    ])
      expect(broken).toContain(id);
    expect(cautions.map(({ standing }) => standing)).toEqual(
      cautions.map(({ standing }) => standing).toSorted((a, b) => order(a) - order(b)),
    );
  });
});

const order = (standing: string): number => ['breaks', 'said', 'holds'].indexOf(standing);
