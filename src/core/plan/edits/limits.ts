/** How many of each a plan may hold, as its schema has them. */
export const MOST = {
  pieces: 4000,
  gear: 4000,
  cast: 60,
  heads: 400,
  stands: 100,
  corners: 400,
  holes: 40,
  openings: 100,
  tapes: 400,
  bodies: 100,
  lenses: 400,
  modes: 40,
  frameLines: 20,
} as const;
