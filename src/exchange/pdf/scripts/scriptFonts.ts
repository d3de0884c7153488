import fontkit, { type Font } from '@cantoo/fontkit';
import { type Family, type FontShelf, familiesFor, hasLetter } from './families';

/** A font that was opened, and a name of it that no other has. */
export interface ScriptFont {
  readonly font: Font;
  readonly name: string;
}

/** The weight that is taken of a family with all of them. */
const WEIGHT = 400;

/** Opens what of the families a text needs. What cannot be had is left out: its letters have no font. */
export async function scriptFontsFor(
  text: string,
  timeZone: string,
  isKnown: (code: number) => boolean,
  shelf: FontShelf,
): Promise<ReadonlyMap<number, ScriptFont>> {
  const found = new Map<number, ScriptFont>();
  const open = new Set(
    Array.from(text.normalize('NFC'), (letter) => letter.codePointAt(0) ?? 0).filter(
      (code) => code > 0x7f && !isKnown(code),
    ),
  );
  for (const family of familiesFor(text, timeZone)) {
    const wanted = [...open].filter((code) => family.letters.test(String.fromCodePoint(code)));
    if (wanted.length === 0) continue;
    for (const [code, font] of await fontsOf(family, wanted, shelf)) {
      found.set(code, font);
      open.delete(code);
    }
  }
  return found;
}

async function fontsOf(
  family: Family,
  wanted: readonly number[],
  shelf: FontShelf,
): Promise<ReadonlyMap<number, ScriptFont>> {
  const found = new Map<number, ScriptFont>();
  for (const [slice, ranges] of Object.entries((await had(() => shelf.slices(family))) ?? {})) {
    const own = wanted.filter((code) => !found.has(code) && hasLetter(ranges, code));
    if (own.length === 0) continue;
    const font = await had(async () => {
      const own = openFont(await shelf.file(family, slice), family.name);
      return family.isVariable ? own.getVariation({ wght: WEIGHT }) : own;
    });
    if (!font) continue;
    const named = { font, name: `${family.name} ${slice}` };
    for (const code of own) if (font.hasGlyphForCodePoint(code)) found.set(code, named);
  }
  return found;
}

/** What cannot be had, without a signal say, is null: its letters are told as those of no font, and the rest goes on. */
async function had<Wanted>(ask: () => Promise<Wanted>): Promise<Wanted | null> {
  try {
    return await ask();
  } catch {
    return null;
  }
}

/** Opens the file of one font. @throws Error where it holds several */
export function openFont(file: Uint8Array, name: string): Font {
  const font = fontkit.create(file);
  if (!('layout' in font)) throw new Error(`${name}: found a collection, expected one font`);
  return font;
}
