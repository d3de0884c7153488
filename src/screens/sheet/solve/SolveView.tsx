import { useEffect, useMemo } from 'react';
import { useStore } from 'zustand';
import { movableIds, moversOf } from '../../../core/clearance/solve/movers';
import { usePlanState } from '../../../desk/hooks';
import { nightSolver } from '../../../desk/remedies/seeking';
import { solveStore } from '../../../desk/remedies/solveStore';
import { toleranceStore } from '../../../desk/remedies/toleranceStore';
import { reportStore } from '../../../desk/reportStore';
import { Column } from '../../parts/Column';
import { FramesSwitch } from '../lensTest/FramesSwitch';
import { endPreviews } from '../previewing';
import { ToleranceFields } from '../remedies/ToleranceFields';
import { Answer } from './Answer';
import { Movable } from './Movable';
import '../acts.css';
import './solve.css';

/** Clears all setups at once: at the left what may move and by how much lamps may change, at the right what is found. */
export function SolveView() {
  const plan = usePlanState((state) => state.plan);
  const running = useStore(solveStore, (state) => state.running);
  const movers = useMemo(() => {
    const found = moversOf(plan, movableIds(plan));
    return typeof found === 'string' ? [] : found;
  }, [plan]);
  useEffect(() => endPreviews, []);
  const start = (): void => {
    const { stays } = solveStore.getState();
    const { partialFor, partial } = reportStore.getState();
    endPreviews();
    void nightSolver.start(plan, {
      movable: movers.map(({ id }) => id).filter((id) => !stays.has(id)),
      tolerance: toleranceStore.getState(),
      seen: partialFor === plan ? [...partial.values()] : [],
    });
  };
  return (
    <div className="two solve">
      <Column>
        <div className="frames-head">
          <FramesSwitch />
        </div>
        <Movable plan={plan} movers={movers} />
        <ToleranceFields />
      </Column>
      <Column>
        <div className="column-head stays">
          <h3>Clear all setups</h3>
          <button type="button" className="do" disabled={running} onClick={start}>
            Start
          </button>
        </div>
        <Answer plan={plan} />
      </Column>
    </div>
  );
}
