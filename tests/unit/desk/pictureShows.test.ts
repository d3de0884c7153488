import { expect, test } from 'vitest';
import { FIRST_SHOWS, showsOfWords, wordsOfShows } from '../../../src/desk/pictureShows';

test('what a picture shows comes back as it was chosen, nothing at all too', () => {
  const some = { blur: true, streaks: false, filter: true, grain: false };
  const none = { blur: false, streaks: false, filter: false, grain: false };
  for (const shows of [FIRST_SHOWS, some, none]) expect(showsOfWords(wordsOfShows(shows))).toEqual(shows);
});

test('what was never chosen, or cannot be read, is all of it', () => {
  for (const text of [null, '', 'something else']) expect(showsOfWords(text)).toEqual(FIRST_SHOWS);
  expect(showsOfWords('only blur dust')).toEqual({ blur: true, streaks: false, filter: false, grain: false });
});
