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
const ARM_METRES = 0.06;
const PLATE_RADIUS_METRES = 0.2;
const PLATE_METRES = 0.015;
const PLATE_SIDES = 24;

/**
 * A test board: its face in `white` and `black` squares, black at its upper left, or a grey `card`; and the `pole`
 * behind it. The face's middle is the record's height over the foot. All cells of a face are as thick and lie in one plane, so that
 * nothing of one stands before another.
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
  const [white, black] = cellsOf(chart, face, thick);
  return [
    fixed('white', white.finish({ substance: 'card', colour: WHITE }, board)),
    fixed('black', black.finish({ substance: 'card', colour: BLACK }, board)),
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

/**
 * White and black cells, each colour one or more closed solids. Where cells of a colour meet there is nothing between
 * them: walls inside would shimmer through in a picture.
 */
function cellsOf(
  chart: PieceOf<'chart'>,
  squares: Squares,
  thick: number,
): readonly [white: ShapeBuilder, black: ShapeBuilder] {
  const [xs, ys] = linesOf(chart, squares);
  const builders = [new ShapeBuilder(), new ShapeBuilder()] as const;
  const [columns, rows] = [xs.length - 1, ys.length - 1];
  /** 0 white, 1 black, −1 beyond the board. */
  const colourAt = (column: number, row: number): number => {
    if (column < 0 || row < 0 || column >= columns || row >= rows) return -1;
    const isMargin = column === 0 || row === 0 || column > squares.columns || row > squares.rows;
    return !isMargin && (column + row) % 2 === 0 ? 1 : 0;
  };
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const colour = colourAt(column, row);
      const cell = builders[colour];
      const corner = (right: number, down: number, z: number): Vec3 => [
        -xs[column + right],
        -ys[row + down],
        z,
      ];
      const [leftBottom, rightBottom, rightTop, leftTop] = (
        [
          [0, 1],
          [1, 1],
          [1, 0],
          [0, 0],
        ] as const
      ).map(([right, down]) => ({ front: corner(right, down, 0), back: corner(right, down, thick) }));
      const wall = (from: typeof leftTop, to: typeof leftTop) =>
        cell.quad(from.back, from.front, to.front, to.back);
      cell.quad(leftBottom.front, rightBottom.front, rightTop.front, leftTop.front);
      cell.quad(rightBottom.back, leftBottom.back, leftTop.back, rightTop.back);
      if (colourAt(column - 1, row) !== colour) wall(leftBottom, leftTop);
      if (colourAt(column + 1, row) !== colour) wall(rightTop, rightBottom);
      if (colourAt(column, row - 1) !== colour) wall(leftTop, rightTop);
      if (colourAt(column, row + 1) !== colour) wall(rightBottom, leftBottom);
    }
  }
  return builders;
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
