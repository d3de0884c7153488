import { createStore } from 'zustand/vanilla';
import { STANDING_FACE_METRES } from '../../core/kit/palette/heights';
import type { LevelGrid, Metered } from '../../core/light/levelGrid';
import type { PlaceReading } from '../../core/light/placeReading';
import type { FrameLevels, SpotReading } from '../../core/light/spotReading';

/** So far over it the deck itself is metered: off the surface, so that it does not stand in its own light. */
const GROUND_METRES = 0.01;

interface LevelMapState {
  /** What of the light the overhead shows while the Light sheet is open. */
  readonly roof: 'throws' | 'levels';
  /** What the map and the readings on the roof are of. */
  readonly of: Metered;
  /** Whether stops are drawn over the picture. */
  readonly overFrame: boolean;
  /** The last map, perhaps still that of a moment ago. */
  readonly grid: LevelGrid | null;
  readonly frame: { readonly setupId: string; readonly levels: FrameLevels } | null;
  /** What is read in the frame, 0..1 from its left and top edges; null where the lens shows nothing, left out until it is known. */
  readonly spot: { readonly at: readonly [number, number]; readonly reading?: SpotReading | null } | null;
  /** What is read on the roof; null beside all decks, left out until it is known. */
  readonly place: { readonly at: readonly [number, number]; readonly reading?: PlaceReading | null } | null;
  /** Why there are no levels, as a sentence. */
  readonly trouble: string | null;
}

/** The level maps and meter readings of this sitting. */
export const levelMapStore = createStore<LevelMapState>()(() => ({
  roof: 'throws',
  of: 'turned to the lamp',
  overFrame: false,
  grid: null,
  frame: null,
  spot: null,
  place: null,
  trouble: null,
}));

/** The height over the deck that is metered. */
export const meteredHeight = (of: Metered): number => (of === 'level' ? GROUND_METRES : STANDING_FACE_METRES);
