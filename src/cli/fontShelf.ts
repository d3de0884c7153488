import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { type FontShelf, fileOf, packageOf } from '../exchange/pdf/scripts/families';

const { resolve } = createRequire(import.meta.url);

/** Fonts of scripts, from the packages that a clone has installed. */
export const FONT_SHELF: FontShelf = {
  slices: async (family) => JSON.parse(readFileSync(resolve(`${packageOf(family)}/unicode.json`), 'utf8')),
  file: async (family, slice) =>
    new Uint8Array(readFileSync(resolve(`${packageOf(family)}/files/${fileOf(family, slice)}`))),
};
