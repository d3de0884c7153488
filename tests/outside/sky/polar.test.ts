import { describe, expect, test } from 'vitest';
import { nightOf } from '../../../src/core/night/nightOf';
import { sunFrom } from '../../../src/core/sky/horizon';
import { instantAt } from '../../../src/core/sky/instant';
import { nightTimes } from '../../../src/core/sky/night';
import { firstTimes } from '../../../src/screens/crew/parts/nightWords';
import { clockText } from '../../../src/screens/sheet/sky/words';
import { EVEN_NIGHT, nightRoof } from '../../plans/nightRoof';

/**
 * From when to when the sun does not set, and does not rise, as it is printed: lonelyplanet.com, Norway, midnight sun and
 * polar night; the last from Wikipedia, midnight sun. Tables differ by two days or so in what they count as risen,
 * and near the circle by a week: Bodø, of the same table, is left out.
 */
const TABLE = [
  ['Narvik', 68.44, 17.43, '05-27', '07-15', ['12-04', '01-08']],
  ['Tromsø', 69.65, 18.96, '05-20', '07-22', ['11-25', '01-17']],
  ['Hammerfest', 70.66, 23.68, '05-16', '07-27', ['11-21', '01-21']],
  ['Nordkapp', 71.17, 25.78, '05-13', '07-29', ['11-18', '01-24']],
  ['Longyearbyen', 78.22, 15.65, '04-20', '08-21', ['10-26', '02-16']],
  ['Murmansk', 68.97, 33.08, '05-22', '07-22', null],
] as const;
const OFF_DAYS = 4;

const daysFrom = (date: string, days: number): string =>
  new Date(Date.parse(`${date}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);

/** Whether the sun sets and rises in the night that begins on a date, and whether it is up at noon. */
function sunOn(latitudeDegrees: number, longitudeDegrees: number, date: string) {
  const spot = { latitudeDegrees, longitudeDegrees };
  const { sunset, sunrise } = nightTimes(spot, date, 1);
  return {
    turns: sunset !== null && sunrise !== null,
    isNever: sunset === null && sunrise === null,
    isUp: sunFrom(spot, instantAt(date, 720, 1)).altitude > 0,
  };
}

describe.each(TABLE)('at %s', (_, latitude, longitude, first, last, dark) => {
  const spans = [
    [`2026-${first}`, `2026-${last}`, true],
    ...(dark ? [[`2026-${dark[0]}`, `2027-${dark[1]}`, false] as const] : []),
  ] as const;

  test.each(spans)(
    'from %s to %s it never passes the horizon, before and after it does',
    (from, to, isUp) => {
      for (const date of [daysFrom(from, OFF_DAYS), daysFrom(to, -OFF_DAYS)])
        expect(sunOn(latitude, longitude, date), date).toEqual({ turns: false, isNever: true, isUp });
      for (const date of [daysFrom(from, -OFF_DAYS), daysFrom(to, OFF_DAYS)])
        expect(sunOn(latitude, longitude, date), date).toMatchObject({ turns: true, isNever: false });
    },
  );
});

describe('in words', () => {
  const notesOf = (date: string, latitudeDegrees = 69.65): readonly string[] =>
    nightOf(
      nightRoof({ ...EVEN_NIGHT, utcOffsetHours: 1 }, { latitudeDegrees, longitudeDegrees: 18.96, date }),
    ).notes.map(({ sentence }) => sentence);
  const DAY = 'The sun does not set on that date: it stays above the horizon from noon to noon.';
  const NIGHT = 'The sun does not rise on that date: it stays below the horizon from noon to noon.';
  const BRIGHT = 'It does not get dark that night: there is no nautical dusk.';

  test('a day without a night says so, and that it does not get dark', () => {
    const notes = notesOf('2026-06-21');
    expect(notes).toContain(DAY);
    expect(notes).toContain(BRIGHT);
    expect(notes).not.toContain(NIGHT);
  });

  test('a night without a day says so, also where a twilight comes at noon', () => {
    for (const latitude of [69.65, 78.22, 90]) {
      const notes = notesOf('2026-12-21', latitude);
      expect(notes, `${latitude}`).toContain(NIGHT);
      expect(notes, `${latitude}`).not.toContain(DAY);
      expect(notes, `${latitude}`).not.toContain(BRIGHT);
    }
    expect(notesOf('2026-12-21', 90)).toContain(
      'It is dark from noon to noon: the sun stays below nautical dusk.',
    );
  });

  test('where it sets and rises nothing of that is said', () => {
    for (const date of ['2026-03-20', '2026-09-23'])
      expect(notesOf(date).filter((note) => /The sun|dark/.test(note))).toEqual([]);
  });

  test('what never comes has a word in the place of a time', () => {
    const night = nightOf(
      nightRoof(EVEN_NIGHT, { latitudeDegrees: 69.65, longitudeDegrees: 18.96, date: '2026-06-21' }),
    );
    const said = Object.fromEntries(firstTimes(night));
    expect([said.sunset, said.dark]).toEqual(['none', 'never']);
    expect(clockText(night.sky.sunset)).toBe('none');
    const winter = nightOf(
      nightRoof(EVEN_NIGHT, { latitudeDegrees: 90, longitudeDegrees: 0, date: '2026-12-21' }),
    );
    expect(Object.fromEntries(firstTimes(winter)).dark).toBe('all day');
  });
});
