import { formsThrough } from '../../optics/riding';
import { swayReach } from '../../optics/sway';
import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import { aroundFrame } from '../../sight/margin';
import { stageOf } from '../../sight/stage';
import { heightsSeen } from './cover';
import { coversOf } from './covers';
import { type MirrorPrism, mirrorFaces, mirrorPrism } from './mirrorPrism';
import { framePlanes, framePrism, type Planes, type Prism, type Reach, type Room } from './prism';
import { deckHeights } from './squares';
import { SweepRows } from './sweepRows';
import type { Standing } from './thing';
import { GROUND_STATES, type GroundSquares } from './types';
import { type Finder, isLevel, mirroredFinder, type Scene, shownFinder } from './uncovered';
import { overWindow, type Windows, windowsOf } from './windows';

/** Half of what is thin, metres, and how far its corners are from its middle. */
const THIN_METRES = 0.05;
const THIN_CORNER_METRES = THIN_METRES * Math.SQRT2;
/** Above this over the lowest deck nobody puts up anything, metres. */
export const HIGHEST_METRES = 30;

const [, CLEAR, CLOSE, COVERED, MIRRORED, SHOWING] = GROUND_STATES.keys();

/** What is known of one setup: by square, the first window in which something is so, −1 where never. */
interface Marks {
  readonly inside: Int32Array;
  /** In mirrors that lie level, and in others. */
  readonly mirrored: Int32Array;
  readonly inPanes: Int32Array;
  readonly close: Int32Array;
}

/** Nothing known yet of so many squares. */
export function noMarks(count: number): Marks {
  const never = (): Int32Array => new Int32Array(count).fill(-1);
  return { inside: never(), mirrored: never(), inPanes: never(), close: never() };
}

/** How far from the frame line still counts as close: by metres, by frame widths, and by a sway that is counted. */
export function closeReaches(plan: Plan, setup: Setup, { tanX, tanY }: Reach): readonly Reach[] {
  const { metres, frameWidths } = plan.safety;
  const wider = 2 * tanX * frameWidths;
  const reaches: Reach[] = [
    { tanX, tanY, metres, back: 0 },
    { tanX: tanX + wider, tanY: tanY + wider, metres: 0, back: 0 },
  ];
  if (setup.sway?.counted) {
    const widest = Math.max(tanX, tanY);
    const slant = Math.sqrt(1 + tanX * tanX + tanY * tanY);
    const still = swayReach(setup.sway, 0, widest);
    const turned = swayReach(setup.sway, slant, widest) - still;
    reaches.push({ tanX: tanX + turned, tanY: tanY + turned, metres: still, back: 0 });
  }
  return reaches;
}

/** Marks the squares under a thing's pieces, where no earlier frame did. */
export function markUnder(
  prismOf: (radius: number) => Prism | null,
  { pieces }: Standing,
  squares: GroundSquares,
  heights: readonly number[],
  rows: SweepRows,
  marks: Int32Array,
  frame: number,
): void {
  const { columns, deckMetres } = squares;
  const prisms = new Map<number, Prism | null>();
  for (const { bones, radius } of pieces) {
    let prism = prisms.get(radius);
    if (prism === undefined) {
      prism = prismOf(radius);
      prisms.set(radius, prism);
    }
    if (!prism) continue;
    for (const height of heights) {
      rows.clear();
      for (const { from, to } of bones) rows.add(prism, from, to, height);
      if (!rows.lay()) continue;
      for (let row = rows.top; row <= rows.bottom; row += 1) {
        const base = row * columns;
        for (let at = base + rows.first[row]; at <= base + rows.last[row]; at += 1) {
          if (marks[at] < 0 && (heights.length === 1 || deckMetres[at] === height)) marks[at] = frame;
        }
      }
    }
  }
}

/**
 * Lowers the limits of the squares under a prism to the least height that planes look at there, `reach` round the middle
 * of the square; the prism is grown by as much as what stands there is thick.
 */
export function lowerLimits(
  prism: Prism | null,
  planes: Planes,
  reach: number,
  squares: GroundSquares,
  heights: readonly number[],
  rows: SweepRows,
  limits: Float64Array,
): void {
  if (!prism) return;
  const { columns, corner, stepMetres, deckMetres } = squares;
  for (const height of heights) {
    rows.clear();
    rows.add(prism, [0, 0, 0], [0, HIGHEST_METRES, 0], height);
    if (!rows.lay()) continue;
    for (let row = rows.top; row <= rows.bottom; row += 1) {
      const z = corner[1] + (row + 0.5) * stepMetres;
      for (let column = rows.first[row]; column <= rows.last[row]; column += 1) {
        const at = row * columns + column;
        if (deckMetres[at] !== height || limits[at] === 0) continue;
        const [low, high] = heightsSeen(planes, corner[0] + (column + 0.5) * stepMetres, z, reach);
        if (low > high || high < height) continue;
        limits[at] = Math.min(limits[at], Math.max(0, low - height));
      }
    }
  }
}

/** The room that things stand in, as far as anything on the squares can reach. */
export function roomOf(squares: GroundSquares, heights: readonly number[], standing: Standing): Room {
  const { corner, columns, rows, stepMetres } = squares;
  const reach = standing.reachMetres + 1;
  const highest = Math.max(HIGHEST_METRES, standing.heightMetres + 1);
  return [
    [corner[0] - reach, heights[0] - 1, corner[1] - reach],
    [
      corner[0] + columns * stepMetres + reach,
      heights[heights.length - 1] + highest,
      corner[1] + rows * stepMetres + reach,
    ],
  ];
}

/** Reads what one setup makes of a thing on squares. */
interface SetupReader extends Windows {
  /** Marks what a window takes in, and lowers the limits of what is thin where they are asked. */
  readonly read: (place: number, marks: Marks, limits: Float64Array | null) => void;
  /**
   * What a square is by its marks, up to a window or over all, and the first window in which it is that; `clear` and −1
   * where nothing is.
   */
  readonly judge: (marks: Marks, square: number, last?: number) => readonly [code: number, place: number];
}

/** Prepares the reading of a setup's frames for a thing on squares that have a deck. */
export function setupReader(
  plan: Plan,
  setup: Setup,
  standing: Standing,
  squares: GroundSquares,
): SetupReader {
  const found = windowsOf(plan, setup);
  const { instants, windows } = found;
  const heights = deckHeights(squares);
  const room = roomOf(squares, heights, standing);
  const stage = stageOf(formsThrough(plan, setup, instants[0]));
  const isOwn = (item: number): boolean => standing.itemIds.has(stage.forms[item].id);
  const faces = stage.parts.filter((part) => !isOwn(part.item)).flatMap(mirrorFaces);
  const rows = new SweepRows(squares);
  const thinReach = THIN_METRES + squares.stepMetres / 2;

  const read: SetupReader['read'] = (place, marks, limits) => {
    const window = windows[place];
    const { camera, motion } = window;
    const bare: Reach = { ...aroundFrame(camera.frame), metres: 0, back: 0 };
    const reach = overWindow(window, bare);
    const planes = framePlanes(camera, reach);
    const mark = (prismOf: (radius: number) => Prism | null, into: Int32Array): void =>
      markUnder(prismOf, standing, squares, heights, rows, into, place);
    const direct = (radius: number): Prism | null => framePrism(camera, reach, radius, room);
    mark(direct, marks.inside);
    if (limits) lowerLimits(direct(THIN_CORNER_METRES), planes, thinReach, squares, heights, rows, limits);
    for (const near of closeReaches(plan, setup, bare)) {
      const nearby = overWindow(window, near);
      mark((radius) => framePrism(camera, nearby, radius, room), marks.close);
    }
    for (const face of faces) {
      const seen = (radius: number): MirrorPrism | null =>
        mirrorPrism(camera, planes, face, { radius, moved: motion.metres }, room);
      const exact = seen(0);
      if (!exact) continue;
      if (limits) {
        const grown = seen(THIN_CORNER_METRES)?.prism ?? null;
        lowerLimits(grown, exact.planes, thinReach, squares, heights, rows, limits);
      }
      mark((radius) => seen(radius)?.prism ?? null, isLevel(face) ? marks.mirrored : marks.inPanes);
    }
  };

  const stillItem = (item: number): boolean => {
    const { id } = stage.forms[item];
    const rides = plan.gear.some((gear) => gear.id === id && gear.kind === 'dolly');
    return !isOwn(item) && !rides && !plan.cast.some((performer) => performer.id === id);
  };
  const covers = coversOf(stage, stillItem);
  const scene: Scene = { windows, covers, faces: faces.filter(isLevel), standing, squares, room };
  const firstShown: Finder = shownFinder(scene);
  const firstMirrored: Finder = mirroredFinder(scene);
  const judge: SetupReader['judge'] = (marks, square, last = windows.length - 1) => {
    const inside = marks.inside[square];
    const shown = inside < 0 ? -1 : firstShown(square, inside, last);
    if (shown >= 0) return [SHOWING, shown];
    const inFloor = marks.mirrored[square] < 0 ? -1 : firstMirrored(square, marks.mirrored[square], last);
    const inPane = marks.inPanes[square];
    const mirrored = inFloor < 0 || (inPane >= 0 && inPane < inFloor) ? inPane : inFloor;
    if (mirrored >= 0) return [MIRRORED, mirrored];
    if (inside >= 0) return [COVERED, inside];
    return marks.close[square] >= 0 ? [CLOSE, marks.close[square]] : [CLEAR, -1];
  };
  return { ...found, read, judge };
}
