import { glassOf, spanOf, stateAt } from '../optics/camera';
import { blurMm, depthOfField, type FocusGlass, usualCircleMm } from '../optics/focus';
import { depthOfEyes, focusAt } from '../optics/focusAt';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';

/** How one performer's eyes lie to the focus at an instant. */
export interface FocusOnPerformer {
  readonly performerId: string;
  /** From the image plane along the axis, metres; null for nobody there, or behind the camera. */
  readonly metres: number | null;
  /** Height of the blur of a point at the eyes on the gate, millimetres. */
  readonly blurMm: number | null;
  /** Whether that passes for sharp. */
  readonly sharp: boolean;
}

/** A lens's focus at an instant; distances from the image plane, metres. */
export interface FocusSample {
  readonly seconds: number;
  /** Null where nobody is there to be followed. */
  readonly focusMetres: number | null;
  readonly nearMetres: number | null;
  /** Infinity from the hyperfocal distance on. */
  readonly farMetres: number | null;
  readonly performers: readonly FocusOnPerformer[];
}

/** What a setup is focused with at an instant, with the circle of its gate or the usual one. */
export function focusGlassOf(plan: Plan, setup: Setup, seconds: number): FocusGlass {
  const { gateMm } = glassOf(plan, setup);
  const mode = plan.kit.bodies.find(({ id }) => id === setup.body)?.modes.find(({ id }) => id === setup.mode);
  return {
    focalMm: stateAt(plan, setup, seconds).focalMm,
    stop: setup.stop,
    circleMm: mode?.circleMm ?? usualCircleMm(gateMm),
  };
}

/** The focus of a setup at an instant of the action's clock, against every performer. */
export function focusSampleAt(plan: Plan, setup: Setup, seconds: number): FocusSample {
  const glass = focusGlassOf(plan, setup, seconds);
  const behind = (glassOf(plan, setup).lens.pupilToImageMm ?? 0) / 1000;
  const focus = focusAt(plan, setup, seconds);
  const isImaged = focus !== null && focus > glass.focalMm / 1000;
  const depth = isImaged ? depthOfField(glass, focus) : null;
  return {
    seconds,
    focusMetres: focus === null ? null : focus + behind,
    nearMetres: depth ? depth.nearMetres + behind : null,
    farMetres: depth ? depth.farMetres + behind : null,
    performers: plan.cast.map(({ id }) => {
      const metres = depthOfEyes(plan, setup, seconds, id);
      if (metres === null || metres <= 0)
        return { performerId: id, metres: null, blurMm: null, sharp: false };
      const blur = isImaged ? blurMm(glass, focus, metres) : null;
      return {
        performerId: id,
        metres: metres + behind,
        blurMm: blur,
        sharp: blur !== null && blur <= glass.circleMm,
      };
    }),
  };
}

/** The focus of a setup along its span: `samples` instants evenly from its start to its end, at least two. */
export function focusTrack(plan: Plan, setup: Setup, samples: number): readonly FocusSample[] {
  const [from, to] = spanOf(plan, setup);
  const count = Math.max(2, samples);
  return Array.from({ length: count }, (_, k) =>
    focusSampleAt(plan, setup, from + ((to - from) * k) / (count - 1)),
  );
}
