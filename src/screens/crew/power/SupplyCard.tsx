import type { Plan } from '../../../core/plan/schema/plan';
import type { CircuitFlow } from '../../../core/power/ratings';
import { formatShare } from '../../../core/units/shares';
import { keysOf } from '../../parts/keysOf';
import { LoadBar } from '../../sheet/night/power/LoadBar';
import { circuitText } from '../../sheet/night/power/words';
import { ItemName } from '../page/ItemName';

/** What gives power, or divides it: how much of what it gives is drawn, and what hangs on each of its circuits. */
export function SupplyCard(props: {
  readonly plan: Plan;
  readonly id: string;
  readonly label: string;
  /** Of what it gives for long, or of its worst circuit. */
  readonly share: number;
  /** In words, a line each. */
  readonly lines: readonly string[];
  /** What goes dark if it stops, a sentence; null where nothing would. */
  readonly stop: string | null;
  readonly circuits: readonly CircuitFlow[];
}) {
  const { plan, id, label, share, lines, stop, circuits } = props;
  const keys = keysOf(lines);
  return (
    <li className="supply-card">
      <div className="supply-head">
        <ItemName itemId={id} label={label} />
        <span className={share > 1 ? 'supply-share verm' : 'supply-share'}>{formatShare(share)}</span>
      </div>
      <LoadBar share={share} />
      {lines.map((line, place) => (
        <p key={keys[place]} className={place === 0 ? undefined : 'q'}>
          {line}
        </p>
      ))}
      {stop === null ? null : <p className="supply-stop">{stop}</p>}
      {circuits.length === 0 ? null : (
        <ol className="crew-circuits" aria-label={`Circuits of ${label}`}>
          {circuits.map((circuit) => (
            <li key={circuit.number}>
              <span>{circuit.number}</span>
              <LoadBar share={circuit.share} />
              <span className={circuit.share > 1 ? 'verm' : undefined}>{formatShare(circuit.share)}</span>
              <small>{circuitText(plan, circuit)}</small>
            </li>
          ))}
        </ol>
      )}
    </li>
  );
}
