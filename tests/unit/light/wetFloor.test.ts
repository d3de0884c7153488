import { describe, expect, test } from 'vitest';
import { isRefused, type Refused } from '../../../src/core/light/advice';
import { aimForHighlight } from '../../../src/core/light/aimForHighlight';
import { streakOutlines } from '../../../src/core/light/streakOutline';
import { type Highlight, highlightsAt, highlightsOver } from '../../../src/core/light/wetFloor';
import { moveItem } from '../../../src/core/plan/edits/moveItem';
import { raiseItems } from '../../../src/core/plan/edits/raiseItems';
import type { Gear } from '../../../src/core/plan/schema/gear';
import type { Ground, Plan } from '../../../src/core/plan/schema/plan';
import { flagAt } from '../../plans/darkRoof';
import { keyedFace, keyOn } from '../../plans/keyedFace';

/** A camera 1.55 m up that looks along −z and 12° down, and Vera out of the way of what is on the middle line. */
function roof(gear: readonly Gear[], wetness: Ground['wetness'] = 'wet down'): Plan {
  const plan = keyedFace({
    gear,
    cameras: [{ id: 'wide', label: 'Wide', at: [0, 6], headingDegrees: 0, lens: 'wide' }],
  });
  const cast = plan.cast.map((each) => ({
    ...each,
    marks: each.marks.map((mark) => ({ ...mark, at: [-4, 0] as [number, number] })),
  }));
  const setups = plan.setups.map((setup) => ({
    ...setup,
    move: { ...setup.move, keys: setup.move.keys.map((key) => ({ ...key, tiltDegrees: -12 })) },
  }));
  return { ...plan, cast, setups, ground: { ...plan.ground, wetness } };
}
const backlight = keyOn('back', [0, -6], [0, 0], 0.5, 3.1);
const seenIn = (plan: Plan): readonly Highlight[] => highlightsAt(plan, plan.setups[0], 0);

function answer<Answer extends object>(found: Answer | Refused): Answer {
  if (isRefused(found)) throw new Error(found.refused);
  return found;
}

describe('a highlight', () => {
  const [highlight] = seenIn(roof(backlight));

  test('lies where a mirror has it: about a third of the way to a lamp twice as high as the lens', () => {
    expect(highlight.lampId).toBe('back');
    expect(highlight.at[0]).toBeCloseTo(0, 6);
    // 12 m off less the housing, lens at 1.55 m, lamp near 3.35 m: 6 − 11.8 · 1.55 ÷ 4.9.
    expect(highlight.at[2]).toBeGreaterThan(2);
    expect(highlight.at[2]).toBeLessThan(2.5);
    expect(highlight.frame[0]).toBeCloseTo(0.5, 6);
    expect(highlight.seen).toBeGreaterThan(0.3);
  });

  test('reaches from its middle towards the camera, down the frame', () => {
    expect(highlight.frameNear?.[1] ?? 0).toBeGreaterThan(highlight.frame[1]);
    expect(highlight.frameFar?.[1] ?? 1).toBeLessThan(highlight.frame[1]);
    expect(highlight.lengthMetres).toBeGreaterThan(3 * highlight.widthMetres);
  });

  test('is far stronger on a wet deck than on a dry one: common practice, no source', () => {
    const [dry] = seenIn(roof(backlight, 'dry'));
    const [damp] = seenIn(roof(backlight, 'damp'));
    expect(highlight.stops - dry.stops).toBeGreaterThan(3);
    expect(damp.stops).toBeGreaterThan(dry.stops);
    expect(highlight.stops).toBeGreaterThan(damp.stops);
    const [puddled] = seenIn(roof(backlight, 'puddled'));
    expect(puddled.brightest).toBeGreaterThan(highlight.brightest);
    expect(puddled.lengthMetres).toBeLessThan(highlight.lengthMetres / 2);
  });

  test('is outlined as long and as wide as it is told', () => {
    const plan = roof(backlight);
    const [{ at, outline }, ...others] = streakOutlines(plan, plan.setups[0], 0, highlight);
    expect(others).toEqual([]);
    expect(at).toEqual(highlight.at);
    const across = (axis: 0 | 2) =>
      Math.max(...outline.map((spot) => spot[axis])) - Math.min(...outline.map((spot) => spot[axis]));
    // Lamp and lens lie on the line x = 0.
    expect(across(2)).toBeCloseTo(highlight.lengthMetres, 6);
    expect(across(0)).toBeCloseTo(highlight.widthMetres, 6);
    expect(streakOutlines(plan, plan.setups[0], 0, { ...highlight, deckId: 'none' })).toEqual([]);
  });

  test('lies in the area that is wet, and only there', () => {
    const outline = (nearest: number, farthest: number): [number, number][] => [
      [-2, farthest],
      [2, farthest],
      [2, nearest],
      [-2, nearest],
    ];
    const wet = (area: [number, number][], wetness: Ground['wetness'] = 'wet down') => {
      const plan = roof(backlight, 'dry');
      return seenIn({ ...plan, ground: { ...plan.ground, areas: [{ id: 'a', wetness, outline: area }] } })[0];
    };
    const [dry] = seenIn(roof(backlight, 'dry'));
    // The mirror's place is between 2 and 2.5 m before the middle.
    const there = wet(outline(highlight.at[2] + 4, highlight.at[2] - 4));
    expect(there).toEqual(highlight);
    const beside = wet(outline(-3, -4));
    expect(beside.wetness).toBe('dry');
    expect(beside.stops).toBeCloseTo(dry.stops, 9);
    // Half of the streak: as long, on fewer places, and a little fainter where the brightest place is not wet.
    const half = wet(outline(highlight.at[2] + 9, highlight.at[2] + 0.2));
    expect(half.wetness).toBe('wet down');
    expect(half.lengthMetres).toBe(highlight.lengthMetres);
    expect(half.seen).toBeLessThan(highlight.seen);
    expect(half.stops).toBeGreaterThan(dry.stops);
    expect(wet(outline(5, -3), 'puddled').brightest).toBe(seenIn(roof(backlight, 'puddled'))[0].brightest);
  });

  test('of a lower lamp is mirrored by more of the water', () => {
    // 22.5° and 15.2° over the deck, by hand: incidences of 67.5° and 74.8°.
    const [low] = seenIn(roof(keyOn('a', [0, -6], [0, 3], 0.5, 1.4)));
    expect(highlight.incidenceDegrees).toBeCloseTo(67.5, 0);
    expect(low.incidenceDegrees).toBeCloseTo(74.8, 0);
    expect(highlight.reflectance).toBeCloseTo(0.11, 2);
    expect(low.reflectance).toBeCloseTo(0.21, 2);
  });

  test('is gone behind a flag, on the way down or on the way to the lens', () => {
    // At z = 4 the way from the floor to the lens is some 0.75 m up, at z = −3 that from the lamp some 2.2 m.
    for (const at of [[0, 0.75, 4] as const, [0, 2.2, -3] as const])
      expect(seenIn(roof([...backlight, flagAt('flag', at, [1.5, 1.4])]))).toEqual([]);
    expect(seenIn(roof([...backlight, flagAt('flag', [3, 2.2, -3], [1.5, 1.4])]))).toHaveLength(1);
  });

  test('is none of a lamp that is off, behind the camera, or below the deck', () => {
    expect(seenIn(roof(keyOn('a', [0, -6], [0, 0], 0)))).toEqual([]);
    expect(seenIn(roof(keyOn('a', [0, 7.5], [0, 7.9])))).toEqual([]);
  });
});

test('over a span each lamp is told once, with when it is there', () => {
  const plan = roof([...backlight, ...keyOn('weak', [2, -6], [0, 0], 0.001, 3)]);
  const found = highlightsOver(plan, plan.setups[0], -20);
  expect(found.map(({ lampId, count }) => [lampId, count])).toEqual([
    ['back', 1],
    ['weak', 1],
  ]);
  expect(found[0].spans).toHaveLength(1);
  const limit = (found[0].brightest.stops + found[1].brightest.stops) / 2;
  expect(highlightsOver(plan, plan.setups[0], limit).map(({ lampId }) => lampId)).toEqual(['back']);
});

describe('a highlight at somebody’s feet', () => {
  const plan = roof(backlight);
  const [setup] = plan.setups;

  test('asks for a place on the mirrored line, and lies there once the lamp is there', () => {
    const { stand, raise } = answer(aimForHighlight(plan, setup, 'back', [-1, 2.3], 0));
    for (const way of [stand, raise]) {
      const { move, raise: lift, lampAt } = answer(way);
      // The image of the lens lies 1.55 m under the deck: spot, lamp and image are in line.
      const rise = 1.55 / Math.hypot(-1, 2.3 - 6);
      const far = Math.hypot(lampAt[0] + 1, lampAt[2] - 2.3);
      expect(lampAt[1] / far).toBeCloseTo(rise, 2);
      const moved = raiseItems(moveItem(plan, move), lift);
      const [highlight] = highlightsAt(moved, setup, 0);
      expect(highlight.at[0]).toBeCloseTo(-1, 1);
      expect(highlight.at[2]).toBeCloseTo(2.3, 1);
    }
    expect(answer(stand).raise.byMetres).toBe(0);
    expect(answer(raise).movedMetres).toBeLessThan(answer(stand).movedMetres);
  });

  test('is refused where it cannot be', () => {
    const refusal = (found: object): string => (isRefused(found) ? found.refused : '');
    expect(refusal(aimForHighlight(plan, setup, 'back', [30, 0], 0))).toBe(
      'There is no deck at that spot to show a highlight.',
    );
    expect(refusal(aimForHighlight(plan, setup, 'back', [0, 7], 0))).toBe(
      'That spot is not in the frame of Wide.',
    );
    const { stand, raise } = answer(aimForHighlight(plan, setup, 'back', [0, -4], 0));
    expect(refusal(stand)).toBe('Head back would have to stand off the deck.');
    expect(refusal(raise)).toMatch(
      /^Head back would have to be 0\.\d\d\u00a0m high, which its stand does not reach\.$/,
    );
  });
});
