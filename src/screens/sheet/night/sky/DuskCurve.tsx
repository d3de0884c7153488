import { useState } from 'react';
import { useStore } from 'zustand';
import type { DuskLight } from '../../../../core/night/dusk/lightThroughDusk';
import type { SunOver } from '../../../../core/night/dusk/sunOver';
import { wallTime } from '../../../../core/night/times/nightClock';
import type { Night } from '../../../../core/night/types';
import { skyEvents } from '../../../../core/night/words/skyEvents';
import type { Plan } from '../../../../core/plan/schema/plan';
import { SKY_WORDS } from '../../../../core/sky/levels';
import { formatDegrees } from '../../../../core/units/angles';
import { type LightUnit, lightUnitOf } from '../../../../core/units/illuminance';
import { useSession } from '../../../../desk/hooks';
import { duskStore, duskSun } from '../../../../desk/night/duskStore';
import { useElementSize } from '../../../parts/useElementSize';
import { windOf } from '../../sky/words';
import { skyBands } from '../order/nightLine';
import { duskLine, duskPath, faintLight } from './duskLine';

const HEIGHT = 96;
const FOOT = 16;
const DAY = 1440;

/** What the sky gives at a minute of the night, within the dusk; null before it, while the sun is up. */
const lightAt = (dusk: readonly DuskLight[], minutes: number): DuskLight | null =>
  minutes < dusk[0].minutes
    ? null
    : (dusk[Math.min(dusk.length - 1, Math.round(minutes - dusk[0].minutes))] ?? null);

interface Told {
  readonly figure: string;
  readonly rest: string;
}

/** The light at a time, or, while the sun is up, how high that stands: a figure and what it is. */
function told(sun: SunOver, time: string, lux: string | null): Told {
  const where = `in the ${windOf(sun.azimuth)}, ${formatDegrees(sun.azimuth, 0)} from north`;
  if (lux === null) return { figure: formatDegrees(sun.altitude), rest: `up, the sun at ${time}, ${where}` };
  const below = sun.altitude > -0.05 ? 'setting' : `${formatDegrees(-sun.altitude)} down`;
  return { figure: lux, rest: `from the sky at ${time}, the sun ${below} ${where}` };
}

function Curve(props: {
  readonly plan: Plan;
  readonly night: Night;
  readonly dusk: readonly DuskLight[];
  readonly width: number;
  readonly minutes: number;
  readonly unit: LightUnit;
}) {
  const { plan, night, dusk, width, minutes, unit } = props;
  const line = duskLine(dusk, width, HEIGHT);
  if (!line) return null;
  const { from, until, x, y, decades } = line;
  const light = lightAt(dusk, minutes);
  const hours = Array.from(
    { length: Math.floor(until / 60) - Math.ceil(from / 60) + 1 },
    (_, k) => (Math.ceil(from / 60) + k) * 60,
  );
  return (
    <svg className="dusk-curve night-line" width={width} height={HEIGHT + FOOT} aria-hidden="true">
      {skyBands(plan, night, from, until).map((band) => (
        <rect
          key={band.from}
          className={`sky-${band.level}`}
          x={x(band.from)}
          y={0}
          width={x(band.until) - x(band.from)}
          height={HEIGHT}
        >
          <title>{SKY_WORDS[band.level]}</title>
        </rect>
      ))}
      {decades.slice(0, -1).map((lux) => (
        <g key={lux}>
          <path className="decade" d={`M0 ${y(lux)}H${width}`} />
          <text x={2} y={y(lux) - 2}>
            {faintLight(lux, unit)}
          </text>
        </g>
      ))}
      <path className="clear-sky" d={duskPath(dusk, line, ({ clearTwilightLux }) => clearTwilightLux)} />
      <path className="lux" d={duskPath(dusk, line, ({ skyLux }) => skyLux)} />
      <path className="cursor" d={`M${x(minutes)} 0V${HEIGHT}`} />
      {light ? <circle className="at" cx={x(minutes)} cy={y(light.skyLux)} r={4} /> : null}
      {hours.map((at) => (
        <text key={at} className="hour" x={x(at)} y={HEIGHT + FOOT - 3} textAnchor="middle">
          {wallTime(night.clock, at)}
        </text>
      ))}
    </svg>
  );
}

/** The light of the sky through dusk, with a time in it that a hand or keys move: its lux, and the sun's way on the roof. */
export function DuskCurve({
  plan,
  night,
  dusk,
}: {
  readonly plan: Plan;
  readonly night: Night;
  readonly dusk: readonly DuskLight[];
}) {
  const [box, setBox] = useState<HTMLDivElement | null>(null);
  const { width } = useElementSize(box);
  const said = useStore(duskStore, (state) => state.minutes);
  const unit = lightUnitOf(useSession((state) => state.lengths));
  const found = duskSun(plan, said);
  const line = duskLine(dusk, 1, 1);
  if (!found || !line)
    return <p className="advice">The sun does not set on that date, so there is no dusk.</p>;
  const { sun } = found;
  const { minutes } = sun;
  const light = lightAt(dusk, minutes);
  const time = wallTime(night.clock, minutes);
  const lux = light ? faintLight(light.skyLux, unit) : null;
  const { figure, rest } = told(sun, time, lux);
  const go = (to: number): void => duskStore.setState({ minutes: to });
  return (
    <section className="group dusk" aria-label="The light through dusk">
      <h4>The light through dusk, on level ground</h4>
      <p className="figure">
        {figure}
        <small>{rest}</small>
      </p>
      <div className="dusk-box" ref={setBox}>
        <input
          type="range"
          aria-label="Time of the dusk"
          aria-valuetext={`${figure} ${rest}`}
          min={Math.round(line.from)}
          max={Math.round(line.until)}
          step={1}
          value={Math.round(minutes)}
          onChange={(event) => go(Number(event.currentTarget.value))}
        />
        {width > 0 ? (
          <Curve plan={plan} night={night} dusk={dusk} width={width} minutes={minutes} unit={unit} />
        ) : null}
      </div>
      <p className="advice">
        Solid: what this plan’s sky gives. Thin: a clear sky’s twilight alone. While the sun is up, the roof
        has its shadows on the decks and where its last light comes from.
      </p>
      <ul className="lines sky-events" aria-label="What happens in the sky">
        {skyEvents(night.sky).map(({ id, name, minutes: at }) => (
          <li key={id}>
            {at >= line.from && at <= line.until ? (
              <button type="button" className="link" onClick={() => go(Math.round(at))}>
                {name}
              </button>
            ) : (
              <span>{name}</span>
            )}
            <span>{wallTime(night.clock, at)}</span>
            {at >= DAY ? <span className="q">the day after</span> : null}
          </li>
        ))}
      </ul>
    </section>
  );
}
