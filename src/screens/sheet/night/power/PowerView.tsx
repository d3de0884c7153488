import { useEffect, useState } from 'react';
import { useStore } from 'zustand';
import { setPower } from '../../../../core/plan/edits/setPower';
import type { Plan } from '../../../../core/plan/schema/plan';
import { ON_HOURS } from '../../../../core/plan/schema/power';
import { wetnessesOf } from '../../../../core/plan/wetness';
import { isDark } from '../../../../core/power/types';
import { voltAmpereWords, wattWords } from '../../../../core/report/power/powerWords';
import { formatNumber, NBSP } from '../../../../core/units/numbers';
import { useLive } from '../../../../desk/hooks';
import { followPower } from '../../../../desk/power/asking';
import type { PowerAnswer } from '../../../../desk/power/powerApi';
import { powerStore } from '../../../../desk/power/powerStore';
import { Column } from '../../../parts/Column';
import { SelectField } from '../../../parts/Field';
import { Segmented } from '../../../parts/Segmented';
import { editPlan } from '../../fields/edit';
import { endPreviews, isPreview } from '../../previewing';
import { AmountField } from '../fields/AmountField';
import { ConnectSection } from './ConnectAll';
import { PowerFindings } from './Findings';
import { Cords, Loads } from './Loads';
import { Sources } from './Sources';
import { HOURS_FROM } from './words';
import '../../remedies/remedies.css';
import '../../light/ways.css';
import './power.css';

const SHOWN = ['findings', 'loads', 'cables'] as const;
type Shown = (typeof SHOWN)[number];

/** The volts of the mains, and how long everything is on. */
function World({ plan, answer }: { readonly plan: Plan; readonly answer: PowerAnswer }) {
  const { mainsVolts, mainsHertz, hours } = answer.report;
  return (
    <section className="group">
      <h4>The mains, and how long everything is on</h4>
      <div className="fields">
        <SelectField
          label="mains"
          value={String(plan.power?.volts ?? '')}
          onChange={(word) =>
            editPlan('set the mains', (before) =>
              setPower(before, { volts: word === '120' ? 120 : word === '230' ? 230 : null }),
            )
          }
        >
          <option value="">by the place</option>
          <option value="120">{`120${NBSP}V`}</option>
          <option value="230">{`230${NBSP}V`}</option>
        </SelectField>
        <AmountField
          label="on for"
          unit="h"
          own={plan.power?.hours}
          usual={hours.hours}
          least={ON_HOURS[0]}
          most={ON_HOURS[1]}
          decimals={1}
          commit={(typed) =>
            editPlan('say how long it is on', (before) => setPower(before, { hours: typed ?? null }))
          }
        />
        <p className="q wide">
          Reckoned at {formatNumber(mainsVolts, 0)}
          {NBSP}V and {formatNumber(mainsHertz, 0)}
          {NBSP}Hz, for {formatNumber(hours.hours, 1)}
          {NBSP}h {HOURS_FROM[hours.from]}.
        </p>
      </div>
    </section>
  );
}

function Totals({ answer }: { readonly answer: PowerAnswer }) {
  const { watts, voltAmperes, lossWatts } = answer.report.totals;
  return (
    <p className="figure">
      {wattWords(watts)}
      <small>
        with everything at full, {voltAmpereWords(voltAmperes)}, {wattWords(lossWatts)} lost in cords
      </small>
    </p>
  );
}

/** What is always said beside electricity on a roof. */
function Beside({ plan, answer }: { readonly plan: Plan; readonly answer: PowerAnswer }) {
  const cautions = answer.sentences.filter(({ about }) => about === 'caution');
  const wet = wetnessesOf(plan.ground).some((wetness) => wetness !== 'dry');
  const told =
    cautions.length > 0
      ? cautions.map(({ sentence }) => sentence)
      : ['The local code and a licensed electrician decide what may be plugged into what.'];
  return (
    <section className="group electric" aria-label="Cautions for electricity">
      <h4>{wet ? 'Electricity on a wet floor' : 'Electricity outdoors'}</h4>
      <ul>
        {told.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </section>
  );
}

function Right({ plan, answer }: { readonly plan: Plan; readonly answer: PowerAnswer }) {
  const [shown, setShown] = useState<Shown>('findings');
  const open = answer.report.loads.filter(isDark).length;
  const told = answer.sentences.filter(
    ({ about }) => about !== 'caution' && about !== 'stop' && about !== 'fuel',
  );
  const breaks = told.filter(({ standing }) => standing === 'breaks');
  const rest = told.filter(({ standing }) => standing !== 'breaks');
  return (
    <>
      <div className="column-head stays">
        <Segmented
          label="What of the power is listed"
          choices={SHOWN.map((value) => ({ value, word: value }))}
          chosen={shown}
          onChoose={setShown}
        />
      </div>
      {shown === 'findings' && (
        <>
          <ConnectSection open={open} />
          <PowerFindings plan={plan} told={breaks} heading="Will not do as it stands" />
          <PowerFindings plan={plan} told={rest} heading="To know" />
        </>
      )}
      {shown === 'loads' && <Loads answer={answer} />}
      {shown === 'cables' && <Cords plan={plan} answer={answer} />}
      <Beside plan={plan} answer={answer} />
    </>
  );
}

/** The power of a plan's night: what gives it, what draws it, what is wrong with it and what mends that. */
export function PowerView({ plan }: { readonly plan: Plan }) {
  const answer = useStore(powerStore, (state) => state.answer);
  const settled = useStore(powerStore, (state) => state.settled);
  const trouble = useStore(powerStore, (state) => state.trouble);
  const tries = useLive((state) => isPreview(state.gesture));
  // What a change is tried from stays while it is tried, and with it the button that puts it back.
  const told = tries ? settled : answer;
  useEffect(followPower, []);
  useEffect(() => endPreviews, []);
  return (
    <div className="two power-view">
      <Column>
        {trouble === null ? null : (
          <p className="err" role="alert">
            {trouble}
          </p>
        )}
        {answer ? (
          <>
            <Totals answer={answer} />
            <Sources plan={plan} answer={answer} />
            <World plan={plan} answer={answer} />
          </>
        ) : (
          <p className="advice" role="status">
            {trouble === null ? 'Works the power out.' : ''}
          </p>
        )}
      </Column>
      <Column>{told ? <Right plan={plan} answer={told} /> : null}</Column>
    </div>
  );
}
