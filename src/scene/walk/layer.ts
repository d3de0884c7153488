/** Drawings that help the walk-round and never belong to a picture: only its camera sees this layer. */
export const HELPER_LAYER = 1;
