import { useCallback, useEffect, useRef } from 'react';
import { glassOf } from '../../core/optics/camera';
import type { Setup } from '../../core/plan/schema/setup';
import type { SetupReport } from '../../core/report/types';
import { NBSP } from '../../core/units/numbers';
import { chooseSetup, letterOf } from '../../desk/choose';
import { usePlanState, useSession } from '../../desk/hooks';
import { viewStore } from '../../desk/viewStore';
import { Glyph, TONE_OF_VERDICT } from '../parts/Glyph';
import { concernOf } from '../report/concerns';
import { summaryOf } from '../report/summary';
import { useSetupReport } from '../report/useSetupReports';

/** Where things show, as bars over the thumbnail. */
function ShowingBars({ report }: { readonly report: SetupReport }) {
  return report.items.map((item) =>
    concernOf(item) === 'shows' && item.extent ? (
      <i
        key={item.id}
        className="shows"
        style={{ left: `${(50 * (item.extent[0] + item.extent[2])).toFixed(2)}%` }}
      />
    ) : null,
  );
}

/** One setup: its picture, letter, name, focal length, and its verdict in a few words. */
export function SetupCard({ setup }: { readonly setup: Setup }) {
  const plan = usePlanState((state) => state.plan);
  const chosen = useSession((state) => state.setupId === setup.id);
  const lengths = useSession((state) => state.lengths);
  const { report } = useSetupReport(setup.id);
  const summary = report ? summaryOf(report, lengths) : null;
  const letter = letterOf(plan, setup.id);
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
        aria-current={chosen ? 'true' : undefined}
        onClick={() => chooseSetup(setup.id)}
      >
        <span className="shot" style={{ aspectRatio: setup.delivery }}>
          <canvas ref={register} />
          {report ? <ShowingBars report={report} /> : null}
        </span>
        <span className="cap">
          <b>{letter}</b>
          <span className="name">{setup.label}</span>
          <span className="q">
            {glassOf(plan, setup).lens.focalMm}
            {NBSP}mm
          </span>
        </span>
        {summary ? (
          <span className={`say ${TONE_OF_VERDICT[summary.verdict]}`}>
            <Glyph verdict={summary.verdict} />
            <span className="name">{summary.words}</span>
          </span>
        ) : (
          <span className="say q">being read</span>
        )}
      </button>
    </li>
  );
}
