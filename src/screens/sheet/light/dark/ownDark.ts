import { DARK } from '../../../../core/light/readsInTheDark';
import type { Dark } from '../../../../core/plan/schema/plan';

/** Whether something counts as lost in the dark from when on it does in a plan that says nothing. */
export const isUsual = ({ contrastStops, stopsUnder }: Omit<Dark, 'uprights'>): boolean =>
  contrastStops === DARK.contrastStops && stopsUnder === DARK.stopsUnder;

/** What a plan is to say of the dark; null where all of it is as usual, which goes unsaid. */
export const ownDark = (dark: Dark): Dark | null =>
  dark.uprights === undefined && isUsual(dark) ? null : dark;
