import { type WalkReading, walksOf } from '../form/figure/walks';
import { setWay } from '../plan/edits/setWay';
import { named } from '../plan/named';
import { metresBetween } from '../plan/runs';
import type { Mark, Performer } from '../plan/schema/cast';
import type { Spot } from '../plan/schema/numbers';
import type { Plan } from '../plan/schema/plan';
import { clearWay, wayMetres } from '../plan/walkWays/clearWay';
import { hasEdges, isFloor } from '../plan/walkWays/edges';
import { floorOf, pieceAround, type WalkHit, walkHits } from '../plan/walkWays/hits';
import { type NearEdge, openEdgeNear } from '../plan/walkWays/openEdges';
import { between } from '../plan/walkWays/planar';
import type { Floor } from '../plan/walkWays/types';
import { type BlockingFault, beatName, fault, markName, metres, pieceName, whereOf } from './blockingFaults';

/** Nearer than this to an open edge it is said, metres: the 6 feet of a warning line, rounded up. Source: [unprotected-edge] */
const EDGE_METRES = 2;
/** A walk is looked at for edges at places so far apart, metres. */
const LOOK_METRES = 0.25;

const floorUnder = ({ floorMetres = 0 }: Mark): Floor => [floorMetres, floorMetres];

/** Why nobody can stand at a mark, after its name; null where they can. */
export function unstandable(plan: Plan, mark: Mark): string | null {
  const around = pieceAround(plan, mark);
  if (around !== null) return `lies inside ${pieceName(plan, around)}. Move one of them.`;
  if (!hasEdges(plan) || isFloor(plan.pieces, mark.at, floorUnder(mark))) return null;
  return 'lies off the deck, or over a hole in it. Move it on to the deck.';
}

/** Marks off the deck or inside of something. */
export const markFaults = (plan: Plan, performer: Performer): BlockingFault[] =>
  performer.marks.flatMap((mark) => {
    const why = unstandable(plan, mark);
    if (why === null) return [];
    return [
      fault({
        about: why.startsWith('lies inside') ? 'inside' : 'floor',
        where: whereOf(performer),
        sentence: `${markName(plan, performer, mark)} ${why}`,
        performerId: performer.id,
        markId: mark.id,
      }),
    ];
  });

const HOW: Readonly<Record<WalkHit['how'], string>> = {
  through: 'goes through',
  over: 'goes over',
  'off the edge': 'goes off the edge of',
  'into a hole': 'goes over a hole in',
};

/** A walk that meets something: what and where, and the clear way round where there is one. */
function wayFault(
  plan: Plan,
  performer: Performer,
  walk: WalkReading,
  to: Mark,
  hit: WalkHit,
): BlockingFault {
  const met = `The walk of ${named(performer.label)} to ${beatName(plan, to.beat)} ${HOW[hit.how]} ${pieceName(plan, hit.pieceId)} after ${metres(hit.alongMetres)}`;
  const through = clearWay(plan, performer, walk.fromMark, walk.toMark);
  const about = {
    about: 'walk',
    where: whereOf(performer),
    performerId: performer.id,
    markId: to.id,
  } as const;
  if (!through)
    return fault({
      ...about,
      sentence: `${met}, and there is no clear way round. Move a mark, or make an opening.`,
    });
  const [from, until] = [walk.path[0], walk.path[walk.path.length - 1]];
  const length = wayMetres(from, through, until);
  const more = length - walk.metres;
  const longer = more >= 0.005 ? `${metres(more)} longer` : 'no longer';
  return fault({
    ...about,
    sentence: `${met}. A clear way round exists: ${metres(length)}, ${longer}.`,
    mend: {
      name: 'walk round',
      edit: (before) =>
        setWay(before, { performerId: performer.id, markId: to.id, through, line: 'straight' }),
    },
  });
}

function paceFault(plan: Plan, performer: Performer, walk: WalkReading, to: Mark): BlockingFault {
  const who = `${named(performer.label)} has to be at ${beatName(plan, to.beat)}`;
  const seconds = walk.arriveSeconds - walk.leaveSeconds;
  const sentence =
    seconds > 0
      ? `${who} ${metres(walk.metres)} away at ${walk.cruisingMetresPerSecond.toFixed(1)}\u00a0m/s, faster than anybody runs in a scene. Give the walk more time.`
      : `${who} ${metres(walk.metres)} away with no time to get there. Give the walk some.`;
  return fault({
    about: 'pace',
    where: whereOf(performer),
    sentence,
    performerId: performer.id,
    markId: to.id,
  });
}

/** Places along a path, no farther apart than `LOOK_METRES`. */
const looksAlong = (path: readonly Spot[]): readonly Spot[] =>
  path.flatMap((to, k): readonly Spot[] => {
    const from = path[k - 1];
    if (!from) return [to];
    const steps = Math.max(1, Math.ceil(metresBetween(from, to) / LOOK_METRES));
    return Array.from({ length: steps }, (_, step) => between(from, to, (step + 1) / steps));
  });

/** A caution where somebody comes near an edge that nothing guards: once for each, where they are nearest. */
function edgeFaults(plan: Plan, performer: Performer, walks: readonly WalkReading[]): BlockingFault[] {
  if (!hasEdges(plan)) return [];
  let nearest: { readonly edge: NearEdge; readonly mark: Mark; readonly walks: boolean } | null = null;
  const see = (at: Spot, floor: Floor, mark: Mark, isWalk: boolean): void => {
    const edge = openEdgeNear(plan, at, floor, nearest ? nearest.edge.metres : EDGE_METRES);
    if (edge && (!nearest || edge.metres < nearest.edge.metres - 1e-6))
      nearest = { edge, mark, walks: isWalk };
  };
  for (const mark of performer.marks) see(mark.at, floorUnder(mark), mark, false);
  for (const { fromMark, toMark, path } of walks) {
    const [from, to] = [fromMark, toMark].map((id) => performer.marks.find((mark) => mark.id === id));
    if (from && to) for (const at of looksAlong(path)) see(at, floorOf(from, to), to, true);
  }
  const found = nearest as { readonly edge: NearEdge; readonly mark: Mark; readonly walks: boolean } | null;
  if (!found) return [];
  const { edge, mark, walks: isWalk } = found;
  const how = isWalk
    ? `walks to ${beatName(plan, mark.beat)} within`
    : `stands at ${beatName(plan, mark.beat)} within`;
  const what = edge.kind === 'hole' ? 'a hole in' : 'an edge of';
  return [
    fault({
      about: 'edge',
      where: whereOf(performer),
      sentence: `${named(performer.label)} ${how} ${metres(edge.metres)} of ${what} ${pieceName(plan, edge.pieceId)} without a guard of about 1.1\u00a0m. A warning line stands 1.8\u00a0m off; local code and a competent person decide.`,
      performerId: performer.id,
      markId: mark.id,
    }),
  ];
}

/** What is wrong with how a performer gets from mark to mark. */
export function walkFaults(plan: Plan, performer: Performer): BlockingFault[] {
  const walks = walksOf(performer, plan);
  const faults = walks.flatMap((walk): BlockingFault[] => {
    const [from, to] = [walk.fromMark, walk.toMark].map((id) =>
      performer.marks.find((mark) => mark.id === id),
    );
    if (!from || !to) return [];
    const [hit] = walkHits(plan, from, to, walk.path);
    return [
      ...(hit ? [wayFault(plan, performer, walk, to, hit)] : []),
      ...(walk.tooFast ? [paceFault(plan, performer, walk, to)] : []),
    ];
  });
  return [...faults, ...edgeFaults(plan, performer, walks)];
}
