import { useMemo } from 'react';
import { flickerStretches, secondsOfCue } from '../../../core/plan/cues';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Timed } from '../../../desk/blocking/things';
import { measure, reachOf, useDrawn } from './drawing';
import { Handle } from './Handle';
import { placeAlong, reaches } from './labels';
import { type LampLane, levelsOf } from './lanes';
import { xOf } from './scale';
import { cueText } from './words';

/** A fade shorter than this has no end of its own to be taken hold of, pixels. */
const SHORTEST_FADE = 12;
/** Beside a cue's tick, pixels. */
const INDENT = 5;

/** How bright a lamp is along the action: a thin line that falls where it flickers or is dimmed, and its cues. */
export function LampTrack({ plan, lane }: { readonly plan: Plan; readonly lane: LampLane }) {
  const { scale, width, touch } = useDrawn();
  const { lamp } = lane;
  const [top, height] = touch ? [22, 24] : [14, 14];
  const x = (seconds: number): number => xOf(scale, seconds);
  const path = useMemo(() => {
    const full = Math.max(lamp.dim, ...(lamp.cues ?? []).map(({ dim }) => dim ?? 0)) || 1;
    const corners = levelsOf(plan, lamp, 0, scale.until).map(
      ({ seconds, level }) =>
        `${xOf(scale, seconds).toFixed(1)} ${(top + height * (1 - level / full)).toFixed(1)}`,
    );
    return `M${corners.join('L')}`;
  }, [plan, lamp, scale, top, height]);
  // A ragged line below where its flicker plays: also where it is out, and nobody sees it.
  const ragged = useMemo(
    () =>
      flickerStretches(lamp, plan, 0, scale.until)
        .map(
          ([from, until]) =>
            `M${xOf(scale, from).toFixed(1)} ${top + height + 3}H${xOf(scale, until).toFixed(1)}`,
        )
        .join(''),
    [plan, lamp, scale, top, height],
  );
  const cues = (lamp.cues ?? [])
    .map((cue, cueIndex) => ({ cue, cueIndex, from: secondsOfCue(plan, cue) }))
    .toSorted((a, b) => a.from - b.from);
  const held = cues.flatMap(({ cue, cueIndex, from }): { readonly thing: Timed; readonly x: number }[] => {
    const of = { itemId: lamp.id, cueIndex };
    const [start, end] = [x(from), x(from + cue.fadeSeconds)];
    const begins = { thing: { type: 'cue', ...of } as const, x: start };
    if (cue.dim === undefined || end - start < SHORTEST_FADE) return [begins];
    return [begins, { thing: { type: 'fade', ...of } as const, x: end }];
  });
  const inOrder = held.toSorted((a, b) => a.x - b.x);
  const reached = reaches(
    inOrder.map((each) => each.x),
    reachOf(touch),
  );
  const labels = placeAlong(
    cues.map(({ cue, from }) => {
      const words = cueText(cue);
      return { x: x(from) + INDENT, texts: [words, words.split(',')[0]] };
    }),
    measure(touch),
    width,
  );
  return (
    <>
      <svg className="lines-of" width={width} aria-hidden="true">
        <path className="level" d={path} />
        {ragged === '' ? null : <path className="flickers" d={ragged} />}
      </svg>
      {labels.map(({ text }, k) =>
        text === '' ? null : (
          <span
            key={cues[k].cueIndex}
            className="lettering over of-cue"
            style={{ left: x(cues[k].from) + INDENT }}
            aria-hidden="true"
          >
            {text}
          </span>
        ),
      )}
      {inOrder.map(({ thing, x: at }, k) => (
        <Handle
          key={`${thing.type} ${'cueIndex' in thing ? thing.cueIndex : ''}`}
          thing={thing}
          plan={plan}
          x={at}
          {...reached[k]}
        >
          <i className="tick" style={{ left: reached[k].before }} aria-hidden="true" />
        </Handle>
      ))}
    </>
  );
}
