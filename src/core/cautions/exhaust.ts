import type { GearOf } from '../form/gear/references';
import { inOwnFrame, outOfOwnFrame } from '../plan/areas';
import { named } from '../plan/named';
import { metresBetween, spotAlong, spotFrom } from '../plan/runs';
import type { Spot } from '../plan/schema/numbers';
import type { Piece } from '../plan/schema/pieces';
import type { Plan } from '../plan/schema/plan';
import { lying, obstaclesOn } from '../plan/walkWays/obstacles';
import { type Bounds, between, boundsOf, fromOutline, mayMeet, nearestShare } from '../plan/walkWays/planar';
import { caution } from './caution';
import { type Person, peopleOf } from './edges/people';
import type { Caution } from './types';
import { metres } from './words';

/** An engine is so far from doors, windows and vents, metres: 20 feet. Source: [generator-exhaust] */
const OPENING_METRES = 6.1;
/** What rounding may leave outside of bounds, metres. */
const NOISE_METRES = 1e-6;
/** Air is left free around an engine, metres. Source: common practice, no source */
const AIR_METRES = 1;

type Generator = GearOf<'generator'>;

/** An opening that fumes may go in by: a straight piece on the floor, and what it belongs to. */
interface Vent {
  readonly what: string;
  readonly pieceId: string;
  readonly from: Spot;
  readonly to: Spot;
}

/** The front of a house or a shed between two places to its right, or the left where negative. */
function frontOf(
  piece: Extract<Piece, { readonly size: unknown }>,
  left: number,
  right: number,
): readonly [Spot, Spot] {
  const at = (x: number): Spot => outOfOwnFrame(piece.at, piece.headingDegrees, [x, -piece.size[2] / 2]);
  return [at(left), at(right)];
}

function ventsOf(piece: Piece): readonly Vent[] {
  const vent = (what: string, [from, to]: readonly [Spot, Spot]): Vent => ({
    what,
    pieceId: piece.id,
    from,
    to,
  });
  switch (piece.kind) {
    case 'stair house': {
      const { alongMetres, widthMetres } = piece.door;
      // To the right as one faces the front is to the house's own left.
      const [left, right] = [-alongMetres - widthMetres / 2, -alongMetres + widthMetres / 2];
      return [vent(`the door of ${named(piece.label)}`, frontOf(piece, left, right))];
    }
    case 'shed':
      return piece.front === 'boards'
        ? []
        : [vent(`the front of ${named(piece.label)}`, frontOf(piece, -piece.size[0] / 2, piece.size[0] / 2))];
    case 'wall':
      return (piece.openings ?? []).map(({ alongMetres, widthMetres }) => {
        const { spot, bearingDegrees } = spotAlong(piece.path, piece.closed, alongMetres);
        const ends = [-widthMetres / 2, widthMetres / 2].map((by) => spotFrom(spot, bearingDegrees, by));
        return vent(`an opening of ${named(piece.label)}`, [ends[0], ends[1]]);
      });
    case 'skyline block': {
      if (piece.windows.litShare === 0) return [];
      const [x, z] = [piece.size[0] / 2, piece.size[2] / 2];
      const corners = lying(piece, [-x, x], [-z, z]);
      return corners.map((from, k) =>
        vent(`the windows of ${named(piece.label)}`, [from, corners[(k + 1) % corners.length]]),
      );
    }
    default:
      return [];
  }
}

type Roof = Extract<Piece, { readonly kind: 'tank' | 'stair house' | 'shed' }>;

const isRoof = (piece: Piece): piece is Roof =>
  piece.kind === 'tank' || piece.kind === 'stair house' || piece.kind === 'shed';

/** What a generator stands in or under, if anything. */
function roofOver(roofs: readonly Roof[], { at }: Generator): Roof | null {
  const spot: Spot = [at[0], at[2]];
  const over = roofs.find((piece) => {
    if (piece.kind === 'tank')
      return (
        at[1] < piece.at[1] + piece.legMetres &&
        metresBetween(spot, [piece.at[0], piece.at[2]]) <= piece.diameterMetres / 2
      );
    const [right, back] = inOwnFrame(piece.at, piece.headingDegrees, spot);
    return (
      at[1] < piece.at[1] + piece.size[1] - 0.1 &&
      Math.abs(right) <= piece.size[0] / 2 &&
      Math.abs(back) <= piece.size[2] / 2
    );
  });
  return over ?? null;
}

const outlineOf = (generator: Generator): readonly Spot[] => {
  const [x, z] = [generator.size[0] / 2, generator.size[2] / 2];
  return lying(generator, [-x, x], [-z, z]);
};

/** What engines are held against, found once for all of them. */
interface Around {
  readonly plan: Plan;
  readonly roofs: readonly Roof[];
  readonly vents: readonly (Vent & { readonly bounds: Bounds })[];
  readonly people: readonly Person[];
}

function openingCaution({ roofs, vents }: Around, generator: Generator): Caution | null {
  const outline = outlineOf(generator);
  const under = roofOver(roofs, generator);
  const base = {
    kind: 'exhaust',
    about: 'exhaust-openings',
    keyIds: [generator.id],
    place: generator.at,
    sources: ['generator-exhaust'],
  } as const;
  if (under)
    return caution({
      ...base,
      standing: 'breaks',
      itemIds: [generator.id, under.id],
      figures: [{ name: 'from the next opening', value: 0, unit: 'm', expected: OPENING_METRES }],
      sentence: `${named(generator.label)} runs in or under ${named(under.label)}, where its exhaust gathers and kills. Move it into the open, ${metres(OPENING_METRES)} from doors, windows and vents.`,
    });
  const [left, top, right, bottom] = boundsOf(outline);
  const near = vents
    .filter(({ bounds }) => mayMeet([left, top], [right, bottom], bounds, OPENING_METRES + NOISE_METRES))
    .map((vent) => ({ ...vent, away: fromOutline(outline, vent.from, vent.to) }))
    .filter(({ away }) => away < OPENING_METRES);
  if (near.length === 0) return null;
  const nearest = near.reduce((a, b) => (b.away < a.away ? b : a));
  const middle: Spot = [generator.at[0], generator.at[2]];
  return caution({
    ...base,
    standing: 'breaks',
    itemIds: [generator.id, nearest.pieceId],
    stretches: [[middle, between(nearest.from, nearest.to, nearestShare(nearest.from, nearest.to, middle))]],
    figures: [{ name: 'from the next opening', value: nearest.away, unit: 'm', expected: OPENING_METRES }],
    sentence: `${named(generator.label)} is ${metres(nearest.away)} from ${nearest.what}: exhaust is kept ${metres(OPENING_METRES)} from doors, windows and vents. Move it off and turn its exhaust downwind.`,
  });
}

function peopleCaution({ people }: Around, generator: Generator): Caution | null {
  const outline = outlineOf(generator);
  const near = people
    .map((each) => ({ ...each, away: fromOutline(outline, each.at, each.at) }))
    .filter(({ away }) => away < OPENING_METRES);
  if (near.length === 0) return null;
  const nearest = near.reduce((a, b) => (b.away < a.away ? b : a));
  return caution({
    kind: 'exhaust',
    about: 'exhaust-people',
    standing: 'said',
    keyIds: [generator.id],
    itemIds: [generator.id, ...nearest.itemIds],
    setupIds: nearest.setupIds,
    place: generator.at,
    stretches: [[[generator.at[0], generator.at[2]], nearest.at]],
    figures: [{ name: 'from somebody', value: nearest.away, unit: 'm', expected: OPENING_METRES }],
    sentence: `${named(generator.label)} runs ${metres(nearest.away)} from ${nearest.name}. Turn its exhaust away and downwind of where people work, and stop it where anybody smells it.`,
    sources: ['generator-exhaust'],
  });
}

/** How near the next solid is to a generator's housing, metres, up to a distance. */
function airAround(
  plan: Plan,
  generator: Generator,
): { readonly metres: number; readonly pieceId: string } | null {
  const outline = outlineOf(generator);
  const bounds = boundsOf(outline, AIR_METRES);
  const low: Spot = [bounds[0], bounds[1]];
  const high: Spot = [bounds[2], bounds[3]];
  let found: { readonly metres: number; readonly pieceId: string } | null = null;
  for (const solid of obstaclesOn(plan, [generator.at[1], generator.at[1]])) {
    if (solid.kind !== 'solid' || !mayMeet(low, high, solid.bounds, 0)) continue;
    const away = outline.reduce(
      (least, from, k) =>
        Math.min(least, fromOutline(solid.outline, from, outline[(k + 1) % outline.length])),
      AIR_METRES,
    );
    if (away < AIR_METRES && (!found || away < found.metres))
      found = { metres: away, pieceId: solid.pieceId };
  }
  return found;
}

function airCaution({ plan }: Around, generator: Generator): Caution | null {
  const near = airAround(plan, generator);
  if (!near) return null;
  const label = plan.pieces.find(({ id }) => id === near.pieceId)?.label ?? near.pieceId;
  return caution({
    kind: 'exhaust',
    about: 'exhaust-air',
    standing: 'said',
    keyIds: [generator.id],
    itemIds: [generator.id, near.pieceId],
    place: generator.at,
    figures: [{ name: 'free air around', value: near.metres, unit: 'm', expected: AIR_METRES }],
    sentence: `${named(generator.label)} has ${metres(near.metres)} to ${named(label)}: an engine wants about ${metres(AIR_METRES, 0)} of free air, and its exhaust is hot. Give it room, and point the exhaust at nothing that burns.`,
    sources: [],
  });
}

function fuelCaution(generators: readonly Generator[]): readonly Caution[] {
  const [first] = generators;
  if (!first) return [];
  return [
    caution({
      kind: 'exhaust',
      about: 'exhaust-fuel',
      standing: 'said',
      keyIds: [],
      itemIds: generators.map(({ id }) => id),
      place: first.at,
      figures: [],
      sentence:
        'A generator is stopped and cold before it is refuelled. Plan the stops, store fuel away from engines, heads and ways out, and have an extinguisher for burning fuel beside it.',
      sources: ['refuelling'],
    }),
  ];
}

/**
 * Engines: how far their exhaust is from what people are in or breathe at, how much air they have, and refuelling.
 * Source: [generator-exhaust], [refuelling]
 */
export function exhaustCautions(plan: Plan): readonly Caution[] {
  const generators = plan.gear.flatMap((gear) => (gear.kind === 'generator' ? [gear] : []));
  if (generators.length === 0) return [];
  const around: Around = {
    plan,
    roofs: plan.pieces.filter(isRoof),
    vents: plan.pieces.flatMap(ventsOf).map((vent) => ({ ...vent, bounds: boundsOf([vent.from, vent.to]) })),
    people: peopleOf(plan),
  };
  const each = generators.flatMap((generator) => [
    openingCaution(around, generator),
    peopleCaution(around, generator),
    airCaution(around, generator),
  ]);
  return [...each.filter((found): found is Caution => found !== null), ...fuelCaution(generators)];
}
