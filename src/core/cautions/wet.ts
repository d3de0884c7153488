import { metresBetween } from '../plan/runs';
import type { Gear } from '../plan/schema/gear';
import type { Point, Spot } from '../plan/schema/numbers';
import type { Plan } from '../plan/schema/plan';
import { pieceUnder } from '../plan/surfaces';
import { between } from '../plan/walkWays/planar';
import { isMirroring, wetnessAt } from '../plan/wetness';
import { caution } from './caution';
import type { Caution } from './types';
import { metres, namesOf, verb } from './words';

/** What is so much above a wet floor does not lie in its water, metres. Source: common practice, no source */
const RAISED_METRES = 0.05;
/** A cable is looked at in pieces of this length, metres. */
const PIECE_METRES = 0.25;

const SOURCES = ['cords-and-water'] as const;

type Cable = Extract<Gear, { readonly kind: 'cable' }>;

/** How high over a floor that is wet down or puddled something at a height over a place lies in its water, metres; null where it does not. */
function heightInWet(plan: Plan, [x, z]: Spot, footMetres: number): number | null {
  const { metres: floor, piece: under } = pieceUnder(plan, [x, z], {
    belowMetres: footMetres + RAISED_METRES,
  });
  if (footMetres - floor > RAISED_METRES) return null;
  // What stands on the deck is dry on top; only the ground itself is wet.
  if (under && under.kind !== 'deck') return null;
  return isMirroring(wetnessAt(plan, [x, z])) ? footMetres - floor : null;
}

/** How much of a cable lies in the wet, metres. */
function wetLength(plan: Plan, cable: Cable): number {
  return cable.path.slice(1).reduce((sum, to, k) => {
    const from = cable.path[k];
    const length = metresBetween(from, to);
    const count = Math.max(1, Math.ceil(length / PIECE_METRES));
    const wet = Array.from({ length: count }, (_, n) => between(from, to, (n + 0.5) / count)).filter(
      (spot) => heightInWet(plan, spot, cable.baseMetres) !== null,
    ).length;
    return sum + (length * wet) / count;
  }, 0);
}

/** A connection that lies in the wet: a box of outlets, a generator, the end of a cable. */
interface WetEnd {
  readonly id: string;
  readonly at: Point;
  /** Over the wet floor, metres. */
  readonly heightMetres: number;
}

function wetEnds(plan: Plan): readonly WetEnd[] {
  return plan.gear.flatMap((gear): WetEnd[] => {
    if (gear.kind === 'generator' || gear.kind === 'distro') {
      const [x, y, z] = gear.at;
      const heightMetres = heightInWet(plan, [x, z], y);
      return heightMetres === null ? [] : [{ id: gear.id, at: gear.at, heightMetres }];
    }
    if (gear.kind !== 'cable') return [];
    for (const [x, z] of [gear.path[0], gear.path[gear.path.length - 1]]) {
      const heightMetres = heightInWet(plan, [x, z], gear.baseMetres);
      if (heightMetres !== null) return [{ id: gear.id, at: [x, gear.baseMetres, z], heightMetres }];
    }
    return [];
  });
}

/**
 * What carries current and lies where the ground is wet down or puddled: connections first, then cables along their
 * runs; and that all of it is outdoors. Source: [cords-and-water]
 */
export function wetCautions(plan: Plan): readonly Caution[] {
  const found: Caution[] = [];
  const ends = wetEnds(plan);
  if (ends.length > 0) {
    const ids = ends.map(({ id }) => id);
    found.push(
      caution({
        kind: 'wet',
        about: 'wet-connections',
        standing: 'breaks',
        itemIds: ids,
        place: ends[0].at,
        figures: [
          {
            name: 'height over the wet floor',
            value: Math.min(...ends.map(({ heightMetres }) => heightMetres)),
            unit: 'm',
            expected: RAISED_METRES,
          },
        ],
        sentence: `${namesOf(plan, ids)} ${verb(ids.length, 'has a connection', 'have connections')} on a wet floor. Raise ${verb(ids.length, 'it', 'them')} off the ground and cover ${verb(ids.length, 'it', 'them')}, or keep the floor dry there.`,
        sources: SOURCES,
      }),
    );
  }
  const cables = plan.gear.flatMap((gear) => {
    const length = gear.kind === 'cable' ? wetLength(plan, gear) : 0;
    return gear.kind === 'cable' && length > 0 ? [{ cable: gear, length }] : [];
  });
  if (cables.length > 0) {
    const ids = cables.map(({ cable }) => cable.id);
    const length = cables.reduce((sum, each) => sum + each.length, 0);
    const longest = cables.reduce((a, b) => (b.length > a.length ? b : a)).cable;
    const middle = longest.path[Math.floor(longest.path.length / 2)];
    found.push(
      caution({
        kind: 'wet',
        about: 'wet-cables',
        standing: 'said',
        itemIds: ids,
        place: [middle[0], longest.baseMetres, middle[1]],
        figures: [{ name: 'cable in the wet', value: length, unit: 'm' }],
        sentence: `${metres(length, 0)} of cable ${verb(ids.length, 'lies', 'lie')} on a wet floor: ${namesOf(plan, ids)}. Lay sound cable of hard outdoor use, without a joint in the water, and look at it before it is switched on.`,
        sources: SOURCES,
      }),
    );
  }
  const powered = plan.gear.filter(
    ({ kind }) => kind === 'generator' || kind === 'distro' || kind === 'cable',
  );
  if (powered.length > 0)
    found.push(
      caution({
        kind: 'wet',
        about: 'wet-outdoors',
        standing: 'said',
        keyIds: [],
        itemIds: powered.map(({ id }) => id),
        figures: [],
        sentence:
          'All power on this roof is outdoors. Have every outlet on ground-fault protection, tested before the first lamp is plugged in.',
        sources: SOURCES,
      }),
    );
  return found;
}
