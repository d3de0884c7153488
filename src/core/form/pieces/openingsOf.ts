import { type PlacedOpening, placedOpenings } from './making/openings';
import type { PieceOf } from './making/placed';
import { parapetThickness } from './parapet';

/** How thick a run is where it is thickest, metres; a fence is as thin as its mesh. */
const thicknessOf = (run: PieceOf<'wall' | 'parapet' | 'fence'>): number =>
  run.kind === 'wall' ? run.thicknessMetres : run.kind === 'parapet' ? parapetThickness(run) : 0;

/** The openings of a run where its form has them; those that it has no room for are left out. */
export const openingsOf = (run: PieceOf<'wall' | 'parapet' | 'fence'>): readonly PlacedOpening[] =>
  placedOpenings(run, thicknessOf(run));
