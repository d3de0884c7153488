const SWITCHES = ['thirds', 'safe', 'centre', 'second', 'own', 'circle'] as const;
const MASKS = ['none', 'light', 'dark'] as const;
const MASKED = ['delivery', 'second'] as const;

type Switch = (typeof SWITCHES)[number];
export type Mask = (typeof MASKS)[number];
export type Masked = (typeof MASKED)[number];

/** What is drawn over the picture, for this person. */
export interface Guides extends Readonly<Record<Switch, boolean>> {
  /** How dark it is outside of what is delivered. */
  readonly mask: Mask;
  /** Which delivery the mask leaves free. */
  readonly masked: Masked;
}

/** Before somebody has chosen. */
export const FIRST_GUIDES: Guides = {
  thirds: false,
  safe: false,
  centre: true,
  second: true,
  own: true,
  circle: true,
  mask: 'light',
  masked: 'delivery',
};

/** Guides as the words that are kept: those that are on, the mask and what it leaves free. */
export const wordsOfGuides = (guides: Guides): string =>
  [...SWITCHES.filter((name) => guides[name]), `mask-${guides.mask}`, `around-${guides.masked}`].join(' ');

/** The guides that words stand for; unknown words say nothing. */
export function guidesOfWords(text: string | null): Guides {
  if (text === null) return FIRST_GUIDES;
  const words = text.split(' ');
  const switches = Object.fromEntries(SWITCHES.map((name) => [name, words.includes(name)]));
  return {
    ...FIRST_GUIDES,
    ...switches,
    mask: MASKS.find((mask) => words.includes(`mask-${mask}`)) ?? FIRST_GUIDES.mask,
    masked: MASKED.find((masked) => words.includes(`around-${masked}`)) ?? FIRST_GUIDES.masked,
  };
}
