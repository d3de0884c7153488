import { standClassOf } from '../form/gear/references';
import { standFeet } from '../form/gear/stand';
import { holesThatFit } from '../form/pieces/making/holes';
import { openingsOf } from '../form/pieces/openingsOf';
import { isWithin } from '../plan/areas';
import { named } from '../plan/named';
import type { Gear } from '../plan/schema/gear';
import type { Spot } from '../plan/schema/numbers';
import type { Piece } from '../plan/schema/pieces';
import type { Plan } from '../plan/schema/plan';
import { surfaceUnder } from '../plan/surfaces';
import { formatLength } from '../units/lengths';
import type { Notice } from './types';

type Run = Extract<Piece, { kind: 'wall' | 'parapet' | 'fence' }>;
type Deck = Extract<Piece, { kind: 'deck' }>;
type Stand = Extract<Gear, { kind: 'stand' }>;

/** Less than this is a matter of rounding, metres. */
const SLACK_METRES = 0.011;
/** A foot this far above what lies under it, or below it, does not stand on it; metres. */
const STANDING_METRES = 0.05;

const metres = (value: number): string => formatLength(value, 'm');

/** Openings that a run has no room for where the plan puts them. */
function openingNotices(run: Run): Notice[] {
  const placed = openingsOf(run);
  return (run.openings ?? []).flatMap((opening): Notice[] => {
    const found = placed.find((each) => each.opening === opening);
    const where = `Set piece ${run.label}`;
    const which = `The opening ${metres(opening.alongMetres)} along ${named(run.label)}`;
    if (!found)
      return [{ where, sentence: `${which} has no room there and is left out. Move it or make it smaller.` }];
    // Where its leg begins along the run, so that both can be compared.
    const middle = (found.near + found.far) / 2 + found.before;
    const fits =
      Math.abs(middle - opening.alongMetres) < SLACK_METRES &&
      Math.abs(found.far - found.near - opening.widthMetres) < SLACK_METRES;
    if (fits) return [];
    return [
      {
        where,
        sentence: `${which} reaches over a corner or an end, and is drawn where it fits. Move it or make it narrower.`,
      },
    ];
  });
}

/** Holes that cannot be cut. */
function holeNotices(deck: Deck): Notice[] {
  const drawn = deck.holes ?? [];
  const cut = holesThatFit(
    deck.outline,
    drawn.map(({ outline }) => outline),
  );
  const left = drawn.length - cut.length;
  if (left === 0) return [];
  const which = left === 1 ? 'A hole' : `${left} holes`;
  return [
    {
      where: `Set piece ${deck.label}`,
      sentence: `${which} of ${named(deck.label)} cannot be cut: each has to lie inside the deck, clear of its edge and of other holes.`,
    },
  ];
}

/** A stand that is set beyond what its class can do. */
function classNotices(stand: Stand, plan: Plan): Notice[] {
  const standClass = standClassOf(stand, plan);
  const { label, lowestMetres, highestMetres, footprintMetres } = standClass;
  const where = `Gear ${stand.label}`;
  const notices: Notice[] = [];
  const isHigh = stand.heightMetres > highestMetres + SLACK_METRES;
  if (isHigh || stand.heightMetres < lowestMetres - SLACK_METRES) {
    const bound = isHigh ? `up to ${metres(highestMetres)}` : `down to ${metres(lowestMetres)}`;
    notices.push({
      where,
      sentence: `${named(stand.label)} is set to ${metres(stand.heightMetres)}, but its class, ${label}, goes ${bound}.`,
    });
  }
  if (stand.spreadMetres !== undefined && stand.spreadMetres > footprintMetres + SLACK_METRES) {
    notices.push({
      where,
      sentence: `The legs of ${named(stand.label)} stand ${metres(stand.spreadMetres)} across, but its class, ${label}, opens to ${metres(footprintMetres)}.`,
    });
  }
  return notices;
}

/** A stand that stands on nothing, or with a foot over an edge or a hole. */
function footNotices(stand: Stand, plan: Plan): Notice[] {
  const where = `Gear ${stand.label}`;
  const height = stand.at[1];
  const hasDeck = plan.pieces.some(({ kind }) => kind === 'deck');
  const below = (spot: Spot) => surfaceUnder(plan, spot, { belowMetres: height + STANDING_METRES });
  const holds = (spot: Spot): boolean => {
    const surface = below(spot);
    return Math.abs(surface.metres - height) <= STANDING_METRES && (surface.id !== null || !hasDeck);
  };
  const column: Spot = [stand.at[0], stand.at[2]];
  if (!holds(column)) {
    // What an imported model has to stand on is not known here.
    if (plan.pieces.some(({ kind }) => kind === 'model')) return [];
    const hole = holeAt(plan, column, height);
    const surface = below(column);
    const under = plan.pieces.find(({ id }) => id === surface.id);
    const sentence = hole
      ? `${named(stand.label)} stands over a hole in ${named(hole.label)}. Move it.`
      : under
        ? `${named(stand.label)} hangs ${metres(height - surface.metres)} above ${named(under.label)}. Set it down.`
        : `${named(stand.label)} stands on nothing, beside the deck. Move it on to the deck.`;
    return [{ where, sentence }];
  }
  const loose = standFeet(stand, standClassOf(stand, plan))
    .map(([x, , z]): Spot => [x, z])
    .filter((foot) => !holds(foot));
  if (loose.length === 0) return [];
  const hole = holeAt(plan, loose[0], height);
  const under = plan.pieces.find(({ id }) => id === below(column).id);
  const over = hole
    ? `a hole in ${named(hole.label)}`
    : `the edge of ${under ? named(under.label) : 'the deck'}`;
  return [
    {
      where,
      sentence: `${loose.length === 1 ? 'A foot' : `${loose.length} feet`} of ${named(stand.label)} ${loose.length === 1 ? 'is' : 'are'} over ${over}. Move it, or draw its legs in.`,
    },
  ];
}

/** The deck at a height that has a hole at a place. */
const holeAt = (plan: Plan, spot: Spot, height: number): Deck | undefined =>
  plan.pieces.find(
    (piece): piece is Deck =>
      piece.kind === 'deck' &&
      Math.abs(piece.topMetres - height) <= STANDING_METRES &&
      (piece.holes ?? []).some(({ outline }) => isWithin(outline, spot)),
  );

/** What on the roof is not as it is drawn: openings and holes that do not fit, stands that cannot stand like that. */
export const roofNotices = (plan: Plan): Notice[] => [
  ...plan.pieces.flatMap((piece): Notice[] => {
    if (piece.kind === 'wall' || piece.kind === 'parapet' || piece.kind === 'fence')
      return openingNotices(piece);
    return piece.kind === 'deck' ? holeNotices(piece) : [];
  }),
  ...plan.gear.flatMap((gear): Notice[] =>
    gear.kind === 'stand' ? [...classNotices(gear, plan), ...footNotices(gear, plan)] : [],
  ),
];
