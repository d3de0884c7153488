import type { Item } from '../../core/plan/items';
import { findingSentence, wayOut } from '../../core/report/sentences';
import type { ItemReport, SetupReport } from '../../core/report/types';
import { formatLength, type LengthSystem } from '../../core/units/lengths';
import { chooseSetup, goToSeconds, letterOf } from '../../desk/choose';
import { useLivePlan, useSession } from '../../desk/hooks';
import { Glyph } from '../parts/Glyph';
import { concernOf, toneOf } from '../report/concerns';
import { useShownReports } from '../report/useSetupReports';
import { ChoosableRow } from './ChoosableRow';
import { Sentence } from './Sentence';

interface Row {
  readonly setup: SetupReport;
  readonly item: ItemReport;
}

/** The one figure of the block: in how many setups the item is a trouble, or by how much it is clear of all. */
function Answer({ rows, of }: { readonly rows: readonly Row[]; readonly of: number }) {
  const lengths = useSession((state) => state.lengths);
  const troubled = rows.filter(({ item }) => concernOf(item) !== null);
  const missing = troubled.some(({ item }) => concernOf(item) === 'missing');
  if (rows.length < of) return <p className="figure q">being read</p>;
  if (troubled.length > 0) {
    return (
      <p className="figure">
        {troubled.length} of {of}
        <small>{missing ? 'setups do not show it' : 'setups have it in the way or close'}</small>
      </p>
    );
  }
  const margins = rows.flatMap(({ item }) => (item.margin ? [item.margin.metres] : []));
  const clear = rows.every(({ item }) => item.verdict === 'clear');
  if (!clear)
    return (
      <p className="figure">
        As wished<small>in all setups</small>
      </p>
    );
  return (
    <p className="figure verd">
      {margins.length > 0 ? formatLength(Math.min(...margins), lengths, { decimals: 1 }) : 'Clear'}
      <small>{margins.length > 0 ? 'or more, clear in all setups' : 'in all setups'}</small>
    </p>
  );
}

/** What would take it out of the chosen frame, where it should keep out. */
const wayOutOf = (item: ItemReport, lengths: LengthSystem): string | null =>
  item.wish === 'keep out' ? wayOut(item, lengths) : null;

/** How an item stands in every setup: glyph, letter, sentence. */
export function Standing({ item }: { readonly item: Item }) {
  const plan = useLivePlan();
  const lengths = useSession((state) => state.lengths);
  const chosen = useSession((state) => state.setupId);
  const setups = useShownReports();
  const rows = plan.setups.flatMap(({ id }): Row[] => {
    const setup = setups.find((each) => each.id === id);
    const found = setup?.items.find((each) => each.id === item.record.id);
    return setup && found ? [{ setup, item: found }] : [];
  });
  return (
    <>
      <Answer rows={rows} of={plan.setups.length} />
      <ul className="rows standing">
        {rows.map((row) => {
          const tone = toneOf(row.item);
          return (
            <ChoosableRow
              key={row.setup.id}
              chosen={row.setup.id === chosen}
              onChoose={() => {
                chooseSetup(row.setup.id);
                if (concernOf(row.item) !== null) goToSeconds(row.item.worstAtSeconds);
              }}
            >
              <Glyph verdict={row.item.verdict} {...(tone === undefined ? {} : { tone })} />
              <Sentence
                {...findingSentence(row.item, row.setup, lengths)}
                name={letterOf(plan, row.setup.id)}
                more={row.setup.id === chosen ? wayOutOf(row.item, lengths) : null}
              />
            </ChoosableRow>
          );
        })}
      </ul>
    </>
  );
}
