import type { Spot } from '../schema/numbers';

/** A place that is only read: [x, z], metres. */
export type At = readonly [number, number];

/** What a snap is about. */
export type SnapKind =
  | 'grid'
  | 'edge'
  | 'end'
  | 'middle'
  | 'square'
  | 'in line'
  | 'same distance'
  | 'straight';

/** Why a place was chosen, in words, with the line that shows it. */
export interface SnapReason {
  readonly kind: SnapKind;
  /** As `in line with the loft`: no capital, no full stop. */
  readonly word: string;
  /** Tells one reason from another: handed back as `held`, it keeps its hold a little longer. */
  readonly key: string;
  /** From the thing that it speaks of to the place, metres. */
  readonly guide?: readonly [At, At];
}

/** A straight edge that things catch on: a leg of a run, a side of a thing, an edge of a deck. */
export interface SnapEdge {
  readonly from: At;
  readonly to: At;
  /** As `the stair house`. */
  readonly name: string;
  /** As `along the stair house`. */
  readonly word: string;
  readonly key: string;
  /** Whether it is an edge of a deck, from which gaps are measured. */
  readonly rim?: boolean;
}

/** A point that things catch on. */
export interface SnapPoint {
  readonly at: At;
  readonly kind: 'end' | 'middle';
  readonly name: string;
  /** As `at the corner of the stair house`. */
  readonly word: string;
  readonly key: string;
}

/** What there is to catch on. */
export interface SnapThings {
  readonly edges: readonly SnapEdge[];
  readonly points: readonly SnapPoint[];
}

/** A bearing, clockwise from -z, that a new leg may run along or square to. */
export interface SquareTo {
  readonly degrees: number;
  /** As `the last leg`. */
  readonly name: string;
  /** Of the roof as a whole: what a thing nearby says goes before it. */
  readonly loose?: boolean;
}

/** A length that may be meant again. */
export interface SameDistance {
  readonly metres: number;
  /** As `same length as the last leg`. */
  readonly word: string;
}

/** What is asked of `snapSpot`. */
export interface SnapRequest {
  /** Where the hand is, metres. */
  readonly at: At;
  /** The corner before, or where a drag began. */
  readonly from?: At | null;
  /** Step of the grid, metres; null for none. */
  readonly grid: number | null;
  /** How far things catch, metres. */
  readonly reach: number;
  /** What comes within so many metres of a place, and perhaps more; always in the same order. */
  readonly around: (at: At, metres: number) => SnapThings;
  /** Bearings to run along or square to, from `from`. */
  readonly square?: readonly SquareTo[];
  /** Lengths from `from` that may be meant again. */
  readonly distances?: readonly SameDistance[];
  /** Gaps to a deck's edge that may be meant again. */
  readonly gaps?: readonly SameDistance[];
  /** Whether things are put in line with the points, along the axes, and with the edges. */
  readonly inLine?: boolean;
  /** Bearing of the axes along which things stand in line; 0 unless said. */
  readonly axisDegrees?: number;
  /** Keeps to whole steps of a bearing from `from`. */
  readonly straight?: boolean;
  /** What `straight` counts in; 15 degrees unless said. */
  readonly straightStepDegrees?: number;
  /** Keys of the reasons of the result before. */
  readonly held?: readonly string[];
}

/** Where it comes to rest, and why. */
export interface SnapResult {
  readonly at: Spot;
  readonly why: readonly SnapReason[];
}
