import { useStore } from 'zustand';
import { layCables } from '../../../../core/plan/edits/layCables';
import type { Plan } from '../../../../core/plan/schema/plan';
import { nameIn } from '../../../../core/report/power/powerWords';
import { formatLength } from '../../../../core/units/lengths';
import { usePlanState, useSession } from '../../../../desk/hooks';
import { askConnection } from '../../../../desk/power/asking';
import type { ConnectAnswer } from '../../../../desk/power/powerApi';
import { powerStore } from '../../../../desk/power/powerStore';
import { type Proposal, ProposalActs } from '../../continuity/ProposalActs';
import { wireText } from '../../fields/wireText';

/** Connecting everything as one step to try or do; null where it lays nothing, which the list beside says. */
async function proposeConnection(): Promise<Proposal | null> {
  const found = await askConnection();
  if (!found || found.cables.length === 0) return null;
  return {
    name: 'connect all',
    done: found.sentences.join(' '),
    change: (plan) => layCables(plan, { cables: found.cables }).plan,
  };
}

/** What would be laid, run by run, and what is left without. */
function Runs({ plan, found }: { readonly plan: Plan; readonly found: ConnectAnswer }) {
  const lengths = useSession((state) => state.lengths);
  return (
    <>
      <ul className="solved" aria-label="What it lays">
        {found.cables.map(({ label, fromId, circuit, lengthMetres, wire }) => (
          <li key={label}>
            <b>{label}</b>: {formatLength(lengthMetres, lengths, { decimals: 1 })} of{' '}
            {wireText(wire, lengths)} from {nameIn(plan, fromId)}, circuit {circuit}.
          </li>
        ))}
      </ul>
      {found.sentences.map((sentence) => (
        <p key={sentence} className="q">
          {sentence}
        </p>
      ))}
    </>
  );
}

/** Runs a cord to all that has none in one step, tried first with dashed runs on the roof and a list of them. */
export function ConnectAll({ about = null }: { readonly about?: string | null }) {
  return (
    <ProposalActs word="Connect all" propose={proposeConnection} {...(about === null ? {} : { about })} />
  );
}

/** The same with what it would do. `open`: how many things have no cord. */
export function ConnectSection({ open }: { readonly open: number }) {
  const plan = usePlanState((state) => state.plan);
  const connection = useStore(powerStore, (state) => state.connection);
  const connecting = useStore(powerStore, (state) => state.connecting);
  const found = connection?.plan === plan ? connection : null;
  if (open === 0) return null;
  return (
    <section className="group connect-all">
      <h4>{open === 1 ? 'One load has no power' : `${open} loads have no power`}</h4>
      <p className="q">
        Lays cords along walls and edges, round frames, walks and the wet, on circuits under four fifths of
        their breakers. What is plugged in stays.
      </p>
      <div className="acts-line">
        <ConnectAll />
      </div>
      <p className={connecting ? 'q' : 'vh'} role="status">
        {connecting ? 'Looks for ways.' : ''}
      </p>
      {found ? <Runs plan={plan} found={found} /> : null}
    </section>
  );
}
