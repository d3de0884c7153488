import { walksOf } from '../../../core/form/figure/walks';
import { addWayPoint } from '../../../core/plan/edits/addWayPoint';
import { moveWayPoint } from '../../../core/plan/edits/moveWayPoint';
import { removeWayPoint } from '../../../core/plan/edits/removeWayPoint';
import { setWayLine } from '../../../core/plan/edits/setWayLine';
import type { Performer } from '../../../core/plan/schema/cast';
import type { Plan } from '../../../core/plan/schema/plan';
import { walkWords } from '../blocking/words';
import { distance, halfWay, type Spot } from '../geometry/spots';
import { markNames } from '../words';
import { snapCorner } from './snapCorner';
import { type Handle, type HandleInput, STEP_METRES } from './types';

/** Legs shorter than this have no room for a dot of their own, pixels. */
const SHORTEST_LEG = 64;
/** How far above its first place the sign stands that curves a way, pixels: out of reach of the place's own. */
const ABOVE = 50;

const pair = ([x, z]: Spot): [number, number] => [x, z];
const stepped = (at: Spot, way: Spot): [number, number] => [
  at[0] + way[0] * STEP_METRES,
  at[1] + way[1] * STEP_METRES,
];

/** Of a path the part between the places nearest to two others. */
function legOf(path: readonly Spot[], from: Spot, to: Spot): readonly Spot[] {
  const nearest = (spot: Spot): number =>
    path.reduce((best, each, k) => (distance(each, spot) < distance(path[best], spot) ? k : best), 0);
  const [a, b] = [nearest(from), nearest(to)];
  return b > a ? path.slice(a, b + 1) : [from, to];
}

/** The places that somebody's walks pass, the dots between them that make further ones, and what curves a way. */
export function wayHandles(input: HandleInput, performer: Performer): readonly Handle[] {
  const { plan, lengths, at: toPane } = input;
  return walksOf(performer, plan).flatMap((walk): readonly Handle[] => {
    const index = performer.marks.findIndex(({ id }) => id === walk.toMark);
    const mark = performer.marks[index];
    const [from, to] = [walk.path[0], walk.path[walk.path.length - 1]];
    if (!mark || !from || !to) return [];
    const through = mark.way?.through ?? [];
    const line = mark.way?.line ?? 'straight';
    const of = { performerId: performer.id, markId: mark.id };
    const called = `the way to ${markNames(performer.label, [index])}`;
    const stops: readonly Spot[] = [from, ...through, to];
    const figure = walkWords(walk, lengths);

    const places = through.map(
      (at, place): Handle => ({
        key: `way ${mark.id} ${place}`,
        kind: 'corner',
        name: `Way point ${place + 1} of ${through.length} on ${called}`,
        at,
        figure,
        pull: (before, pull) =>
          moveWayPoint(before, {
            ...of,
            index: place,
            to: pair(
              snapCorner(before, performer.id, pull, {
                before: stops[place],
                after: stops[place + 2] ?? null,
              }),
            ),
          }),
        step: (before, way) => {
          const now = placeIn(before, of, place) ?? at;
          return moveWayPoint(before, { ...of, index: place, to: stepped(now, way) });
        },
        remove: (before) => removeWayPoint(before, { ...of, index: place }),
        doubled: true,
      }),
    );

    const inserts = stops.slice(1).flatMap((stop, place): readonly Handle[] => {
      const start = stops[place];
      const middle = halfWay(legOf(walk.path, start, stop));
      if (!middle) return [];
      if (!input.pulling && distance(toPane(start), toPane(stop)) < SHORTEST_LEG) return [];
      const put = (before: Plan, spot: Spot): Plan =>
        addWayPoint(before, { ...of, index: place, at: pair(spot) });
      return [
        {
          key: `insert ${mark.id} ${place}`,
          kind: 'insert',
          name: `Put a way point ${place === 0 ? '' : `after ${place} `}on ${called}`,
          at: middle,
          figure,
          pull: (before, pull) =>
            put(before, snapCorner(before, performer.id, pull, { before: start, after: stop })),
          // By keys it is put here, and moved as the place that it then is.
          step: (before) => before,
          press: (before) => put(before, middle),
        },
      ];
    });

    const [first] = through;
    const other = line === 'straight' ? 'curved' : 'straight';
    const bend: readonly Handle[] = first
      ? [
          {
            key: `bend ${mark.id}`,
            kind: 'bend',
            name: `Make ${called} ${other}`,
            at: first,
            off: [0, -ABOVE],
            lead: first,
            figure: other,
            pull: (before) => before,
            step: (before) => before,
            press: (before) => setWayLine(before, { ...of, line: other }),
          },
        ]
      : [];
    return [...places, ...inserts, ...bend];
  });
}

/** A place on a way as a plan has it now. */
const placeIn = (
  plan: Plan,
  { performerId, markId }: { readonly performerId: string; readonly markId: string },
  place: number,
): Spot | undefined =>
  plan.cast.find(({ id }) => id === performerId)?.marks.find(({ id }) => id === markId)?.way?.through[place];
