import { useStore } from 'zustand';
import { changedIds } from '../../../core/clearance/remedies/judge';
import { withRemedy } from '../../../core/clearance/remedies/remedyEdits';
import type { Solution, SolveAnswer, SolveProgress } from '../../../core/clearance/solve/types';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatLength } from '../../../core/units/lengths';
import { formatShare } from '../../../core/units/shares';
import { useSession } from '../../../desk/hooks';
import { nightSolver } from '../../../desk/remedies/seeking';
import { solveStore } from '../../../desk/remedies/solveStore';
import { type Proposal, ProposalActs } from '../continuity/ProposalActs';

const setupsWords = (count: number): string => `${count} ${count === 1 ? 'setup' : 'setups'}`;

/** A solution as something to try or do, all of it one step. */
function proposalOf(plan: Plan, solution: Solution, done: string): Proposal {
  return {
    name: 'clear all setups',
    done,
    change: (from) => withRemedy(from, solution),
    stands: solution.items.map(({ from, to, label, words }) => ({
      from,
      to,
      label,
      ...(from[0] === to[0] && from[1] === to[1] ? { words } : {}),
    })),
    changed: changedIds(plan, withRemedy(plan, solution)),
  };
}

/** All that changes, thing by thing, and the ways to try and to do it. */
function Changes(props: {
  readonly plan: Plan;
  readonly solution: Solution;
  readonly word: string;
  readonly done: string;
}) {
  const { plan, solution, word, done } = props;
  const lengths = useSession((state) => state.lengths);
  const things = solution.items.length;
  return (
    <>
      <p className="figure">
        {formatLength(solution.metres, lengths, { decimals: 1 })}
        <small>{things === 1 ? 'in all, one thing changes' : `in all, ${things} things change`}</small>
      </p>
      <div className="acts-line">
        <ProposalActs
          key={solution.items.map(({ itemId, words }) => `${itemId} ${words}`).join(', ')}
          word={word}
          propose={() => proposalOf(plan, solution, done)}
        />
      </div>
      <ul className="solved">
        {solution.items.map(({ itemId, label, words }) => (
          <li key={itemId}>
            <b>{label}</b>: {words}.
          </li>
        ))}
      </ul>
    </>
  );
}

/** How far a search is, with the best so far. */
function Running({ plan, progress }: { readonly plan: Plan; readonly progress: SolveProgress | null }) {
  const { share = 0, tried = 0, cleared = 0, setups = plan.setups.length, best = null } = progress ?? {};
  return (
    <>
      <p role="status">Looks for what clears {setupsWords(plan.setups.length)}.</p>
      <progress max={1} value={share} aria-label="How far the search is" />
      <p className="q">
        {formatShare(share)} of the way, {tried} places and shapes tried, {cleared} of {setupsWords(setups)}{' '}
        clear so far.
      </p>
      <div className="acts-line">
        <button type="button" className="do" onClick={() => nightSolver.stop()}>
          Stop
        </button>
      </div>
      {best ? <BestSoFar plan={plan} best={best} cleared={cleared} setups={setups} /> : null}
    </>
  );
}

function BestSoFar(props: {
  readonly plan: Plan;
  readonly best: Solution;
  readonly cleared: number;
  readonly setups: number;
}) {
  const { plan, best, cleared, setups } = props;
  return (
    <>
      <h3>
        The best so far, {cleared} of {setupsWords(setups)}
      </h3>
      <Changes
        plan={plan}
        solution={best}
        word="Do what was found so far"
        done={`${cleared} of ${setupsWords(setups)} should be clear now.`}
      />
    </>
  );
}

/** What a search came to. */
function Told({ plan, answer }: { readonly plan: Plan; readonly answer: SolveAnswer }) {
  const { outcome, sentence, best, cleared, setups } = answer;
  // The first may be told already.
  const obstacles = answer.obstacles.filter((obstacle) => !sentence.includes(obstacle.sentence));
  return (
    <>
      <p className={outcome === 'refused' ? 'err' : outcome === 'none' ? undefined : 'verd'} role="status">
        {sentence}
      </p>
      {obstacles.length > 0 ? (
        <ul className="solved obstacles" aria-label="What is in the way">
          {obstacles.map((obstacle) => (
            <li key={`${obstacle.itemId} ${obstacle.sentence}`}>{obstacle.sentence}</li>
          ))}
        </ul>
      ) : null}
      {best ? (
        <Changes
          plan={plan}
          solution={best}
          word={outcome === 'solved' ? 'Do it' : 'Do what can be done'}
          done={
            outcome === 'solved'
              ? `${setupsWords(setups)} cleared in one step.`
              : `${cleared} of ${setupsWords(setups)} should be clear now.`
          }
        />
      ) : null}
    </>
  );
}

/** How a search stands for a committed plan, and what it found. */
export function Answer({ plan }: { readonly plan: Plan }) {
  const { running, progress, answer, stopped, trouble, forPlan } = useStore(solveStore);
  if (trouble !== null)
    return (
      <p className="err" role="alert">
        {trouble}
      </p>
    );
  if (forPlan !== plan)
    return (
      <p className="q">
        Moves as little as it takes until nothing that should keep out is seen in any setup, whatever the
        light. Lamps keep their level and angle; locks, wishes and what was let show stand. Nothing changes
        until you say so.
      </p>
    );
  if (running) return <Running plan={plan} progress={progress} />;
  if (answer) return <Told plan={plan} answer={answer} />;
  if (!stopped) return null;
  return (
    <>
      <p role="status">Stopped before the end{progress?.best ? '.' : ': nothing was found so far.'}</p>
      {progress?.best ? (
        <BestSoFar plan={plan} best={progress.best} cleared={progress.cleared} setups={progress.setups} />
      ) : null}
    </>
  );
}
