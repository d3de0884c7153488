import { type MouseEvent, useCallback, useEffect, useRef } from 'react';
import { glassOf, spanOf } from '../../core/optics/camera';
import { circleOf, type SetupCircle } from '../../core/optics/circleOf';
import { calledBy } from '../../core/plan/named';
import type { Setup } from '../../core/plan/schema/setup';
import type { SetupReport } from '../../core/report/types';
import { NBSP } from '../../core/units/numbers';
import { formatShare } from '../../core/units/shares';
import { chooseSetup, letterOf } from '../../desk/choose';
import { seeBeside } from '../../desk/compare/compareStore';
import { useContinuityTally } from '../../desk/continuityStore';
import { useLive, usePlanState, useReports, useSession } from '../../desk/hooks';
import { viewStore } from '../../desk/viewStore';
import { ContinuityGlyph } from '../parts/ContinuityGlyph';
import { Glyph, TONE_OF_VERDICT } from '../parts/Glyph';
import { concernOf, findingsOf } from '../report/concerns';
import { summaryOf } from '../report/summary';
import { useSetupReport } from '../report/useSetupReports';

/** What is wider than this is no upright, and a bar would not say where it is. */
const UPRIGHT_FRAME_WIDTHS = 0.2;
/** Bars nearer than this are one. */
const APART_FRAME_WIDTHS = 0.04;
const MOST_BARS = 4;

/** Where uprights show, 0..1 of the frame's width, the largest first. */
function barsOf(report: SetupReport): readonly number[] {
  const bars: number[] = [];
  for (const { extent } of findingsOf(report).filter((item) => concernOf(item) === 'shows')) {
    if (!extent || extent[2] - extent[0] > UPRIGHT_FRAME_WIDTHS) continue;
    const middle = (extent[0] + extent[2]) / 2;
    if (bars.every((bar) => Math.abs(bar - middle) > APART_FRAME_WIDTHS)) bars.push(middle);
  }
  return bars.slice(0, MOST_BARS);
}

/** Bars over the thumbnail where things show. */
function ShowingBars({ report }: { readonly report: SetupReport }) {
  return barsOf(report).map((middle) => (
    <i key={middle} className="shows" style={{ left: `${(100 * middle).toFixed(2)}%` }} />
  ));
}

/** Where the image circle ends, over the thumbnail: what is outside is dark, by how much stands beside it. */
function DarkCorners({ circle }: { readonly circle: SetupCircle }) {
  const [rx, ry] = circle.halfAxes;
  return (
    <>
      <svg className="dark-corners" viewBox="0 0 1 1" preserveAspectRatio="none" aria-hidden="true">
        <path
          fillRule="evenodd"
          d={`M0 0H1V1H0ZM${0.5 - rx} 0.5A${rx} ${ry} 0 1 1 ${0.5 + rx} 0.5A${rx} ${ry} 0 1 1 ${0.5 - rx} 0.5Z`}
        />
      </svg>
      <span className="dark-share">circle cuts {formatShare(circle.delivery.darkShare)}</span>
    </>
  );
}

/** How many of its findings of continuity break, where any does. */
function Breaks({ setupId }: { readonly setupId: string }) {
  const { breaks } = useContinuityTally(setupId);
  if (breaks === 0) return null;
  return (
    <span className="breaks verm">
      <ContinuityGlyph standing="breaks" />
      {breaks === 1 ? 'one breaks' : `${breaks} break`}
    </span>
  );
}

/** While a move plays, whether the clock is outside what a setup covers. */
function useIsIdle(setup: Setup): boolean {
  const plan = usePlanState((state) => state.plan);
  const [from, to] = spanOf(plan, setup);
  return useLive(({ playing, seconds }) => playing && (seconds < from || seconds > to));
}

/** One setup: its picture, letter, name, focal length, and its verdict in a few words. */
export function SetupCard({ setup }: { readonly setup: Setup }) {
  const plan = usePlanState((state) => state.plan);
  const chosen = useSession((state) => state.setupId === setup.id);
  const lengths = useSession((state) => state.lengths);
  const squeezed = useSession((state) => state.squeezed);
  const { lens } = glassOf(plan, setup);
  const { report } = useSetupReport(setup.id);
  const summary = report ? summaryOf(report, lengths) : null;
  const letter = letterOf(plan, setup.id);
  const name = calledBy(setup.label, 'setup');
  const circle = circleOf(plan, setup);
  const reading = useReports((state) => state.reading !== null);
  const idle = useIsIdle(setup);
  const choose = ({ shiftKey, ctrlKey, metaKey }: MouseEvent): void => {
    if (shiftKey || ctrlKey || metaKey) seeBeside(setup.id);
    else chooseSetup(setup.id);
  };
  const card = useRef<HTMLLIElement>(null);
  const register = useCallback(
    (canvas: HTMLCanvasElement | null) => viewStore.getState().setThumbElement(setup.id, canvas),
    [setup.id],
  );
  useEffect(() => {
    if (chosen) card.current?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [chosen]);
  return (
    <li ref={card}>
      <button
        type="button"
        className="card"
        title={`${name}; with Shift, beside the one that is looked through`}
        aria-current={chosen ? 'true' : undefined}
        onClick={choose}
        onContextMenu={(event) => {
          // A long press of a finger, or the other button of a mouse.
          event.preventDefault();
          seeBeside(setup.id);
        }}
      >
        <span className={idle ? 'shot idle' : 'shot'} style={{ aspectRatio: setup.delivery }}>
          <canvas ref={register} />
          {report ? <ShowingBars report={report} /> : null}
          {circle && !circle.delivery.covers ? <DarkCorners circle={circle} /> : null}
          {idle ? <span className="not-now">not in this beat</span> : null}
        </span>
        <span className="cap">
          <b>{letter}</b>
          <span className="name">{name}</span>
          <span className="q">
            {lens.focalMm}
            {NBSP}mm{squeezed && lens.squeeze !== 1 ? ', de-squeezed' : ''}
          </span>
        </span>
        {summary ? (
          <span className={`say ${summary.tone ?? TONE_OF_VERDICT[summary.verdict]}`}>
            <Glyph verdict={summary.verdict} {...(summary.tone ? { tone: summary.tone } : {})} />
            <span className="name">{summary.words}</span>
            <Breaks setupId={setup.id} />
          </span>
        ) : (
          <span className="say q">{reading ? 'being read' : 'not read'}</span>
        )}
      </button>
    </li>
  );
}
