import { crewStore } from './crewStore';
import { keptLinksStore } from './kept/keptLinks';
import { openLink } from './openLink';
import { FIRST_PLACE, placeFrom } from './place';

/** Opens the link in the address, and every other that comes there; goes where the browser's buttons go. */
export function startCrew(): void {
  window.addEventListener('hashchange', () => void openLink(location.hash.slice(1)));
  window.addEventListener('popstate', ({ state }) => {
    if (location.hash.slice(1) === crewStore.getState().fragment)
      crewStore.setState(placeFrom(state) ?? FIRST_PLACE);
  });
  const [last] = keptLinksStore.getState().links;
  // Opened from a home screen there is no link in the address: the sheet that was looked at last it is.
  if (location.hash.length < 2 && last) history.replaceState(history.state, '', `#${last.fragment}`);
  void openLink(location.hash.slice(1));
}
