import { isDark } from '../../../core/power/types';
import { hourWords, voltAmpereWords, wattWords } from '../../../core/report/power/powerWords';
import { useCrew, useCrewReading } from '../../../desk/crew/useCrew';
import { HOURS_FROM } from '../../sheet/night/power/words';
import { Told } from '../page/Told';
import { Waiting } from '../page/Waiting';
import { Cords } from './Cords';
import { Supplies } from './Supplies';
import './power.css';

/** What is said where electricity is, whatever the plan. */
const ALWAYS = 'The local code and a licensed electrician decide what may be plugged into what.';

/** Supplies, circuits and what hangs on them, and the cords to lay. */
export function CrewPower() {
  const plan = useCrew((state) => state.plan);
  const power = useCrewReading((state) => state.power);
  if (!power) return <Waiting what="The power is being worked out." />;
  const { totals, hours, sources, loads, sentences } = power;
  const told = sentences.filter(({ about }) => about !== 'caution' && about !== 'stop' && about !== 'fuel');
  const cautions = sentences.filter(({ about }) => about === 'caution');
  const dark = loads.filter(isDark).length;
  return (
    <div className="crew-page crew-power">
      <h2 className="vh">Power</h2>
      <p className="crew-figure">
        <b>{wattWords(totals.watts)}</b>
        <span>
          with everything at full, {voltAmpereWords(totals.voltAmperes)}, for {hourWords(hours.hours)}{' '}
          {HOURS_FROM[hours.from]}
        </span>
      </p>
      {dark === 0 ? null : (
        <p className="q">{dark === 1 ? 'One load has' : `${dark} loads have`} no power as it is drawn.</p>
      )}
      <Told heading="Will not do as it stands" told={told.filter(({ standing }) => standing === 'breaks')} />
      {sources.length === 0 ? (
        <p className="crew-section">Nothing on this roof gives power.</p>
      ) : (
        <Supplies plan={plan} power={power} />
      )}
      <Cords plan={plan} power={power} />
      <Told heading="To know" told={told.filter(({ standing }) => standing !== 'breaks')} />
      <Told
        heading="Electricity on a roof"
        told={cautions.length > 0 ? cautions : [{ standing: 'said', sentence: ALWAYS }]}
      />
    </div>
  );
}
