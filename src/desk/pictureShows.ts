const SHOWN = ['blur', 'streaks', 'filter', 'grain'] as const;

/** What of the lens, its filter and the sensor a picture shows, for this person; the plan and the report know nothing of it. */
export type PictureShows = Readonly<Record<(typeof SHOWN)[number], boolean>>;

/** Before somebody has chosen. */
export const FIRST_SHOWS: PictureShows = { blur: true, streaks: true, filter: true, grain: true };

/** The words that are kept: what is shown, and `only` before it, so that nothing at all is a choice too. */
export const wordsOfShows = (shows: PictureShows): string =>
  ['only', ...SHOWN.filter((name) => shows[name])].join(' ');

/** What words stand for; unknown words say nothing. */
export function showsOfWords(text: string | null): PictureShows {
  const words = text?.split(' ') ?? [];
  if (words[0] !== 'only') return FIRST_SHOWS;
  const has = (name: (typeof SHOWN)[number]) => words.includes(name);
  return { blur: has('blur'), streaks: has('streaks'), filter: has('filter'), grain: has('grain') };
}
