/** Refractive index of water for visible light. Source: [water-reflectance] */
export const WATER_INDEX = 1.333;

/** Shares of light that a smooth surface turns back, 0..1. */
export interface Fresnel {
  /** Of light that swings level with the surface. */
  readonly across: number;
  /** Of light that swings in the plane of incidence; none of it at Brewster's angle. */
  readonly along: number;
  /** Of both alike. */
  readonly unpolarised: number;
}

/**
 * Fresnel's equations for a smooth clear surface seen from air: with c and c′ the cosines of incidence and of the way
 * on, sin′ = sin ÷ n, across = ((c − n c′) ÷ (c + n c′))², along = ((n c − c′) ÷ (n c + c′))².
 * @param cosine of the incidence off the normal, 0..1; what is beyond counts as its end
 * @param index refractive index of what lies below, above 1
 *
 * Source: [water-reflectance]
 */
export function fresnel(cosine: number, index = WATER_INDEX): Fresnel {
  const c = Math.min(1, Math.max(0, cosine));
  const on = Math.sqrt(1 - (1 - c * c) / (index * index));
  const s = (c - index * on) / (c + index * on);
  const p = (index * c - on) / (index * c + on);
  return { across: s * s, along: p * p, unpolarised: (s * s + p * p) / 2 };
}
