/** A family of fonts that has the letters of a script; it comes in slices, of which only those that are needed are read. */
export interface Family {
  /** Of its folder and its files: `noto-sans-` and this. */
  readonly name: string;
  /** Letters that it is asked for. */
  readonly letters: RegExp;
  /** Its files hold every weight, and one is taken. */
  readonly isVariable: boolean;
}

const family = (name: string, letters: RegExp): Family => ({ name, letters, isVariable: false });

/** Scripts with a family each. What has no family here is printed as a question mark, and told. */
const SCRIPTS: readonly Family[] = [
  family('arabic', /\p{Script_Extensions=Arabic}/u),
  family('hebrew', /\p{Script_Extensions=Hebrew}/u),
  family('devanagari', /\p{Script_Extensions=Devanagari}/u),
  family('bengali', /\p{Script_Extensions=Bengali}/u),
  family('gurmukhi', /\p{Script_Extensions=Gurmukhi}/u),
  family('gujarati', /\p{Script_Extensions=Gujarati}/u),
  family('tamil', /\p{Script_Extensions=Tamil}/u),
  family('thai', /\p{Script_Extensions=Thai}|\u0e3f/u),
  family('ethiopic', /\p{Script_Extensions=Ethiopic}/u),
  family('armenian', /\p{Script_Extensions=Armenian}/u),
  family('georgian', /\p{Script_Extensions=Georgian}/u),
];

/** Chinese characters and what stands between them. */
const HAN = /\p{Script_Extensions=Han}|[\u3000-\u303f\uff00-\uffef]/u;
const EAST: Readonly<Record<'jp' | 'kr' | 'sc' | 'tc', Family>> = {
  jp: { name: 'jp', letters: new RegExp(`${HAN.source}|[\\u3040-\\u30ff]`, 'u'), isVariable: true },
  kr: {
    name: 'kr',
    letters: new RegExp(`${HAN.source}|[\\u1100-\\u11ff\\u3130-\\u318f\\uac00-\\ud7a3]`, 'u'),
    isVariable: true,
  },
  sc: { name: 'sc', letters: HAN, isVariable: true },
  tc: { name: 'tc', letters: new RegExp(`${HAN.source}|[\\u3100-\\u312f]`, 'u'), isVariable: true },
};

/**
 * The families for a text, the likeliest first: the same characters are drawn in another way in each country of the
 * East, and kana, hangul or the place say which is meant.
 */
export function familiesFor(text: string, timeZone: string): readonly Family[] {
  const { jp, kr, sc, tc } = EAST;
  const east =
    /[\u3040-\u30ff]/u.test(text) || /Tokyo/.test(timeZone)
      ? [jp, kr, sc, tc]
      : /[\uac00-\ud7a3]/u.test(text) || /Seoul|Pyongyang/.test(timeZone)
        ? [kr, jp, tc, sc]
        : /Taipei|Hong_Kong|Macau/.test(timeZone)
          ? [tc, sc, jp, kr]
          : [sc, tc, jp, kr];
  return [...SCRIPTS, ...east];
}

/** Where the files of families are: beside the page, or in the packages of a clone. */
export interface FontShelf {
  /** The letters of each slice of a family, as CSS writes ranges. */
  readonly slices: (family: Family) => Promise<Readonly<Record<string, string>>>;
  readonly file: (family: Family, slice: string) => Promise<Uint8Array>;
}

/** The package that a family comes in. */
export const packageOf = ({ name, isVariable }: Family): string =>
  `@fontsource${isVariable ? '-variable' : ''}/noto-sans-${name}`;

/** The file of a slice within its package's folder of files. */
export const fileOf = ({ name, isVariable }: Family, slice: string): string =>
  `noto-sans-${name}-${slice.replace(/[[\]]/g, '')}-${isVariable ? 'wght-normal.woff2' : '400-normal.woff'}`;

/** Whether ranges as CSS writes them have a letter. */
export function hasLetter(ranges: string, code: number): boolean {
  return ranges.split(',').some((range) => {
    const [from, until = from] = range
      .replace(/^U\+/i, '')
      .split('-')
      .map((digits) => Number.parseInt(digits, 16));
    return code >= from && code <= until;
  });
}
