import { useStore } from 'zustand';
import { changeProbe } from '../../../core/plan/edits/changeProbe';
import { removeProbe } from '../../../core/plan/edits/removeProbe';
import type { Plan } from '../../../core/plan/schema/plan';
import type { ProbeRecord } from '../../../core/plan/schema/sky';
import { surfaceUnder } from '../../../core/plan/surfaces';
import { lightUnitOf } from '../../../core/units/illuminance';
import { chooseProbe, chosenProbeStore } from '../../../desk/chosenProbe';
import { useSession } from '../../../desk/hooks';
import { pickTool } from '../../../desk/tools/drawing';
import { FACINGS, type Facing, facingOf, mostlyText, readingText } from '../../overhead/probes/meterWords';
import { useMeterReadings } from '../../overhead/probes/useMeterReadings';
import { Field, SelectField, ShownField } from '../../parts/Field';
import { Icon } from '../../parts/Icon';
import { LengthField } from '../../parts/LengthField';
import { NumberField } from '../../parts/NumberField';
import { editPlan } from '../fields/edit';

type Patch = Parameters<typeof changeProbe>[1]['patch'];

const FACING_KEYS: readonly Facing[] = ['key', 'up', 'way'];
/** A level way, towards the reader, to begin with. */
const FIRST_WAY: [number, number] = [180, 0];

/** The chosen meter, where the plan has it. */
export function useChosenProbe(plan: Plan): ProbeRecord | null {
  const probeId = useStore(chosenProbeStore, (state) => state.probeId);
  return plan.probes?.find(({ id }) => id === probeId) ?? null;
}

const takeAway = ({ id, label }: ProbeRecord): void => {
  editPlan(`take ${label} away`, (plan) => removeProbe(plan, { id }));
};

/** The meters on the roof with what they read now, and a new one to put. */
export function Meters({ plan }: { readonly plan: Plan }) {
  const unit = lightUnitOf(useSession((state) => state.lengths));
  const readings = useMeterReadings(plan);
  const { probes = [] } = plan;
  return (
    <section className="group">
      <h4>Meters</h4>
      {probes.length === 0 ? (
        <p className="advice">Put a meter where no face stands: what falls there is read at every beat.</p>
      ) : (
        <ul className="lines">
          {probes.map((probe) => {
            const reading = readings.get(probe.id);
            return (
              <li key={probe.id}>
                <button type="button" className="link" onClick={() => chooseProbe(probe.id)}>
                  {probe.label}
                </button>
                <span className="q">{reading ? readingText(reading, unit) : ''}</span>
                <button type="button" className="bare" onClick={() => takeAway(probe)}>
                  Take it away<span className="vh"> {probe.label}</span>
                </button>
              </li>
            );
          })}
        </ul>
      )}
      <p className="acts">
        <button type="button" onClick={() => pickTool({ type: 'put', entryId: 'meter' })}>
          Put a meter
        </button>
      </p>
    </section>
  );
}

/** One meter: what it reads, where it is and what it faces. */
export function MeterPanel({ plan, probe }: { readonly plan: Plan; readonly probe: ProbeRecord }) {
  const unit = lightUnitOf(useSession((state) => state.lengths));
  const reading = useMeterReadings(plan).get(probe.id);
  const { id, at, normal } = probe;
  const floor = surfaceUnder(plan, [at[0], at[2]], { belowMetres: at[1] }).metres;
  const change = (name: string, patch: Patch): string | null =>
    editPlan(name, (before) => changeProbe(before, { id, patch }));
  return (
    <div className="item-panel">
      <h3 className="of-item stays">
        <Icon name="meter" />
        <span className="name">{probe.label}</span>
      </h3>
      <div className="fields">
        {reading ? (
          <>
            <ShownField wide label="reads" text={readingText(reading, unit)} />
            <ShownField wide label="mostly" text={mostlyText(plan, reading)} />
          </>
        ) : null}
        <Field
          label="name"
          text={probe.label}
          commit={(text) => change('name a meter', { label: text.trim() })}
        />
        <LengthField
          label="height"
          metres={at[1] - floor}
          commit={(metres) => change('raise a meter', { at: [at[0], floor + metres, at[2]] })}
        />
        <SelectField
          wide
          label="faces"
          value={FACINGS[facingOf(probe)]}
          onChange={(word) => {
            const facing = FACING_KEYS.find((each) => FACINGS[each] === word);
            if (facing) change('turn a meter', { normal: facing === 'way' ? FIRST_WAY : facing });
          }}
        >
          {FACING_KEYS.map((each) => (
            <option key={each}>{FACINGS[each]}</option>
          ))}
        </SelectField>
        {typeof normal === 'string' ? null : (
          <>
            <NumberField
              label="heading"
              unit="°"
              value={normal[0]}
              commit={(heading) => change('turn a meter', { normal: [heading, normal[1]] })}
            />
            <NumberField
              label="tilt"
              unit="°"
              value={normal[1]}
              commit={(tilt) => change('tilt a meter', { normal: [normal[0], tilt] })}
            />
          </>
        )}
      </div>
      <p className="acts">
        <button
          type="button"
          onClick={() => {
            takeAway(probe);
            chooseProbe(null);
          }}
        >
          Take it away
        </button>
        <button type="button" className="bare" onClick={() => chooseProbe(null)}>
          The whole roof
        </button>
      </p>
    </div>
  );
}
