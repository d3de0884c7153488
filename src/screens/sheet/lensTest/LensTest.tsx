import { useEffect, useMemo } from 'react';
import { useStore } from 'zustand';
import { holdingsOf } from '../../../core/continuity/holding';
import { spanOf } from '../../../core/optics/camera';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { lensAnswer } from '../../../core/report/lensTest';
import { allLensTries, type LensTry } from '../../../core/report/lensTries';
import { setupOf } from '../../../desk/choose';
import { usePlanState, useSession } from '../../../desk/hooks';
import { askLensTest, goOnWithLensTest, stopLensTest } from '../../../desk/lensTest';
import { type LensTestState, lensTestStore } from '../../../desk/lensTestStore';
import { planStore } from '../../../desk/planStore';
import { useSettledSeconds } from '../../overhead/useSettledSeconds';
import { Column } from '../../parts/Column';
import { Segmented } from '../../parts/Segmented';
import { endPreviews } from '../previewing';
import { DistanceTest } from './DistanceTest';
import { FramesSwitch } from './FramesSwitch';
import { HoldChips } from './HoldChips';
import { LensCard } from './LensCard';
import './lensTest.css';

/** Whom the setup frames now, at its start, in its middle or at its end; everybody, where that is nobody. */
function framedNow(plan: Plan, setup: Setup): readonly string[] {
  const [from, to] = spanOf(plan, setup);
  const framed = new Set(
    [from, (from + to) / 2, to].flatMap((seconds) =>
      holdingsOf(plan, setup, seconds).flatMap(({ performerId, sizes }) => (sizes ? performerId : [])),
    ),
  );
  return plan.cast.map(({ id }) => id).filter((id) => framed.size === 0 || framed.has(id));
}

/** Whom the setup is to hold: who was asked for and is still in the plan, else who is framed now. */
export function useWanted(plan: Plan, setup: Setup): readonly string[] {
  const asked = useStore(lensTestStore, ({ wanted }) => wanted.get(setup.id));
  return useMemo(
    () => asked?.filter((id) => plan.cast.some((each) => each.id === id)) ?? framedNow(plan, setup),
    [asked, plan, setup],
  );
}

/** Zooms count once for each way that they are tried. */
const whatIsTried = (tries: readonly LensTry[]): string =>
  tries.some(({ use }) => use !== null) ? 'lenses and ends of zooms' : 'lenses';

/** The answer in a sentence, or how far the test is. */
function Answer(props: {
  readonly tries: readonly LensTry[];
  readonly wanted: readonly string[];
  readonly goOn: () => void;
}) {
  const { tries, wanted, goOn } = props;
  const { trials, running, stopped, trouble }: LensTestState = useStore(lensTestStore);
  if (trouble !== null) return <p className="verm">{trouble}</p>;
  const of = tries.length;
  if (trials.size >= of) {
    const [answer = '', ...more] = lensAnswer([...trials.values()], wanted).split(/(?<=\.) (?=\p{L}|\d)/u);
    return (
      <p className="answer">
        {answer} {more.length > 0 ? <small>{more.join(' ')}</small> : null}
      </p>
    );
  }
  if (stopped)
    return (
      <p className="trying">
        {trials.size} of {of} {whatIsTried(tries)} are tried.
        <button type="button" onClick={goOn}>
          Try the others
        </button>
      </p>
    );
  return (
    <p className="trying">
      <b>Trying the lenses</b>, {Math.min(trials.size + 1, of)} of {of}
      <progress max={of} value={trials.size + (running?.share ?? 0)} aria-label="Trying the lenses" />
      <button type="button" className="bare" onClick={stopLensTest}>
        Stop
      </button>
    </p>
  );
}

function Tests({ plan, setup }: { readonly plan: Plan; readonly setup: Setup }) {
  const { along, trials } = useStore(lensTestStore);
  const wanted = useWanted(plan, setup);
  const clock = useSettledSeconds();
  const [from, to] = spanOf(plan, setup);
  const seconds = Math.min(to, Math.max(from, clock));
  const atSeconds = along === 'whole move' ? null : seconds;
  const question = useMemo(() => ({ plan, setup, atSeconds }), [plan, setup, atSeconds]);
  const tries = useMemo(
    () => allLensTries(plan, setup).toSorted((a, b) => b.tanHalfWidth - a.tanHalfWidth),
    [plan, setup],
  );
  useEffect(() => askLensTest(question), [question]);
  return (
    <div className="two lens-test">
      <Column>
        <div className="frames-head">
          <FramesSwitch />
          <Segmented
            label="Over what time the lenses are tried"
            choices={[
              { value: 'whole move', word: 'whole move' },
              { value: 'this instant', word: 'this instant' },
            ]}
            chosen={along}
            onChoose={(chosen) => lensTestStore.setState({ along: chosen })}
          />
        </div>
        {plan.cast.length > 0 ? (
          <HoldChips plan={plan} setupId={setup.id} wanted={wanted} />
        ) : (
          <p className="q">Nobody plays yet. Put a performer on the roof, and the lenses are held to them.</p>
        )}
        <div aria-live="polite">
          <Answer tries={tries} wanted={wanted} goOn={() => goOnWithLensTest(question)} />
        </div>
        <ul className="lens-cards">
          {tries.map((each) => (
            <LensCard
              key={each.id}
              plan={plan}
              setupId={setup.id}
              way={each}
              trial={trials.get(each.id)}
              wanted={wanted}
              seconds={seconds}
            />
          ))}
        </ul>
      </Column>
      <Column>
        <DistanceTest plan={plan} setup={setup} seconds={seconds} first={wanted[0] ?? null} />
      </Column>
    </div>
  );
}

/** Every lens of the kit on the chosen setup, side by side, and the same framing on another lens. */
export function LensTest() {
  const plan = usePlanState((state) => state.plan);
  const setup = setupOf(
    plan,
    useSession((state) => state.setupId),
  );
  // A preview shows one plan with a change: of another plan, or in another view, it would be a lie.
  useEffect(() => {
    const stop = planStore.subscribe((now, before) => {
      if (now.plan !== before.plan) endPreviews();
    });
    return () => {
      stop();
      endPreviews();
    };
  }, []);
  if (setup) return <Tests key={setup.id} plan={plan} setup={setup} />;
  return (
    <Column>
      <div className="frames-head">
        <FramesSwitch />
      </div>
      <p className="after">No camera stands yet. Place one, and its lenses can be tried.</p>
    </Column>
  );
}
