import { outOfOwnFrame } from '../../plan/areas';
import { named } from '../../plan/named';
import type { Point, Spot } from '../../plan/schema/numbers';
import type { Piece } from '../../plan/schema/pieces';
import type { Plan } from '../../plan/schema/plan';
import { trackMiddleLine } from '../../plan/trackLine';
import { hasEdges } from '../../plan/walkWays/edges';
import { obstaclesOn } from '../../plan/walkWays/obstacles';
import { between, boundsOf } from '../../plan/walkWays/planar';
import { caution } from '../caution';
import { type Person, peopleOf } from '../edges/people';
import type { Caution } from '../types';
import { inARow, metres, namesOf, verb } from '../words';
import { type ClearGrid, clearGrid, middleOf, squareOf, squaresNear, wayFrom, waysTo } from './clearGrid';
import { gearOutlines } from './gearOutlines';

/** How wide a way out is at least, metres: 28 inches. Source: [exit-width] */
export const WAY_OUT_METRES = 0.71;
/** Somebody who stands at something has the way beside them, at most so far, metres. Source: common practice, no source */
const BESIDE_METRES = 0.7;
/** A floor that is no farther up or down is the same, metres. Source: common practice, no source */
const LEVEL_METRES = 0.3;
/** Narrower than this nobody gets through, metres. Source: common practice, no source */
const NARROWEST_METRES = 0.3;
/** A narrow place is told to this, metres. */
const TOLD_METRES = 0.01;

const SOURCES = ['exit-width'] as const;

/** A way off the roof: where one stands before it. */
interface Door {
  readonly id: string;
  readonly label: string;
  readonly at: Point;
  /** Null where the plan does not say. */
  readonly widthMetres: number | null;
}

function doorOf(house: Extract<Piece, { readonly kind: 'stair house' }>, off: number): Door {
  const [x, z] = outOfOwnFrame(house.at, house.headingDegrees, [
    -house.door.alongMetres,
    -(house.size[2] / 2 + off),
  ]);
  return { id: house.id, label: house.label, at: [x, house.at[1], z], widthMetres: house.door.widthMetres };
}

const doorsOf = (plan: Plan, width: number): readonly Door[] => [
  ...plan.pieces.flatMap((piece) => (piece.kind === 'stair house' ? [doorOf(piece, width / 2 + 0.1)] : [])),
  ...(plan.cautions?.waysOut ?? []).map((way) => ({ ...way, widthMetres: null })),
];

const isLevel = (a: number, b: number): boolean => Math.abs(a - b) <= LEVEL_METRES;
const unique = (list: readonly string[]): readonly string[] => [...new Set(list)];

/** Their names in a row; of more than three, the first two and how many more. */
const people = (list: readonly Person[]): string => inARow(unique(list.map(({ name }) => name)), 3);

const idsOf = (list: readonly Person[]) => ({
  itemIds: unique(list.flatMap(({ itemIds }) => itemIds)),
  setupIds: unique(list.flatMap(({ setupIds }) => setupIds)),
});

function gridOf(plan: Plan, floorMetres: number, width: number, spots: readonly Spot[]): ClearGrid {
  const outlines = [
    ...obstaclesOn(plan, [floorMetres, floorMetres]).map(({ outline }) => outline),
    ...gearOutlines(plan, floorMetres),
  ];
  const decks = plan.pieces.flatMap((piece) =>
    piece.kind === 'deck' && isLevel(piece.topMetres, floorMetres) ? piece.outline : [],
  );
  return clearGrid(outlines, boundsOf([...decks, ...spots], decks.length === 0 ? 3 : 0), width / 2 + 0.2);
}

/** Those of some squares from which there is a way, the first of them, or −1. */
const startOf = (squares: readonly number[], next: Int32Array): number =>
  squares.find((square) => next[square] >= 0) ?? -1;

/** The ways out that are at least so clear, metres, each searched once. */
type Ways = (leastMetres: number) => Int32Array;

/** The widest way from one of some squares, metres, and where it is narrowest; null where there is none. */
function widestWay(
  grid: ClearGrid,
  ways: Ways,
  squares: readonly number[],
  width: number,
): { readonly metres: number; readonly at: Spot } | null {
  const wayAt = (least: number): readonly number[] | null => {
    const next = ways(least);
    const start = startOf(squares, next);
    return start < 0 ? null : wayFrom(next, start);
  };
  let [low, high] = [(NARROWEST_METRES - grid.step) / 2, (width - grid.step) / 2];
  let way = wayAt(low);
  if (!way) return null;
  while (high - low > TOLD_METRES / 2) {
    const middle = (low + high) / 2;
    const found = wayAt(middle);
    if (found) [low, way] = [middle, found];
    else high = middle;
  }
  const narrowest = way.reduce((a, b) => (grid.clear[b] < grid.clear[a] ? b : a));
  return { metres: 2 * low + grid.step, at: middleOf(grid, narrowest) };
}

interface Across {
  readonly id: string;
  readonly at: Spot;
}

/** What lies on the floor across ways: cables and dolly track. */
function acrossOf(plan: Plan, grid: ClearGrid, ways: Uint8Array, floorMetres: number): readonly Across[] {
  return plan.gear.flatMap((gear): Across[] => {
    const path =
      gear.kind === 'cable' && isLevel(gear.baseMetres, floorMetres)
        ? gear.path
        : gear.kind === 'track' && isLevel(gear.at[1], floorMetres)
          ? trackMiddleLine(gear).map(({ at }): Spot => [at[0], at[2]])
          : [];
    for (let k = 0; k + 1 < path.length; k += 1) {
      const [from, to] = [path[k], path[k + 1]];
      const length = Math.abs(to[0] - from[0]) + Math.abs(to[1] - from[1]);
      const count = Math.max(1, Math.ceil((2 * length) / grid.step));
      for (let n = 0; n <= count; n += 1) {
        const spot = between(from, to, n / count);
        const square = squareOf(grid, spot);
        if (square >= 0 && ways[square] === 1) return [{ id: gear.id, at: spot }];
      }
    }
    return [];
  });
}

/** Marks the squares of ways, and beside a step aslant those that a line might slip through by. */
function marked(grid: ClearGrid, next: Int32Array, starts: readonly number[]): Uint8Array {
  const ways = new Uint8Array(grid.clear.length);
  for (const start of starts)
    for (let at = start; ways[at] === 0; at = next[at]) {
      ways[at] = 1;
      const [here, there] = [at, next[at]];
      const aside = (there % grid.columns) - (here % grid.columns);
      if (aside !== 0 && Math.abs(there - here) > 1) ways[here + aside] = 1;
      if (there === here) break;
    }
  return ways;
}

function doorCautions(doors: readonly Door[], width: number): readonly Caution[] {
  return doors.flatMap(({ id, label, at, widthMetres }) =>
    widthMetres === null || widthMetres >= width
      ? []
      : [
          caution({
            kind: 'way out',
            about: 'way-out-door',
            standing: 'breaks',
            itemIds: [id],
            place: at,
            figures: [{ name: 'width of the door', value: widthMetres, unit: 'm', expected: width }],
            sentence: `The door of ${named(label)} is ${metres(widthMetres, 2)} wide, and the way out takes ${metres(width, 2)}. Count fewer people up here, or find another way out.`,
            sources: SOURCES,
          }),
        ],
  );
}

/** Somebody whose way out is too narrow: how wide it is, null for none, and where. */
interface Narrow {
  readonly person: Person;
  readonly at: Spot;
  readonly metres: number | null;
}

/** Those of one floor: who has too narrow a way out, and what lies across the ways. */
function onFloor(
  plan: Plan,
  doors: readonly Door[],
  crowd: readonly Person[],
  width: number,
): readonly Caution[] {
  const floorMetres = doors[0].at[1];
  const spots = [...doors.map(({ at }): Spot => [at[0], at[2]]), ...crowd.map(({ at }) => at)];
  const grid = gridOf(plan, floorMetres, width, spots);
  const goals = doors.map(({ at }) => squareOf(grid, [at[0], at[2]])).filter((square) => square >= 0);
  // All halve the same widths, so that few are searched.
  const searched = new Map<number, Int32Array>();
  const ways: Ways = (least) => {
    const known = searched.get(least) ?? waysTo(grid, goals, least);
    searched.set(least, known);
    return known;
  };
  const next = ways((width - grid.step) / 2);
  const starts = crowd.map((person) => {
    const squares = squaresNear(grid, person.at, BESIDE_METRES);
    return { person, squares, square: startOf(squares, next) };
  });
  // Each of them once, at the narrowest place that they have to pass from anywhere.
  const worst = new Map<string, Narrow>();
  for (const { person, squares, square } of starts) {
    if (square >= 0) continue;
    const widest = widestWay(grid, ways, squares, width);
    const found: Narrow = { person, at: widest?.at ?? person.at, metres: widest?.metres ?? null };
    const who = [...person.itemIds, '', ...person.setupIds].join(' ');
    const known = worst.get(who);
    if (!known || (found.metres ?? 0) < (known.metres ?? 0)) worst.set(who, found);
  }
  const narrow = new Map<string, { readonly at: Spot; readonly metres: number | null; people: Person[] }>();
  for (const { person, at, metres: wide } of worst.values()) {
    const key = [...at.map((value) => Math.round(value * 2)), wide === null].join(' ');
    const group = narrow.get(key) ?? { at, metres: wide, people: [] };
    group.people.push(person);
    narrow.set(key, group);
  }
  const tooNarrow = [...narrow.values()].map(({ at, metres: wide, people: who }) =>
    caution({
      kind: 'way out',
      about: wide === null ? 'way-out-blocked' : 'way-out-narrow',
      standing: 'breaks',
      ...idsOf(who),
      place: [at[0], floorMetres, at[1]],
      figures: [{ name: 'width of the way out', value: wide ?? 0, unit: 'm', expected: width }],
      sentence:
        wide === null
          ? `There is no way out from where ${people(who)} ${verb(unique(who.map(({ name }) => name)).length, 'is', 'are')}. Move what stands in between, or name the way that there is.`
          : `The way out from ${people(who)} is about ${metres(wide, 2)} wide at its narrowest, and takes ${metres(width, 2)}. Move what stands there.`,
      sources: SOURCES,
    }),
  );
  const clear: readonly Caution[] =
    tooNarrow.length > 0
      ? []
      : [
          caution({
            kind: 'way out',
            about: 'way-out-clear',
            standing: 'holds',
            itemIds: doors.flatMap(({ id, widthMetres }) => (widthMetres === null ? [] : [id])),
            keyIds: [],
            place: doors[0].at,
            figures: [{ name: 'width of the way out, at least', value: width, unit: 'm' }],
            sentence: `From every mark and camera on this floor there is a way out that is ${metres(width, 2)} wide, to ${doors.map(({ label }) => named(label)).join(' or ')}. Keep it so all night, lit, and free of cases.`,
            sources: SOURCES,
          }),
        ];
  const reached = starts.flatMap(({ square }) => (square >= 0 ? [square] : []));
  const across = acrossOf(plan, grid, marked(grid, next, reached), floorMetres);
  if (across.length === 0) return [...tooNarrow, ...clear];
  const ids = across.map(({ id }) => id);
  const [first] = across;
  return [
    ...tooNarrow,
    ...clear,
    caution({
      kind: 'way out',
      about: 'way-out-across',
      standing: 'breaks',
      itemIds: ids,
      place: [first.at[0], floorMetres, first.at[1]],
      figures: [],
      sentence: `${namesOf(plan, ids)} ${verb(ids.length, 'lies', 'lie')} across the way out. Put a ramp or a mat over ${verb(ids.length, 'it', 'each')} and light it, or lead ${verb(ids.length, 'it', 'them')} round.`,
      sources: ['cords-and-water'],
    }),
  ];
}

/**
 * The ways out: whether there is one, whether everybody at a mark or a camera gets to it on a way that is wide enough
 * between all that stands there, and what lies across it. Widths are within a tenth of a metre. Source: [exit-width]
 */
export function wayOutCautions(plan: Plan): readonly Caution[] {
  const width = plan.cautions?.wayOutMetres ?? WAY_OUT_METRES;
  const crowd = peopleOf(plan);
  const doors = doorsOf(plan, width);
  if (doors.length === 0)
    return crowd.length === 0
      ? []
      : [
          caution({
            kind: 'way out',
            about: 'way-out-none',
            standing: 'breaks',
            figures: [],
            sentence:
              'No way out is known: the plan has no stair house, and names no other way off the roof. Name it, so that it can be kept clear.',
            sources: SOURCES,
          }),
        ];
  const levels = doors.filter(({ at }, k) => doors.findIndex((door) => isLevel(door.at[1], at[1])) === k);
  const onLevels = hasEdges(plan)
    ? levels.flatMap((door) => {
        const same = doors.filter(({ at }) => isLevel(at[1], door.at[1]));
        const there = crowd.filter(({ floorMetres }) => isLevel(floorMetres, door.at[1]));
        return there.length === 0 ? [] : onFloor(plan, same, there, width);
      })
    : [];
  const elsewhere = crowd.filter(({ floorMetres }) => !doors.some(({ at }) => isLevel(at[1], floorMetres)));
  const [first] = elsewhere;
  const off: readonly Caution[] = first
    ? [
        caution({
          kind: 'way out',
          about: 'way-out-level',
          standing: 'said',
          ...idsOf(elsewhere),
          place: [first.at[0], first.floorMetres, first.at[1]],
          figures: [
            {
              name: 'height over the floor of the way out',
              value: first.floorMetres - doors[0].at[1],
              unit: 'm',
            },
          ],
          sentence: `${capital(people(elsewhere))} ${verb(unique(elsewhere.map(({ name }) => name)).length, 'is', 'are')} on another level than the way out, and the plan does not know how they come down. Have stairs or a held ladder there, and keep them clear.`,
          sources: SOURCES,
        }),
      ]
    : [];
  return [...doorCautions(doors, width), ...onLevels, ...off];
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
