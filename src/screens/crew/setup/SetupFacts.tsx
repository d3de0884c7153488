import type { Setup } from '../../../core/plan/schema/setup';
import { useCrew, useCrewReading } from '../../../desk/crew/useCrew';
import { keysOf } from '../../parts/keysOf';
import { exposureFacts, type Fact, placeFacts, plainFacts } from './factWords';

const Cell = ({ name, value, more }: Fact) => (
  <div>
    <dt>{name}</dt>
    <dd>
      {value}
      {more === undefined ? null : <small>{more}</small>}
    </dd>
  </div>
);

/** What is read off a setup, as a slate has it. */
export function SetupFacts({ setup }: { readonly setup: Setup }) {
  const plan = useCrew((state) => state.plan);
  const lengths = useCrew((state) => state.lengths);
  const sheet = useCrewReading((state) => state.sheets.get(setup.id));
  const facts = [
    ...plainFacts(plan, setup, sheet),
    ...(sheet ? placeFacts(setup, sheet, lengths) : []),
    ...exposureFacts(plan, setup, lengths),
  ];
  const keys = keysOf(facts.map(({ name }) => name));
  return (
    <dl className="crew-facts" aria-label="Readings" aria-busy={sheet === undefined}>
      {facts.map((each, place) => (
        <Cell key={keys[place]} {...each} />
      ))}
    </dl>
  );
}
