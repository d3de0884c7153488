import { useDeferredValue, useMemo } from 'react';
import type { Plan } from '../../../core/plan/schema/plan';
import { useSession } from '../../../desk/hooks';
import { type MeterReading, meterReadings } from '../../../desk/sky/meterReadings';
import { useSettledSeconds } from '../useSettledSeconds';

/** What the plan's meters read now, by their ids; while something moves they may be a little late. */
export function useMeterReadings(plan: Plan): ReadonlyMap<string, MeterReading> {
  const setupId = useSession((state) => state.setupId);
  const seconds = useSettledSeconds();
  const later = useDeferredValue(plan);
  return useMemo(
    () => new Map(meterReadings(later, setupId, seconds).map((reading) => [reading.id, reading])),
    [later, setupId, seconds],
  );
}
