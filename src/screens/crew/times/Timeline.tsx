import { Fragment, type Ref, useEffect, useRef } from 'react';
import { wallTime } from '../../../core/night/times/nightClock';
import type { Night } from '../../../core/night/types';
import type { Plan } from '../../../core/plan/schema/plan';
import { setupLetter } from '../../../core/plan/setupLetter';
import { duration } from '../../../core/units/durations';
import { useCrew } from '../../../desk/crew/useCrew';
import { shotWords } from '../../sheet/night/order/words';
import { begunBy, type TimelineRow, timelineOf } from './timeline';

/** Pixels of a minute, beyond what a line needs for its words. */
const PIXELS_PER_MINUTE = 1;

/** A setup's line: its letter and name, which open it, and when it is shot. */
function SetupLine({
  plan,
  night,
  row,
}: {
  readonly plan: Plan;
  readonly night: Night;
  readonly row: Extract<TimelineRow, { readonly kind: 'setup' }>;
}) {
  const openSetup = useCrew((state) => state.openSetup);
  const { job, setupId } = row.placed;
  return (
    <button type="button" className="time-setup" onClick={() => openSetup(setupId)}>
      <b>{setupLetter(job)}</b>
      <span>
        {plan.setups[job].label}
        <small>shot {shotWords(night, row.placed)}</small>
      </span>
    </button>
  );
}

function Words({
  plan,
  night,
  row,
}: {
  readonly plan: Plan;
  readonly night: Night;
  readonly row: TimelineRow;
}) {
  if (row.kind === 'setup') return <SetupLine plan={plan} night={night} row={row} />;
  if (row.kind !== 'doing') return <span className="time-word">{row.word}</span>;
  return (
    <span className="time-word">
      {row.doing} <span className="q">{duration(row.until - row.from)}</span>
      {row.changes === '' ? null : <small>{row.changes}</small>}
    </span>
  );
}

function NowLine({ at, line }: { readonly at: string; readonly line: Ref<HTMLLIElement> }) {
  return (
    <li ref={line} className="time-row now" aria-current="time">
      <span className="time-at">{at}</span>
      <span className="time-word">now</span>
    </li>
  );
}

const classOf = (row: TimelineRow): string =>
  row.kind === 'doing' ? `time-row doing ${row.doing.replace(' ', '-')}` : `time-row ${row.kind}`;

function keyOf(row: TimelineRow): string {
  const { kind, from } = row;
  if (kind === 'setup') return `${kind} ${row.placed.setupId}`;
  return `${kind} ${from} ${kind === 'doing' ? `${row.doing} ${row.job ?? ''} ${row.until}` : row.word}`;
}

/** The night from call to wrap down the screen, a line for whatever begins, longer where it lasts longer. */
export function Timeline({
  plan,
  night,
  now,
}: {
  readonly plan: Plan;
  readonly night: Night;
  readonly now: number | null;
}) {
  const rows = timelineOf(night);
  const begun = now === null ? null : begunBy(rows, now);
  const line = useRef<HTMLLIElement>(null);
  const isOn = now !== null;
  // Once, as now is first shown, however often it goes on to another place: whoever scrolls on is left alone.
  useEffect(() => {
    if (isOn) line.current?.scrollIntoView({ block: 'center' });
  }, [isOn]);
  const at = (minutes: number): string => wallTime(night.clock, minutes);
  return (
    <ol className="timeline" aria-label="The night by the clock">
      {rows.map((row, place) => (
        <Fragment key={keyOf(row)}>
          {place === begun && now !== null ? <NowLine line={line} at={at(now)} /> : null}
          <li
            className={classOf(row)}
            style={
              row.kind === 'doing' ? { minHeight: (row.until - row.from) * PIXELS_PER_MINUTE } : undefined
            }
          >
            {/* A setup begins with whatever is done first for it, which tells the time below. */}
            <span className="time-at">{row.kind === 'setup' ? '' : at(row.from)}</span>
            <Words plan={plan} night={night} row={row} />
          </li>
        </Fragment>
      ))}
      {begun === rows.length && now !== null ? <NowLine line={line} at={at(now)} /> : null}
    </ol>
  );
}
