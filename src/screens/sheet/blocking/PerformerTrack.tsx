import type { Plan } from '../../../core/plan/schema/plan';
import type { Timed } from '../../../desk/blocking/things';
import { measure, reachOf, useDrawn } from './drawing';
import { Handle } from './Handle';
import { placeAlong, reaches } from './labels';
import type { PerformerLane } from './lanes';
import { xOf } from './scale';
import { facesText, looksText, walkTexts } from './words';

/** The line of a lane from its upper edge, pixels. */
const LINE_Y = { fine: 22, touch: 30 };
/** How far a walk's wave goes up and down, pixels. */
const WAVE = 7;
/** Beside a mark's tick, pixels. */
const INDENT = 5;

/** A walk's line: a wave from where it is left to where it arrives. */
const wave = (from: number, to: number, y: number): string => {
  const third = (to - from) / 3;
  return `M${from} ${y}C${from + third} ${y - WAVE * 1.6} ${to - third} ${y + WAVE * 1.6} ${to} ${y}`;
};

/** Somebody's marks, how long they stay at each, and their walks. */
export function PerformerTrack({ plan, lane }: { readonly plan: Plan; readonly lane: PerformerLane }) {
  const { scale, width, touch, lengths } = useDrawn();
  const { stays, walks, performer } = lane;
  const y = touch ? LINE_Y.touch : LINE_Y.fine;
  const letters = measure(touch);
  const x = (seconds: number): number => xOf(scale, seconds);
  const end = x(scale.until);
  const labels = placeAlong(
    stays.map(({ mark, name, fromSeconds }) => {
      const faces = facesText(plan, mark);
      const looks = looksText(plan, mark.looks);
      const full = `${name}, ${faces}`;
      return { x: x(fromSeconds) + INDENT, texts: [...(looks ? [`${full}, ${looks}`] : []), full, name] };
    }),
    letters,
    width,
  );
  // Marks and ends of holds share the line: whichever is nearer takes the press.
  const held = stays.flatMap((stay): { readonly thing: Timed; readonly x: number }[] => {
    const of = { performerId: performer.id, markId: stay.mark.id };
    const mark = { thing: { type: 'mark', ...of } as const, x: x(stay.fromSeconds) };
    if (stay.leaveSeconds === null) return [mark];
    return [mark, { thing: { type: 'hold', ...of } as const, x: x(stay.leaveSeconds) }];
  });
  const reached = reaches(
    held.map((each) => each.x),
    reachOf(touch),
  );
  return (
    <>
      <svg className="lines-of" width={width} aria-hidden="true">
        <path
          className="stay"
          d={stays
            .map(
              ({ fromSeconds, untilSeconds }) =>
                `M${x(fromSeconds)} ${y}H${untilSeconds === null ? end : x(untilSeconds)}`,
            )
            .join('')}
        />
        {walks.map((walk) => (
          <path
            key={walk.fromMark}
            className={walk.tooFast ? 'walk fast' : 'walk'}
            d={wave(x(walk.leaveSeconds), x(walk.arriveSeconds), y)}
          />
        ))}
      </svg>
      {labels.map(({ text }, k) =>
        text === '' ? null : (
          <span
            key={stays[k].mark.id}
            className="lettering over"
            style={{ left: x(stays[k].fromSeconds) + INDENT }}
            aria-hidden="true"
          >
            {text}
          </span>
        ),
      )}
      {walks.map((walk) => {
        const [from, to] = [x(walk.leaveSeconds), x(walk.arriveSeconds)];
        const sign = walk.tooFast ? 16 : 0;
        const text = walkTexts(walk, lengths).find((each) => letters(each) + sign <= to - from - 2);
        if (text === undefined && !walk.tooFast) return null;
        return (
          <span
            key={walk.fromMark}
            className={walk.tooFast ? 'lettering under fast' : 'lettering under'}
            style={{ left: (from + to) / 2 }}
          >
            {walk.tooFast ? (
              <svg className="warning" viewBox="0 0 14 12" aria-hidden="true">
                <path d="M7 1 13 11.3H1zM7 4.6v3.2M7 9v1" />
              </svg>
            ) : null}
            {text}
          </span>
        );
      })}
      {held.map(({ thing, x: at }, k) => (
        <Handle
          key={`${thing.type} ${'markId' in thing ? thing.markId : ''}`}
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
