import { useSession } from '../../desk/hooks';
import type { SheetName } from '../../desk/sessionStore';
import { Glyph } from '../parts/Glyph';
import { PaneBoundary } from '../parts/PaneBoundary';
import { tallyOf } from '../report/concerns';
import { useChosenSetup } from '../report/useChosenSetup';
import { useSetupReport } from '../report/useSetupReports';
import { BlockingHead } from './blocking/BlockingSheet';
import { BlockingViews } from './blocking/BlockingViews';
import { FramesSheet } from './FramesSheet';
import { Reading } from './Reading';
import { SetSheet } from './SetSheet';

const SHEETS: readonly { readonly name: SheetName; readonly word: string }[] = [
  { name: 'set', word: 'Set' },
  { name: 'blocking', word: 'Blocking' },
  { name: 'frames', word: 'Frames' },
];

/** How many of the items that should keep out have which verdict in the chosen setup. */
function Tally() {
  const setup = useChosenSetup();
  const { report } = useSetupReport(setup?.id ?? null);
  if (!report) return null;
  return (
    <ul className="tally" aria-label="Items that should keep out, by verdict">
      {tallyOf(report).map(({ verdict, count }) => (
        <li key={verdict} className="chip" title={`${count} ${verdict}`}>
          <Glyph verdict={verdict} />
          {count}
        </li>
      ))}
    </ul>
  );
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
        {sheet === 'blocking' ? <BlockingHead /> : <Tally />}
      </div>
      <div className="sheet-panel" id="sheet-panel" role="tabpanel" aria-labelledby={`tab-${sheet}`}>
        <PaneBoundary key={sheet} name="The sheet">
          {sheet === 'set' ? <SetSheet /> : sheet === 'blocking' ? <BlockingViews /> : <FramesSheet />}
        </PaneBoundary>
      </div>
    </section>
  );
}
