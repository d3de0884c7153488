/** What a lamp does for a face: it lights it from before, draws its edge from half behind, or from behind. */
export const LAMP_ROLES = ['key', 'edge', 'back'] as const;
export type LampRole = (typeof LAMP_ROLES)[number];

/** Lowest and highest. */
export type Range = readonly [from: number, to: number];

/** From where a lamp does what it should. */
export interface RoleRange {
  /** How far off the way that the face looks, on the level, to either side: 0 is straight before it, 180 behind. */
  readonly bearingDegrees: Range;
  /** Above the level of the eyes. */
  readonly elevationDegrees: Range;
  /** From the face to the lamp. */
  readonly metres: Range;
}

/**
 * The ranges that are taken unless somebody says others: a key from the three-quarter front and above the eyes, an edge
 * from half behind, a backlight from behind and above. Source: common practice, no source
 */
export const ROLE_RANGES: Readonly<Record<LampRole, RoleRange>> = {
  key: { bearingDegrees: [15, 75], elevationDegrees: [5, 60], metres: [1, 20] },
  edge: { bearingDegrees: [105, 150], elevationDegrees: [0, 60], metres: [1, 20] },
  back: { bearingDegrees: [150, 180], elevationDegrees: [5, 70], metres: [1, 20] },
};

/** How far over the set stop each is wanted, stops. Source: common practice, no source */
export const ROLE_STOPS: Readonly<Record<LampRole, number>> = { key: 0, edge: 0, back: 0 };

/** How far a level may be from what is wanted, stops. Source: common practice, no source */
export const ROLE_TOLERANCE_STOPS = 0.5;
