import { memo, useMemo, useState } from 'react';
import { useStore } from 'zustand';
import { scheduleOf } from '../../../../core/night/order/schedule';
import type { Doing, Stretch } from '../../../../core/night/order/walk';
import { wallTime } from '../../../../core/night/times/nightClock';
import type { Night } from '../../../../core/night/types';
import type { Plan } from '../../../../core/plan/schema/plan';
import { setupLetter } from '../../../../core/plan/setupLetter';
import { SKY_WORDS } from '../../../../core/sky/levels';
import { useSession } from '../../../../desk/hooks';
import { nightStore } from '../../../../desk/night/nightStore';
import { useElementSize } from '../../../parts/useElementSize';
import { hourMarks, type LineMark, type LineScale, lineScale, placedMarks, skyBands } from './nightLine';
import { lineWords } from './words';

/** Heights along the line, pixels: sky lettering, letters of setups, their stretches, a suggestion, hours. */
const ROWS = { sky: 12, letters: 28, from: 34, until: 54, proposed: 74, hours: 15 } as const;
const FONT = 11;
const HOURS_APART = 44;
/** Narrower than this a letter has no room over its setup, pixels. */
const LETTER = 9;

const PHASES: readonly Doing[] = ['rig', 'light', 'wet down', 'wait', 'rehearse', 'shoot'];
const asClass = (doing: Doing): string => doing.replace(' ', '-');

const SWATCH = 9;

/** How dark the sky is, from sun to dark, in a row. */
const SkyKey = () => (
  <li>
    <svg className="night-line" width={SWATCH * SKY_WORDS.length + 1} height="12" aria-hidden="true">
      {SKY_WORDS.map((word, level) => (
        <rect key={word} className={`sky-${level}`} x={level * SWATCH} y="0" width={SWATCH} height="12" />
      ))}
      <rect className="sky-frame" x=".5" y=".5" width={SWATCH * SKY_WORDS.length} height="11" />
    </svg>
    sun, three twilights, dark
  </li>
);

/** What goes on in a stretch, drawn. */
function Phase({ stretch, scale }: { readonly stretch: Stretch; readonly scale: LineScale }) {
  const { doing, from, until } = stretch;
  const [left, right] = [scale.x(from), scale.x(until)];
  const middle = (ROWS.from + ROWS.until) / 2;
  if (doing === 'change' || doing === 'wait')
    return <path className={`phase ${asClass(doing)}`} d={`M${left} ${middle}H${right}`} />;
  const wide = Math.max(0.5, right - left);
  const box = { x: left, y: ROWS.from, width: wide, height: ROWS.until - ROWS.from };
  return (
    <g className={`phase ${asClass(doing)}`}>
      <rect {...box} />
      {doing === 'light' || doing === 'wet down' ? (
        <rect {...box} className="hatch" fill={`url(#night-${asClass(doing)})`} />
      ) : null}
      {doing === 'meal' && wide > 28 ? (
        <text x={(left + right) / 2} y={middle + 4} textAnchor="middle">
          meal
        </text>
      ) : null}
    </g>
  );
}

/** The suggested order, dashed: it is not in the plan. */
function Proposed({
  night,
  order,
  scale,
}: {
  readonly night: Night;
  readonly order: readonly number[];
  readonly scale: LineScale;
}) {
  const { setups } = useMemo(() => scheduleOf(night.work, order), [night.work, order]);
  return (
    <g className="proposed">
      {setups.map(({ job, from, until }) => {
        const [left, right] = [scale.x(from), scale.x(until)];
        return (
          <g key={job}>
            <rect x={left + 0.5} y={ROWS.until + 5} width={Math.max(1, right - left - 1)} height={16} />
            {right - left > LETTER ? (
              <text x={(left + right) / 2} y={ROWS.until + 17} textAnchor="middle">
                {setupLetter(job)}
              </text>
            ) : null}
          </g>
        );
      })}
    </g>
  );
}

/** The lettering above the line: sunset and dark, and by when everyone should be off. */
function skyMarks({ clock, sky, darkness, wrapBy, schedule }: Night, scale: LineScale): readonly LineMark[] {
  const at = (minutes: number): string => wallTime(clock, minutes);
  const mark = (
    words: string,
    minutes: number | null | undefined,
    anchor: LineMark['anchor'],
  ): readonly LineMark[] =>
    minutes !== null && minutes !== undefined && minutes >= scale.from && minutes <= scale.until
      ? [
          {
            key: words,
            x: scale.x(minutes) + (anchor === 'end' ? -4 : 4),
            words: `${words} ${at(minutes)}`,
            anchor,
          },
        ]
      : [];
  return [
    ...mark('dark', darkness.span?.from, 'start'),
    ...mark('sunset', sky.sunset, 'end'),
    ...mark(
      'light',
      schedule.wrap > (darkness.span?.until ?? Infinity) ? darkness.span?.until : null,
      'start',
    ),
    ...mark('by', wrapBy, 'end'),
    ...mark('sunrise', sky.sunrise, 'start'),
  ];
}

function Drawn({
  plan,
  night,
  width,
}: {
  readonly plan: Plan;
  readonly night: Night;
  readonly width: number;
}) {
  const suggestion = useStore(nightStore, (state) => state.suggestion);
  const chosenId = useSession((state) => state.setupId);
  const proposed = suggestion?.plan === plan ? suggestion.order : null;
  const scale = useMemo(() => lineScale(night, width), [night, width]);
  const { clock, schedule, call, wrapBy } = night;
  const height = (proposed ? ROWS.proposed : ROWS.until) + ROWS.hours + 3;
  const bands = skyBands(plan, night, scale.from, scale.until);
  const letters = placedMarks(
    schedule.setups.map(({ job, from, until }) => ({
      key: setupLetter(job),
      x: scale.x((from + until) / 2),
      words: setupLetter(job),
      anchor: 'middle',
    })),
    width,
    LETTER,
  );
  const ends: readonly LineMark[] = [
    { key: 'call', x: scale.x(call), words: `call ${wallTime(clock, call)}`, anchor: 'start' },
    {
      key: 'wrap',
      x: scale.x(schedule.wrap),
      words: `wrap ${wallTime(clock, schedule.wrap)}`,
      anchor: 'end',
    },
  ];
  const foot = placedMarks([...ends, ...hourMarks(night, scale, HOURS_APART)], width, FONT);
  const line = (x: number, name: string) => <path className={name} d={`M${x} 0V${height - ROWS.hours}`} />;
  return (
    <svg className="night-line" width={width} height={height} role="img" aria-label={lineWords(plan, night)}>
      <defs>
        <pattern
          id="night-light"
          width="4"
          height="4"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <path d="M0 0V4" />
        </pattern>
        <pattern id="night-wet-down" width="4" height="4" patternUnits="userSpaceOnUse">
          <circle cx="2" cy="2" r=".8" />
        </pattern>
      </defs>
      {bands.map(({ level, from, until }) => (
        <rect
          key={from}
          className={`sky-${level}`}
          x={scale.x(from)}
          y={0}
          width={scale.x(until) - scale.x(from)}
          height={height - ROWS.hours}
        >
          <title>{`${SKY_WORDS[level]}, ${wallTime(clock, from)} to ${wallTime(clock, until)}`}</title>
        </rect>
      ))}
      {schedule.setups.map(({ job, setupId, from, until }) => (
        <rect
          key={setupId}
          className={setupId === chosenId ? 'place chosen' : 'place'}
          x={scale.x(from)}
          y={ROWS.letters - 13}
          width={Math.max(1, scale.x(until) - scale.x(from))}
          height={setupId === chosenId ? 3 : ROWS.until - ROWS.letters + 13}
        >
          <title>{`${setupLetter(job)}, ${plan.setups[job].label}`}</title>
        </rect>
      ))}
      <g className="phases">
        {schedule.stretches.map((stretch) => (
          <Phase key={`${stretch.doing} ${stretch.from}`} stretch={stretch} scale={scale} />
        ))}
      </g>
      {line(scale.x(call), 'end-line')}
      {line(scale.x(schedule.wrap), 'end-line')}
      {wrapBy === null ? null : line(scale.x(wrapBy), schedule.wrap > wrapBy ? 'by-line late' : 'by-line')}
      {proposed ? <Proposed night={night} order={proposed} scale={scale} /> : null}
      {placedMarks(skyMarks(night, scale), width, FONT).map(({ key, x, words, anchor }) => (
        <text key={key} x={x} y={ROWS.sky} textAnchor={anchor}>
          {words}
        </text>
      ))}
      {letters.map(({ key, x, words }) => (
        <text key={key} className="letter" x={x} y={ROWS.letters} textAnchor="middle">
          {words}
        </text>
      ))}
      {foot.map(({ key, x, words, anchor }) => (
        <text
          key={key}
          className={key.startsWith('hour') ? 'hour' : undefined}
          x={x}
          y={height - 3}
          textAnchor={anchor}
        >
          {words}
        </text>
      ))}
    </svg>
  );
}

/** The night along its clock, setup by setup, against the sky that gets dark and light again. */
export const NightLine = memo(function NightLine({
  plan,
  night,
}: {
  readonly plan: Plan;
  readonly night: Night;
}) {
  const [box, setBox] = useState<HTMLDivElement | null>(null);
  const { width } = useElementSize(box);
  const said = new Set(night.schedule.stretches.map(({ doing }) => doing));
  return (
    <div className="night-line-box">
      <div ref={setBox}>{width > 0 ? <Drawn plan={plan} night={night} width={width} /> : null}</div>
      <ul className="line-legend" aria-hidden="true">
        <SkyKey />
        {PHASES.filter((doing) => said.has(doing)).map((doing) => (
          <li key={doing}>
            <svg className="night-line" width="16" height="12" aria-hidden="true">
              <g className={`phase ${asClass(doing)}`}>
                {doing === 'wait' ? (
                  <path className="phase wait" d="M0 6H16" />
                ) : (
                  <rect x=".5" y=".5" width="15" height="11" />
                )}
                {doing === 'light' || doing === 'wet down' ? (
                  <rect
                    x=".5"
                    y=".5"
                    width="15"
                    height="11"
                    className="hatch"
                    fill={`url(#night-${asClass(doing)})`}
                  />
                ) : null}
              </g>
            </svg>
            {doing}
          </li>
        ))}
      </ul>
    </div>
  );
});
