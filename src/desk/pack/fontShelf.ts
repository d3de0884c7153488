import type { FontShelf } from '../../exchange/pdf/scripts/families';
import { fileOf } from '../../exchange/pdf/scripts/families';

/** Addresses of the files, which come with the page and are loaded only when a letter needs one. */
const FILES: Readonly<Record<string, string>> = {
  ...import.meta.glob<string>('../../../node_modules/@fontsource/noto-sans-*/files/*-400-normal.woff', {
    eager: true,
    query: '?url&no-inline',
    import: 'default',
  }),
  ...import.meta.glob<string>(
    '../../../node_modules/@fontsource-variable/noto-sans-*/files/*-wght-normal.woff2',
    {
      eager: true,
      query: '?url&no-inline',
      import: 'default',
    },
  ),
};
const SLICES = import.meta.glob<Readonly<Record<string, string>>>(
  '../../../node_modules/@fontsource*/noto-sans-*/unicode.json',
  { import: 'default' },
);

/** What of some addresses ends so. @throws Error where nothing does */
function ending<Value>(all: Readonly<Record<string, Value>>, end: string): Value {
  const found = Object.entries(all).find(([path]) => path.endsWith(end));
  if (!found) throw new Error(`${end}: no such file comes with the page`);
  return found[1];
}

/** Fonts of scripts, from the files that come with the page. */
export const FONT_SHELF: FontShelf = {
  slices: ({ name }) => ending(SLICES, `/noto-sans-${name}/unicode.json`)(),
  file: async (family, slice) => {
    const answer = await fetch(ending(FILES, `/${fileOf(family, slice)}`));
    if (!answer.ok) throw new Error(`${answer.url}: ${answer.status}`);
    return new Uint8Array(await answer.arrayBuffer());
  },
};
