import { useState } from 'react';
import { changeKeys } from '../../../core/plan/edits/changeKeys';
import { setLens } from '../../../core/plan/edits/setLens';
import { named } from '../../../core/plan/named';
import type { Plan } from '../../../core/plan/schema/plan';
import type { LensTrial } from '../../../core/report/lensTest';
import { heldAt, type LensTry } from '../../../core/report/lensTries';
import type { Span } from '../../../core/report/types';
import { letterOf } from '../../../desk/choose';
import { Glyph } from '../../parts/Glyph';
import { endPreview, make, preview } from '../previewing';
import { StillCanvas } from './StillCanvas';
import { heldWords, lensName, placeWords, showingOf, sizeWords, zoomWords } from './words';

type Holding = LensTrial['holdings'][number];

/** When somebody is held, as a bar over the time of the move; at one instant, a word. */
function Held({ holding, span }: { readonly holding: Holding; readonly span: Span }) {
  const [from, to] = span;
  const percent = (seconds: number): string => `${((100 * (seconds - from)) / (to - from)).toFixed(2)}%`;
  return (
    <span className="held">
      <b className="who">{holding.label}</b>
      {from === to ? (
        <span>{heldWords(holding, span)}</span>
      ) : (
        <>
          <span className="vh">, {heldWords(holding, span)}, </span>
          <span className="held-line" aria-hidden="true">
            {holding.heldSpans.map(([start, end]) => (
              <i key={start} style={{ left: percent(start), width: percent(from + end - start) }} />
            ))}
          </span>
        </>
      )}
      <span className="q held-how">
        {[sizeWords(holding), placeWords(holding)].filter((words) => words !== null).join(', ')}
      </span>
    </span>
  );
}

/** How much of what should keep out shows, and by a press, what. */
function Gear({ trial }: { readonly trial: LensTrial }) {
  const [open, setOpen] = useState(false);
  const items = showingOf(trial.report);
  if (items.length === 0)
    return (
      <p className="chip verd">
        <Glyph verdict="clear" />
        no gear shows
      </p>
    );
  const counts = (['showing', 'mirrored'] as const)
    .map((verdict) => ({ verdict, count: items.filter((item) => item.verdict === verdict).length }))
    .filter(({ count }) => count > 0);
  return (
    <>
      <button
        type="button"
        className="bare gear"
        aria-expanded={open}
        aria-label={`What shows on ${trial.label}: ${counts.map(({ verdict, count }) => `${count} ${verdict}`).join(', ')}`}
        onClick={() => setOpen(!open)}
      >
        {counts.map(({ verdict, count }) => (
          <span key={verdict} className="chip">
            <Glyph verdict={verdict} />
            {count}
          </span>
        ))}
        <span className="q">{open ? 'fold away' : 'what'}</span>
      </button>
      {open ? (
        <ul className="gear-names">
          {items.map((item) => (
            <li key={item.id}>
              <Glyph verdict={item.verdict} />
              {item.label}
            </li>
          ))}
        </ul>
      ) : null}
    </>
  );
}

/** One lens of the kit on the setup: pressed it is taken, under the pointer or the focus it is seen in the frame. */
export function LensCard(props: {
  readonly plan: Plan;
  readonly setupId: string;
  readonly way: LensTry;
  /** Undefined until it is tried. */
  readonly trial: LensTrial | undefined;
  readonly wanted: readonly string[];
  readonly seconds: number;
}) {
  const { plan, setupId, way, trial, wanted, seconds } = props;
  const { lens, isPresent } = way;
  const heldMm = way.use === 'wide end' ? lens.focalMm : way.use === 'long end' ? lens.longestMm : undefined;
  const change = (before: Plan): Plan => {
    const fitted = setLens(before, { setupId, lens: lens.id });
    if (heldMm === undefined) return fitted;
    return changeKeys(fitted, { setupId, change: (keys) => heldAt(keys, heldMm) });
  };
  const show = (): void => {
    if (!isPresent) preview('lens test', change);
  };
  return (
    <li className="lens-card" aria-current={isPresent ? 'true' : undefined}>
      <button
        type="button"
        className="take"
        onPointerEnter={(event) => {
          if (event.pointerType === 'mouse') show();
        }}
        onPointerLeave={() => endPreview('lens test')}
        onFocus={(event) => {
          if (event.currentTarget.matches(':focus-visible')) show();
        }}
        onBlur={() => endPreview('lens test')}
        onClick={() =>
          make('take the lens', change, `${named(way.label)} is on setup ${letterOf(plan, setupId)}.`)
        }
      >
        <StillCanvas plan={plan} setup={way.setup} seconds={seconds} />
        <span className="cap lens-cap">
          <b className="lens" title={lens.label}>
            {lensName(lens, plan.kit.lenses)}
          </b>
          {way.use ? <span className="use">{zoomWords(way)}</span> : null}
          {isPresent ? <span className="q">on it</span> : null}
        </span>
        {trial ? (
          trial.holdings
            .filter(({ performerId }) => wanted.includes(performerId))
            .map((holding) => (
              <Held key={holding.performerId} holding={holding} span={trial.report.seconds} />
            ))
        ) : (
          <span className="q">not tried yet</span>
        )}
      </button>
      {trial ? <Gear trial={trial} /> : null}
    </li>
  );
}
