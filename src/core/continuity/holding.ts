import { cameraAt, spanOf } from '../optics/camera';
import { played } from '../plan/played';
import type { Performer } from '../plan/schema/cast';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { instantsOf, runsOf } from '../sight/frames';
import { type Framing, framingOf, SHOT_SIZES, type ShotSize } from './framing';

/** How a setup frames one performer over its span. */
export interface Holding {
  readonly performerId: string;
  readonly label: string;
  /** When the whole head is inside the frame line: [from, to] on the action's clock, seconds, to a frame. */
  readonly heldSpans: readonly (readonly [number, number])[];
  /** Whether it is so at every frame. */
  readonly heldThroughout: boolean;
  /** The nearest and the farthest size that it comes to; null when the head is never in frame. */
  readonly sizes: readonly [nearest: ShotSize, farthest: ShotSize] | null;
  /** At the setup's first and last frame; null where the performer is nowhere or behind the camera. */
  readonly first: Framing | null;
  readonly last: Framing | null;
}

function holdingOf(plan: Plan, setup: Setup, performer: Performer, instants: Float64Array): Holding {
  const framings = Array.from(instants, (seconds) =>
    framingOf(cameraAt(plan, setup, seconds), plan, performer, seconds),
  );
  const held = Uint8Array.from(framings, (framing) => (framing?.held ? 1 : 0));
  const ranks = framings.flatMap((framing) => (framing?.size ? [SHOT_SIZES.indexOf(framing.size)] : []));
  return {
    performerId: performer.id,
    label: performer.label,
    heldSpans: runsOf(held).map(([from, to]) => [instants[from], instants[to]] as const),
    heldThroughout: held.every((flag) => flag === 1),
    sizes: ranks.length > 0 ? [SHOT_SIZES[Math.min(...ranks)], SHOT_SIZES[Math.max(...ranks)]] : null,
    first: framings[0] ?? null,
    last: framings[framings.length - 1] ?? null,
  };
}

/** How a setup frames each performer over its span, or at one instant of the action's clock. */
export function holdingsOf(plan: Plan, setup: Setup, atSeconds: number | null = null): readonly Holding[] {
  const [from, to] = atSeconds === null ? spanOf(plan, setup) : [atSeconds, atSeconds];
  const instants = instantsOf(from, to);
  const scene = played(plan, setup);
  return scene.cast.map((performer) => holdingOf(scene, setup, performer, instants));
}
