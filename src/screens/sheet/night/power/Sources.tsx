import { useStore } from 'zustand';
import type { Plan } from '../../../../core/plan/schema/plan';
import { type CircuitFlow, CONTINUOUS_SHARE } from '../../../../core/power/ratings';
import { listed } from '../../../../core/report/listed';
import { ampWords } from '../../../../core/report/power/powerWords';
import type { PowerSentence, SourceReport } from '../../../../core/report/power/types';
import { formatShare } from '../../../../core/units/shares';
import { useSession } from '../../../../desk/hooks';
import type { PowerAnswer } from '../../../../desk/power/powerApi';
import { powerStore } from '../../../../desk/power/powerStore';
import { chooseItem } from '../../../../desk/selecting';
import { LoadBar } from './LoadBar';
import { circuitText, fuelText, sourceDetail, sourceText } from './words';

/** The circuits of a source or a box, each with its bar. */
function Circuits(props: {
  readonly plan: Plan;
  readonly name: string;
  readonly circuits: readonly CircuitFlow[];
}) {
  const { plan, name, circuits } = props;
  return (
    <ol className="circuits" aria-label={`Circuits of ${name}`}>
      {circuits.map((circuit) => (
        <li key={circuit.number}>
          <span className="circuit-number">{circuit.number}</span>
          <LoadBar share={circuit.share} />
          <span className="circuit-share">{formatShare(circuit.share)}</span>
          <small>{circuitText(plan, circuit)}</small>
        </li>
      ))}
    </ol>
  );
}

/** A name that chooses its item. */
function Name({ id, label }: { readonly id: string; readonly label: string }) {
  return (
    <button type="button" className="bare power-name" onClick={() => chooseItem(id)}>
      {label}
    </button>
  );
}

/** Asks what goes dark when a source stops, and says and draws it. */
function IfItStops({ source, told }: { readonly source: SourceReport; readonly told: PowerSentence | null }) {
  const stopId = useStore(powerStore, (state) => state.stopId);
  const asked = stopId === source.id;
  if (!source.ifItStops) return null;
  const { goesDark } = source.ifItStops;
  const plain = `${goesDark.length} ${goesDark.length === 1 ? 'load goes' : 'loads go'} dark.`;
  return (
    <>
      <button
        type="button"
        className="try"
        aria-pressed={asked}
        aria-label={`If it stops: ${source.label}`}
        onClick={() => powerStore.setState({ stopId: asked ? null : source.id })}
      >
        If it stops
      </button>
      <p className={asked ? 'stop-told' : 'vh'} role="status">
        {asked ? (told?.sentence ?? plain) : ''}
      </p>
    </>
  );
}

function SourceRow(props: {
  readonly plan: Plan;
  readonly answer: PowerAnswer;
  readonly source: SourceReport;
  readonly chosen: boolean;
}) {
  const { plan, answer, source, chosen } = props;
  const { circuits, hours } = answer.report;
  const own = circuits.filter(({ ownerId }) => ownerId === source.id);
  const worst = Math.max(0, ...own.map(({ share }) => share));
  const stop = answer.sentences.find(({ about, itemIds }) => about === 'stop' && itemIds[0] === source.id);
  const fuel = fuelText(source, hours, plan.night?.call ?? null);
  return (
    <li aria-current={chosen ? 'true' : undefined}>
      <div className="power-line">
        <Name id={source.id} label={source.label} />
        <span className="power-figure">{sourceText(source)}</span>
      </div>
      <LoadBar share={source.share ?? worst} />
      <p className="q">{sourceDetail(source)}</p>
      {fuel === null ? null : <p className="q">{fuel}</p>}
      <Circuits plan={plan} name={source.label} circuits={own} />
      <IfItStops source={source} told={stop ?? null} />
    </li>
  );
}

/** All that gives power, and all that divides it, with what each of its circuits carries. */
export function Sources({ plan, answer }: { readonly plan: Plan; readonly answer: PowerAnswer }) {
  const selectedId = useSession((state) => state.selectedId);
  const { sources, distros, circuits } = answer.report;
  if (sources.length === 0)
    return (
      <p className="advice">
        Nothing on the roof gives power yet. Take a generator, a battery or a house outlet from the palette of
        the Set sheet.
      </p>
    );
  return (
    <>
      <h3>
        Supplies, of what each gives for long; the tick is at {formatShare(CONTINUOUS_SHARE)}, good for three
        hours and more
      </h3>
      <ul className="supplies">
        {sources.map((source) => (
          <SourceRow
            key={source.id}
            plan={plan}
            answer={answer}
            source={source}
            chosen={source.id === selectedId}
          />
        ))}
        {distros.map(({ id, label, inputAmps, legAmps, share, sourceId }) => (
          <li key={id} aria-current={id === selectedId ? 'true' : undefined}>
            <div className="power-line">
              <Name id={id} label={label} />
              <span className="power-figure">
                {sourceId === null
                  ? 'has no power'
                  : `${listed(legAmps.map(ampWords))} of ${ampWords(inputAmps)}, ${formatShare(share)}`}
              </span>
            </div>
            <LoadBar share={share} />
            <Circuits plan={plan} name={label} circuits={circuits.filter(({ ownerId }) => ownerId === id)} />
          </li>
        ))}
      </ul>
    </>
  );
}
