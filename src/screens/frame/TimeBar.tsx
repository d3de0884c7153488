import type { Setup } from '../../core/plan/schema/setup';
import type { Span } from '../../core/report/types';
import { useSession } from '../../desk/hooks';
import { concernOf, findingsOf } from '../report/concerns';
import { useReportOverSpan } from '../report/useSetupReports';

/** Units of the drawing's width, stretched over whatever room there is. */
const WIDTH = 1000;
/** A moment is drawn this long, so that it can be seen. */
const SHORTEST = 4;

/** A tick each second, or each 5, 10, 60 where they would run together. */
function ticksOf(from: number, to: number): readonly number[] {
  const every = [1, 5, 10, 60, 600].find((step) => (to - from) / step <= 24) ?? 3600;
  const first = Math.ceil(from / every);
  return Array.from(
    { length: Math.max(Math.floor(to / every) - first + 1, 0) },
    (_, n) => (first + n) * every,
  );
}

/**
 * When things show in the move: solid where one shows, dashed below where one is mirrored, thin above where one
 * comes nearest to the frame line. Of the chosen item, or of all findings.
 */
export function TimeBar(props: { readonly setup: Setup; readonly from: number; readonly to: number }) {
  const { setup, from, to } = props;
  const report = useReportOverSpan(setup.id);
  const selectedId = useSession((state) => state.selectedId);
  const findings = report ? findingsOf(report) : [];
  const chosen = report?.items.filter((item) => item.id === selectedId) ?? [];
  const told = chosen.some((item) => item.spans.length > 0 || item.mirroredSpans.length > 0)
    ? chosen
    : findings;

  const xOf = (seconds: number): number => (to > from ? ((seconds - from) / (to - from)) * WIDTH : 0);
  const lines = (spans: readonly Span[], y: number): string =>
    spans
      .map(([start, end]) => {
        const left = xOf(start);
        return `M${left} ${y}H${Math.max(xOf(end), left + SHORTEST)}`;
      })
      .join('');
  const showing = told.filter((item) => concernOf(item) !== 'close').flatMap((item) => item.spans);
  const mirrored = told.flatMap((item) => item.mirroredSpans);
  const near = told.flatMap((item) =>
    item.verdict === 'close' && item.margin ? [item.margin.atSeconds] : [],
  );
  return (
    <svg viewBox={`0 0 ${WIDTH} 30`} preserveAspectRatio="none" aria-hidden="true">
      <path className="base" d={`M0 15.5H${WIDTH}`} />
      {ticksOf(from, to).map((seconds) => (
        <path key={seconds} className="base" d={`M${xOf(seconds)} 12v7`} />
      ))}
      <path className="shows" d={lines(showing, 15.5)} />
      <path className="mirrors" d={lines(mirrored, 22.5)} />
      <path
        className="nears"
        d={near
          .map((seconds) => `M${Math.max(xOf(seconds) - 12, 0)} 8.5H${Math.min(xOf(seconds) + 12, WIDTH)}`)
          .join('')}
      />
    </svg>
  );
}
