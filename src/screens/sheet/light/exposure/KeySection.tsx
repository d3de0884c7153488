import { useStore } from 'zustand';
import { isRefused } from '../../../../core/light/advice';
import { anchorOf } from '../../../../core/plan/edits/anchorOf';
import { moveItem } from '../../../../core/plan/edits/moveItem';
import { reshapeItem } from '../../../../core/plan/edits/reshapeItem';
import { setBefore } from '../../../../core/plan/edits/setBefore';
import { setStop } from '../../../../core/plan/edits/setStop';
import { named } from '../../../../core/plan/named';
import type { Plan } from '../../../../core/plan/schema/plan';
import type { Setup } from '../../../../core/plan/schema/setup';
import { withNames } from '../../../../core/plan/withNames';
import { formatLight, lightUnitOf } from '../../../../core/units/illuminance';
import { formatShare } from '../../../../core/units/shares';
import { formatStopSetting } from '../../../../core/units/stops';
import { usePlanState, useSession } from '../../../../desk/hooks';
import type { KeyWays } from '../../../../desk/workers/reportApi';
import { SelectField } from '../../../parts/Field';
import { LegalField } from '../../camera/LegalField';
import { choosePerformer, useLitFace } from '../litFace';
import { lightViewStore } from '../view';
import { Way } from '../Way';
import { useKeyWays } from './useKeyWays';
import { distanceText, gelText, scrimSmall, scrimText, standsText, underText } from './wayWords';

const UNDER = { what: 'Stops under', limits: [-6, 10], unit: 'stops' } as const;

function Ways(props: {
  readonly plan: Plan;
  readonly setup: Setup;
  readonly name: string;
  readonly ways: KeyWays;
  readonly stale: boolean;
  readonly stopsUnder: number;
}) {
  const { plan, setup, name, ways, stale, stopsUnder } = props;
  const lengths = useSession((state) => state.lengths);
  const { key, dim, distance, scrim, gel, stop } = ways;
  const under = underText(stopsUnder);
  const done = `${name}’s key is ${under}.`;
  return (
    <ul className="key-ways">
      <Way
        way={dim}
        lead="Dim it"
        stale={stale}
        word={(advice) => `Dim ${key.lampLabel} to ${formatShare(advice.dim)}`}
        propose={({ edit }) => ({
          name: `dim ${key.lampLabel}`,
          done,
          change: (from) => reshapeItem(from, edit),
        })}
      />
      <Way
        way={distance}
        lead="Move it"
        stale={stale}
        word={(advice) => distanceText(advice, lengths)}
        propose={({ edit }) => {
          const from = anchorOf(plan, edit.id);
          return {
            name: `move ${key.lampLabel}`,
            done,
            change: (before) => moveItem(before, edit),
            stands: from ? [{ from, to: edit.to, label: key.lampLabel }] : [],
          };
        }}
      />
      <Way
        way={scrim}
        lead="Put scrims in it"
        stale={stale}
        word={scrimText}
        small={scrimSmall}
        propose={({ edit, leftStops }) => ({
          name: `put scrims into ${key.lampLabel}`,
          done: `${name}’s key is ${standsText(leftStops - stopsUnder)}.`,
          change: (from) => setBefore(from, edit),
        })}
      />
      <Way
        way={gel}
        lead="Put neutral gel on it"
        stale={stale}
        word={gelText}
        propose={({ edit }) => ({
          name: `put gel on ${key.lampLabel}`,
          done,
          change: (from) => setBefore(from, edit),
        })}
      />
      {stopsUnder === 0 ? null : (
        <Way
          way={stop}
          lead="Set the stop"
          stale={stale}
          word={({ thirdStop }) => `Set the stop to ${formatStopSetting(thirdStop)}`}
          propose={({ thirdStop }) => ({
            name: 'set the stop',
            done: `${named(setup.label)} is at ${formatStopSetting(thirdStop)}.`,
            change: (from) => setStop(from, { setupId: setup.id, stop: thirdStop }),
          })}
        />
      )}
    </ul>
  );
}

/** The stop for a face's key, and what would bring that key to where it is wanted. */
export function KeySection({ setup }: { readonly setup: Setup }) {
  const plan = usePlanState((state) => state.plan);
  const lengths = useSession((state) => state.lengths);
  const face = useLitFace(plan);
  const stopsUnder = useStore(lightViewStore, (state) => state.stopsUnder);
  const { answer, trouble, stale } = useKeyWays({
    setupId: setup.id,
    performerId: face?.performerId ?? null,
    stopsUnder,
  });
  if (!face) return null;
  return (
    <section className="group">
      <h4>The key</h4>
      <div className="fields">
        <SelectField label="on" value={face.performerId} onChange={choosePerformer}>
          {withNames(plan).cast.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </SelectField>
        <LegalField
          label="have it under by"
          value={stopsUnder}
          legal={UNDER}
          take={(value) => {
            if (value !== undefined) lightViewStore.setState({ stopsUnder: value });
            return null;
          }}
        />
      </div>
      {trouble === null ? null : <p className="err">{trouble}</p>}
      {!answer && trouble === null ? <p className="after">The key is being read.</p> : null}
      {answer && isRefused(answer) ? <p className="advice">{answer.refused}</p> : null}
      {answer && !isRefused(answer) ? (
        <>
          <p className="key-is">
            {answer.key.lampLabel} gives {formatLight(answer.key.lux, lightUnitOf(lengths))}
            {answer.key.stops === null ? '' : `, ${standsText(answer.key.stops)}`}.
          </p>
          <ul className="key-ways">
            <Way
              way={answer.onExposure}
              lead="Expose for it"
              stale={stale}
              word={({ thirdStop }) => `Expose for it at ${formatStopSetting(thirdStop)}`}
              propose={({ thirdStop }) => ({
                name: 'set the stop',
                done: `${named(setup.label)} is at ${formatStopSetting(thirdStop)}, for ${named(face.name)}’s key.`,
                change: (from) => setStop(from, { setupId: setup.id, stop: thirdStop }),
              })}
            />
          </ul>
          <p className="key-is">To have it {underText(stopsUnder)}:</p>
          <Ways
            plan={plan}
            setup={setup}
            name={face.name}
            ways={answer}
            stale={stale}
            stopsUnder={stopsUnder}
          />
        </>
      ) : null}
    </section>
  );
}
