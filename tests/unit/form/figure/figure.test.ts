import { describe, expect, test } from 'vitest';
import { figureParts } from '../../../../src/core/form/figure';
import type { PlacedPart } from '../../../../src/core/form/types';
import { isSound, openEdges, signedVolume } from '../solids';
import { acted, boxOf, cornersOf, EVERYONE, MAN, named, STANCES, WOMAN } from './people';

const partsIn = (who: typeof MAN, stance: (typeof STANCES)[number], headingDegrees = 0) => {
  const { plan, performer } = acted(who, [{ atSeconds: 0, stance, headingDegrees }]);
  return figureParts(performer, plan, 0);
};

test.each([MAN, WOMAN, { ...MAN, statureMetres: 1.2 }, { ...WOMAN, statureMetres: 2.01 }])(
  'a bare head stands exactly at the stature ($figure, $statureMetres m)',
  (who) => {
    for (const stance of ['stand', 'arms out', 'reach', 'holding'] as const) {
      const { low, high } = boxOf(partsIn(who, stance));
      expect(high[1], stance).toBeCloseTo(who.statureMetres, 3);
      expect(low[1], stance).toBeCloseTo(0, 3);
    }
  },
);

test('a cap adds a little to the stature, no more', () => {
  const { high } = boxOf(partsIn({ ...MAN, clothes: { ...MAN.clothes, head: 'cap' } }, 'stand'));
  expect(high[1]).toBeGreaterThan(MAN.statureMetres);
  expect(high[1]).toBeLessThan(MAN.statureMetres + 0.03);
});

describe.each(EVERYONE)('$figure $statureMetres m, $build, $clothes.upper, $clothes.head, $prop', (who) => {
  test.each(STANCES)('%s: closed solids that face outwards, nothing below the floor', (stance) => {
    const parts = partsIn(who, stance);
    for (const { name, shape } of parts) {
      expect(isSound(shape), name).toBe(true);
      expect(openEdges(shape), name).toEqual([]);
      expect(signedVolume(shape), name).toBeGreaterThan(0);
    }
    expect(boxOf(parts).low[1]).toBeGreaterThan(-0.005);
    expect(parts.reduce((sum, { shape }) => sum + shape.indices.length / 3, 0)).toBeLessThan(6000);
  });

  test.each(STANCES)('%s: no joint opens', (stance) => {
    const parts = partsIn(who, stance);
    const [arms, legs] = [named(parts, 'arms'), named(parts, 'legs')];
    const [hands, feet] = [named(parts, 'hands'), named(parts, 'feet')];
    // In the order of the bones: hips, then thigh and shin of the right and of the left; upper arm and forearm likewise.
    const joined: [PlacedPart, PlacedPart][] = [
      [arms[0], arms[1]],
      [arms[1], hands[0]],
      [arms[2], arms[3]],
      [arms[3], hands[1]],
      [legs[0], legs[1]],
      [legs[1], legs[2]],
      [legs[2], feet[0]],
      [legs[0], legs[3]],
      [legs[3], legs[4]],
      [legs[4], feet[1]],
    ];
    for (const [inner, outer] of joined) {
      // The outer bone's joint lies within the inner bone, and the other way round.
      const m = outer.worldFromPart ?? [];
      const joint = [m[3], m[7], m[11]];
      for (const box of [boxOf([inner]), boxOf([outer])]) {
        joint.forEach((value, axis) => {
          expect(value).toBeGreaterThan(box.low[axis] - 0.004);
          expect(value).toBeLessThan(box.high[axis] + 0.004);
        });
      }
    }
  });
});

test('stances differ in size as people do', () => {
  const box = (stance: (typeof STANCES)[number]) => boxOf(partsIn(MAN, stance));
  const stand = box('stand');
  expect(box('crouch').height).toBeLessThan(0.75 * stand.height);
  expect(box('sit').height).toBeLessThan(0.8 * stand.height);
  expect(box('walk').height).toBeGreaterThan(0.95 * stand.height);
  expect(box('walk').depth).toBeGreaterThan(1.8 * stand.depth);
  expect(box('arms out').width).toBeGreaterThan(2.5 * stand.width);
  expect(box('reach').depth).toBeGreaterThan(1.7 * stand.depth);
});

test('who sits has the seat under them at 0.45 m', () => {
  const seat = cornersOf(named(partsIn(MAN, 'sit'), 'legs')).filter(([x, , z]) => Math.hypot(x, z) < 0.12);
  expect(Math.min(...seat.map(([, y]) => y))).toBeCloseTo(0.45, 1);
});

test.each([0, 90, 180, 237])('the nose is ahead of the head at heading %d', (headingDegrees) => {
  const head = cornersOf(named(partsIn(MAN, 'stand', headingDegrees), 'head')).filter(([, y]) => y > 1.55);
  const turn = (headingDegrees * Math.PI) / 180;
  const ahead = head.map(([x, , z]) => x * Math.sin(turn) - z * Math.cos(turn));
  const aside = head.map(([x, , z]) => x * Math.cos(turn) + z * Math.sin(turn));
  const foremost = ahead.indexOf(Math.max(...ahead));
  expect(Math.max(...ahead)).toBeGreaterThan(-Math.min(...ahead) + 0.02);
  const middle = (Math.max(...aside) + Math.min(...aside)) / 2;
  expect(Math.abs(aside[foremost] - middle)).toBeLessThan(0.012);
});

test('a figure looks like one: left and right limbs, and the thing carried is in the hands', () => {
  const parts = partsIn({ ...MAN, prop: 'bird' }, 'holding');
  expect(named(parts, 'hands')).toHaveLength(2);
  expect(named(parts, 'feet')).toHaveLength(2);
  const bird = boxOf(named(parts, 'prop'));
  for (const hand of named(parts, 'hands')) {
    const box = boxOf([hand]);
    for (const axis of [0, 1, 2]) {
      expect(box.low[axis]).toBeLessThan(bird.high[axis]);
      expect(box.high[axis]).toBeGreaterThan(bird.low[axis]);
    }
  }
});

test('clothes give their colours', () => {
  const parts = partsIn({ ...MAN, clothes: { ...MAN.clothes, upper: 'coat' } }, 'stand');
  const colour = (name: string) => named(parts, name)[0].shape.colour;
  expect(colour('coat')).toBe(MAN.clothes.upperColour);
  expect(colour('legs')).toBe(MAN.clothes.lowerColour);
  expect(colour('hair')).toBe(MAN.clothes.headColour);
  expect(colour('hands')).toBe(MAN.clothes.skinColour);
});

describe('what is kept', () => {
  test('still, the very same parts come back; moving, the same shapes', () => {
    const { plan, performer } = acted(MAN, [
      { atSeconds: 0, holdSeconds: 2 },
      { atSeconds: 5, at: [3, 0] },
    ]);
    const still = figureParts(performer, plan, 0.5);
    expect(figureParts(performer, plan, 1.5)).toBe(still);
    const moving = figureParts(performer, plan, 3.5);
    expect(moving.map(({ shape }) => shape)).toEqual(still.map(({ shape }) => shape));
    moving.forEach(({ shape }, k) => {
      expect(shape).toBe(still[k].shape);
    });
    expect(moving[0].worldFromPart).not.toEqual(still[0].worldFromPart);
  });

  test('a moved mark keeps the shapes, another coat does not', () => {
    const before = partsIn(MAN, 'stand');
    const { plan, performer } = acted(MAN, [{ atSeconds: 0, at: [4, 4] }]);
    expect(figureParts(performer, plan, 0)[0].shape).toBe(before[0].shape);
    const dyed = partsIn({ ...MAN, clothes: { ...MAN.clothes, skinColour: '#5a3a2a' } }, 'stand');
    expect(dyed[0].shape).not.toBe(before[0].shape);
  });

  test('without marks there is nothing', () => {
    const { plan, performer } = acted(MAN, []);
    expect(figureParts(performer, plan, 0)).toEqual([]);
  });
});
