import { useRef } from 'react';
import { keyAt } from '../../../core/optics/pose';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { letterOf } from '../../../desk/choose';
import { livePlan, liveStore } from '../../../desk/liveStore';
import { polygon, polyline } from '../geometry/paths';
import { distance, headingOf, minus, type Spot, standing } from '../geometry/spots';
import { CameraSymbol } from '../symbols/CameraSymbol';
import { keyOf } from '../targets';
import { useDriver } from '../useDriver';
import { Choice } from './ItemGroup';

/** Every setup's camera at the instant of the clock; the chosen one last, so that it lies on top. */
export function Cameras({ plan, setupId }: { readonly plan: Plan; readonly setupId: string | null }) {
  const others = plan.setups.filter(({ id }) => id !== setupId);
  const chosen = plan.setups.find(({ id }) => id === setupId);
  return (
    <g className="cameras">
      {others.map((setup) => (
        <Camera key={setup.id} setup={setup} letter={letterOf(plan, setup.id)} chosen={false} />
      ))}
      {chosen && <Travel setup={chosen} />}
      {chosen && <Camera key={chosen.id} setup={chosen} letter={letterOf(plan, chosen.id)} chosen />}
    </g>
  );
}

interface CameraProps {
  readonly setup: Setup;
  readonly letter: string;
  readonly chosen: boolean;
}

function Camera({ setup, letter, chosen }: CameraProps) {
  const group = useRef<SVGGElement>(null);
  useDriver(() => {
    const now = livePlan().setups.find(({ id }) => id === setup.id) ?? setup;
    const key = keyAt(now.move, liveStore.getState().seconds);
    const [x, , z] = key.position;
    group.current?.setAttribute('transform', `translate(${x} ${z}) rotate(${key.headingDegrees})`);
  });
  return (
    <Choice
      target={keyOf({ type: 'camera', setupId: setup.id })}
      spoken={`Camera of setup ${letter}, ${setup.label}`}
      chosen={chosen}
      kind="camera"
    >
      <g ref={group}>
        <CameraSymbol />
      </g>
    </Choice>
  );
}

/** The way of a camera that moves: a thin line through its keys, with an arrow at its end. */
function Travel({ setup }: { readonly setup: Setup }) {
  const spots = setup.move.keys.map(({ position }): Spot => [position[0], position[2]]);
  const last = spots[spots.length - 1];
  const before = spots.findLast((spot) => distance(spot, last) > 0.05);
  if (!before) return null;
  const heading = headingOf(minus(last, before));
  return (
    <>
      <path className="hair" d={polyline(spots)} />
      <path
        className="arrow"
        d={polygon([last, standing(last, heading, [-0.09, 0.26]), standing(last, heading, [0.09, 0.26])])}
      />
    </>
  );
}
