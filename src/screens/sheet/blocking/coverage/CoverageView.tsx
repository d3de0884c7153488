import { useStore } from 'zustand';
import type { Coverage } from '../../../../core/continuity/coverage';
import type { Plan } from '../../../../core/plan/schema/plan';
import { withNames } from '../../../../core/plan/withNames';
import { coverageSentence } from '../../../../core/report/continuity/coverageSentence';
import { goToSeconds } from '../../../../desk/choose';
import { useContinuity } from '../../../../desk/continuityStore';
import { usePlanState, useReports } from '../../../../desk/hooks';
import { ContinuityGlyph } from '../../../parts/ContinuityGlyph';
import { Segmented } from '../../../parts/Segmented';
import { ChoosableRow } from '../../ChoosableRow';
import { CoverageChart } from './CoverageChart';
import { CoverageTable } from './CoverageTable';
import { type BlockingView, blockingViewStore } from './view';
import './coverage.css';

const VIEWS: readonly { readonly value: BlockingView; readonly word: string }[] = [
  { value: 'timeline', word: 'timeline' },
  { value: 'coverage', word: 'coverage' },
];

/** Goes from one view of the Blocking sheet to the other. */
export function BlockingSwitch() {
  const { view } = useStore(blockingViewStore);
  return (
    <Segmented
      label="What the sheet shows of the blocking"
      choices={VIEWS}
      chosen={view}
      onChoose={(chosen) => blockingViewStore.setState({ view: chosen })}
    />
  );
}

/** Why there is nothing to chart, and the next act; null where there is. */
function emptyWords(plan: Plan): string | null {
  if (plan.cast.every(({ marks }) => marks.length === 0))
    return 'Nobody plays yet. Put a performer on the roof and give them marks: here you will see which setup has them when.';
  if (plan.beats.length < 2)
    return 'The action has no length yet. Add a second beat in the timeline, and what is covered from one to the next stands here.';
  return plan.setups.length === 0
    ? 'No setup covers anything yet. Place a camera, and its bar stands here.'
    : null;
}

function Holes({ plan, coverage }: { readonly plan: Plan; readonly coverage: Coverage }) {
  if (coverage.holes.length === 0)
    return (
      <p className="all-clear verd">
        <ContinuityGlyph standing="holds" /> Whenever something happens with somebody, a setup has them.
      </p>
    );
  return (
    <ul className="rows findings">
      {coverage.holes.map((hole) => (
        <ChoosableRow key={hole.fromBeat} chosen={false} onChoose={() => goToSeconds(hole.fromSeconds)}>
          <ContinuityGlyph standing="breaks" />
          <span className="sentence">{coverageSentence(plan, hole)}</span>
        </ChoosableRow>
      ))}
    </ul>
  );
}

/** Who of the action is covered by which setup, and what no setup has. */
export function CoverageView() {
  const plan = usePlanState((state) => state.plan);
  const coverage = useContinuity((state) => state.coverage);
  const forPlan = useContinuity((state) => state.forPlan);
  const trouble = useReports((state) => state.trouble);
  const empty = emptyWords(plan);
  if (empty !== null)
    return (
      <div className="coverage">
        <p className="coverage-empty">{empty}</p>
      </div>
    );
  if (!coverage || !forPlan || coverage.intervals.length === 0)
    return (
      <div className="coverage">
        <p className="after">{trouble ?? 'Who is covered is being read.'}</p>
      </div>
    );
  const told = withNames(forPlan);
  return (
    <div className="coverage" aria-busy={forPlan !== plan}>
      <CoverageTable plan={told} coverage={coverage} />
      <CoverageChart plan={told} coverage={coverage} />
      <p className="coverage-key q" aria-hidden="true">
        <i className="whole" /> all of it <i className="part" /> part of it <i className="none" /> no setup
      </p>
      <Holes plan={told} coverage={coverage} />
    </div>
  );
}
