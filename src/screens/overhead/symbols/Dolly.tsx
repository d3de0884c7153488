import { useRef } from 'react';
import { dollyPlaceAt, riderOf } from '../../../core/optics/riding';
import { useLivePlan } from '../../../desk/hooks';
import { liveStore } from '../../../desk/liveStore';
import { useDriver } from '../useDriver';
import { DollyPlan } from './DollyPlan';
import type { GearOf } from './kinds';

/** A dolly, under the camera that rides on it at the instant of the clock. */
export function Dolly({ gear }: { readonly gear: GearOf<'dolly'> }) {
  const plan = useLivePlan();
  const group = useRef<SVGGElement>(null);
  const rider = riderOf(plan, gear);
  useDriver(() => {
    const place = rider ? dollyPlaceAt(plan, gear, rider, liveStore.getState().seconds) : gear;
    const [x, , z] = place.at;
    group.current?.setAttribute('transform', `translate(${x} ${z}) rotate(${place.headingDegrees})`);
  });
  return (
    <g ref={group}>
      <DollyPlan gear={gear} />
    </g>
  );
}
