import type { Squares } from './bands';

type Place = readonly [number, number];

/** A line of one level through a map. */
export interface Contour {
  readonly stop: number;
  readonly places: readonly Place[];
  /** Whether it comes back to where it began. */
  readonly closed: boolean;
}

/** The sides of a cell between four middles of squares, by number: top, right, bottom, left. */
const TOP = 0;
const RIGHT = 1;
const BOTTOM = 2;
const LEFT = 3;

/** Which sides the line of a level joins, by which corners lie above it: upper left 1, upper right 2, lower right 4, lower left 8. */
const JOINS: readonly (readonly (readonly [number, number])[])[] = [
  [],
  [[LEFT, TOP]],
  [[TOP, RIGHT]],
  [[LEFT, RIGHT]],
  [[RIGHT, BOTTOM]],
  [
    [LEFT, TOP],
    [RIGHT, BOTTOM],
  ],
  [[TOP, BOTTOM]],
  [[LEFT, BOTTOM]],
  [[BOTTOM, LEFT]],
  [[BOTTOM, TOP]],
  [
    [TOP, RIGHT],
    [BOTTOM, LEFT],
  ],
  [[BOTTOM, RIGHT]],
  [[RIGHT, LEFT]],
  [[RIGHT, TOP]],
  [[TOP, LEFT]],
  [],
];

/** Marching squares, from memory: the pieces of a level's line, each from one side of a cell to another, by side names. */
function piecesOf(squares: Squares, stop: number): readonly (readonly [string, string])[] {
  const { columns, rows, stops } = squares;
  const found: (readonly [string, string])[] = [];
  for (let row = 0; row + 1 < rows; row += 1) {
    for (let column = 0; column + 1 < columns; column += 1) {
      const at = row * columns + column;
      const corners = [stops[at], stops[at + 1], stops[at + columns + 1], stops[at + columns]];
      if (corners.some(Number.isNaN)) continue;
      const joins = JOINS[corners.reduce((sum, value, k) => sum + (value > stop ? 1 << k : 0), 0)];
      // Most cells: their names are not worth making.
      if (joins.length === 0) continue;
      const names = [
        `h ${column} ${row}`,
        `v ${column + 1} ${row}`,
        `h ${column} ${row + 1}`,
        `v ${column} ${row}`,
      ];
      for (const [from, to] of joins) found.push([names[from], names[to]]);
    }
  }
  return found;
}

/** Where a side is crossed: between the middles of two squares, by straight lines between their values. */
function placeOn({ corner, step, columns, stops }: Squares, stop: number, name: string): Place {
  const [way, ...numbers] = name.split(' ');
  const [column, row] = numbers.map(Number);
  const at = row * columns + column;
  const next = way === 'h' ? at + 1 : at + columns;
  const share = (stop - stops[at]) / (stops[next] - stops[at]);
  return [
    corner[0] + (column + 0.5 + (way === 'h' ? share : 0)) * step[0],
    corner[1] + (row + 0.5 + (way === 'h' ? 0 : share)) * step[1],
  ];
}

/** Takes from the sides' neighbours the longest way on from a side. */
function wayFrom(start: string, neighbours: Map<string, string[]>): string[] {
  const way = [start];
  for (let here = start; ; ) {
    const next = neighbours.get(here)?.pop();
    if (next === undefined) return way;
    const back = neighbours.get(next);
    back?.splice(back.indexOf(here), 1);
    way.push(next);
    here = next;
  }
}

/** The lines of some levels through a map, in its own units; each as long as it can be. */
export function contoursOf(squares: Squares, levels: readonly number[]): readonly Contour[] {
  return levels.flatMap((stop): Contour[] => {
    const neighbours = new Map<string, string[]>();
    const join = (a: string, b: string): void => {
      const known = neighbours.get(a);
      if (known) known.push(b);
      else neighbours.set(a, [b]);
    };
    for (const [a, b] of piecesOf(squares, stop)) {
      join(a, b);
      join(b, a);
    }
    // Open lines first, from one of their ends.
    const ends = [...neighbours].filter(([, next]) => next.length === 1).map(([name]) => name);
    return [...ends, ...neighbours.keys()].flatMap((name): Contour[] => {
      if ((neighbours.get(name)?.length ?? 0) === 0) return [];
      const way = wayFrom(name, neighbours);
      const closed = way.length > 2 && way[0] === way[way.length - 1];
      return [{ stop, places: way.map((side) => placeOn(squares, stop, side)), closed }];
    });
  });
}

const metresOf = (places: readonly Place[]): number =>
  places.reduce(
    (sum, [x, y], k) => (k === 0 ? 0 : sum + Math.hypot(x - places[k - 1][0], y - places[k - 1][1])),
    0,
  );

/** Where along a contour its letters may stand, the middle first. */
const SHARES = [0.5, 0.25, 0.75, 0.375, 0.625, 0.125, 0.875] as const;

/** Where contours are lettered: on the longer ones, near their middles, away from one another and from other things. */
export function contourLabels(
  contours: readonly Contour[],
  leastLength: number,
  apart: number,
  things: readonly Place[] = [],
): readonly { readonly stop: number; readonly at: Place }[] {
  const found: { stop: number; at: Place }[] = [];
  const long = contours
    .map((contour) => ({ contour, length: metresOf(contour.places) }))
    .filter(({ length }) => length >= leastLength)
    .sort((a, b) => b.length - a.length);
  for (const { contour } of long) {
    const { places, stop } = contour;
    const taken = [...things, ...found.map((each) => each.at)];
    const at = SHARES.map((share) => places[Math.floor(share * (places.length - 1))]).find(([x, y]) =>
      taken.every((each) => Math.hypot(each[0] - x, each[1] - y) >= apart),
    );
    if (at) found.push({ stop, at });
  }
  return found;
}
