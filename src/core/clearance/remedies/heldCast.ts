import { holdingsOf } from '../../continuity/holding';
import type { Vec3 } from '../../form/build/vector';
import { halfHeadMetres, landmarksAt } from '../../form/figure/landmarks';
import { cameraAt, spanOf } from '../../optics/camera';
import { projectPoint } from '../../optics/project';
import type { Camera } from '../../optics/types';
import { played } from '../../plan/played';
import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import { instantsOf } from '../../sight/frames';

/** Heads are looked at so many frames apart while a camera is sought; afterwards at every frame. */
const APART_FRAMES = 12;

interface Head {
  readonly seconds: number;
  readonly places: readonly Vec3[];
  readonly halfMetres: number;
}

/** Whether a whole head is inside a camera's frame, as `framingOf` has it. */
function isHeld(camera: Camera, { places, halfMetres }: Head): boolean {
  return places.every((place) => {
    const at = projectPoint(camera, place);
    if (!at) return false;
    const half = halfMetres / (2 * at.depth * camera.frame.tanHalfWidth);
    return at.y >= 0 && at.y <= 1 && at.x - half >= 0 && at.x + half <= 1;
  });
}

/** Whom a setup holds throughout: they are wanted in its frame, whatever becomes of its camera. */
export class HeldCast {
  private readonly wanted: readonly string[];
  private readonly heads: readonly Head[];

  constructor(plan: Plan, setup: Setup) {
    this.wanted = holdingsOf(plan, setup)
      .filter(({ heldThroughout }) => heldThroughout)
      .map(({ performerId }) => performerId);
    const acted = played(plan, setup);
    const instants = instantsOf(...spanOf(plan, setup));
    const asked = [...instants].filter((_, k) => k % APART_FRAMES === 0 || k === instants.length - 1);
    this.heads = acted.cast
      .filter(({ id }) => this.wanted.includes(id))
      .flatMap((performer) =>
        asked.flatMap((seconds): Head[] => {
          const marks = landmarksAt(performer, acted, seconds);
          if (!marks) return [];
          const places = [marks.crown, marks.eyes, marks.chin];
          return [{ seconds, places, halfMetres: halfHeadMetres(performer) }];
        }),
      );
  }

  /** Whether a changed setup holds them where it is looked at while one is sought. */
  mayHold(after: Plan, setup: Setup): boolean {
    return this.heads.every((head) => isHeld(cameraAt(after, setup, head.seconds), head));
  }

  /** Whether it holds them at every frame. */
  holds(after: Plan, setup: Setup): boolean {
    const wanted = holdingsOf(after, setup).filter(({ performerId }) => this.wanted.includes(performerId));
    return wanted.every(({ heldThroughout }) => heldThroughout);
  }
}
