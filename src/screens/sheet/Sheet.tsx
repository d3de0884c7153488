import { useSession } from '../../desk/hooks';
import type { SheetName } from '../../desk/sessionStore';
import { Glyph } from '../parts/Glyph';
import { lazily } from '../parts/lazily';
import { PaneBoundary } from '../parts/PaneBoundary';
import { isLetShow, tallyOf } from '../report/concerns';
import { useChosenSetup } from '../report/useChosenSetup';
import { useSetupReport } from '../report/useSetupReports';
import { FramesSheet } from './FramesSheet';
import { Reading, ReadingTrouble } from './Reading';

// The page opens with the frames; the other sheets come when they are opened, or when there is time.
const BlockingHead = lazily(async () => (await import('./blocking/BlockingSheet')).BlockingHead);
const BlockingViews = lazily(async () => (await import('./blocking/BlockingViews')).BlockingViews);
const CrewSheet = lazily(async () => (await import('./crew/CrewSheet')).CrewSheet);
const LightHead = lazily(async () => (await import('./light/LightSheet')).LightHead);
const LightSheet = lazily(async () => (await import('./light/LightSheet')).LightSheet);
const NightSheet = lazily(async () => (await import('./night/NightSheet')).NightSheet);
const SetSheet = lazily(async () => (await import('./SetSheet')).SetSheet);

const SHEETS: readonly { readonly name: SheetName; readonly word: string }[] = [
  { name: 'set', word: 'Set' },
  { name: 'blocking', word: 'Blocking' },
  { name: 'frames', word: 'Frames' },
  { name: 'light', word: 'Light' },
  { name: 'night', word: 'Night' },
  { name: 'crew', word: 'Crew' },
];

/** How many of the items that should keep out have which verdict in the chosen setup. */
function Tally() {
  const setup = useChosenSetup();
  const { report } = useSetupReport(setup?.id ?? null);
  if (!report) return null;
  const letShow = report.items.filter(isLetShow).length;
  return (
    <ul className="tally" aria-label="Items that should keep out, by verdict">
      {tallyOf(report).map(({ verdict, count }) => (
        <li key={verdict} className="chip" title={`${count} ${verdict}`}>
          <Glyph verdict={verdict} />
          {count}
        </li>
      ))}
      {letShow > 0 ? (
        <li className="chip" title={`${letShow} let show`}>
          <Glyph verdict="showing" tone="q" />
          {letShow} let show
        </li>
      ) : null}
    </ul>
  );
}

/** What stands in the tabs' line for a sheet. */
function Head({ sheet }: { readonly sheet: SheetName }) {
  if (sheet === 'blocking') return <BlockingHead />;
  if (sheet === 'night' || sheet === 'crew') return null;
  return sheet === 'light' ? <LightHead /> : <Tally />;
}

function Open({ sheet }: { readonly sheet: SheetName }) {
  if (sheet === 'set') return <SetSheet />;
  if (sheet === 'blocking') return <BlockingViews />;
  if (sheet === 'night') return <NightSheet />;
  if (sheet === 'crew') return <CrewSheet />;
  return sheet === 'light' ? <LightSheet /> : <FramesSheet />;
}

/** One sheet at a time, under the frame where a drawing keeps its notes. */
export function Sheet() {
  const sheet = useSession((state) => state.sheet);
  const setSheet = useSession((state) => state.setSheet);
  return (
    <section className="sheet" aria-label="Sheets">
      <div className="tabs">
        <div role="tablist" aria-label="Sheets">
          {SHEETS.map(({ name, word }, place) => (
            <button
              key={name}
              type="button"
              role="tab"
              id={`tab-${name}`}
              aria-selected={sheet === name}
              aria-controls="sheet-panel"
              tabIndex={sheet === name ? 0 : -1}
              onClick={() => setSheet(name)}
              onKeyDown={(event) => {
                if (event.key !== 'ArrowLeft' && event.key !== 'ArrowRight') return;
                event.preventDefault();
                const step = event.key === 'ArrowRight' ? 1 : SHEETS.length - 1;
                const other = SHEETS[(place + step) % SHEETS.length];
                if (!other) return;
                setSheet(other.name);
                document.getElementById(`tab-${other.name}`)?.focus();
              }}
            >
              <sup aria-hidden="true">{place + 1}</sup>
              {word}
            </button>
          ))}
        </div>
        <Reading />
        <Head sheet={sheet} />
      </div>
      <div className="sheet-panel" id="sheet-panel" role="tabpanel" aria-labelledby={`tab-${sheet}`}>
        <h2 className="vh">{SHEETS.find(({ name }) => name === sheet)?.word}</h2>
        <PaneBoundary key={sheet} name="The sheet">
          <Open sheet={sheet} />
        </PaneBoundary>
      </div>
      <ReadingTrouble />
    </section>
  );
}
