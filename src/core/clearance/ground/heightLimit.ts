import { formsThrough } from '../../optics/riding';
import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import { aroundFrame } from '../../sight/margin';
import { stageOf } from '../../sight/stage';
import { askedOf } from './clearGround';
import { mirrorFaces, mirrorPrism } from './mirrorPrism';
import { framePlanes, framePrism, type Planes, type Prism, type Reach } from './prism';
import { closeReaches, HIGHEST_METRES, lowerLimits, markUnder, roomOf } from './setupReader';
import { deckHeights } from './squares';
import { SweepRows } from './sweepRows';
import { type Standing, standingOf, standTops } from './thing';
import type { GroundQuestion, GroundSquares } from './types';
import { overWindow, windowsOf } from './windows';

/** How tall a stand may be on each square and stay clear. */
export interface HeightLimits extends GroundSquares {
  readonly setupIds: readonly string[];
  /**
   * Metres over the deck, row by row: every stand from half a metre up to that height, turned any way and with its foot
   * anywhere in the square, is clear in all setups over their whole spans, neither in frame nor close, covered or
   * mirrored. Infinity where nothing limits it, 0 where no stand is clear, NaN where there is no deck.
   */
  readonly limitMetres: Float64Array;
}

/** The limits, or a sentence that says why there are none. */
export type LimitAnswer = { readonly limits: HeightLimits } | { readonly why: string };

/** No stand is lower, metres. */
const LEAST_STAND_METRES = 0.5;
const JUST_OVER = 1e-3;
/** So many windows are read at a time. */
const WINDOWS_A_STEP = 8;

/** The planes with the same normals that all of a prism lies within. */
function planesOver(planes: Planes, { near, far }: Prism): Planes {
  const over = Float64Array.from(planes);
  for (let k = 0; k < planes.length; k += 4) {
    let least = Infinity;
    for (const end of [near, far]) {
      for (let at = 0; at < end.length; at += 3) {
        const along = planes[k] * end[at] + planes[k + 1] * end[at + 1] + planes[k + 2] * end[at + 2];
        if (along < least) least = along;
      }
    }
    over[k + 3] = -least;
  }
  return over;
}

/** What stands of all heights are made of: the widest column, and the legs of each class with where its heights begin. */
interface AnyHeight {
  readonly radius: number;
  readonly tallest: Standing;
  readonly legs: readonly { readonly fromMetres: number; readonly standing: Standing }[];
}

const tipOf = ({ pieces }: Standing): number => pieces[1].ends[0][1];

function anyHeight(plan: Plan): AnyHeight {
  const tops = standTops(plan);
  const stands = tops.flatMap((top, k) => {
    const fromMetres = tops[k - 1] ?? 0;
    // What hardly reaches over its legs has them flatter, and so wider at its feet.
    const lowest = Math.max(fromMetres + JUST_OVER, LEAST_STAND_METRES);
    const [flat, steep] = [lowest, top].map((heightMetres) =>
      standingOf(plan, { heightMetres: Math.min(heightMetres, HIGHEST_METRES) }),
    );
    if (typeof flat === 'string' || typeof steep === 'string') return [];
    const all = tipOf(steep) - tipOf(flat) > JUST_OVER ? [flat, steep] : [steep];
    return all.map((standing) => ({ fromMetres, standing }));
  });
  return {
    radius: Math.max(...stands.map(({ standing }) => standing.pieces[0].radius)),
    tallest: stands[stands.length - 1].standing,
    legs: stands.map(({ fromMetres, standing }) => ({
      fromMetres,
      standing: { ...standing, pieces: standing.pieces.slice(1) },
    })),
  };
}

/**
 * How tall a stand may be on each square of the decks and stay clear. A column is the taller the more it takes in, and
 * what is taken in is convex, so the least height that a frame with its margin looks at on a square is the limit of all
 * columns there. The legs are those of the class that a height asks for: where those of a class are taken in, the limit
 * is where its heights begin. What covers makes nothing clear. Yields the done share, 0..1.
 */
export function* heightLimitSteps(
  plan: Plan,
  { setupIds, stepMetres }: Omit<GroundQuestion, 'of'>,
): Generator<number, LimitAnswer, void> {
  const asked = askedOf(plan, {
    setupIds,
    of: { heightMetres: 1 },
    ...(stepMetres !== undefined && { stepMetres }),
  });
  if (typeof asked === 'string') return { why: asked };
  const { setups, squares } = asked;
  const stands = anyHeight(plan);
  const limitMetres = squares.deckMetres.map((metres) => (Number.isNaN(metres) ? metres : Infinity));
  const legMarks = stands.legs.map(() => new Int32Array(limitMetres.length).fill(-1));
  for (const [place, setup] of setups.entries()) {
    for (const share of oneSetup(plan, setup, squares, stands, { limitMetres, legMarks }))
      yield (place + share) / setups.length;
  }
  for (const [k, { fromMetres }] of stands.legs.entries()) {
    for (const [at, mark] of legMarks[k].entries()) {
      if (mark >= 0) limitMetres[at] = Math.min(limitMetres[at], fromMetres);
    }
  }
  return { limits: { ...squares, setupIds, limitMetres } };
}

interface Found {
  readonly limitMetres: Float64Array;
  readonly legMarks: readonly Int32Array[];
}

function* oneSetup(
  plan: Plan,
  setup: Setup,
  squares: GroundSquares,
  { radius, tallest, legs }: AnyHeight,
  { limitMetres, legMarks }: Found,
): Generator<number, void, void> {
  const { instants, windows } = windowsOf(plan, setup);
  const heights = deckHeights(squares);
  const room = roomOf(squares, heights, tallest);
  const faces = stageOf(formsThrough(plan, setup, instants[0])).parts.flatMap(mirrorFaces);
  const rows = new SweepRows(squares);
  const take = (prismOf: (radius: number) => Prism | null, planes: Planes): void => {
    const column = prismOf(radius);
    if (column) {
      const over = planesOver(planes, column);
      lowerLimits(column, over, squares.stepMetres / 2, squares, heights, rows, limitMetres);
    }
    for (const [k, { standing }] of legs.entries())
      markUnder(prismOf, standing, squares, heights, rows, legMarks[k], 0);
  };
  for (const [place, window] of windows.entries()) {
    const { camera, motion } = window;
    const bare: Reach = { ...aroundFrame(camera.frame), metres: 0, back: 0 };
    for (const near of closeReaches(plan, setup, bare)) {
      const reach = overWindow(window, near);
      take((grown) => framePrism(camera, reach, grown, room), framePlanes(camera, reach));
    }
    const planes = framePlanes(camera, overWindow(window, bare));
    for (const face of faces) {
      const seen = (grown: number) =>
        mirrorPrism(camera, planes, face, { radius: grown, moved: motion.metres }, room);
      const exact = seen(0);
      if (exact) take((grown) => seen(grown)?.prism ?? null, exact.planes);
    }
    if (place % WINDOWS_A_STEP === WINDOWS_A_STEP - 1) yield place / windows.length;
  }
}
