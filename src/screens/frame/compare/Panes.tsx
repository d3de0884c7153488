import { spanOf } from '../../../core/optics/camera';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { withNames } from '../../../core/plan/withNames';
import { chooseSetup, letterOf } from '../../../desk/choose';
import { putInPane, useCompare } from '../../../desk/compare/compareStore';
import { useLive } from '../../../desk/hooks';
import { Picture } from '../Picture';
import { PairWords } from './PairWords';
import './compare.css';

/** Whether the clock is outside what a setup covers, so that its picture stands still at the nearest end. */
export function useIsOutside(plan: Plan, setup: Setup): boolean {
  const [from, to] = spanOf(plan, setup);
  return useLive(({ seconds }) => seconds < from || seconds > to);
}

/** A setup among others: which one it is can be chosen over it, a press on the picture looks through it. */
function Pane(props: {
  readonly plan: Plan;
  readonly setup: Setup;
  readonly place: number;
  readonly lookedThrough: boolean;
}) {
  const { plan, setup, place, lookedThrough } = props;
  const isOutside = useIsOutside(plan, setup);
  const letter = letterOf(plan, setup.id);
  return (
    <section
      className="pane"
      aria-label={`Setup ${letter} beside the others`}
      aria-current={lookedThrough ? 'true' : undefined}
    >
      <div className="pane-head">
        <select
          aria-label={`Setup in pane ${place + 1}`}
          value={setup.id}
          onChange={(event) => putInPane(place, event.currentTarget.value)}
        >
          {withNames(plan).setups.map(({ id, label }) => (
            <option key={id} value={id}>
              {letterOf(plan, id)} {label}
            </option>
          ))}
        </select>
        {isOutside ? <span className="q">not in this beat</span> : null}
      </div>
      <div className="pane-picture">
        <Picture key={setup.id} setup={setup} lookedThrough={lookedThrough} />
        {lookedThrough ? null : (
          <button
            type="button"
            className="pane-choose"
            aria-label={`Look through ${letter}`}
            onClick={() => chooseSetup(setup.id)}
          />
        )}
      </div>
    </section>
  );
}

/** The setup that is looked through, alone or beside others at the same time of the action. */
export function Panes({ plan, setup }: { readonly plan: Plan; readonly setup: Setup }) {
  const { count, slots } = useCompare((state) => state);
  const seen = slots.setupIds.flatMap((id) => plan.setups.find((each) => each.id === id) ?? []);
  if (count === 1 || seen.length < 2)
    return (
      <div className="picture-area">
        <Picture key={setup.id} setup={setup} lookedThrough />
      </div>
    );
  return (
    <div className="picture-area">
      <div
        className="compare-room"
        style={{
          aspectRatio: setup.delivery,
          width: `min(100%, calc(var(--picture-height) * ${setup.delivery}))`,
        }}
      >
        <div className="compare" data-panes={count}>
          <div className="panes">
            {seen.map((each, place) => (
              <Pane
                key={each.id}
                plan={plan}
                setup={each}
                place={place}
                lookedThrough={each.id === setup.id}
              />
            ))}
          </div>
          <PairWords setupIds={slots.setupIds} />
        </div>
      </div>
    </div>
  );
}
