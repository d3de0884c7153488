import type { Point, Spot } from '../plan/schema/numbers';
import type { SourceKey } from '../sources';

/** What cautions are about, in the order in which they are told. */
export const CAUTION_KINDS = ['edge', 'wind', 'wet', 'exhaust', 'way out', 'load', 'ladder', 'heat'] as const;
export type CautionKind = (typeof CAUTION_KINDS)[number];

/**
 * How it stands: *breaks* a stated figure; is *said*, since it is to be minded or the plan does not know enough to tell;
 * *holds*, and its figure is told for the crew to keep to.
 */
export const CAUTION_STANDINGS = ['breaks', 'said', 'holds'] as const;
export type CautionStanding = (typeof CAUTION_STANDINGS)[number];

/** A number of a caution. `expected` is the figure that it is held against, in the same unit, where there is one. */
export interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: 'm' | 'm/s' | 'mph' | 'Beaufort' | 'kg' | 'bags' | 'N' | 'kN' | 'kN/m²';
  readonly expected?: number;
}

/** Something about the roof that can hurt somebody, worked out from the plan. */
export interface Caution {
  /** The same for the same matter as long as its items are the same: what it is about, and their ids. A note keeps to it. */
  readonly id: string;
  readonly kind: CautionKind;
  readonly standing: CautionStanding;
  /** Items that it is about. */
  readonly itemIds: readonly string[];
  /** Setups whose camera or operator it is about. */
  readonly setupIds: readonly string[];
  /** Where on the roof it is to be marked, metres; null where it is about all of it. */
  readonly place: Point | null;
  /** Stretches of the floor that it is about, [from, to], metres. */
  readonly stretches: readonly (readonly [Spot, Spot])[];
  readonly figures: readonly Figure[];
  /** What is found, against what, and what to do: one or two sentences. */
  readonly sentence: string;
  /** Where its figures come from; what has none is common practice. */
  readonly sources: readonly SourceKey[];
  /** Who decides, in words. */
  readonly decides: string;
  /** What somebody wrote about it; the caution stays. */
  readonly note?: string;
}
