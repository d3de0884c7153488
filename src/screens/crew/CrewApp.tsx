import { type ReactNode, useEffect } from 'react';
import { setupsInOrder } from '../../core/plan/nightOrder';
import { useCrew } from '../../desk/crew/useCrew';
import { GlyphSprite } from '../parts/GlyphSprite';
import { IconSprite } from '../parts/IconSprite';
import { BrokenLink } from './broken/BrokenLink';
import { ComingBoundary } from './parts/coming/ComingBoundary';
import { coming } from './parts/coming/coming';
import { useWide } from './parts/useWide';
import { ReadingLink } from './reading/ReadingLink';
import { CrewSetup } from './setup/CrewSetup';
import { CrewFoot } from './shell/CrewFoot';
import { CrewHeader } from './shell/CrewHeader';
import { CrewTabScreen } from './shell/CrewTabScreen';
import { CrewTimesRow } from './shell/CrewTimesRow';
import { StorageNotice } from './shell/StorageNotice';
import './styles/index.css';

/** A layer that did not come lies over the sheet all the same, and is left as any other. */
const instead = (again: ReactNode) => (
  <section className="crew-layer">
    {again}
    <p className="crew-part">
      <button type="button" onClick={() => history.back()}>
        Close
      </button>
    </p>
  </section>
);
const CrewMore = coming(async () => (await import('./more/CrewMore')).CrewMore, { instead });
const CrewSearch = coming(async () => (await import('./search/CrewSearch')).CrewSearch, { instead });
const ItemCard = coming(async () => (await import('./item/ItemCard')).ItemCard);
/** Reckons and draws, which what is only read does without. */
const FullFrame = coming(async () => (await import('./picture/FullFrame')).FullFrame, { instead });

/** The sheet of a link that could be read. In two columns the first setup lies open until another is chosen. */
function CrewSheet() {
  const plan = useCrew((state) => state.plan);
  const tab = useCrew((state) => state.tab);
  const openedId = useCrew((state) => state.setupId);
  const itemId = useCrew((state) => state.itemId);
  const frameOpen = useCrew((state) => state.frameOpen);
  const searchOpen = useCrew((state) => state.searchOpen);
  const moreOpen = useCrew((state) => state.moreOpen);
  const wide = useWide();
  const setupId = openedId ?? (wide && tab === 'setups' ? (setupsInOrder(plan)[0]?.id ?? null) : null);
  const framedId = frameOpen && plan.setups.some(({ id }) => id === setupId) ? setupId : null;
  const isUnder = searchOpen || moreOpen || framedId !== null;
  const isCovered = !wide && (setupId !== null || itemId !== null);
  return (
    <>
      <div className="crew" inert={isUnder} data-columns={wide && (setupId ?? itemId) !== null ? 2 : 1}>
        <ComingBoundary>
          {isCovered ? null : <CrewHeader />}
          {isCovered || (!wide && tab === 'overhead') ? null : <CrewTimesRow />}
          <StorageNotice />
        </ComingBoundary>
        <main className="crew-main">
          <div className="crew-scroll crew-tab" inert={isCovered} data-covered={isCovered}>
            <ComingBoundary key={tab}>
              <CrewTabScreen chosenId={wide ? setupId : null} />
            </ComingBoundary>
          </div>
          {setupId === null ? null : (
            <div className="crew-scroll crew-over" inert={itemId !== null} data-covered={itemId !== null}>
              <ComingBoundary>
                <CrewSetup setupId={setupId} beside={wide} />
              </ComingBoundary>
            </div>
          )}
          {itemId === null ? null : (
            <div className="crew-scroll crew-over">
              <ItemCard itemId={itemId} />
            </div>
          )}
        </main>
        <ComingBoundary>
          <CrewFoot />
        </ComingBoundary>
      </div>
      {framedId === null ? null : <FullFrame setupId={framedId} />}
      {searchOpen ? <CrewSearch /> : null}
      {moreOpen ? <CrewMore /> : null}
    </>
  );
}

/** The crew sheet: a plan out of a link, to be read on a roof. */
export function CrewApp() {
  const shows = useCrew((state) => state.shows);
  const theme = useCrew((state) => state.theme);
  const title = useCrew((state) => state.plan.title);
  useEffect(() => {
    document.documentElement.dataset.theme = theme;
  }, [theme]);
  useEffect(() => {
    document.title = shows === 'plan' ? title : 'Standclear';
    if (shows !== 'reading') document.documentElement.dataset.ready = 'true';
  }, [shows, title]);
  return (
    <>
      <IconSprite />
      <GlyphSprite />
      <ComingBoundary>
        {shows === 'plan' ? <CrewSheet /> : null}
        {shows === 'reading' ? <ReadingLink /> : null}
        {shows === 'broken' || shows === 'stopped' ? <BrokenLink /> : null}
      </ComingBoundary>
    </>
  );
}
