/** Narrower than this all panes stand in one column that scrolls; wider, all of them are in sight. */
const ONE_COLUMN = '(max-width: 767px)';

/** In the one column of a phone, scrolls to a pane; beside each other nothing has to move, and the page would. */
export function bringIntoSight(selector: string): void {
  if (matchMedia(ONE_COLUMN).matches) document.querySelector(selector)?.scrollIntoView({ block: 'start' });
}
