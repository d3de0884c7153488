import { UP, type Vec3 } from '../form/build/vector';
import type { Spot } from '../plan/schema/numbers';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { boundsOf } from '../plan/walkWays/planar';
import { inOneGo } from '../units/steps';
import { luxOn, strongestWay } from './illuminance';
import { type LightAt, lightAt } from './lightAt';
import { type LightScene, lightScene } from './lightScene';
import { deckAt } from './wetness';

/** Which surface is metered: a face turned to the lamp that gives it most, or level ground. */
export type Metered = 'turned to the lamp' | 'level';

/** What a level map is asked for. */
export interface GridQuestion {
  /** Over the deck at each place. */
  readonly heightMetres: number;
  readonly stepMetres: number;
  readonly of: Metered;
}

/** Levels over the decks of a plan, in squares. */
export interface LevelGrid extends GridQuestion {
  /** The corner of the first square, [x, z]. */
  readonly corner: Spot;
  readonly columns: number;
  readonly rows: number;
  /** Lux in the middle of each square, sky, streets and moon included, row by row from the corner; NaN where there is no deck. */
  readonly lux: Float64Array;
}

/** More squares than this are not asked: the step grows instead. */
const MOST_SQUARES = 60_000;

/** What is metered at a place of a scene, world metres: the light there, and the unit normal of what it falls on. */
export function meteredAt(
  scene: LightScene,
  place: Vec3,
  of: Metered,
): { readonly light: LightAt; readonly normal: Vec3 } {
  if (of === 'level') return { light: lightAt(scene, place, { facing: UP }), normal: UP };
  const light = lightAt(scene, place);
  return { light, normal: strongestWay(light) };
}

/** Where the squares lie: over all decks, from the lowest x and z. */
function squaresOver(plan: Plan, stepMetres: number): Pick<LevelGrid, 'corner' | 'columns' | 'rows'> | null {
  const spots = plan.pieces.flatMap((piece) => (piece.kind === 'deck' ? piece.outline : []));
  if (spots.length === 0) return null;
  const [left, back, right, front] = boundsOf(spots);
  const count = (metres: number): number => Math.max(1, Math.ceil(metres / stepMetres - 1e-9));
  return { corner: [left, back], columns: count(right - left), rows: count(front - back) };
}

/**
 * A level map at an instant of the action's clock, seconds: through a setup with its cheated marks, or of the roof for
 * none; with the shadows of all that stands there. Yields the done share after each row, so that whoever asks can
 * stop. Null for a plan without a deck.
 */
export function* levelGridSteps(
  plan: Plan,
  setup: Setup | null,
  seconds: number,
  question: GridQuestion,
): Generator<number, LevelGrid | null, void> {
  let { stepMetres } = question;
  let squares = squaresOver(plan, stepMetres);
  while (squares && squares.columns * squares.rows > MOST_SQUARES) {
    stepMetres *= 2;
    squares = squaresOver(plan, stepMetres);
  }
  if (!squares) return null;
  const { corner, columns, rows } = squares;
  const scene = lightScene(plan, setup, seconds);
  const lux = new Float64Array(columns * rows).fill(Number.NaN);
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const spot: Spot = [corner[0] + (column + 0.5) * stepMetres, corner[1] + (row + 0.5) * stepMetres];
      const deck = deckAt(plan, spot);
      if (!deck) continue;
      const place: Vec3 = [spot[0], deck.topMetres + question.heightMetres, spot[1]];
      const { light, normal } = meteredAt(scene, place, question.of);
      lux[row * columns + column] = luxOn(light, normal);
    }
    yield (row + 1) / rows;
  }
  return { ...question, stepMetres, corner, columns, rows, lux };
}

/** The whole level map at once. */
export function levelGrid(
  plan: Plan,
  setup: Setup | null,
  seconds: number,
  question: GridQuestion,
): LevelGrid | null {
  return inOneGo(levelGridSteps(plan, setup, seconds, question));
}
