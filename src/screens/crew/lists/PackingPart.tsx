import { useStore } from 'zustand';
import { standingOf, tickStore, toggleTick } from '../../../desk/crew/kept/ticks';
import { useCrew, useCrewReading } from '../../../desk/crew/useCrew';
import { fileWord } from '../../../desk/fileWord';
import { nightCsv } from '../../../exchange/night/nightCsv';
import { allOf, amountText, listTotal, spareText } from '../../sheet/night/packing/packingWords';
import { useSaving } from '../page/useSaving';
import { Waiting } from '../page/Waiting';
import { askedBy, groupsFor, type TickedLine, tickedLines } from './packing';

/** A line to pack, with the box that is ticked when it is in the van. The whole line is the target. */
function PackLine({ id, line }: TickedLine) {
  const of = askedBy(line);
  const standing = useStore(tickStore, ({ ticks }) => standingOf(ticks, id, of));
  const details = [
    line.detail,
    spareText(line),
    standing === 'changed since' ? 'changed since it was packed' : '',
  ].filter((words) => words !== '');
  return (
    <li>
      <label className="pack-line">
        <input type="checkbox" checked={standing === 'set'} onChange={() => toggleTick(id, of)} />
        <span>
          {line.label}
          {details.length === 0 ? null : <small>{details.join(', ')}</small>}
        </span>
        <b>{amountText(allOf(line), line.unit)}</b>
      </label>
    </li>
  );
}

/** How many of some lines are ticked, in words. */
function usePacked(lines: readonly TickedLine[]): string {
  const ticks = useStore(tickStore, (state) => state.ticks);
  const packed = lines.filter(({ id, line }) => standingOf(ticks, id, askedBy(line)) === 'set').length;
  if (packed === 0) return 'none packed';
  return packed === lines.length ? 'all packed' : `${packed} packed`;
}

function Group({
  department,
  lines,
}: {
  readonly department: string;
  readonly lines: readonly TickedLine[];
}) {
  const packed = usePacked(lines);
  return (
    <section className="crew-section">
      <h3>
        <b>{department}</b>, {listTotal(lines.map(({ line }) => line))}, {packed}
      </h3>
      <ul>
        {lines.map(({ id, line }) => (
          <PackLine key={id} id={id} line={line} />
        ))}
      </ul>
    </section>
  );
}

/** The packing list of whoever asks, with ticks that stay on this phone. */
export function PackingPart() {
  const plan = useCrew((state) => state.plan);
  const asked = useCrew((state) => state.department);
  const answer = useCrewReading((state) => state.night);
  const [said, save] = useSaving();
  if (!answer) return <Waiting what="The packing list is being added up." />;
  const { night, packing } = answer;
  const groups = groupsFor(asked, tickedLines(packing));
  return (
    <>
      {groups.length === 0 ? (
        <p className="crew-section">
          {packing.length === 0
            ? 'Nothing to pack: there is no gear in this plan.'
            : `Nothing on the list is for ${asked}.`}
        </p>
      ) : null}
      {groups.map(({ department, lines }) => (
        <Group key={department} department={department} lines={lines} />
      ))}
      <div className="crew-acts">
        <button
          type="button"
          onClick={() =>
            save({
              text: nightCsv(plan, night, packing),
              type: 'text/csv',
              what: 'The list',
              fileName: `${fileWord(plan.title)}-night.csv`,
            })
          }
        >
          Save it as a table
        </button>
      </div>
      <p className="crew-said" role="status">
        {said}
      </p>
      <p className="q crew-estimate">
        An estimate for planning: local codes and a competent person decide what is asked for and enough.
      </p>
    </>
  );
}
