import { useId, useMemo, useState } from 'react';
import { focusSampleAt, focusTrack } from '../../core/continuity/focusTrack';
import type { Setup } from '../../core/plan/schema/setup';
import { withNames } from '../../core/plan/withNames';
import { formatLength } from '../../core/units/lengths';
import { goToSeconds } from '../../desk/choose';
import { useLive, useLivePlan, useSession } from '../../desk/hooks';
import {
  BAR_HEIGHT,
  BAR_WIDTH,
  bandPath,
  focusReading,
  focusScale,
  letteredRacks,
  linePath,
  racksOf,
  rackWords,
  spread,
} from './focusBar';
import './focusBar.css';

/** So many instants along the move. */
const SAMPLES = 65;
/** Lettering beside the bar keeps this far apart, in the drawing's units. */
const LETTERING = 13;
/** Names of racks nearer to each other than this share of the bar would run together. */
const LETTERED_APART = 0.14;
/** Performers' lines, told apart without a colour. */
const DASHES = ['none', '6 3', '1.5 3', '9 3 1.5 3'];

/** So many names have room beside the bar. */
const MOST_NAMED = Math.floor((BAR_HEIGHT - 14) / LETTERING) + 1;

/** The lines that are named: of many, those that end nearest to a height, in their own order. */
function nearestTo<Line extends { readonly y: number }>(
  height: number,
  lines: readonly Line[],
): readonly Line[] {
  if (lines.length <= MOST_NAMED) return lines;
  const near = lines.toSorted((a, b) => Math.abs(a.y - height) - Math.abs(b.y - height)).slice(0, MOST_NAMED);
  return lines.filter((line) => near.includes(line));
}

/** The reading at an instant of the clock, drawn only while somebody asks for it. */
function Reading({ setup, seconds }: { readonly setup: Setup; readonly seconds: number | null }) {
  const plan = useLivePlan();
  const lengths = useSession((state) => state.lengths);
  const clock = useLive((state) => Math.round(state.seconds * 8) / 8);
  const sample = focusSampleAt(plan, setup, seconds ?? clock);
  const racks = racksOf(plan, setup, lengths);
  return <span className="focus-reading">{focusReading(plan, sample, lengths, racks)}</span>;
}

/**
 * Focus along the move: its distance with what it keeps sharp as a band, a line for each performer by their distance.
 * Each rack is a line where it ends and a bar as long as its pull, with the name of whom it goes to.
 * A press goes to that instant; under the pointer, or with the focus of the keys, the numbers of the instant are read.
 */
export function FocusBar(props: { readonly setup: Setup; readonly from: number; readonly to: number }) {
  const { setup, from, to } = props;
  const plan = useLivePlan();
  const lengths = useSession((state) => state.lengths);
  const [pointed, setPointed] = useState<number | null>(null);
  const [focused, setFocused] = useState(false);
  const samples = useMemo(() => focusTrack(plan, setup, SAMPLES), [plan, setup]);
  const scale = useMemo(() => focusScale(samples), [samples]);
  const last = samples[samples.length - 1];
  const lines = withNames(plan).cast.flatMap(({ id, label }, index) => {
    const end = samples.findLast(({ performers }) => performers[index]?.metres !== null);
    const metres = end?.performers[index]?.metres ?? null;
    return metres === null ? [] : [{ id, label, index, y: scale.yOf(metres) }];
  });
  const told = useId();
  const racks = useMemo(() => racksOf(plan, setup, lengths), [plan, setup, lengths]);
  const marks = letteredRacks(racks, [from, to], LETTERED_APART);
  const xOf = (seconds: number): number =>
    ((Math.min(to, Math.max(from, seconds)) - from) / (to - from)) * BAR_WIDTH;
  const named = nearestTo(last.focusMetres === null ? BAR_HEIGHT / 2 : scale.yOf(last.focusMetres), lines);
  const heights = spread(
    named.map(({ y }) => y),
    LETTERING,
    5,
    BAR_HEIGHT - 9,
  );
  return (
    <>
      <span className="focus-ticks" aria-hidden="true">
        <b>focus</b>
        {scale.ticks.map((metres) => (
          <i key={metres} style={{ top: `${(scale.yOf(metres) / BAR_HEIGHT) * 100}%` }}>
            {formatLength(metres, lengths, { decimals: metres < 1 ? 1 : 0 })}
          </i>
        ))}
      </span>
      <button
        type="button"
        className="focus-bar"
        aria-label={`Focus along the move. ${focusReading(plan, last, lengths)}`}
        aria-describedby={racks.length > 0 ? told : undefined}
        onPointerMove={(event) => {
          const { left, width } = event.currentTarget.getBoundingClientRect();
          const share = Math.min(1, Math.max(0, (event.clientX - left) / width));
          setPointed(from + (to - from) * share);
        }}
        onPointerLeave={() => setPointed(null)}
        onFocus={(event) => setFocused(event.currentTarget.matches(':focus-visible'))}
        onBlur={() => setFocused(false)}
        onClick={() => {
          if (pointed !== null) goToSeconds(pointed);
        }}
      >
        <svg viewBox={`0 0 ${BAR_WIDTH} ${BAR_HEIGHT}`} preserveAspectRatio="none" aria-hidden="true">
          {scale.ticks.map((metres) => (
            <path key={metres} className="tick" d={`M0 ${scale.yOf(metres)}H${BAR_WIDTH}`} />
          ))}
          <path className="depth" d={bandPath(samples, scale)} />
          {lines.map(({ id, index }) => (
            <path
              key={id}
              className="whom"
              strokeDasharray={DASHES[index % DASHES.length]}
              d={linePath(samples, scale, ({ performers }) => performers[index]?.metres ?? null)}
            />
          ))}
          <path className="focus" d={linePath(samples, scale, ({ focusMetres }) => focusMetres)} />
          {marks.map(({ rack }) => (
            <g key={rack.at} className="rack">
              <path d={`M${xOf(rack.at)} 0V${BAR_HEIGHT}`} />
              <path className="pull" d={`M${xOf(rack.from)} 1.5H${xOf(rack.at)}`} />
            </g>
          ))}
        </svg>
        {marks.map(({ rack, share, lettered }) =>
          lettered ? (
            <span
              key={rack.at}
              className="rack-name"
              data-late={share > 0.8 ? true : undefined}
              style={{ left: `${share * 100}%` }}
            >
              to {rack.onto}
            </span>
          ) : null,
        )}
        <i className="playhead" />
        {pointed === null ? null : (
          <i
            className="pointed"
            style={{ left: `${to > from ? ((pointed - from) / (to - from)) * 100 : 0}%` }}
          />
        )}
        {pointed !== null || focused ? <Reading setup={setup} seconds={pointed} /> : null}
      </button>
      {racks.length > 0 ? (
        <span id={told} className="vh">
          Racks: {racks.map(rackWords).join('; ')}.
        </span>
      ) : null}
      <span className="focus-names" aria-hidden="true">
        {named.map(({ id, label, index }, k) => (
          <i key={id} style={{ top: `${(heights[k] / BAR_HEIGHT) * 100}%` }}>
            <svg viewBox="0 0 22 4" aria-hidden="true">
              <path d="M0 2H22" strokeDasharray={DASHES[index % DASHES.length]} />
            </svg>
            <span className="name">{label}</span>
          </i>
        ))}
      </span>
    </>
  );
}
