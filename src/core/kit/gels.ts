import type { Diffusion } from '../plan/schema/before';

/** A conversion gel by its usual name. */
export interface ConversionGel {
  readonly label: string;
  readonly mired: number;
}

/**
 * Conversion gels as they commonly are: a full one makes 5500 K of 3200 K, or the other way; half and a quarter have
 * half and a quarter of its mired. Source: common practice, no source
 */
export const CONVERSION_GELS: readonly ConversionGel[] = [
  { label: 'quarter blue', mired: -33 },
  { label: 'half blue', mired: -66 },
  { label: 'full blue', mired: -131 },
  { label: 'quarter amber', mired: 33 },
  { label: 'half amber', mired: 66 },
  { label: 'full amber', mired: 131 },
];

/** A sheet of diffusion by its usual name. */
export interface DiffusionSheet extends Diffusion {
  readonly label: string;
}

/** Diffusion as it commonly is; no single sheet. Source: common practice, no source */
export const DIFFUSION_SHEETS: readonly DiffusionSheet[] = [
  { label: 'quarter', transmission: 0.8, spreadDegrees: 20 },
  { label: 'half', transmission: 0.6, spreadDegrees: 45 },
  { label: 'full', transmission: 0.4, spreadDegrees: 90 },
];
