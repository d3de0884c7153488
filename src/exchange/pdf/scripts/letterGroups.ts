const PICTURE = '\\p{Extended_Pictographic}[\\p{M}\\p{Emoji_Modifier}\\u{e0020}-\\u{e007f}]*';
const GROUP = new RegExp(
  `\\p{Regional_Indicator}{2}|${PICTURE}(?:\\u200d${PICTURE})*|\\P{M}[\\p{M}\\u200c\\u200d]*|\\p{M}+`,
  'gu',
);

/** A text in what reads as one letter each: a letter with its marks, a picture or a flag of several characters. */
export const letterGroups = (text: string): readonly string[] => text.match(GROUP) ?? [];
