import { named } from '../../plan/named';
import { metresBetween } from '../../plan/runs';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import { footOfRecord } from '../../plan/surfaces';
import { hasEdges } from '../../plan/walkWays/edges';
import { type OpenEdge, openEdgesOn } from '../../plan/walkWays/openEdges';
import { caution } from '../caution';
import type { Caution } from '../types';
import { edgeWords, heldWords, metres, namesOf, verb } from '../words';
import { type EdgeNear, edgeAt, GUARD_METRES, NEAR_METRES } from './edgeAt';
import { operatorOf, placesOf, type Stand } from './people';

const SOURCES = ['guardrail', 'unprotected-edge'] as const;
const GUARD = metres(GUARD_METRES);
const NEAR = metres(NEAR_METRES);

/** Pieces of edges that go on from each other in one direction, as one stretch. */
function stretchesOf(edges: readonly OpenEdge[]): readonly (readonly [Spot, Spot])[] {
  const stretches: [Spot, Spot][] = [];
  for (const { from, to } of edges) {
    const last = stretches[stretches.length - 1];
    const goesOn =
      last !== undefined &&
      metresBetween(last[1], from) < 1e-6 &&
      Math.abs(metresBetween(last[0], to) - metresBetween(last[0], from) - metresBetween(from, to)) < 1e-6;
    if (goesOn) last[1] = to;
    else stretches.push([from, to]);
  }
  return stretches;
}

const lengthOf = ([from, to]: readonly [Spot, Spot]): number => metresBetween(from, to);

/** What stands along open edges, in words: nothing, or how high what is there is. */
const heldAlongWords = (lowest: number, highest: number): string =>
  lowest === 0 && highest > 0
    ? `${heldWords(highest)} at most, and nothing is there elsewhere`
    : heldWords(highest);

/** The open edges of each deck and of its holes. */
function openCautions(plan: Plan): readonly Caution[] {
  if (!hasEdges(plan)) return [];
  return plan.pieces.flatMap((piece): Caution[] => {
    if (piece.kind !== 'deck') return [];
    const { topMetres } = piece;
    const open = openEdgesOn(plan, [topMetres, topMetres]).filter(({ pieceId }) => pieceId === piece.id);
    return (['edge', 'hole'] as const).flatMap((kind): Caution[] => {
      const edges = open.filter((edge) => edge.kind === kind);
      if (edges.length === 0) return [];
      const length = edges.reduce((sum, { from, to }) => sum + metresBetween(from, to), 0);
      const held = edges.map(({ heldMetres }) => heldMetres);
      const [lowest, highest] = [Math.min(...held), Math.max(...held)];
      const stretches = stretchesOf(edges);
      const longest = stretches.reduce((a, b) => (lengthOf(b) > lengthOf(a) ? b : a));
      const [x, z] = [(longest[0][0] + longest[1][0]) / 2, (longest[0][1] + longest[1][1]) / 2];
      const what = kind === 'hole' ? `holes in ${named(piece.label)}` : `the edge of ${named(piece.label)}`;
      return [
        caution({
          kind: 'edge',
          about: kind === 'hole' ? 'edge-hole' : 'edge-open',
          standing: 'breaks',
          itemIds: [piece.id],
          place: [x, topMetres, z],
          stretches,
          figures: [
            { name: 'edge without a guard', value: length, unit: 'm' },
            { name: 'height of what stands along it', value: highest, unit: 'm', expected: GUARD_METRES },
          ],
          sentence: `${metres(length)} of ${what} have no guard of ${GUARD}: ${heldAlongWords(lowest, highest)}. Put up a guard, or keep everybody ${NEAR} away behind a line.`,
          sources: SOURCES,
        }),
      ];
    });
  });
}

const RIGGED: ReadonlySet<string> = new Set(['stand', 'generator', 'distro', 'cart', 'dolly', 'monitor']);

/** What the crew sets up and handles near an open edge. */
function gearCautions(plan: Plan): readonly Caution[] {
  const near = plan.gear.flatMap((gear) => {
    if (!RIGGED.has(gear.kind) || (gear.kind === 'dolly' && gear.rides !== undefined)) return [];
    const foot = footOfRecord(gear);
    const edge = foot && edgeAt(plan, foot.spot, foot.metres);
    return foot && edge ? [{ gear, foot, edge }] : [];
  });
  if (near.length === 0) return [];
  const nearest = near.reduce((a, b) => (b.edge.metres < a.edge.metres ? b : a));
  const ids = near.map(({ gear }) => gear.id);
  const which = near.length === 1 ? '' : `, ${named(nearest.gear.label)} at ${metres(nearest.edge.metres)}`;
  return [
    caution({
      kind: 'edge',
      about: 'edge-gear',
      standing: 'breaks',
      itemIds: ids,
      place: [nearest.foot.spot[0], nearest.foot.metres, nearest.foot.spot[1]],
      stretches: near.map(({ foot, edge }) => [foot.spot, edge.at] as const),
      figures: [
        { name: 'nearest to an open edge', value: nearest.edge.metres, unit: 'm', expected: NEAR_METRES },
      ],
      sentence: `${namesOf(plan, ids)} ${verb(near.length, 'stands', 'stand')} within ${NEAR} of an edge without a guard of ${GUARD}${which}. Move ${verb(near.length, 'it', 'them')} in, or guard the edge before anybody rigs there.`,
      sources: SOURCES,
    }),
  ];
}

interface Nearest {
  readonly stand: Stand;
  readonly edge: EdgeNear;
}

function nearestOf(plan: Plan, stands: readonly Stand[]): Nearest | null {
  let found: Nearest | null = null;
  for (const stand of stands) {
    const withinMetres = found ? found.edge.metres : NEAR_METRES;
    const edge = edgeAt(plan, stand.at, stand.floorMetres, {
      raisedMetres: stand.raisedMetres,
      withinMetres,
    });
    if (edge && (!found || edge.metres < found.edge.metres - 1e-6)) found = { stand, edge };
  }
  return found;
}

/** Somebody near an open edge, from the words that begin the sentence. */
function personCaution(
  plan: Plan,
  { stand, edge }: Nearest,
  who: string,
  mend: string,
  ids: {
    readonly about: string;
    readonly itemIds?: readonly string[];
    readonly setupIds?: readonly string[];
  },
): Caution {
  const up = stand.raisedMetres > 0 ? `, ${metres(stand.raisedMetres)} up a ladder` : '';
  const needs = metres(GUARD_METRES + stand.raisedMetres);
  return caution({
    kind: 'edge',
    standing: 'breaks',
    ...ids,
    place: [stand.at[0], stand.floorMetres, stand.at[1]],
    stretches: [[stand.at, edge.at]],
    figures: [
      { name: 'from an open edge', value: edge.metres, unit: 'm', expected: NEAR_METRES },
      {
        name: 'height of what stands along it',
        value: edge.heldMetres,
        unit: 'm',
        expected: GUARD_METRES + stand.raisedMetres,
      },
    ],
    sentence: `${who} ${metres(edge.metres)} from ${edgeWords(plan, edge)}${up}: ${heldWords(edge.heldMetres)}, and a guard takes ${needs}. ${mend}`,
    sources: SOURCES,
  });
}

/**
 * Edges without a guard that is high enough, and who and what comes near them: performers at marks and on walks,
 * cameras with whoever works them, and what the crew rigs. Ladders have cautions of their own.
 */
export function edgeCautions(plan: Plan): readonly Caution[] {
  const cast = plan.cast.flatMap((performer) => {
    const found = nearestOf(plan, placesOf(plan, performer));
    const how = found?.stand.walks ? 'walks' : 'stands';
    return found
      ? [
          personCaution(
            plan,
            found,
            `${named(performer.label)} ${how}`,
            'Move the mark or the way in, or guard the edge there.',
            { about: 'edge-people', itemIds: [performer.id] },
          ),
        ]
      : [];
  });
  const cameras = plan.setups.flatMap((setup) => {
    const found = nearestOf(plan, operatorOf(plan, setup));
    return found
      ? [
          personCaution(
            plan,
            found,
            `The camera of ${named(setup.label)} is`,
            'Move it in, or guard the edge for whoever works it.',
            { about: 'edge-camera', setupIds: [setup.id] },
          ),
        ]
      : [];
  });
  return [...openCautions(plan), ...cast, ...cameras, ...gearCautions(plan)];
}
