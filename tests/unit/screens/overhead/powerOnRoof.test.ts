import { expect, test } from 'vitest';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { powerAnswer } from '../../../../src/desk/power/answers';
import { powerOnRoof } from '../../../../src/screens/overhead/power/powerOnRoof';
import { powerLines, powerWishes } from '../../../../src/screens/overhead/power/powerWishes';
import { cable, drawing, generator, lamp, wired } from '../../../plans/wired';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const onRoof = (plan: Plan, stopId: string | null = null) => powerOnRoof(plan, powerAnswer(plan), stopId);

const PLAN = wired([
  generator('one', {}, [0, 0, 0]),
  generator('other', {}, [0, 0, 6]),
  drawing('kettle', 1200, 1, {}, [9, 0, 0]),
  lamp('bare', { place: { at: [4, 0, 4] } }),
  cable('c', 'one', 'kettle', 11, {
    path: [
      [0, 0],
      [1, 0],
      [9, 0],
    ],
  }),
]);

test('a cable says its amps at the middle of its longest piece, a supply what it gives, and what has no power that', () => {
  const { cords, amps, sources, dark, moves } = onRoof(PLAN);
  expect(cords.map(({ id, stops }) => [id, stops])).toEqual([['c', false]]);
  // 1200 W at 120 V, a little more for what is lost: of the 25 A of 12 AWG.
  expect(cords[0].share).toBeGreaterThan(10 / 25);
  expect(cords[0].share).toBeLessThan(10.5 / 25);
  expect(amps.map(({ at, text }) => [at, plain(text)])).toEqual([
    [[5, 0], expect.stringMatching(/^10\.\d A$/)],
  ]);
  expect(sources.map(({ text }) => plain(text))).toEqual([
    expect.stringMatching(/^12\d\d VA, 22 %$/),
    'gives nothing',
  ]);
  expect(dark).toEqual([{ id: 'bare', at: [4, 4], text: 'no power' }]);
  expect(moves).toEqual([]);
});

test('when a supply stops its cables and loads show it, and where they would find room', () => {
  const { cords, sources, dark, moves } = onRoof(PLAN, 'one');
  expect(cords[0].stops).toBe(true);
  expect(sources[0].text).toBe('stops');
  expect(dark.map(({ id, text }) => [id, text])).toEqual([
    ['kettle', 'goes dark'],
    ['bare', 'no power'],
  ]);
  expect(moves).toEqual([{ id: 'kettle', from: [0, 6], to: [9, 0] }]);
});

test('what is hidden is not drawn, and a cable that carries nothing stays as it is', () => {
  const hidden = {
    ...PLAN,
    gear: PLAN.gear.map((gear) =>
      gear.id === 'c' || gear.id === 'bare' ? { ...gear, hidden: true as const } : gear,
    ),
  };
  const { cords, dark } = onRoof(hidden);
  expect([cords, dark]).toEqual([[], []]);
  expect(onRoof(wired([generator('one'), cable('c', 'one', null)])).cords).toEqual([]);
});

test('each word has a place of its own to be set beside, and each line of the drawing is told', () => {
  const power = onRoof(PLAN, 'one');
  const input = {
    plan: PLAN,
    seconds: 0,
    setupId: null,
    chosenIds: [],
    lengths: 'm',
    touch: false,
    at: ([x, z]: readonly [number, number]): [number, number] => [x * 30, z * 30],
    perMetre: 30,
    blocking: null,
    power,
  } as const;
  const wishes = powerWishes(input);
  expect(new Set(wishes.map(({ id }) => id)).size).toBe(wishes.length);
  expect(wishes.filter(({ fault }) => fault).map(({ text }) => text)).toEqual([
    'goes dark',
    'no power',
    'stops',
  ]);
  expect(powerLines(power, input.at)).toEqual([
    [
      [0, 0],
      [30, 0],
    ],
    [
      [30, 0],
      [270, 0],
    ],
    [
      [0, 180],
      [270, 0],
    ],
  ]);
  expect(powerWishes({ ...input, power: null })).toEqual([]);
});
