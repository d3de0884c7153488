import { planStore } from '../planStore';
import { NightSolver } from './nightSolver';
import { RemediesWorker } from './remediesWorker';
import { RemedySeeker } from './remedySeeker';
import { RemedyTeam } from './remedyTeam';
import { solveStore } from './solveStore';

/** Workers that look for remedies: somebody waits for them, and the night is read by then. */
const HANDS = 2;

/** Looks for remedies for whoever opens a finding. */
export const remedySeeker = new RemedySeeker(
  new RemedyTeam(Array.from({ length: HANDS }, () => new RemediesWorker('The look for remedies'))),
);

/** Looks for what clears all setups, in a worker of its own: no finding that is opened has to wait for it. */
export const nightSolver = new NightSolver(new RemediesWorker('The look for a clear night'));

planStore.subscribe((now, before) => {
  if (now.plan !== before.plan && solveStore.getState().forPlan !== null) nightSolver.forget();
});
