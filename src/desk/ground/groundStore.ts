import { createStore } from 'zustand/vanilla';
import type { SquareReading } from '../../core/clearance/ground/groundAt';
import type { HeightLimits } from '../../core/clearance/ground/heightLimit';
import type { ClearGround } from '../../core/clearance/ground/types';
import {
  type LampRole,
  ROLE_RANGES,
  ROLE_STOPS,
  ROLE_TOLERANCE_STOPS,
  type RoleRange,
} from '../../core/clearance/useful/roles';
import type { UsefulGround } from '../../core/clearance/useful/types';

/** What the ground is asked for: a stand of a height, the chosen thing as it stands, or what hangs in the air. */
export type GroundOf = 'height' | 'chosen' | 'hanging';
/** What is drawn: where it is clear, or how tall a stand may be. */
type GroundShows = 'clear' | 'limits';

/** What a lamp should do for somebody. */
export interface UsefulWish {
  readonly role: LampRole;
  /** Null for whoever is first. */
  readonly performerId: string | null;
  readonly range: RoleRange;
  readonly side: 'left' | 'right' | 'either';
  readonly stops: number;
  readonly toleranceStops: number;
  readonly mayDim: boolean;
}

interface GroundState {
  /** Whether the overhead shows clear ground. */
  readonly on: boolean;
  /** Whether the panel is the ground's, or that of what is chosen. */
  readonly panel: 'ground' | 'thing';
  readonly shows: GroundShows;
  readonly of: GroundOf;
  readonly heightMetres: number;
  readonly lowMetres: number;
  readonly highMetres: number;
  /** The setups that it need not stay clear of; all others count, also those that come later. */
  readonly without: readonly string[];
  /** What the chosen lamp should do; null while only clear ground is asked. */
  readonly wish: UsefulWish | null;
  /** The last answers, perhaps still those of a moment ago. */
  readonly ground: ClearGround | null;
  readonly limits: HeightLimits | null;
  readonly useful: UsefulGround | null;
  /** Where somebody reads, [x, z], metres, and what is read; null beside the decks, left out until it is known. */
  readonly place: {
    readonly at: readonly [number, number];
    readonly reading?: SquareReading | null;
  } | null;
  /** Why there is no ground, no limit, no useful ground; sentences. */
  readonly why: string | null;
  readonly usefulWhy: string | null;
}

/** What a role begins with. */
export const wishFor = (role: LampRole): UsefulWish => ({
  role,
  performerId: null,
  range: ROLE_RANGES[role],
  side: 'either',
  stops: ROLE_STOPS[role],
  toleranceStops: ROLE_TOLERANCE_STOPS,
  mayDim: true,
});

/** Clear and useful ground of this sitting. */
export const groundStore = createStore<GroundState>()(() => ({
  on: false,
  panel: 'ground',
  shows: 'clear',
  of: 'height',
  heightMetres: 2.4,
  lowMetres: 2.6,
  highMetres: 3,
  without: [],
  wish: null,
  ground: null,
  limits: null,
  useful: null,
  place: null,
  why: null,
  usefulWhy: null,
}));
