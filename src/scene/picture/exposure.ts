import { greyLuminance } from '../../core/light/exposure';
import type { Setup } from '../../core/plan/schema/setup';
import { colourOfKelvin, type LinearColour } from '../light/kelvin';

/** What a picture makes of the light that reaches it. */
export interface Exposure {
  /** Picture value per cd/m², 0.18 being middle grey. */
  readonly perCandela: number;
  /** What each channel is multiplied by, so that light of the balance comes out neutral. */
  readonly gains: LinearColour;
}

const MIDDLE_GREY = 0.18;

export function exposureOf(setup: Setup): Exposure {
  return { perCandela: MIDDLE_GREY / greyLuminance(setup), gains: gainsFor(setup.balanceKelvin) };
}

/** What a person walking round sees: the chosen setup's exposure, opened by a stop, or that of T2.8 at ISO 800. */
export function walkExposure(setup: Setup | null): Exposure {
  if (!setup) return { perCandela: (2 * MIDDLE_GREY) / 5.88, gains: gainsFor(4000) };
  const { perCandela, gains } = exposureOf(setup);
  return { perCandela: perCandela * 2, gains };
}

function gainsFor(balanceKelvin: number): LinearColour {
  const [red, green, blue] = colourOfKelvin(balanceKelvin);
  // Below 2000 K a full radiator has hardly any blue on a screen: the gain stays finite.
  return [1 / Math.max(0.05, red), 1 / Math.max(0.05, green), 1 / Math.max(0.05, blue)];
}
