import type { Plan } from '../../../core/plan/schema/plan';
import type { Span } from '../../../core/report/types';
import { chooseThing } from '../../../desk/blocking/choosing';
import { concernOf, findingsOf } from '../../report/concerns';
import { useReportOverSpan } from '../../report/useSetupReports';
import { measure, reachOf, useDrawn } from './drawing';
import { Handle } from './Handle';
import { placeAlong, reaches } from './labels';
import type { HandsLane, SetupLane } from './lanes';
import { xOf } from './scale';

/** The line of a low lane from its upper edge, pixels. */
const lineY = (touch: boolean): number => (touch ? 30 : 20);
/** A moment is drawn this long, so that it can be seen, pixels. */
const SHORTEST = 3;

/** In whose hands a thing is, and where it goes from one to another. */
export function HandsTrack({ plan, lane }: { readonly plan: Plan; readonly lane: HandsLane }) {
  const { scale, width, touch } = useDrawn();
  const { holds } = lane.lane;
  const y = lineY(touch);
  const x = (seconds: number): number => xOf(scale, seconds);
  const end = x(scale.until);
  const labelOf = (id: string): string => plan.cast.find((each) => each.id === id)?.label ?? 'somebody';
  const labels = placeAlong(
    holds.map(({ performerId, fromSeconds }) => ({
      x: x(fromSeconds) + 5,
      texts: [`in the hands of ${labelOf(performerId)}`, labelOf(performerId)],
    })),
    measure(touch),
    width,
  );
  const reached = reaches(
    lane.passes.map(({ seconds }) => x(seconds)),
    reachOf(touch),
  );
  return (
    <>
      <svg className="lines-of" width={width} aria-hidden="true">
        <path
          className="stay"
          d={holds
            .map(
              ({ fromSeconds, untilSeconds }) =>
                `M${x(fromSeconds)} ${y}H${untilSeconds === null ? end : x(untilSeconds)}`,
            )
            .join('')}
        />
        <path
          className="stay"
          d={holds
            .slice(0, 1)
            .map(({ fromSeconds }) => `M${x(fromSeconds)} ${y - 6}v12`)
            .join('')}
        />
      </svg>
      {labels.map(({ text }, k) =>
        text === '' ? null : (
          <span
            key={holds[k].fromSeconds}
            className="lettering over"
            style={{ left: x(holds[k].fromSeconds) + 5 }}
          >
            {text}
          </span>
        ),
      )}
      {lane.passes.map(({ pass, seconds }, k) => (
        <Handle
          key={pass.id}
          thing={{ type: 'pass', passId: pass.id }}
          plan={plan}
          x={x(seconds)}
          {...reached[k]}
        >
          <i className="tick" style={{ left: reached[k].before }} aria-hidden="true" />
        </Handle>
      ))}
    </>
  );
}

/** What a setup covers, its camera's keys, and when something shows in it or is mirrored. */
export function SetupTrack({ plan, lane }: { readonly plan: Plan; readonly lane: SetupLane }) {
  const { scale, width, touch } = useDrawn();
  const { setup, fromSeconds, toSeconds, keys } = lane;
  const report = useReportOverSpan(setup.id);
  const x = (seconds: number): number => xOf(scale, seconds);
  const [from, to] = [x(fromSeconds), x(toSeconds)];
  const findings = report ? findingsOf(report) : [];
  const line = (spans: readonly Span[], y: number): string =>
    spans.map(([start, stop]) => `M${x(start)} ${y}H${Math.max(x(stop), x(start) + SHORTEST)}`).join('');
  const showing = findings.filter((item) => concernOf(item) === 'shows').flatMap((item) => item.spans);
  const mirrored = findings.flatMap((item) => item.mirroredSpans);
  const y = lineY(touch);
  const keyReach = reaches(
    keys.map((seconds) => x(seconds)),
    touch ? 24 : 7,
  );
  const endReach = Math.min(reachOf(touch), Math.max(4, (to - from) / 4));
  return (
    <>
      <button
        type="button"
        className="bar"
        tabIndex={-1}
        aria-hidden="true"
        style={{ left: from, width: Math.max(to - from, SHORTEST) }}
        onClick={() => chooseThing({ type: 'setup', setupId: setup.id })}
      />
      <svg className="lines-of" width={width} aria-hidden="true">
        {keys.length > 1 ? (
          <path className="between-keys" d={`M${x(keys[0])} ${y}H${x(keys[keys.length - 1])}`} />
        ) : null}
        <path className="shows" d={line(showing, y + 8)} />
        <path className="mirrors" d={line(mirrored, y + 8)} />
      </svg>
      {(['from', 'to'] as const).map((end) => {
        const outside = reachOf(touch);
        const [before, after] = end === 'from' ? [outside, endReach] : [endReach, outside];
        return (
          <Handle
            key={end}
            thing={{ type: 'span', setupId: setup.id, end }}
            plan={plan}
            x={end === 'from' ? from : to}
            before={before}
            after={after}
          >
            <i className="end" style={{ left: before }} aria-hidden="true" />
          </Handle>
        );
      })}
      {keys.map((seconds, index) => {
        const place = `key ${index}`;
        return (
          <Handle
            key={place}
            thing={{ type: 'key', setupId: setup.id, keyIndex: index }}
            plan={plan}
            x={x(seconds)}
            {...keyReach[index]}
            className={setup.move.keys[index]?.beat === undefined ? '' : 'on-beat'}
          >
            <i className="diamond" style={{ left: keyReach[index].before }} aria-hidden="true" />
          </Handle>
        );
      })}
    </>
  );
}
