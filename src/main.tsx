import { type ComponentType, StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { opensKeptSheet } from './desk/crew/ways';
import { isLinkFragment } from './exchange/link/isLink';
import { startOffline } from './offline/page/startOffline';

/** What the address asks for: the crew sheet of a link, or the desk. Neither loads the other. */
async function pageFor(isCrew: boolean): Promise<ComponentType> {
  if (isCrew) {
    // The link begins to be read while its screens are still on their way.
    const started = import('./desk/crew/startCrew').then(({ startCrew }) => startCrew());
    const [{ CrewApp }] = await Promise.all([import('./screens/crew/CrewApp'), started]);
    return CrewApp;
  }
  const [{ startDesk }, { App }] = await Promise.all([import('./desk/startDesk'), import('./screens/App')]);
  void startDesk();
  return App;
}

async function open(root: HTMLElement): Promise<void> {
  const isCrew = isLinkFragment(location.hash) || opensKeptSheet();
  window.addEventListener('hashchange', () => {
    if (isLinkFragment(location.hash) !== isCrew) location.reload();
  });
  const Page = await pageFor(isCrew);
  createRoot(root).render(
    <StrictMode>
      <Page />
    </StrictMode>,
  );
}

const root = document.getElementById('root');
if (!root) throw new Error("index.html has no element 'root' to draw the page in");
open(root).catch(() => {
  root.textContent = 'The page could not be loaded. Load it again with a signal.';
});
void startOffline();
