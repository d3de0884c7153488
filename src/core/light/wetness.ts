import type { Vec3 } from '../form/build/vector';
import type { Spot } from '../plan/schema/numbers';
import type { Ground, Plan } from '../plan/schema/plan';
import { topAt } from '../plan/surfaces';
import { WATER_INDEX } from './fresnel';

/** A kind of surface that a deck is made up of: the share of the deck, and how smooth it is. */
export interface DeckSkin {
  readonly share: number;
  /** Root mean square of the slopes along either way. */
  readonly slope: number;
  /** Refractive index of what the light meets first. */
  readonly index: number;
}

/** Of mineral, bitumen or timber, from memory. */
const DRY_INDEX = 1.5;

const dry = (share: number): DeckSkin => ({ share, slope: 0.35, index: DRY_INDEX });
const film = (share: number, slope: number): DeckSkin => ({ share, slope, index: WATER_INDEX });

/**
 * What a deck shows a lamp, by how wet it is: bare ground, a film of water that follows the grit, water that stands.
 * The shares are about those that the picture of the deck has; shares and slopes are estimates by eye, no source.
 */
export const DECK_SKINS: Readonly<Record<Ground['wetness'], readonly DeckSkin[]>> = {
  dry: [dry(1)],
  damp: [dry(0.55), film(0.45, 0.14)],
  'wet down': [dry(0.1), film(0.6, 0.06), film(0.3, 0.004)],
  puddled: [dry(0.05), film(0.45, 0.05), film(0.5, 0.0015)],
};

/** The skin that a streak is seen on: the widest of the wet ones, the ground itself where none is wet. */
export const streakSkin = (skins: readonly DeckSkin[]): DeckSkin =>
  skins.reduce((best, next) => {
    const isSmoother = next.index < best.index;
    return isSmoother || (next.index === best.index && next.share > best.share) ? next : best;
  });

/** How much darker wet ground is than dry, as a share of its reflectance: about half, from memory. */
export const WET_DARKENING = 0.5;

/** The share of a deck that is wet. */
export const wetShare = (wetness: Ground['wetness']): number =>
  DECK_SKINS[wetness].reduce((sum, { share, index }) => (index === WATER_INDEX ? sum + share : sum), 0);

/** A deck's plane. */
export interface DeckPlane {
  readonly pieceId: string;
  readonly topMetres: number;
}

/** The planes of a plan's decks, each once. */
export const deckPlanes = (plan: Plan): readonly DeckPlane[] =>
  plan.pieces.flatMap((piece): DeckPlane[] =>
    piece.kind === 'deck' ? [{ pieceId: piece.id, topMetres: piece.topMetres }] : [],
  );

/** The deck that is walked on at a place; null where there is none, or a hole. */
export function deckAt(plan: Plan, spot: Spot): DeckPlane | null {
  let found: DeckPlane | null = null;
  for (const piece of plan.pieces) {
    if (piece.kind !== 'deck' || topAt(piece, spot) === null) continue;
    if (!found || piece.topMetres > found.topMetres)
      found = { pieceId: piece.id, topMetres: piece.topMetres };
  }
  return found;
}

/** Where a level mirror shows a lamp to an eye, both above it; null where either is not. */
export function mirrorPoint(lamp: Vec3, eye: Vec3, topMetres: number): Vec3 | null {
  const [over, under] = [eye[1] - topMetres, lamp[1] - topMetres];
  if (over <= 0 || under <= 0) return null;
  const share = over / (over + under);
  return [eye[0] + (lamp[0] - eye[0]) * share, topMetres, eye[2] + (lamp[2] - eye[2]) * share];
}
