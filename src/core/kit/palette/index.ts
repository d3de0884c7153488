export type { How, PaletteEntry, PaletteGroup, Where } from './entry';
export { PALETTE_GROUPS } from './entry';
export { type Made, makeItem, PALETTE, paletteEntryOf } from './makeItem';
