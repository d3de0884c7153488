import { useMemo, useRef } from 'react';
import { stateAt } from '../../../core/optics/camera';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { letterOf } from '../../../desk/choose';
import { livePlan, liveStore } from '../../../desk/liveStore';
import { polygon, polyline } from '../geometry/paths';
import { standing } from '../geometry/spots';
import { travelOf } from '../geometry/travel';
import { CameraSymbol } from '../symbols/CameraSymbol';
import { keyOf } from '../targets';
import { useDriver } from '../useDriver';
import { Choice } from './ItemGroup';

/** Every setup's camera at the instant of the clock; the chosen one last, so that it lies on top. */
export function Cameras({
  plan,
  setupId,
  over,
}: {
  readonly plan: Plan;
  readonly setupId: string | null;
  /** Those that stand over the line. */
  readonly over: ReadonlySet<string>;
}) {
  const others = plan.setups.filter(({ id }) => id !== setupId);
  const chosen = plan.setups.find(({ id }) => id === setupId);
  return (
    <g className="cameras">
      {others.map((setup) => (
        <Camera
          key={setup.id}
          setup={setup}
          letter={letterOf(plan, setup.id)}
          chosen={false}
          over={over.has(setup.id)}
        />
      ))}
      {chosen && <Travel plan={plan} setup={chosen} />}
      {chosen && (
        <Camera
          key={chosen.id}
          setup={chosen}
          letter={letterOf(plan, chosen.id)}
          chosen
          over={over.has(chosen.id)}
        />
      )}
    </g>
  );
}

interface CameraProps {
  readonly setup: Setup;
  readonly letter: string;
  readonly chosen: boolean;
  readonly over: boolean;
}

function Camera({ setup, letter, chosen, over }: CameraProps) {
  const group = useRef<SVGGElement>(null);
  useDriver(() => {
    const plan = livePlan();
    const now = plan.setups.find(({ id }) => id === setup.id);
    // Between the opening of another plan and its drawing, this camera is of the one before.
    if (!now) return;
    const { position, headingDegrees } = stateAt(plan, now, liveStore.getState().seconds);
    group.current?.setAttribute(
      'transform',
      `translate(${position[0]} ${position[2]}) rotate(${headingDegrees})`,
    );
  });
  return (
    <Choice
      target={keyOf({ type: 'camera', setupId: setup.id })}
      spoken={`Camera of setup ${letter}, ${setup.label}${over ? ', over the line' : ''}`}
      chosen={chosen}
      kind={over ? 'camera over' : 'camera'}
    >
      <g ref={group}>
        <CameraSymbol />
      </g>
    </Choice>
  );
}

/** The way of a camera that moves: a thin line as it really goes, a tick at each second, an arrow at its end. */
function Travel({ plan, setup }: { readonly plan: Plan; readonly setup: Setup }) {
  const way = useMemo(() => travelOf(plan, setup), [plan, setup]);
  if (!way) return null;
  const { spots, ticks, end, headingDegrees } = way;
  return (
    <>
      <path className="hair" d={polyline(spots)} />
      <path
        className="hair"
        d={ticks
          .map(({ spot, headingDegrees: along }) =>
            polyline([standing(spot, along, [-0.1, 0]), standing(spot, along, [0.1, 0])]),
          )
          .join('')}
      />
      <path
        className="arrow"
        d={polygon([
          end,
          standing(end, headingDegrees, [-0.09, 0.26]),
          standing(end, headingDegrees, [0.09, 0.26]),
        ])}
      />
    </>
  );
}
