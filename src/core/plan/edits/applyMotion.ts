import type { Mark, Performer } from '../schema/cast';
import type { Gear } from '../schema/gear';
import type { Spot } from '../schema/numbers';
import type { Piece } from '../schema/pieces';
import type { Plan } from '../schema/plan';
import type { Setup } from '../schema/setup';
import { surfaceOfFoot, surfaceUnder, topAt } from '../surfaces';
import { type Entourage, feetOf, footOfMark, markKey } from './entourage';
import { keysAlong } from './keysOnTrack';
import {
  changed,
  type Motion,
  movedCheat,
  movedGear,
  movedMark,
  movedPiece,
  orSame,
  turnedMark,
} from './motion';
import { withCheats } from './optionalLists';
import { type Cable, withEnd } from './plugCable';
import { markBefore } from './timedMarks';

/** A little more than a foot may be off and still stand, metres. */
const UNDER_METRES = 0.03;

/** Surfaces that are no farther apart than this are one level, metres. */
const LEVEL_METRES = 1e-6;

/** How far each moved thing is raised: what stands on the roof lands on what is under its new place. */
export interface Lifts {
  readonly ofItem: (id: string) => number;
  readonly ofMark: (performerId: string, mark: Mark) => number;
}

/** The same for everything. */
export const sameLift = (metres: number): Lifts => ({ ofItem: () => metres, ofMark: () => metres });

/**
 * Lifts of things that land. What moves is no ground for itself; passengers are lifted as what takes them along;
 * what stands under something, as under a riser, stays under it; what hangs keeps its height, and so does
 * a run that would not be level. What is `gone` is stood on no more.
 */
export function landings(
  plan: Plan,
  { carriers, items }: Entourage,
  motion: Motion,
  gone: ReadonlySet<string> = new Set(),
): Lifts {
  const known = new Map<string, number>();
  const moving = new Set(carriers.keys());
  const liftOfFeet = (feet: readonly { readonly spot: Spot; readonly metres: number }[]): number => {
    const first = feet[0];
    if (!first) return 0;
    const stoodOn = feet.map(({ spot, metres }) => surfaceOfFoot(plan, spot, metres, moving));
    const before = stoodOn[0];
    if (
      !before ||
      stoodOn.some((surface) => !surface || Math.abs(surface.metres - before.metres) > LEVEL_METRES)
    )
      return 0;
    const except = new Set([...moving, ...gone]);
    for (const piece of plan.pieces)
      if (feet.some(({ spot, metres }) => (topAt(piece, spot) ?? metres) > metres + UNDER_METRES))
        except.add(piece.id);
    const under = feet.map(({ spot }) => surfaceUnder(plan, motion.spot(spot), { except }));
    const landed = under[0].metres;
    return under.every(({ metres }) => Math.abs(metres - landed) <= LEVEL_METRES)
      ? landed - before.metres
      : 0;
  };
  const ofItem = (id: string): number => {
    const before = known.get(id);
    if (before !== undefined) return before;
    // Two thin things may each stand on the other.
    known.set(id, 0);
    const item = items.get(id);
    const carrier = carriers.get(id) ?? null;
    const lift =
      carrier !== null
        ? ofItem(carrier)
        : item && item.section !== 'cast'
          ? liftOfFeet(feetOf(item.record))
          : 0;
    known.set(id, lift);
    return lift;
  };
  const ofMark = (performerId: string, mark: Mark): number => {
    const carrier = carriers.get(markKey(performerId, mark.id)) ?? null;
    return carrier !== null ? ofItem(carrier) : liftOfFeet([footOfMark(mark)]);
  };
  return { ofItem, ofMark };
}

/**
 * The plan with everything of an entourage moved and raised, and with it the ends of cables plugged into it, the cheats
 * of marks that move, and the ways between them.
 */
export function applyMotion(plan: Plan, entourage: Entourage, motion: Motion, lifts: Lifts): Plan {
  const { carriers } = entourage;
  const moves = (id: string | undefined): boolean => id !== undefined && carriers.has(id);
  const pieceOf = (piece: Piece): Piece =>
    moves(piece.id) ? orSame(piece, movedPiece(piece, motion, lifts.ofItem(piece.id))) : piece;
  const gearOf = (gear: Gear): Gear => {
    if (gear.kind === 'cable') return orSame(gear, cableOf(gear));
    return moves(gear.id) ? orSame(gear, movedGear(gear, motion, lifts.ofItem(gear.id))) : gear;
  };
  /** Plugged ends go where their gear goes, and stay where it stays. */
  const cableOf = (cable: Cable): Cable => {
    const { from, to } = cable.plugs ?? {};
    const isMoved = moves(cable.id);
    let next = cable;
    if (isMoved) {
      const whole = movedGear(cable, motion, lifts.ofItem(cable.id));
      if (whole.kind === 'cable') next = whole;
    }
    const [first, last] = [cable.path[0], cable.path[cable.path.length - 1]];
    const ends = [
      ['from', from, first],
      ['to', to, last],
    ] as const;
    for (const [end, plug, spot] of ends) {
      if (plug === undefined || moves(plug) === isMoved) continue;
      next = withEnd(next, end, isMoved ? spot : motion.spot(spot));
    }
    return next;
  };
  const movesMark = (performerId: string, markId: string): boolean =>
    moves(performerId) || moves(markKey(performerId, markId));
  const castOf = (performer: Performer): Performer => {
    const marks = changed(performer.marks, (mark) => {
      if (!movesMark(performer.id, mark.id)) return mark;
      const before = moves(performer.id) ? mark : markBefore(plan, performer, mark.id);
      const withWay = before !== null && movesMark(performer.id, before.id);
      const now = movedMark(mark, motion, lifts.ofMark(performer.id, mark));
      return orSame(mark, turnedMark(now, motion, withWay));
    });
    return marks === performer.marks ? performer : { ...performer, marks };
  };
  const setupOf = (setup: Setup): Setup => {
    if (!setup.cheats) return setup;
    const cheats = changed(setup.cheats, (cheat) =>
      movesMark(cheat.performer, cheat.mark) ? orSame(cheat, movedCheat(cheat, motion)) : cheat,
    );
    return withCheats(setup, cheats);
  };
  const pieces = changed(plan.pieces, pieceOf);
  const gear = changed(plan.gear, gearOf);
  const cast = changed(plan.cast, castOf);
  const setups = changed(plan.setups, setupOf);
  if (pieces === plan.pieces && gear === plan.gear && cast === plan.cast && setups === plan.setups)
    return plan;
  return keysAlong(plan, { ...plan, pieces, cast, gear, setups });
}
