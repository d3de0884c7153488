import { findingSentence, wayOut } from '../../../core/report/sentences';
import type { ItemReport, SetupReport } from '../../../core/report/types';
import { useCrew, useCrewReading } from '../../../desk/crew/useCrew';
import { Glyph } from '../../parts/Glyph';
import { concernOf, findingsOf, isInTheWay, isLetShow, toneOf } from '../../report/concerns';

/** What is not seen, but would be if something else were moved or the light changed. */
const isHidden = (item: ItemReport): boolean =>
  item.wish === 'keep out' &&
  concernOf(item) === null &&
  !isLetShow(item) &&
  (item.verdict === 'covered' || isInTheWay(item));

function Row({ item, report }: { readonly item: ItemReport; readonly report: SetupReport }) {
  const lengths = useCrew((state) => state.lengths);
  const openItem = useCrew((state) => state.openItem);
  const { name, colon, text } = findingSentence(item, report, lengths);
  const more = concernOf(item) === null ? null : wayOut(item, lengths);
  const tone = toneOf(item);
  return (
    <li className={concernOf(item) === null ? 'opens q' : 'opens'}>
      <Glyph verdict={item.verdict} {...(tone === undefined ? {} : { tone })} />
      <p>
        <button type="button" className="link" onClick={() => openItem(item.id)}>
          {name}
        </button>
        {colon ? ': ' : ' '}
        {text}
        {more === null ? null : ` ${more}`}
      </p>
    </li>
  );
}

/** What a setup sees that it should not, then what it may, then what only something else hides. */
export function WatchFor({ setupId }: { readonly setupId: string }) {
  const report = useCrewReading((state) => state.setups.get(setupId));
  const isWhole = useCrewReading((state) => state.whole.has(setupId));
  const findings = report ? findingsOf(report) : [];
  const quiet = report ? [...report.items.filter(isLetShow), ...report.items.filter(isHidden)] : [];
  return (
    <section className="crew-rigs" aria-label="Watch for" aria-busy={!isWhole}>
      <h3>Watch for</h3>
      {report === undefined ? <p className="q">What shows is being read.</p> : null}
      {report && findings.length === 0 ? <p>Nothing that should keep out shows or is close.</p> : null}
      <ul>
        {report
          ? [...findings, ...quiet].map((item) => <Row key={item.id} item={item} report={report} />)
          : null}
      </ul>
      {report && !isWhole ? <p className="q">So far at its beginning; the move is being read.</p> : null}
    </section>
  );
}
