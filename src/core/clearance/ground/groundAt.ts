import { add, mix, type Vec3 } from '../../form/build/vector';
import { cameraFromWorld } from '../../optics/project';
import type { Camera } from '../../optics/types';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import { askedOf } from './clearGround';
import { noMarks, setupReader } from './setupReader';
import type { Standing } from './thing';
import { GROUND_STATES, type GroundQuestion, type GroundSquares, type GroundState } from './types';

/** Where in the frame something is, or which edge it is beside. */
export type FramePlace = 'left' | 'right' | 'top' | 'bottom' | 'middle';

/** What one setup makes of a thing on a square. */
export interface SquareThrough {
  readonly setupId: string;
  /** The worst over its span. */
  readonly state: GroundState;
  /** When it is that, on the action's clock: each from the first to the last frame; empty where it is clear. */
  readonly spans: readonly (readonly [from: number, to: number])[];
  /** Where in the frame at the first of these; null in a mirror, and where it is clear. */
  readonly place: FramePlace | null;
}

/** What the setups make of a thing on the square around a spot. */
export interface SquareReading {
  /** The worst of all. */
  readonly state: GroundState;
  /** Every setup that was asked, in the order of the question. */
  readonly setups: readonly SquareThrough[];
}

/** Farther from the middle of the frame than this share of its half counts as that side. */
const SIDE = 1 / 3;
/** Places along a bone that are looked at. */
const ALONG = 6;

/** Where something shows in a frame or lies beside it: the middle of what is in it, else the nearest of what is out. */
function placeIn({ pose, frame }: Camera, { pieces }: Standing, foot: Vec3, isInside: boolean): FramePlace {
  let [sum, count] = [0, 0];
  let nearest: readonly [x: number, y: number] = [0, 0];
  let least = Infinity;
  for (const { from, to } of pieces.flatMap(({ bones }) => bones)) {
    for (let k = 0; k <= ALONG; k += 1) {
      const [across, rise, depth] = cameraFromWorld(pose, add(foot, mix(from, to, k / ALONG)));
      if (depth <= 0) continue;
      const x = across / depth / frame.tanHalfWidth;
      const y = rise / depth / frame.tanHalfHeight;
      const out = Math.max(Math.abs(x), Math.abs(y));
      if (out <= 1) {
        sum += x;
        count += 1;
      }
      if (out < least) {
        least = out;
        nearest = [x, y];
      }
    }
  }
  if (isInside && count > 0) {
    const x = sum / count;
    return Math.abs(x) <= SIDE ? 'middle' : x > 0 ? 'right' : 'left';
  }
  const [x, y] = nearest;
  if (Math.abs(x) >= Math.abs(y)) return x > 0 ? 'right' : 'left';
  return y > 0 ? 'top' : 'bottom';
}

/** The one square of the decks around a spot; null beside them. */
function squareAround(squares: GroundSquares, [x, z]: Spot): GroundSquares | null {
  const { corner, stepMetres, columns, rows, deckMetres } = squares;
  const column = Math.floor((x - corner[0]) / stepMetres);
  const row = Math.floor((z - corner[1]) / stepMetres);
  if (column < 0 || row < 0 || column >= columns || row >= rows) return null;
  const height = deckMetres[row * columns + column];
  if (Number.isNaN(height)) return null;
  return {
    stepMetres,
    corner: [corner[0] + column * stepMetres, corner[1] + row * stepMetres],
    columns: 1,
    rows: 1,
    deckMetres: Float64Array.of(height),
  };
}

/**
 * What each setup makes of a thing on the square around a spot [x, z], metres, frame by frame, and when: the worst as
 * `clearGround` has it, with its spans. Null beside the decks, a sentence where there is no answer.
 */
export function groundAt(plan: Plan, question: GroundQuestion, spot: Spot): SquareReading | string | null {
  const asked = askedOf(plan, question);
  if (typeof asked === 'string') return asked;
  const { setups, standing } = asked;
  const square = squareAround(asked.squares, spot);
  if (!square) return null;
  const half = square.stepMetres / 2;
  const foot: Vec3 = [square.corner[0] + half, square.deckMetres[0], square.corner[1] + half];
  const through = setups.map((setup): SquareThrough => {
    const { instants, windows, read, judge } = setupReader(plan, setup, standing, square);
    const codes = windows.map((_, place): number => {
      const marks = noMarks(1);
      read(place, marks, null);
      return judge(marks, 0, place)[0];
    });
    const worst = Math.max(...codes);
    const state = GROUND_STATES[worst];
    const spans: [number, number][] = [];
    if (state !== 'clear') {
      for (const [place, { first, last }] of windows.entries()) {
        if (codes[place] !== worst) continue;
        const before = spans.at(-1);
        if (before && codes[place - 1] === worst) before[1] = instants[last];
        else spans.push([instants[first], instants[last]]);
      }
    }
    const camera = windows[codes.indexOf(worst)].camera;
    const place =
      state === 'clear' || state === 'mirrored' ? null : placeIn(camera, standing, foot, state !== 'close');
    return { setupId: setup.id, state, spans, place };
  });
  const state = through.reduce<GroundState>(
    (worst, each) => (GROUND_STATES.indexOf(each.state) > GROUND_STATES.indexOf(worst) ? each.state : worst),
    'clear',
  );
  return { state, setups: through };
}
