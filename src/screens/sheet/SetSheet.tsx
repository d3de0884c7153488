import { useMemo, useState } from 'react';
import { type Item, itemOf, itemsOf, kindOf } from '../../core/plan/items';
import type { Setup } from '../../core/plan/schema/setup';
import type { ItemReport } from '../../core/report/types';
import { chooseSetup, letterOf } from '../../desk/choose';
import { useLivePlan, useSession } from '../../desk/hooks';
import { placeFirstCamera } from '../../desk/placing';
import { sessionStore } from '../../desk/sessionStore';
import { Column } from '../parts/Column';
import { Glyph } from '../parts/Glyph';
import { Icon, iconOfKind } from '../parts/Icon';
import { toneOf } from '../report/concerns';
import { summaryOf, worstByItem } from '../report/summary';
import { useSetupReport, useShownReports } from '../report/useSetupReports';
import { ChoosableRow } from './ChoosableRow';
import { ItemPanel } from './ItemPanel';
import { SetupPanel } from './SetupPanel';

/** What is moved most comes first. */
const ORDER: readonly Item['section'][] = ['gear', 'cast', 'piece'];
/** As many rows as anyone reads; the search finds the others. */
const MOST_ROWS = 300;

function ItemRow({ item, worst }: { readonly item: Item; readonly worst: ItemReport | null }) {
  const selected = useSession((state) => state.selectedId === item.record.id);
  const tone = worst ? toneOf(worst) : undefined;
  return (
    <ChoosableRow chosen={selected} onChoose={() => sessionStore.getState().setSelectedId(item.record.id)}>
      <Icon name={iconOfKind(kindOf(item))} />
      <span className="name">{item.record.label}</span>
      <span className="q">{kindOf(item)}</span>
      {worst ? <Glyph verdict={worst.verdict} {...(tone === undefined ? {} : { tone })} /> : <span />}
    </ChoosableRow>
  );
}

function CameraRow({ setup, letter }: { readonly setup: Setup; readonly letter: string }) {
  const lengths = useSession((state) => state.lengths);
  const chosen = useSession((state) => state.selectedId === null && state.setupId === setup.id);
  const { report } = useSetupReport(setup.id);
  return (
    <ChoosableRow
      chosen={chosen}
      onChoose={() => {
        sessionStore.getState().setSelectedId(null);
        chooseSetup(setup.id);
      }}
    >
      <Icon name="camera" />
      <span className="name">
        <b>{letter}</b> {setup.label}
      </span>
      <span className="q">camera</span>
      {report ? <Glyph verdict={summaryOf(report, lengths).verdict} /> : <span />}
    </ChoosableRow>
  );
}

/** All that stands on the roof and all cameras, to find, choose and place by numbers. */
export function SetSheet() {
  const plan = useLivePlan();
  const selectedId = useSession((state) => state.selectedId);
  const setupId = useSession((state) => state.setupId);
  const [search, setSearch] = useState('');
  const items = useMemo(
    () => itemsOf(plan).toSorted((a, b) => ORDER.indexOf(a.section) - ORDER.indexOf(b.section)),
    [plan],
  );
  const reports = useShownReports();
  const worst = useMemo(() => worstByItem(reports), [reports]);
  const wanted = search.trim().toLowerCase();
  const found = items.filter(
    (item) =>
      wanted === '' || item.record.label.toLowerCase().includes(wanted) || kindOf(item).includes(wanted),
  );
  const setups = plan.setups.filter(
    (setup) => wanted === '' || setup.label.toLowerCase().includes(wanted) || 'camera'.includes(wanted),
  );
  const item = selectedId === null ? null : itemOf(plan, selectedId);
  const setup = plan.setups.find((each) => each.id === setupId) ?? null;
  return (
    <div className="two">
      <Column>
        <div className="field search">
          <label htmlFor="set-search">find</label>
          <input
            id="set-search"
            type="search"
            value={search}
            placeholder={`${items.length} things, ${plan.setups.length} setups`}
            onChange={(event) => setSearch(event.currentTarget.value)}
          />
        </div>
        {items.length === 0 ? (
          <p className="after">Nothing on the roof yet. Open a plan, or place a camera.</p>
        ) : null}
        <ul className="rows things">
          {setups.map((each) => (
            <CameraRow key={each.id} setup={each} letter={letterOf(plan, each.id)} />
          ))}
          {found.slice(0, MOST_ROWS).map((each) => (
            <ItemRow key={each.record.id} item={each} worst={worst.get(each.record.id)?.worst ?? null} />
          ))}
        </ul>
        {found.length > MOST_ROWS ? (
          <p className="after">{found.length - MOST_ROWS} more. Type a part of the name to find them.</p>
        ) : null}
        <p className="acts">
          <button type="button" className="try" onClick={placeFirstCamera}>
            Place a camera
          </button>
        </p>
      </Column>
      <Column>{item ? <ItemPanel item={item} /> : setup ? <SetupPanel setup={setup} /> : null}</Column>
    </div>
  );
}
