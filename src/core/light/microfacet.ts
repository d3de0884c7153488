import { add, dot, unit, type Vec3 } from '../form/build/vector';
import { exp } from '../units/steadyMath';

/**
 * How much more often a facet is tilted some way than a solid angle has room, by the cosine of its tilt off the
 * surface's normal: slopes spread normally, `slope` their root mean square along either way over the surface,
 * D = exp(−tan² ÷ 2s²) ÷ (2π s² cos⁴). Facets' areas, seen from straight above, come to 1.
 *
 * Source: [microfacets]
 */
export function facetDensity(cosine: number, slope: number): number {
  if (cosine <= 0) return 0;
  const square = cosine * cosine;
  const twice = 2 * slope * slope;
  const power = (1 - square) / square / twice;
  return power > 600 ? 0 : exp(-power) / (Math.PI * twice * square * square);
}

/** The share of facets that is seen past the others, by the cosine of the way to the eye or to the lamp. Source: [microfacets] */
function unmasked(cosine: number, slope: number): number {
  if (cosine <= 0) return 0;
  const sine = Math.sqrt(Math.max(0, 1 - cosine * cosine));
  const a = sine === 0 ? Infinity : cosine / (sine * slope * Math.SQRT2);
  return a >= 1.6 ? 1 : (3.535 * a + 2.181 * a * a) / (1 + 2.276 * a + 2.577 * a * a);
}

/** What a rough shiny surface sends to an eye. */
export interface Lobe {
  /** Luminance for one lux on a surface that faces the light, before the facets' own reflectance; 1/sr. */
  readonly perLux: number;
  /** Cosine of the incidence on the facets that shine: for Fresnel. */
  readonly facetCosine: number;
}

/**
 * The sheen of a surface of small mirrors: L = E⊥ F D G ÷ (4 cos of the eye), E⊥ the lux on a surface that faces the
 * light. All ways are unit vectors from the surface.
 *
 * Source: [microfacets]
 */
export function lobe(normal: Vec3, toLight: Vec3, toEye: Vec3, slope: number): Lobe {
  const eye = dot(normal, toEye);
  const light = dot(normal, toLight);
  if (eye <= 0 || light <= 0) return { perLux: 0, facetCosine: 0 };
  const half = unit(add(toLight, toEye));
  const passing = unmasked(eye, slope) * unmasked(light, slope);
  return {
    perLux: (facetDensity(dot(normal, half), slope) * passing) / (4 * eye),
    facetCosine: dot(half, toEye),
  };
}
