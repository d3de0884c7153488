/**
 * How a finding of continuity stands: *holds* as it should, is *said* since it is worth knowing (a crossing of the line
 * inside a move), or *breaks*, which will not cut together.
 */
export type Standing = 'holds' | 'said' | 'breaks';

/** What every finding of continuity carries beside the numbers of its kind. */
export interface ContinuityBase<Kind extends string> {
  readonly kind: Kind;
  readonly standing: Standing;
  /** The setup that it is about. */
  readonly setupId: string;
  /** The setup that it is held against; null where it stands alone. */
  readonly againstId: string | null;
  /** Whom it is about, by id. */
  readonly performerIds: readonly string[];
  /** When on the action's clock it is seen best; null where it is about the whole span. */
  readonly atSeconds: number | null;
}

/** A side of the frame, or of somebody's own body. */
export type Side = 'left' | 'right';
