import { useEffect } from 'react';
import { useStore } from 'zustand';
import type { Remedy, Tolerance } from '../../../core/clearance/remedies/types';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatShare } from '../../../core/units/shares';
import { usePlanState, useReports, useSession } from '../../../desk/hooks';
import { liveStore } from '../../../desk/liveStore';
import { type FindingKey, isAbout, keyOfFinding, remediesStore } from '../../../desk/remedies/remediesStore';
import { remedySeeker } from '../../../desk/remedies/seeking';
import { toleranceStore } from '../../../desk/remedies/toleranceStore';
import { reportStore } from '../../../desk/reportStore';
import { ProposalActs } from '../continuity/ProposalActs';
import { byTrust, costWords, proposalOf, triedWords } from './remedyWords';
import { ToleranceFields } from './ToleranceFields';

/** Whether it is known what all setups of a plan see, as far as somebody reads it. */
function useIsRead(plan: Plan): boolean {
  return useReports(
    ({ partialFor, reading, partial }) =>
      partialFor === plan && (reading === null || partial.size >= plan.setups.length),
  );
}

const ask = (plan: Plan, about: FindingKey, tolerance: Tolerance): void =>
  remedySeeker.ask({
    ...about,
    plan,
    tolerance,
    seen: [...reportStore.getState().partial.values()],
  });

/** One remedy: its sentence, what it costs, and the ways to try and to do it. */
function RemedyRow({
  plan,
  remedy,
  setupId,
}: {
  readonly plan: Plan;
  readonly remedy: Remedy;
  readonly setupId: string;
}) {
  const lengths = useSession((state) => state.lengths);
  const propose = () => proposalOf(plan, remedy, { setupId, seconds: liveStore.getState().seconds, lengths });
  return (
    <li>
      <p className="remedy-words">{remedy.words}</p>
      <div className="acts">
        <ProposalActs word="Do it" about={remedy.words} propose={propose} />
        <span className="q">{costWords(plan, remedy, lengths)}</span>
      </div>
    </li>
  );
}

/** What was found, the most trusted first. */
function Found({
  plan,
  remedies,
  setupId,
  itemId,
}: FindingKey & {
  readonly plan: Plan;
  readonly remedies: readonly Remedy[];
}) {
  const groups = byTrust(remedies);
  if (groups.length === 0)
    return (
      <p className="q" role="status">
        {triedWords(plan, itemId)}
      </p>
    );
  return groups.map(({ head, words, remedies: own }) => (
    <section key={head} className="remedy-group" aria-label={head}>
      <h4>
        {head} <span className="q">{words}</span>
      </h4>
      <ol className="remedy-list">
        {own.map((remedy) => (
          <RemedyRow key={`${remedy.kind} ${remedy.words}`} plan={plan} remedy={remedy} setupId={setupId} />
        ))}
      </ol>
    </section>
  ));
}

/** How far the search is, what stopped it, or why there was none. */
function Search({ onAgain }: { readonly onAgain: () => void }) {
  const { share, stopped, trouble } = useStore(remediesStore);
  const reading = useReports((state) => state.reading);
  if (trouble !== null)
    return (
      <p className="err" role="alert">
        {trouble}
      </p>
    );
  if (stopped)
    return (
      <p className="q" role="status">
        Stopped before the end.
        <button type="button" className="bare" onClick={onAgain}>
          Look again
        </button>
      </p>
    );
  return (
    <p className="q">
      <span role="status">Looks for what clears it</span>
      {share !== null
        ? `, ${formatShare(share)} of the way.`
        : reading === null
          ? ', once all setups are read.'
          : `, once all setups are read: ${reading.done} of ${reading.of} are.`}
      <button type="button" className="bare" onClick={() => remedySeeker.stop()}>
        Stop
      </button>
    </p>
  );
}

/** What would take care of a finding of the committed plan, looked for as long as it is open. */
export function Remedies({ setupId, itemId }: FindingKey) {
  const plan = usePlanState((state) => state.plan);
  const tolerance = useStore(toleranceStore);
  const isRead = useIsRead(plan);
  const found = useStore(remediesStore, (state) =>
    isAbout(state, plan, tolerance) ? state.found.get(keyOfFinding({ setupId, itemId })) : undefined,
  );
  useEffect(() => {
    if (isRead) ask(plan, { setupId, itemId }, tolerance);
  }, [plan, tolerance, isRead, setupId, itemId]);
  useEffect(() => () => remedySeeker.rest(), []);
  return (
    <>
      {found ? (
        <Found plan={plan} remedies={found} setupId={setupId} itemId={itemId} />
      ) : (
        <Search onAgain={() => ask(plan, { setupId, itemId }, tolerance)} />
      )}
      <ToleranceFields />
    </>
  );
}
