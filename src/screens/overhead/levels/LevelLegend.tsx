import { useStore } from 'zustand';
import { STANDING_FACE_METRES } from '../../../core/kit/palette/heights';
import { askedLux } from '../../../core/light/exposure';
import type { Metered } from '../../../core/light/levelGrid';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatLight, lightUnitOf } from '../../../core/units/illuminance';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { formatSigned, NBSP } from '../../../core/units/numbers';
import { formatStopSetting } from '../../../core/units/stops';
import { levelMapStore } from '../../../desk/levelMap/levelMapStore';
import { STOPS } from './bands';
import { exposureOf } from './useLevels';

/** A level without its unit, which stands once beside the row. */
const inFigures = (text: string): string => text.split(NBSP)[0];

/** What the colours of the level map stand for, in stops and in lux or footcandles, and of what they are. */
export function LevelLegend(props: {
  readonly plan: Plan;
  readonly setupId: string | null;
  readonly lengths: LengthSystem;
}) {
  const of = useStore(levelMapStore, (state) => state.of);
  const trouble = useStore(levelMapStore, (state) => state.trouble);
  const exposure = exposureOf(props.plan, props.setupId);
  const asked = askedLux(exposure);
  const unit = lightUnitOf(props.lengths);
  const face = `a face turned to the lamp, ${formatLength(STANDING_FACE_METRES, props.lengths)} up`;
  if (trouble !== null) return <p className="level-legend">{trouble}</p>;
  return (
    <div className="level-legend">
      <table>
        <caption className="vh">Steps of the level map</caption>
        <tbody>
          <tr>
            {STOPS.map((stop, band) => (
              <td key={stop}>
                <span className={`swatch level-${band + 1}`} />
                {stop === 0 ? '0' : formatSigned(stop, 0)}
              </td>
            ))}
            <th scope="row">
              stops from {formatStopSetting(exposure.stop)}, ISO{NBSP}
              {exposure.iso}
            </th>
          </tr>
          <tr>
            {STOPS.map((stop) => (
              <td key={stop}>{inFigures(formatLight(asked * 2 ** stop, unit))}</td>
            ))}
            <th scope="row">{unit === 'lx' ? 'lux' : 'footcandles'}</th>
          </tr>
        </tbody>
      </table>
      <select
        aria-label="What the map is of"
        value={of}
        onChange={(event) =>
          levelMapStore.setState({ of: event.currentTarget.value === 'level' ? 'level' : TURNED })
        }
      >
        <option value={TURNED}>{face}</option>
        <option value="level">the ground itself</option>
      </select>
    </div>
  );
}

const TURNED: Metered = 'turned to the lamp';
