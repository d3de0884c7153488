import { expect, test } from 'vitest';
import { nightOf } from '../../../../../src/core/night/nightOf';
import type { NightPlan } from '../../../../../src/core/plan/schema/night';
import {
  hourMarks,
  type LineMark,
  lineScale,
  placedMarks,
  skyBands,
} from '../../../../../src/screens/sheet/night/order/nightLine';
import {
  askedWords,
  changeSentence,
  lineWords,
  orderLetters,
  shotWords,
  wrapAnswer,
} from '../../../../../src/screens/sheet/night/order/words';
import { EVEN_NIGHT, nightRoof } from '../../../../plans/nightRoof';

const NBSP = '\u00a0';
const LISBON = { latitudeDegrees: 38.72, longitudeDegrees: -9.14, date: '2026-11-27', northDegrees: 0 };
const roof = (more: NightPlan = {}, place: object = LISBON) => nightRoof({ ...EVEN_NIGHT, ...more }, place);

test('whether everyone wraps is one figure, with the question before it', () => {
  expect(wrapAnswer(nightOf(roof({ wrapBy: '22:00' })))).toEqual({
    question: 'Will we wrap by 22:00?',
    figure: `20${NBSP}min`,
    rest: 'to spare, at 21:40',
    isLate: false,
  });
  expect(wrapAnswer(nightOf(roof({ wrapBy: '20:30' })))).toMatchObject({
    figure: `1${NBSP}h 10${NBSP}min`,
    rest: 'too late, at 21:40',
    isLate: true,
  });
  expect(wrapAnswer(nightOf(roof({ wrapBy: '21:40' })))).toMatchObject({
    figure: '21:40',
    rest: 'to the minute',
    isLate: false,
  });
  expect(wrapAnswer(nightOf(roof()))).toMatchObject({ question: 'When will we wrap?', figure: '21:40' });
});

test('what changes between neighbours is told with its minutes and those of the move', () => {
  const night = nightOf(roof({ costs: { ...EVEN_NIGHT.costs, lens: 3 } }));
  expect(changeSentence(night, 0)).toBe('');
  const { changes } = night.schedule.setups[1];
  expect(changes?.list.some(({ kind }) => kind === 'lens')).toBe(true);
  expect(changeSentence(night, 1)).toMatch(new RegExp(`^8${NBSP}min to change: lens`));
});

test('the minutes of a sentence are those that the schedule takes', () => {
  const night = nightOf(
    roof({
      costs: { lens: 7, halfTurn: 40, wetDown: 15, tenMetres: 9 },
      setups: [{ setup: 'single', ground: 'wet' }],
    }),
  );
  const { job } = night.schedule.setups[1];
  const taken = night.schedule.stretches
    .filter((stretch) => stretch.job === job && (stretch.doing === 'change' || stretch.doing === 'wet down'))
    .reduce((sum, { from, until }) => sum + until - from, 0);
  expect(changeSentence(night, 1)).toMatch(new RegExp(`^${taken}${NBSP}min to change: .*wet-down\\.$`));
});

test('a setup says when it is shot, from when it is made and what is asked of it', () => {
  const plan = roof({ setups: [{ setup: 'single', when: 'after dark', ground: 'wet', until: '23:00' }] });
  const night = nightOf(plan);
  expect(shotWords(night, night.schedule.setups[1])).toBe('19:35 to 20:05');
  expect(askedWords(plan, night, night.schedule.setups[1])).toBe(
    'from 19:00, after dark, wet ground, by 23:00',
  );
  expect(orderLetters([0, 2, 1])).toBe('A, C, B');
});

test('all of the line is told in words', () => {
  const plan = roof({ meal: { afterHours: 1, minutes: 45 } });
  const words = lineWords(plan, nightOf(plan));
  expect(words).toMatch(/^Call 18:00; A, .*?, shot 18:30 to 19:00; B, /);
  expect(words).toContain('meal 19:00 to 19:45');
  expect(words).toContain('wrap 22:25');
  expect(words).toContain('nautical dusk 18:1');
});

test('the line takes in call, wrap and the time that is asked for', () => {
  const night = nightOf(roof({ wrapBy: '23:00' }));
  const scale = lineScale(night, 600);
  expect(scale.x(scale.from)).toBe(0);
  expect(scale.x(scale.until)).toBe(600);
  expect(scale.x(night.call)).toBeGreaterThan(0);
  expect(scale.until).toBeGreaterThan(23 * 60);
});

test('bands of the sky follow each other from light to dark and back', () => {
  const plan = roof();
  const night = nightOf(plan);
  const bands = skyBands(plan, night, 16 * 60, 32 * 60);
  expect(bands.map(({ level }) => level)).toEqual([0, 1, 2, 3, 4, 3, 2, 1, 0]);
  expect(bands[0].until).toBe(night.sky.sunset);
  expect(bands[4].from).toBe(night.sky.astronomicalDusk);
  expect(bands.every(({ from }, k) => k === 0 || from === bands[k - 1].until)).toBe(true);
});

test('where the sun does not set there is one band, and where it does not rise no sun', () => {
  const north = { ...LISBON, latitudeDegrees: 69.65, longitudeDegrees: 18.96 };
  const summer = roof({}, { ...north, date: '2026-06-21' });
  expect(skyBands(summer, nightOf(summer), 16 * 60, 32 * 60)).toEqual([{ level: 0, from: 960, until: 1920 }]);
  const winter = roof({}, { ...north, date: '2026-12-21' });
  expect(skyBands(winter, nightOf(winter), 16 * 60, 32 * 60).some(({ level }) => level === 0)).toBe(false);
});

test('lettering that has no room is left out, the first goes first, and nothing leaves the line', () => {
  const mark = (key: string, x: number, anchor: LineMark['anchor'] = 'middle'): LineMark => ({
    key,
    x,
    words: 'wrap 01:53',
    anchor,
  });
  const placed = placedMarks([mark('a', 100), mark('b', 120), mark('c', 300), mark('d', 60)], 310, 11);
  expect(placed.map(({ key }) => key)).toEqual(['a', 'c']);
  const [first] = placedMarks([mark('e', 0)], 310, 11);
  expect(first.x).toBeGreaterThan(20);
});

test('hours are lettered as far apart as they need', () => {
  const night = nightOf(roof({ wrapBy: '23:00' }));
  const words = (width: number): string[] =>
    hourMarks(night, lineScale(night, width), 44).map((mark) => mark.words);
  expect(words(600)).toEqual(['18:00', '19:00', '20:00', '21:00', '22:00', '23:00']);
  expect(words(160)).toEqual(['18:00', '20:00', '22:00']);
});
