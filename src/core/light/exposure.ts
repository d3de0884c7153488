import type { Setup } from '../plan/schema/setup';
import { log, pow } from '../units/steadyMath';

/** What of a setup its exposure is made of. */
export type ExposureSettings = Pick<
  Setup,
  'stop' | 'iso' | 'shutterDegrees' | 'framesPerSecond' | 'ndStops' | 'filterLossStops'
>;

/** What a setup's filters take of the light, neutral density and the others together; stops. */
export const filterStops = ({
  ndStops,
  filterLossStops = 0,
}: Pick<Setup, 'ndStops' | 'filterLossStops'>): number => ndStops + filterLossStops;

/** Less than this is no light that a sensor could show, cd/m²; an estimate, no source. */
export const LEAST_LUMINANCE = 1e-6;

/** Reflected-light constant of ISO 2720 in common use, cd s/m². Source: [meter-constants] */
const REFLECTED = 12.5;
/** Incident-light constant for a flat receiver, lx s. Source: [exposure-values] */
const INCIDENT = 250;

/** N²/(t S) times what the filters take: what an exposure asks for, in units of a meter's constant. */
function asked(settings: ExposureSettings): number {
  const { stop, iso, shutterDegrees, framesPerSecond } = settings;
  const seconds = shutterDegrees / 360 / framesPerSecond;
  return ((stop * stop) / (seconds * iso)) * pow(2, filterStops(settings));
}

/** Luminance that a setup's exposure renders as middle grey, K N²/(t S), cd/m². Source: [meter-constants] */
export const greyLuminance = (settings: ExposureSettings): number => REFLECTED * asked(settings);

/** Illuminance on a face that a setup's stop asks for, C N²/(t S), lux. Source: [exposure-values] */
export const askedLux = (settings: ExposureSettings): number => INCIDENT * asked(settings);

/** Stops from one level of light to another of the same unit; both above 0. */
export const stopsBetween = (from: number, to: number): number => log(to / from) / Math.LN2;

/** Lux at an exposure value for ISO 100: 2.5 · 2^EV. Source: [exposure-values] */
export const luxOfEv100 = (ev: number): number => (INCIDENT / 100) * pow(2, ev);

/** Exposure value for ISO 100 of a level in lux above 0. Source: [exposure-values] */
export const ev100OfLux = (lux: number): number => stopsBetween(INCIDENT / 100, lux);

/** Luminance at an exposure value for ISO 100: 0.125 · 2^EV, cd/m². Source: [exposure-values] */
export const luminanceOfEv100 = (ev: number): number => (REFLECTED / 100) * pow(2, ev);
