import { add, dot, type Vec3 } from '../form/build/vector';

/** What one source sends to a place, before anything is said of the surface there. */
export interface SourceLight {
  /** The lamp's item; of what a cloth gives on, the cloth. */
  readonly itemId: string;
  /** The lamp that gives a cloth most of its light; null for a lamp itself. */
  readonly fedBy: string | null;
  readonly metres: number;
  /** Off the lamp's axis or the cloth's normal. */
  readonly offAxisDegrees: number;
  /** The share of its light that gets there: 1 with nothing in the way, 0 in the shade. */
  readonly visible: number;
  /** Where the light comes from, each as long as its lux on a surface that faces it. */
  readonly rays: readonly Vec3[];
}

/** Less than this, lux, is nothing. */
export const LEAST_LUX = 1e-5;

/** What to look for and what to leave out. */
export interface LightQuestion {
  /** Items that stand in nobody's light here, as a head does not in that of its own face. */
  readonly ignore?: ReadonlySet<string>;
  /** Only what can light a surface with this unit normal. */
  readonly facing?: Vec3;
}

/** Lux of one source on a surface by its unit normal: each ray by the cosine of its incidence. */
export const sourceLux = ({ rays }: SourceLight, normal: Vec3): number => {
  let lux = 0;
  for (const ray of rays) lux += Math.max(0, dot(ray, normal));
  return lux;
};

/** The sum of a source's rays: which way its light comes from on the whole, as long as its lux there. */
export const sourceVector = ({ rays }: SourceLight): Vec3 => rays.reduce<Vec3>(add, [0, 0, 0]);

/** The same of all that comes from one item, as from every bulb of a string. */
export const vectorOf = (sources: readonly SourceLight[]): Vec3 =>
  sources.map(sourceVector).reduce<Vec3>(add, [0, 0, 0]);
