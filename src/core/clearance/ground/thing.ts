import type { Vec3 } from '../../form/build/vector';
import { formsAt } from '../../form/formsAt';
import type { ItemForm, PartShape, PlacedPart, Tube } from '../../form/types';
import { BUILT_IN_KIT } from '../../kit/builtInKit';
import { carrierOf, standUnder } from '../../plan/edits/anchorOf';
import { named } from '../../plan/named';
import type { StandClass } from '../../plan/schema/kit';
import type { Plan } from '../../plan/schema/plan';
import { type Stand, standEnd } from '../../plan/standEnd';
import { footOf } from '../../plan/surfaces';
import { worldOf } from '../../sight/stage';
import { NBSP } from '../../units/numbers';
import { cos, hypot, sin } from '../../units/steadyMath';
import { solidPieces } from './solidPieces';
import type { GroundThing } from './types';

/** A stretch of a thing as it stands with its foot at the origin: a ball of that radius drawn from one end to the other. */
export interface Bone {
  readonly from: Vec3;
  readonly to: Vec3;
  readonly radius: number;
}

/**
 * A convex piece of a thing: the hull of its bones, all of one radius. Balls, tubes, and the sides of what has corners.
 */
export interface Piece {
  readonly bones: readonly Bone[];
  /** The ends of its bones, each once, highest first. */
  readonly ends: readonly Vec3[];
  readonly radius: number;
}

/** What would stand on each square. */
export interface Standing {
  readonly words: string;
  readonly pieces: readonly Piece[];
  readonly heightMetres: number;
  /** How far it reaches from its foot, metres. */
  readonly reachMetres: number;
  /** What is already in the plan of it, which is not in its own way. */
  readonly itemIds: ReadonlySet<string>;
}

/** The tallest that is asked for, metres. */
export const TALLEST_METRES = 30;
/** How far across a head in its yoke is as it turns, metres; an estimate, no source. */
const HANGING_METRES = 0.6;
/** Radii are taken up to the next of these, so that few prisms serve all pieces. */
const RADII = [0, 0.012, 0.025, 0.05, 0.1, 0.2, 0.4, 0.8, 1.6] as const;
/** Above this share of their collar's height legs count as near it. */
const NEAR_COLLAR = 0.85;
/** A cone is cut off at so many times as wide as the legs that turn in it. */
const WIDE_CONE = 1.15;
/** Corners of the circle around what may be turned any way. */
const TURNS = 10;
/** Pieces with more sides than this are taken by their box. */
const MOST_SIDES = 24;
const HAIR = 1e-5;

const roundedUp = (radius: number): number => RADII.find((each) => each >= radius - 1e-9) ?? radius;

const pieceOf = (bones: readonly Bone[], radius: number): Piece => ({
  bones,
  radius,
  ends: [
    ...new Map(bones.flatMap(({ from, to }) => [from, to]).map((end) => [end.join(' '), end])).values(),
  ].sort(
    // What stands out above a cover is found first.
    (a, b) => b[1] - a[1],
  ),
});

const rounded = (from: Vec3, to: Vec3, radius: number): Piece => {
  const up = roundedUp(radius);
  return pieceOf([{ from, to, radius: up }], up);
};

/** The heights, lowest first, up to each of which stands are of one class; what is taller is of the last one's. */
export const standTops = ({ kit }: Plan): readonly number[] =>
  [...new Set([...kit.stands, ...BUILT_IN_KIT.stands].map(({ highestMetres }) => highestMetres))].sort(
    (a, b) => a - b,
  );

/** The class for a height: the lowest that reaches it, of the plan's own or else of the built-in ones. */
function classFor(plan: Plan, heightMetres: number): StandClass {
  const all = [...plan.kit.stands, ...BUILT_IN_KIT.stands];
  const reaching = (classes: readonly StandClass[]) =>
    classes
      .filter(({ highestMetres }) => highestMetres >= heightMetres)
      .sort((a, b) => a.highestMetres - b.highestMetres)
      .at(0);
  return (
    reaching(plan.kit.stands) ??
    reaching(BUILT_IN_KIT.stands) ??
    all.reduce((tallest, each) => (each.highestMetres > tallest.highestMetres ? each : tallest))
  );
}

function* cornersOf(part: PlacedPart): Generator<Vec3> {
  const { positions } = part.shape;
  for (let k = 0; k < positions.length; k += 3) {
    yield worldOf(part, [positions[k], positions[k + 1], positions[k + 2]]);
  }
}

/**
 * A stand of a height as it may be turned any way: a column, and the cone that its legs turn in. Of the class of the
 * plan's kit that reaches so high.
 */
function anyStand(plan: Plan, heightMetres: number): Standing {
  const standClass = classFor(plan, heightMetres);
  const stand: Stand = {
    id: 'stand',
    label: 'Stand',
    kind: 'stand',
    stand: standClass.id,
    at: [0, 0, 0],
    headingDegrees: 0,
    heightMetres,
  };
  const bare: Plan = {
    ...plan,
    kit: { ...plan.kit, stands: [standClass] },
    pieces: [],
    cast: [],
    gear: [stand],
    setups: [],
  };
  let [column, top, collar] = [0, 0, 0];
  const legCorners: Vec3[] = [];
  for (const part of formsAt(bare, 0).flatMap((form) => form.parts)) {
    for (const corner of cornersOf(part)) {
      const [x, y, z] = corner;
      top = Math.max(top, y);
      if (part.name === 'legs') {
        collar = Math.max(collar, y);
        legCorners.push(corner);
      } else column = Math.max(column, hypot(x, z));
    }
  }
  // The legs turn in a cone, from as wide as they are near their collar to as wide as takes in all that is below.
  let [hub, feet] = [0, 0];
  for (const [x, y, z] of legCorners) if (y > collar * NEAR_COLLAR) hub = Math.max(hub, hypot(x, z));
  for (const [x, y, z] of legCorners) {
    if (y <= collar * NEAR_COLLAR) feet = Math.max(feet, hub + (hypot(x, z) - hub) / (1 - y / collar));
  }
  feet = Math.max(feet, hub * 1.1);
  const tip: Vec3 = [0, (collar * feet) / (feet - hub), 0];
  // Legs that lie low and bend would make a cone far wider than they are: it is cut off not far beyond them.
  const widest = WIDE_CONE * legCorners.reduce((most, [x, , z]) => Math.max(most, hypot(x, z)), 0);
  const isCut = feet > widest;
  const reach = isCut ? widest : feet;
  const ring = ringAround(reach, 0);
  const knees = isCut ? ringAround(reach, tip[1] * (1 - reach / feet)) : ring;
  const legs = ring.flatMap((foot, k): Bone[] => [
    { from: foot, to: ring[(k + 1) % TURNS], radius: 0 },
    { from: knees[k], to: tip, radius: 0 },
    ...(isCut
      ? [
          { from: foot, to: knees[k], radius: 0 },
          { from: knees[k], to: knees[(k + 1) % TURNS], radius: 0 },
        ]
      : []),
  ]);
  const to: Vec3 = [0, Math.max(0, top - column / 2), 0];
  return {
    words: `a stand of ${Number(heightMetres.toFixed(3))} m`,
    pieces: [pieceOf([{ from: [0, 0, 0], to, radius: column }], column), pieceOf(legs, 0)],
    heightMetres: top,
    reachMetres: Math.max(column, reach),
    itemIds: new Set(),
  };
}

/** A ring at a height around what reaches so far to each side as it turns. */
const ringAround = (reach: number, y: number): readonly Vec3[] =>
  Array.from({ length: TURNS }, (_, k): Vec3 => {
    const angle = (2 * Math.PI * k) / TURNS;
    const out = reach / cos(Math.PI / TURNS);
    return [sin(angle) * out, y, cos(angle) * out];
  });

/** What hangs between two heights over its place, turned any way: a drum around it. */
function hanging(lowMetres: number, highMetres: number, acrossMetres: number): Standing {
  const [low, high] = [ringAround(acrossMetres / 2, lowMetres), ringAround(acrossMetres / 2, highMetres)];
  const bones = low.flatMap((foot, k): Bone[] => {
    const next = (k + 1) % TURNS;
    return [
      { from: foot, to: low[next], radius: 0 },
      { from: high[k], to: high[next], radius: 0 },
      { from: foot, to: high[k], radius: 0 },
    ];
  });
  const figure = (metres: number): string => `${Number(metres.toFixed(3))}${NBSP}m`;
  return {
    words: `what hangs from ${figure(lowMetres)} to ${figure(highMetres)}`,
    pieces: [pieceOf(bones, 0)],
    heightMetres: highMetres,
    reachMetres: acrossMetres / 2 / cos(Math.PI / TURNS),
    itemIds: new Set(),
  };
}

/** Whether a corner lies in a tube. */
function isInTube({ from, to, radius }: Tube, [x, y, z]: Vec3): boolean {
  const [dx, dy, dz] = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const square = dx * dx + dy * dy + dz * dz;
  const along = (x - from[0]) * dx + (y - from[1]) * dy + (z - from[2]) * dz;
  const share = square > 0 ? Math.min(1, Math.max(0, along / square)) : 0;
  return hypot(x - from[0] - dx * share, y - from[1] - dy * share, z - from[2] - dz * share) <= radius + HAIR;
}

const PIECES = new WeakMap<PartShape, readonly Piece[]>();

/** A shape as pieces, in its own frame: its tubes, and what of it lies in none of them. */
function piecesOf(shape: PartShape): readonly Piece[] {
  const known = PIECES.get(shape);
  if (known) return known;
  const pieces = shape.tubes.map(({ from, to, radius }) => rounded(from, to, radius));
  for (const { corners, sides } of solidPieces(shape)) {
    if (shape.tubes.some((tube) => corners.every((corner) => isInTube(tube, corner)))) continue;
    pieces.push(sides.length <= MOST_SIDES ? sidesPiece(corners, sides) : boxPiece(corners));
  }
  PIECES.set(shape, pieces);
  return pieces;
}

const sidesPiece = (corners: readonly Vec3[], sides: readonly (readonly [number, number])[]): Piece =>
  pieceOf(
    sides.map(([a, b]) => ({ from: corners[a], to: corners[b], radius: 0 })),
    0,
  );

/** The box around corners, by its twelve edges. */
function boxPiece(corners: readonly Vec3[]): Piece {
  const low = [0, 1, 2].map((axis) => corners.reduce((least, each) => Math.min(least, each[axis]), Infinity));
  const high = [0, 1, 2].map((axis) => corners.reduce((most, each) => Math.max(most, each[axis]), -Infinity));
  const corner = (k: number): Vec3 => [
    k & 1 ? high[0] : low[0],
    k & 2 ? high[1] : low[1],
    k & 4 ? high[2] : low[2],
  ];
  const bones: Bone[] = [];
  for (let k = 0; k < 8; k += 1) {
    for (const bit of [1, 2, 4]) {
      if (!(k & bit)) bones.push({ from: corner(k), to: corner(k | bit), radius: 0 });
    }
  }
  return pieceOf(bones, 0);
}

/** What turns as it moves, since it stays aimed: the ball that it turns in. */
function ballOf(form: ItemForm, pivot: Vec3): Piece {
  let radius = 0;
  for (const part of form.parts) {
    for (const [x, y, z] of cornersOf(part)) {
      radius = Math.max(radius, hypot(x - pivot[0], y - pivot[1], z - pivot[2]));
    }
  }
  return rounded(pivot, pivot, radius);
}

function standingItem(plan: Plan, itemId: string): Standing | string {
  const id = carrierOf(plan, itemId) ?? itemId;
  const foot = footOf(plan, id);
  const record = [...plan.gear, ...plan.pieces].find((each) => each.id === id);
  if (!record) return `There is no thing "${itemId}" in this plan that could stand somewhere.`;
  if (!foot || 'rides' in record)
    return `${named(record.label)} has no foot of its own: expected something that stands in one place.`;
  const ids = new Set([id, ...plan.gear.filter((gear) => standUnder(gear) === id).map((gear) => gear.id)]);
  const pieces: Piece[] = [];
  for (const form of formsAt(plan, 0)) {
    if (!ids.has(form.id)) continue;
    const gear = plan.gear.find((each) => each.id === form.id);
    if (gear && 'aim' in gear && gear.aim !== undefined) {
      const holds = record.kind === 'stand' ? standEnd(record) : [foot.spot[0], foot.metres, foot.spot[1]];
      pieces.push(ballOf(form, [holds[0], holds[1], holds[2]]));
      continue;
    }
    for (const part of form.parts) {
      for (const { bones, radius } of piecesOf(part.shape)) {
        const placed = bones.map((bone) => ({
          from: worldOf(part, bone.from),
          to: worldOf(part, bone.to),
          radius,
        }));
        pieces.push(pieceOf(placed, radius));
      }
    }
  }
  const own = ([x, y, z]: Vec3): Vec3 => [x - foot.spot[0], y - foot.metres, z - foot.spot[1]];
  const moved = pieces.map(({ bones, radius }) =>
    pieceOf(
      bones.map(({ from, to }) => ({ from: own(from), to: own(to), radius })),
      radius,
    ),
  );
  const ends = moved.flatMap((piece) => piece.ends.map((at) => ({ at, radius: piece.radius })));
  return {
    words: named(record.label),
    pieces: moved,
    heightMetres: ends.reduce((most, { at, radius }) => Math.max(most, at[1] + radius), 0),
    reachMetres: ends.reduce((most, { at, radius }) => Math.max(most, hypot(at[0], at[2]) + radius), 0),
    itemIds: ids,
  };
}

/** What would stand on each square; a sentence where that is nothing that can stand. */
export function standingOf(plan: Plan, of: GroundThing): Standing | string {
  if ('itemId' in of) return standingItem(plan, of.itemId);
  if ('lowMetres' in of) {
    const { lowMetres, highMetres, acrossMetres = HANGING_METRES } = of;
    if (!(lowMetres >= 0 && highMetres > lowMetres && highMetres <= TALLEST_METRES))
      return `What hangs: found it from ${lowMetres} m to ${highMetres} m, expected the lower height first, both from 0 to ${TALLEST_METRES} m.`;
    if (!(acrossMetres > 0 && acrossMetres <= TALLEST_METRES))
      return `What hangs: found it ${acrossMetres} m across, expected more than 0 and at most ${TALLEST_METRES} m.`;
    return hanging(lowMetres, highMetres, acrossMetres);
  }
  const { heightMetres } = of;
  if (!(heightMetres > 0 && heightMetres <= TALLEST_METRES))
    return `The height of a stand: found ${heightMetres} m, expected more than 0 and at most ${TALLEST_METRES} m.`;
  return anyStand(plan, heightMetres);
}
