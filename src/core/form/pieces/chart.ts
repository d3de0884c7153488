import { cos, sin } from '../../units/steadyMath';
import { compose, movedBy, type Placement, standingAt, tiltedBy } from '../build/placement';
import { ShapeBuilder } from '../build/shapeBuilder';
import { radians, type Vec3 } from '../build/vector';
import type { PlacedPart } from '../types';
import { fixed, type PieceOf } from './making/placed';

/** Diffuse reflectances 4 %, 85 % and 18 % in code values of sRGB. Source: common practice, no source */
const BLACK = '#383838';
const WHITE = '#ededed';
const GREY = '#767676';
/** Foam board, and the arm, pole and plate that hold it; common practice, no source. */
const BOARD_METRES = 0.01;
const POLE_RADIUS_METRES = 0.012;
/** How far the board begins behind its face, so that neither is taken for the other. */
const BEHIND_METRES = 0.002;
const ARM_METRES = 0.06;
const PLATE_RADIUS_METRES = 0.2;
const PLATE_METRES = 0.015;
const PLATE_SIDES = 24;

/**
 * A test board: its face in `white` and `black` squares, sheets of one plane, black at its upper left, on a `board`; or
 * a grey `card`; and the `pole` behind it. The face's middle is the record's height over the foot.
 */
export function chartParts(chart: PieceOf<'chart'>): readonly PlacedPart[] {
  const { widthMetres: width, heightMetres: height, middleMetres: middle, face } = chart;
  const foot = standingAt(chart.at, chart.headingDegrees);
  const board = compose(foot, compose(movedBy([0, middle, 0]), tiltedBy(chart.tiltDegrees)));
  const thick = Math.min(BOARD_METRES, width / 4, height / 4);
  const pole = polePart(chart, thick, foot);
  if (face.kind === 'grey card') {
    const card = new ShapeBuilder().box([0, 0, thick / 2], [width, height, thick]);
    return [fixed('card', card.finish({ substance: 'card', colour: GREY }, board)), ...pole];
  }
  const [white, black] = cellsOf(chart, face);
  const behind = Math.min(BEHIND_METRES, thick / 2);
  const back = new ShapeBuilder().box([0, 0, (thick + behind) / 2], [width, height, thick - behind]);
  return [
    fixed('white', white.finish({ substance: 'card', colour: WHITE }, board)),
    fixed('black', black.finish({ substance: 'card', colour: BLACK }, board)),
    fixed('board', back.finish({ substance: 'card', colour: WHITE }, board)),
    ...pole,
  ];
}

type Squares = Extract<PieceOf<'chart'>['face'], { kind: 'squares' }>;

/** Side of a square, metres: as large as leaves half of one of white on all sides. */
export const squareMetres = (
  { widthMetres, heightMetres }: Pick<PieceOf<'chart'>, 'widthMetres' | 'heightMetres'>,
  { columns, rows }: Squares,
): number => Math.min(widthMetres / (columns + 1), heightMetres / (rows + 1));

/** Where the lines between squares lie, to the right and down from the middle as one faces the board; metres. */
function linesOf(chart: PieceOf<'chart'>, squares: Squares): readonly [readonly number[], readonly number[]] {
  const side = squareMetres(chart, squares);
  const lines = (count: number, whole: number): number[] => [
    -whole / 2,
    ...Array.from({ length: count + 1 }, (_, k) => (k - count / 2) * side),
    whole / 2,
  ];
  return [lines(squares.columns, chart.widthMetres), lines(squares.rows, chart.heightMetres)];
}

/** How far behind the face's middle the pole stands, metres: behind the lower edge of a board that looks down. */
export function poleBackMetres(chart: Pick<PieceOf<'chart'>, 'heightMetres' | 'tiltDegrees'>): number {
  const tilt = radians(chart.tiltDegrees);
  return ARM_METRES + Math.max(0, -sin(tilt)) * (chart.heightMetres / 2);
}

/** White and black cells as sheets that share the corners of one plane: no wall between two that could shimmer through. */
function cellsOf(
  chart: PieceOf<'chart'>,
  squares: Squares,
): readonly [white: ShapeBuilder, black: ShapeBuilder] {
  const [xs, ys] = linesOf(chart, squares);
  const [white, black] = [new ShapeBuilder(), new ShapeBuilder()];
  for (let row = 0; row + 1 < ys.length; row += 1) {
    for (let column = 0; column + 1 < xs.length; column += 1) {
      const isMargin = row === 0 || column === 0 || row > squares.rows || column > squares.columns;
      const corner = (right: number, down: number): Vec3 => [-xs[column + right], -ys[row + down], 0];
      (isMargin || (row + column) % 2 === 1 ? white : black).quad(
        corner(0, 1),
        corner(1, 1),
        corner(1, 0),
        corner(0, 0),
      );
    }
  }
  return [white, black];
}

/** A pole on a plate behind the board, and the arm between the two. */
function polePart(chart: PieceOf<'chart'>, thick: number, foot: Placement): readonly PlacedPart[] {
  const tilt = radians(chart.tiltDegrees);
  const back = thick + ARM_METRES;
  const [boardBack, knee] = [thick, back].map(
    (out): Vec3 => [0, chart.middleMetres - out * sin(tilt), out * cos(tilt)],
  );
  const top: Vec3 = [0, knee[1], Math.max(knee[2], thick + poleBackMetres(chart))];
  if (top[1] <= PLATE_METRES) return [];
  const radius = Math.min(POLE_RADIUS_METRES, chart.widthMetres / 8, chart.heightMetres / 8);
  const plateTop: Vec3 = [0, PLATE_METRES, top[2]];
  const builder = new ShapeBuilder()
    .cone([0, 0, top[2]], plateTop, PLATE_RADIUS_METRES, PLATE_RADIUS_METRES, PLATE_SIDES)
    .tube(plateTop, top, radius)
    .tube(boardBack, knee, radius);
  if (top[2] > knee[2] + radius) builder.tube(knee, top, radius);
  return [fixed('pole', builder.finish({ substance: 'dark metal', smooth: true }, foot))];
}
