import type { Caution } from '../cautions/types';
import type { ContinuityFinding } from '../continuity/continuity';
import type { Coverage, CoverageHole } from '../continuity/coverage';
import type { Wish } from '../plan/schema/texts';
import type { SetupLight } from './light/types';
import type { PowerReport } from './power/types';

/**
 * What an item does in a setup, worst first over the span:
 * showing; mirrored, seen only in a reflecting surface; lost in the dark, showing, but nowhere with a contrast and a
 * brightness that would read (see `darkened`: it takes the light to know); covered, inside the frame line but wholly
 * behind something; close, outside but within the plan's safety margin; clear.
 */
export const VERDICTS = ['showing', 'mirrored', 'lost in the dark', 'covered', 'close', 'clear'] as const;
export type Verdict = (typeof VERDICTS)[number];

/** [from, to] on the action's clock, seconds. */
export type Span = readonly [number, number];
/** [left, top, right, bottom] in 0..1 of the frame. */
export type Extent = readonly [number, number, number, number];
export type FrameEdge = 'left' | 'right' | 'top' | 'bottom';

/** How far outside the frame an item stays over the span. */
export interface Margin {
  /** Smallest move square to the camera's axis that would bring the item to the frame line. */
  readonly metres: number;
  /** The same in the picture, in widths of the frame. */
  readonly frameWidths: number;
  /** Beyond which edge of the frame it lies. */
  readonly edge: FrameEdge;
  /** When it comes nearest. */
  readonly atSeconds: number;
  /** How much nearer a counted sway may bring it; left out where none is counted. */
  readonly swayMetres?: number;
}

/** One item in one setup. Shares are of the frame, 0..1, the largest over the span. */
export interface ItemReport {
  readonly id: string;
  readonly label: string;
  readonly kind: string;
  readonly wish: Wish;
  readonly verdict: Verdict;
  readonly share: number;
  /** When it shows directly. */
  readonly spans: readonly Span[];
  readonly parts: readonly { readonly name: string; readonly share: number }[];
  /** What stands before it where it would be seen otherwise, largest first, at the instant when most of it is covered. */
  readonly coveredBy: readonly { readonly id: string; readonly share: number }[];
  /** How much of what shows of it is seen through a porous layer, and whose. */
  readonly through: readonly { readonly id: string; readonly share: number }[];
  readonly mirroredShare: number;
  /** When it is seen in a reflecting surface, whether it shows directly too or not. */
  readonly mirroredSpans: readonly Span[];
  readonly mirroredParts: readonly { readonly name: string; readonly share: number }[];
  /** Where its image lies at the instant when the mirrored share is largest; null when there is none. */
  readonly mirroredExtent: Extent | null;
  /** Null when any of it is inside the frame line at some instant, or all of it is behind the camera. */
  readonly margin: Margin | null;
  /** Of what shows, at the instant when the share is largest; null when nothing shows. */
  readonly extent: Extent | null;
  /** Which frame edges what shows touches at that instant. */
  readonly touches: readonly FrameEdge[];
  /** The instant of the largest share (direct, else mirrored, else covered, else the nearest); its span's start when clear of all. */
  readonly worstAtSeconds: number;
  /** Smallest move along the frame's width that takes all of it out at the worst instant, signed towards frame right; null when outside. */
  readonly moveOutMetres: number | null;
  /** Why it may be seen all the same, where the plan lets it show in this setup; left out elsewhere. */
  readonly accepted?: { readonly reason: string };
}

/** Something about the plan or a setup that a person should know before trusting its findings. */
export interface Notice {
  readonly where: string;
  readonly sentence: string;
}

/** What one setup sees of every item. */
export interface SetupReport {
  readonly id: string;
  readonly label: string;
  /** The covered span on the action's clock; both ends the same instant when one instant was asked for. */
  readonly seconds: Span;
  /** Angles of view of the delivered frame, degrees. */
  readonly angles: { readonly horizontal: number; readonly vertical: number };
  readonly aspect: number;
  readonly items: readonly ItemReport[];
}

/** A finding of continuity with its words. */
export type ContinuityEntry = ContinuityFinding & { readonly sentence: string };

/** What one setup sees of every item, how it is lit, and how it cuts together with the others. */
export interface JudgedSetup extends SetupReport {
  readonly light: SetupLight;
  /** Over its whole span, worst first, whatever instant was asked for: a cut is about more than an instant. */
  readonly continuity: readonly ContinuityEntry[];
}

/** Who is covered by which setup, with words for what is not. */
export interface CoverageReport extends Coverage {
  readonly holes: readonly (CoverageHole & { readonly sentence: string })[];
}

/** What setups see in a night. */
export interface NightReport {
  readonly title: string;
  readonly setups: readonly SetupReport[];
  readonly notices: readonly Notice[];
}

/** The whole report; see DEVELOPERS.md for its fields. */
export interface Report extends NightReport {
  readonly standclearReport: 1;
  readonly setups: readonly JudgedSetup[];
  /** Of the whole plan, whichever setups were asked for. */
  readonly coverage: CoverageReport;
  /** Of the whole plan too. */
  readonly power: PowerReport;
  /** Of the whole plan too: what on this roof can hurt somebody, what breaks a figure first. */
  readonly cautions: readonly Caution[];
}
