import { DESK_ICONS } from './desk';
import type { Drawing } from './drawing';
import { GEAR_ICONS } from './gear';
import { PIECE_ICONS } from './pieces';

const ALL = { ...PIECE_ICONS, ...GEAR_ICONS, ...DESK_ICONS };

/** The names of the icons. */
export type IconName = keyof typeof ALL;

/** Every icon by its name. */
export const ICONS: Readonly<Record<IconName, Drawing>> = ALL;

/** The icon of that name; what has none yet shows as the box that it comes in. */
export const iconNamed = (name: string): IconName => (Object.hasOwn(ALL, name) ? (name as IconName) : 'box');
