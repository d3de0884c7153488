import { useMemo, useRef, useState } from 'react';
import type { Coverage } from '../../../../core/continuity/coverage';
import type { Plan } from '../../../../core/plan/schema/plan';
import { formatSeconds } from '../../../../core/units/seconds';
import { chooseSetup, goToSeconds, letterOf } from '../../../../desk/choose';
import { useSession } from '../../../../desk/hooks';
import { liveStore } from '../../../../desk/liveStore';
import { useDriver } from '../../../overhead/useDriver';
import { useElementSize } from '../../../parts/useElementSize';
import { type ChartRow, chartRows, columnEdges, pixelAt } from './chart';
import { goAmongBars } from './moving';
import { barWords, beatName, holeWords, rowName } from './words';

/**
 * The column of names and the room before it (as in coverage.css), and the least that a beat may be wide and still be
 * lettered, pixels.
 */
const NAMES = 96;
const BEFORE = 16;
const LEAST = 58;
/** From one line of bars to the next under a mouse and under a finger, and the room over and under them, pixels. */
const LINE = { fine: 22, touch: 48 };
const AROUND = 4;

const isTouch = (): boolean => matchMedia('(pointer: coarse)').matches;

function visit(setupId: string | null, seconds: number): void {
  liveStore.getState().setPlaying(false);
  if (setupId !== null) chooseSetup(setupId);
  goToSeconds(seconds);
}

function Row({
  plan,
  row,
  edges,
}: {
  readonly plan: Plan;
  readonly row: ChartRow;
  readonly edges: readonly number[];
}) {
  const setupId = useSession((state) => state.setupId);
  const name = rowName(plan, row);
  const line = isTouch() ? LINE.touch : LINE.fine;
  const place = ({ first, last }: { readonly first: number; readonly last: number }) => ({
    left: edges[first],
    width: edges[last + 1] - edges[first],
  });
  return (
    <div className="coverage-row" data-row style={{ height: row.lines * line + 2 * AROUND + 1 }}>
      <span className="coverage-name" title={name}>
        {name}
        {row.performerIds.length > 1 ? <small>two shot</small> : null}
      </span>
      <div className="coverage-track">
        {row.holes.map((hole) => (
          <button
            key={hole.first}
            type="button"
            className="coverage-hole"
            data-bar
            style={place(hole)}
            aria-label={holeWords(plan, row, hole)}
            title={holeWords(plan, row, hole)}
            onClick={() => visit(null, hole.fromSeconds)}
          >
            <span>no setup</span>
          </button>
        ))}
        {row.bars.map((bar) => (
          <button
            key={`${bar.setupId} ${bar.first}`}
            type="button"
            className={bar.whole ? 'coverage-bar' : 'coverage-bar in-part'}
            data-bar
            style={{ ...place(bar), top: AROUND + bar.line * line, height: line - 2 }}
            aria-pressed={bar.setupId === setupId}
            aria-label={barWords(plan, row, bar)}
            title={barWords(plan, row, bar)}
            onClick={() => visit(bar.setupId, bar.fromSeconds)}
          >
            <b>{letterOf(plan, bar.setupId)}</b> <span>{bar.size}</span>
          </button>
        ))}
      </div>
    </div>
  );
}

/** Beats across, performers and pairs down: which setup has them, in which size, and what nobody has. */
export function CoverageChart({ plan, coverage }: { readonly plan: Plan; readonly coverage: Coverage }) {
  const [outer, setOuter] = useState<HTMLElement | null>(null);
  const { width } = useElementSize(outer);
  const head = useRef<HTMLElement>(null);
  const { intervals } = coverage;
  const rows = useMemo(() => chartRows(coverage), [coverage]);
  const edges = columnEdges(intervals, width - BEFORE - NAMES - 1, LEAST);
  const long = edges[edges.length - 1];
  useDriver(() => {
    const x = pixelAt(intervals, edges, liveStore.getState().seconds);
    head.current?.style.setProperty('transform', `translateX(${x}px)`);
  });
  const last = intervals[intervals.length - 1];
  return (
    <div className="coverage-scroll" ref={setOuter}>
      {width > 0 ? (
        <section
          className="coverage-chart"
          aria-label="Coverage, beat by beat"
          style={{ width: NAMES + long }}
          onKeyDown={goAmongBars}
        >
          <div className="coverage-beats" aria-hidden="true">
            {intervals.map(({ fromBeat, fromSeconds }, k) => (
              <span
                key={fromBeat}
                style={{ left: NAMES + edges[k], width: edges[k + 1] - edges[k] }}
                title={beatName(plan, fromBeat)}
              >
                <b>{beatName(plan, fromBeat)}</b>
                {formatSeconds(fromSeconds)}
              </span>
            ))}
            <i className="corner" />
          </div>
          <div className="coverage-lines" aria-hidden="true">
            {edges.slice(1).map((x) => (
              <i key={x} style={{ left: x }} />
            ))}
          </div>
          {rows.map((row) => (
            <Row key={row.performerIds.join(' ')} plan={plan} row={row} edges={edges} />
          ))}
          <div className="coverage-lines" aria-hidden="true">
            <i className="now" ref={head} />
          </div>
          <p className="vh">
            It ends with {beatName(plan, last.toBeat)}, {formatSeconds(last.toSeconds)}.
          </p>
        </section>
      ) : null}
    </div>
  );
}
