import { askedLux, stopsBetween } from '../../core/light/exposure';
import { type LightScene, lightScene } from '../../core/light/lightScene';
import { probeReading, probesOf } from '../../core/light/probes';
import type { Plan } from '../../core/plan/schema/plan';

/** What a meter reads now. */
export interface MeterReading {
  readonly id: string;
  readonly lux: number;
  /** Above what the stop of the setup asks for; null without a setup. */
  readonly stops: number | null;
  /** The lamp or cloth that gives most of it; null where the night alone does. */
  readonly itemId: string | null;
}

let before: LightScene | null = null;

/** What the plan's meters read at an instant, through a setup, in the plan's order. */
export function meterReadings(plan: Plan, setupId: string | null, seconds: number): readonly MeterReading[] {
  if (!plan.probes) return [];
  const setup = plan.setups.find(({ id }) => id === setupId) ?? null;
  const scene = lightScene(plan, setup, seconds, before);
  before = scene;
  const asked = setup && askedLux(setup);
  const probes = probesOf(plan);
  return plan.probes.map(({ id }, k): MeterReading => {
    const { lux, shares } = probeReading(scene, probes[k]);
    const [most] = shares;
    return {
      id,
      lux,
      stops: asked === null || lux <= 0 ? null : stopsBetween(asked, lux),
      itemId: most && most.lux > 0 ? most.itemId : null,
    };
  });
}
