import type { Plan } from '../../src/core/plan/schema/plan';
import { GLOWS, type ProbeRecord } from '../../src/core/plan/schema/sky';
import type { Draw } from './draw';

const someProbe = (id: string, draw: Draw): ProbeRecord => ({
  id,
  label: `Meter of ${id}`,
  at: [draw.between(-6, 6), draw.between(0, 3), draw.between(-4, 4)],
  normal: draw.pick(['key', 'up', [draw.between(0, 360), draw.between(-90, 90)]]),
});

/** The plan under some sky, at some hour, with some meters; half of the plans as they are. */
export function withSky(plan: Plan, draw: Draw): Plan {
  if (draw.chance(0.5)) return plan;
  const hour = draw.whole(0, 23);
  return {
    ...plan,
    sky: {
      glow: draw.pick(GLOWS),
      clock: { time: `${String(hour).padStart(2, '0')}:30`, utcOffsetHours: draw.whole(-3, 3) },
      moon: draw.chance(0.7),
    },
    probes: Array.from({ length: draw.whole(1, 3) }, (_, k) => someProbe(`meter-${k + 1}`, draw)),
  };
}
