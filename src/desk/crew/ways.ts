import { readStored } from '../preferences';
import { LINKS } from './kept/names';

/** In the address: the editor is wanted, whatever else would open. */
const DESK = 'desk';

/** Whether the page was opened from a home screen without a link, and has sheets to show instead of the editor. */
export function opensKeptSheet(): boolean {
  if (new URLSearchParams(location.search).has(DESK)) return false;
  const links = readStored(`crew.${LINKS}`);
  return matchMedia('(display-mode: standalone)').matches && links !== null && links !== '[]';
}

/** Leaves the sheet for the editor. */
export function openEditor(): void {
  location.assign(`${location.pathname}?${DESK}`);
}

/** Opens another link's sheet. */
export function openLinkHere(fragment: string): void {
  location.hash = fragment;
}
