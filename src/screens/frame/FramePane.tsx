import { frameShapeOf, glassOf, stateAt } from '../../core/optics/camera';
import { deliveryWord } from '../../core/optics/deliveries';
import { angleDegrees } from '../../core/optics/gate';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { formatDegrees } from '../../core/units/angles';
import { formatLength, type LengthSystem } from '../../core/units/lengths';
import { NBSP } from '../../core/units/numbers';
import { letterOf } from '../../desk/choose';
import { useLive, useLivePlan, useSession } from '../../desk/hooks';
import { PaneBoundary } from '../parts/PaneBoundary';
import { useChosenSetup } from '../report/useChosenSetup';
import { CompareSwitch } from './compare/CompareSwitch';
import { Panes } from './compare/Panes';
import { GuideMenu } from './GuideMenu';
import { NoSetup } from './NoSetup';
import { Scrub } from './Scrub';

const plainNumber = (value: number): string => String(Math.round(value * 100) / 100);

/** `50 mm, 2× squeeze, T2.8, 1.20 m high, 53.3° across`. */
function glassWords(plan: Plan, setup: Setup, heightMetres: number, lengths: LengthSystem): string {
  const { lens } = glassOf(plan, setup);
  const across = angleDegrees(frameShapeOf(plan, setup).tanHalfWidth);
  return [
    `${plainNumber(lens.focalMm)}${NBSP}mm`,
    ...(lens.squeeze === 1 ? [] : [`${plainNumber(lens.squeeze)}× squeeze`]),
    `T${plainNumber(setup.stop)}`,
    `${formatLength(heightMetres, lengths)} high`,
    `${formatDegrees(across)} across`,
  ].join(', ');
}

function FrameOf({ setup }: { readonly setup: Setup }) {
  const plan = useLivePlan();
  const lengths = useSession((state) => state.lengths);
  // To the centimetre, so that a level move does not draw this line anew at each tick of the clock.
  const heightMetres = useLive(
    (state) => Math.round(stateAt(plan, setup, state.seconds).position[1] * 100) / 100,
  );
  return (
    <>
      <div className="bar">
        <h2>
          <span className="letter">{letterOf(plan, setup.id)}</span> {setup.label}
        </h2>
        <span className="q glass">{glassWords(plan, setup, heightMetres, lengths)}</span>
        <span className="gap" />
        <CompareSwitch />
        <GuideMenu plan={plan} setup={setup} />
        <span className="q delivery-word">
          delivery {deliveryWord(setup.delivery)}
          {setup.secondDelivery === undefined ? '' : `, ${deliveryWord(setup.secondDelivery)} inside`}
        </span>
      </div>
      <Panes plan={plan} setup={setup} />
      <PaneBoundary name="The time bar">
        <Scrub setup={setup} />
      </PaneBoundary>
    </>
  );
}

/** The frame: what the chosen setup sees, and when. */
export function FramePane() {
  const setup = useChosenSetup();
  return (
    <section className="frame-pane" aria-label="The frame">
      <PaneBoundary name="The frame">{setup ? <FrameOf setup={setup} /> : <NoSetup />}</PaneBoundary>
    </section>
  );
}
