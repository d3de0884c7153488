import { cos, sin } from '../../units/steadyMath';
import { ownAnchor } from '../edits/anchorOf';
import { bearingOf } from '../runs';
import type { Performer } from '../schema/cast';
import type { Gear } from '../schema/gear';
import type { Spot } from '../schema/numbers';
import type { Piece } from '../schema/pieces';
import type { Plan } from '../schema/plan';
import { type Bounds, mayMeet } from '../walkWays/planar';
import { thingName } from './names';
import { apart, middleOf, wayOf } from './plane';
import { snapBounds } from './snapBounds';
import type { At, SameDistance, SnapEdge, SnapPoint, SnapThings } from './types';

/** What of a plan things may catch on. */
export interface SnapTargets {
  /** What comes within so many metres of a place, and perhaps more, in the order of the plan. */
  readonly around: (at: At, metres: number) => SnapThings;
  /** Bearing of the longest edge of a deck, 0 up to 90 degrees: the way that the roof is built. */
  readonly axisDegrees: number;
}

const NOTHING: SnapThings = { edges: [], points: [] };

/** What a record offers by itself; kept as long as the record stays the same object. */
const kept = new WeakMap<object, SnapThings>();

/**
 * All that the plan's records give to catch on, without what is hidden and without the ids of `except`. What a record
 * gives is put in words when a hand first comes near it: on a full roof most of it is far from every hand.
 */
export function snapTargets(plan: Plan, except: ReadonlySet<string> = new Set()): SnapTargets {
  const all: { readonly bounds: Bounds; readonly things: () => SnapThings }[] = [];
  const add = <Entry extends Piece | Gear | Performer>(
    entry: Entry,
    read: (entry: Entry) => SnapThings,
  ): void => {
    const bounds = entry.hidden || except.has(entry.id) ? null : snapBounds(entry);
    if (!bounds) return;
    const things = (): SnapThings => {
      const known = kept.get(entry) ?? read(entry);
      kept.set(entry, known);
      return known;
    };
    all.push({ bounds, things });
  };
  for (const piece of plan.pieces) add(piece, ofPiece);
  for (const gear of plan.gear) add(gear, ofGear);
  for (const performer of plan.cast) add(performer, ofPerformer);
  return {
    around: ([x, z], metres) => {
      const spot: Spot = [x, z];
      return joined(
        all.flatMap(({ bounds, things }) => (mayMeet(spot, spot, bounds, metres) ? [things()] : [])),
      );
    },
    axisDegrees: axisOf(plan),
  };
}

function axisOf(plan: Plan): number {
  let longest = 0;
  let degrees = 0;
  for (const piece of plan.pieces) {
    if (piece.kind !== 'deck') continue;
    for (const [from, to] of legsOf(piece.outline, true)) {
      const way = wayOf(from, to);
      if (!way || apart(from, to) <= longest + 1e-6) continue;
      longest = apart(from, to);
      degrees = bearingOf([0, 0], [way[0], way[1]]) % 90;
    }
  }
  // A bearing of all but 90 is the noise of one of 0.
  return degrees > 90 - 1e-6 || degrees < 1e-6 ? 0 : degrees;
}

/**
 * Gaps to the deck's edge that things of a kind stand at, the nearest to a place first: somebody who sets up a row
 * of stands means the gap of the others.
 */
export function gapsLike(
  plan: Plan,
  kind: string,
  near: At,
  except: ReadonlySet<string> = new Set(),
): readonly SameDistance[] {
  const rims = plan.pieces.flatMap((piece) =>
    piece.kind === 'deck' && !piece.hidden ? legsOf(piece.outline, true) : [],
  );
  const like = [...plan.pieces, ...plan.gear].flatMap((record) => {
    const at = record.kind === kind && !record.hidden && !except.has(record.id) ? ownAnchor(record) : null;
    return at ? [{ at, name: thingName(record.label), away: apart(at, near) }] : [];
  });
  like.sort((a, b) => a.away - b.away);
  return like.slice(0, MOST_ALIKE).flatMap(({ at, name }) =>
    rims
      .map((rim) => gapTo(at, rim))
      .filter((metres) => metres > 0 && metres <= WIDEST_GAP_METRES)
      .map((metres) => ({ metres, word: `as far from the deck’s edge as ${name}` })),
  );
}

const MOST_ALIKE = 4;
/** Farther from an edge than this nobody measures from it, metres. */
const WIDEST_GAP_METRES = 4;

function gapTo(at: At, [from, to]: readonly [At, At]): number {
  const way = wayOf(from, to);
  return way ? Math.abs((at[0] - from[0]) * way[1] - (at[1] - from[1]) * way[0]) : 0;
}

type Leg = readonly [At, At];

/** The middle of a shorter leg lies too near to its ends to be meant, metres. */
const SHORTEST_HALVED_METRES = 1;

function legsOf(path: readonly At[], closed: boolean): Leg[] {
  const legs = path.slice(1).map((to, index): Leg => [path[index], to]);
  return closed && path.length > 2 ? [...legs, [path[path.length - 1], path[0]]] : legs;
}

const flat = (point: readonly [number, number, number]): At => [point[0], point[2]];

function ofPiece(piece: Piece): SnapThings {
  const name = thingName(piece.label);
  switch (piece.kind) {
    case 'deck':
      return joined([
        along(piece.id, piece.outline, true, {
          name,
          word: 'on the deck’s edge',
          corner: 'the deck’s',
          rim: true,
        }),
        ...(piece.holes ?? []).map(({ id, outline }) =>
          along(`${piece.id} ${id}`, outline, true, {
            name: 'the hole',
            word: 'on the edge of the hole',
            rim: true,
          }),
        ),
      ]);
    case 'parapet':
    case 'wall':
      return joined([
        along(piece.id, piece.path, piece.closed, { name, word: `along ${name}` }),
        faces(piece.id, piece.path, piece.closed, piece.thicknessMetres / 2, name),
      ]);
    case 'fence':
      return along(piece.id, piece.path, piece.closed, { name, word: `along ${name}` });
    case 'line':
      return along(piece.id, [flat(piece.from), flat(piece.to)], false, { name, word: `under ${name}` });
    case 'pane': {
      const half = piece.widthMetres / 2;
      const [left, right] = [-half, half].map((x) => turned(flat(piece.at), piece.headingDegrees, x, 0));
      return along(piece.id, [left, right], false, { name, word: `along ${name}` });
    }
    case 'tank':
    case 'post':
    case 'chart':
      return { edges: [], points: [middlePoint(piece.id, flat(piece.at), name)] };
    case 'skyline block':
      return NOTHING;
    case 'model': {
      const { lowest, highest } = piece.extent;
      const across = (highest[0] - lowest[0]) * piece.metresPerUnit;
      const deep = piece.up === 'y' ? highest[2] - lowest[2] : highest[1] - lowest[1];
      return rectangle(piece, across, Math.abs(deep) * piece.metresPerUnit);
    }
    default:
      return rectangle(piece, piece.size[0], piece.size[2]);
  }
}

function ofGear(gear: Gear): SnapThings {
  const name = thingName(gear.label);
  switch (gear.kind) {
    case 'cable':
      return { edges: [], points: endsOf(gear.id, gear.path, name) };
    case 'bulb string':
      return along(gear.id, [flat(gear.from), flat(gear.to)], false, { name, word: `under ${name}` });
    case 'generator':
    case 'distro':
    case 'outlet':
    case 'battery':
    case 'appliance':
    case 'cart':
    case 'dolly':
      return rectangle(gear, gear.size[0], gear.size[2]);
    case 'track': {
      if (gear.bendMetres !== undefined)
        return { edges: [], points: [middlePoint(gear.id, flat(gear.at), name)] };
      const half = gear.lengthMetres / 2;
      const ends = [-half, half].map((z) => turned(flat(gear.at), gear.headingDegrees, 0, z));
      return along(gear.id, ends, false, { name, word: `along ${name}` });
    }
    default: {
      const at = ownAnchor(gear);
      return at ? { edges: [], points: [middlePoint(gear.id, at, name)] } : NOTHING;
    }
  }
}

function ofPerformer(performer: Performer): SnapThings {
  const points = performer.marks.map(
    (mark): SnapPoint => ({
      at: mark.at,
      kind: 'middle',
      name: `a mark of ${performer.label}`,
      word: `at a mark of ${performer.label}`,
      key: `mark ${performer.id} ${mark.id}`,
    }),
  );
  return { edges: [], points };
}

const joined = (parts: readonly SnapThings[]): SnapThings => ({
  edges: parts.flatMap(({ edges }) => edges),
  points: parts.flatMap(({ points }) => points),
});

interface Words {
  readonly name: string;
  readonly word: string;
  /** Whose corner it is, where that is not the name's. */
  readonly corner?: string;
  readonly rim?: boolean;
}

/** Legs, their ends and their middles. */
function along(id: string, path: readonly At[], closed: boolean, words: Words): SnapThings {
  const { name, word, corner, rim = false } = words;
  const legs = legsOf(path, closed);
  const edges = legs.map(
    ([from, to], index): SnapEdge => ({ from, to, name, word, key: `${id} ${index}`, rim }),
  );
  const of = corner ?? `${name}’s`;
  const corners = path.map((at, index): SnapPoint => {
    const isEnd = !closed && (index === 0 || index === path.length - 1);
    return {
      at,
      kind: 'end',
      name,
      word: isEnd ? `at the end of ${name}` : corner ? `at ${of} corner` : `at the corner of ${name}`,
      key: `end ${id} ${index}`,
    };
  });
  const middles = legs.flatMap(([from, to], index): SnapPoint[] => {
    if (apart(from, to) < SHORTEST_HALVED_METRES) return [];
    const word = legs.length === 1 ? `at the middle of ${name}` : `half way along ${name}`;
    return [{ at: middleOf(from, to), kind: 'middle', name, word, key: `middle ${id} ${index}` }];
  });
  return { edges, points: [...corners, ...middles] };
}

/** The two faces of what has a thickness, leg by leg; where they meet at a corner is not asked. */
function faces(id: string, path: readonly At[], closed: boolean, half: number, name: string): SnapThings {
  const edges = legsOf(path, closed).flatMap(([from, to], index) => {
    const way = wayOf(from, to);
    if (!way) return [];
    return [1, -1].map((side): SnapEdge => {
      const shifted = (at: At): At => [at[0] + way[1] * half * side, at[1] - way[0] * half * side];
      const key = `${id} face ${index} ${side}`;
      return { from: shifted(from), to: shifted(to), name, word: `on the face of ${name}`, key };
    });
  });
  return { edges, points: [] };
}

function endsOf(id: string, path: readonly At[], name: string): SnapPoint[] {
  return [0, path.length - 1].map((index) => ({
    at: path[index],
    kind: 'end',
    name,
    word: `at the end of ${name}`,
    key: `end ${id} ${index}`,
  }));
}

const middlePoint = (id: string, at: At, name: string): SnapPoint => ({
  at,
  kind: 'middle',
  name,
  word: `at the middle of ${name}`,
  key: `middle ${id}`,
});

/** A place of a thing's own plan (it faces -z), turned to its heading. */
function turned(at: At, headingDegrees: number, x: number, z: number): At {
  const radians = (headingDegrees * Math.PI) / 180;
  const [c, s] = headingDegrees % 360 === 0 ? [1, 0] : [cos(radians), sin(radians)];
  return [at[0] + x * c - z * s, at[1] + x * s + z * c];
}

interface Standing {
  readonly id: string;
  readonly label: string;
  readonly at: readonly [number, number, number];
  readonly headingDegrees: number;
}

/** The four corners of a rectangle around a standing thing's middle, metres. */
export function rectangleCorners(thing: Standing, width: number, depth: number): readonly At[] {
  const [x, z] = [width / 2, depth / 2];
  const own: readonly At[] = [
    [-x, -z],
    [x, -z],
    [x, z],
    [-x, z],
  ];
  return own.map(([right, back]) => turned(flat(thing.at), thing.headingDegrees, right, back));
}

function rectangle(thing: Standing, width: number, depth: number): SnapThings {
  const name = thingName(thing.label);
  const sides = along(thing.id, rectangleCorners(thing, width, depth), true, { name, word: `along ${name}` });
  return { edges: sides.edges, points: [...sides.points, middlePoint(thing.id, flat(thing.at), name)] };
}

/** The corners of what an item takes of the ground as far as its record tells them, metres; none for what is a point. */
export function footprintCorners(record: Piece | Gear): readonly At[] {
  if ('outline' in record) return record.outline;
  if ('path' in record) return record.path;
  if ('from' in record) return [flat(record.from), flat(record.to)];
  if ('size' in record && 'at' in record && record.size.length === 3) {
    return rectangleCorners(record, record.size[0], record.size[2]);
  }
  return [];
}
