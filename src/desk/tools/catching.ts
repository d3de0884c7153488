import { paletteEntryOf, plugPlaces } from '../../core/kit/palette/makeItem';
import { bearingOf, metresBetween } from '../../core/plan/runs';
import type { Spot } from '../../core/plan/schema/numbers';
import type { Plan } from '../../core/plan/schema/plan';
import { thingName } from '../../core/plan/snap/names';
import { snapSpot } from '../../core/plan/snap/snapSpot';
import { gapsLike, type SnapTargets, snapTargets } from '../../core/plan/snap/snapTargets';
import type {
  SameDistance,
  SnapEdge,
  SnapPoint,
  SnapRequest,
  SnapResult,
  SquareTo,
} from '../../core/plan/snap/types';
import { planStore } from '../planStore';
import { sessionStore } from '../sessionStore';
import { type SnapSettings, snapSettings, stepMetres } from './snapSettings';
import type { Stroke, Tool } from './toolStore';

/** So near to the corner that one starts from, a leg runs through it, metres. */
const ON_METRES = 1e-4;
/** An edge of 10 km that runs through a place by that measure passes no farther from it than this, metres. */
const NEARLY_METRES = 1;
/** Of the reach: nearer to the last corner than this the hand is still there. */
const STILL_THERE = 0.4;
/** Keys go by steps of 10 cm, of which one comes as near as this to any plug, and the next lets it go again, metres. */
const PLUG_REACH_METRES = 0.075;
/** Lengths of legs as near as this may be meant again, metres, and how many of them. */
const LIKE_WITHIN_METRES = 6;
const MOST_LIKE = 3;

let known: { readonly plan: Plan; readonly targets: SnapTargets } | null = null;

/** What the committed plan gives to catch on; reckoned once for each plan. */
export function targetsOf(plan: Plan): SnapTargets {
  if (known?.plan !== plan) known = { plan, targets: snapTargets(plan) };
  return known.targets;
}

/** What the settings let a hand catch on, points of its own before all others. */
export const lettingCatch =
  (
    { around }: SnapTargets,
    settings: Pick<SnapSettings, 'edges' | 'points'>,
    own: readonly SnapPoint[] = [],
  ): SnapRequest['around'] =>
  (at, metres) => {
    const { edges, points } = around(at, metres);
    return {
      edges: settings.edges ? edges : [],
      points: settings.points ? [...own, ...points] : own,
    };
  };

/** The step of the grid, metres; null where it is switched off. */
export function gridStep(settings: SnapSettings = snapSettings.getState()): number | null {
  return settings.grid ? stepMetres(settings, sessionStore.getState().lengths) : null;
}

/** Where the hand's place comes to rest for what is being drawn, and why. */
export function caught(tool: Tool, stroke: Stroke, raw: Spot): SnapResult {
  const { aim, corners, why } = stroke;
  const settings = snapSettings.getState();
  const from = corners.at(-1) ?? null;
  if (aim.free) return { at: raw, why: [] };
  // A hand that has hardly left the last corner has not left it.
  if (from && metresBetween(raw, from) <= aim.reachMetres * STILL_THERE) return { at: from, why: [] };
  const { plan } = planStore.getState();
  const reach = Math.max(aim.reachMetres, PLUG_REACH_METRES);
  const plug = drawsCable(tool) ? plugNear(plan, raw, reach, from) : null;
  if (plug) return plug;
  const targets = targetsOf(plan);
  return snapSpot({
    at: raw,
    from,
    grid: gridStep(settings),
    reach: aim.reachMetres,
    around: lettingCatch(targets, settings, ownPoints(tool, corners)),
    square: settings.square && from ? squaresFrom(corners, from, targets) : [],
    distances: settings.distances && from ? lengthsNear(corners, raw, targets) : [],
    gaps: settings.distances && tool.type === 'put' ? gapsFor(plan, tool.entryId, raw) : [],
    inLine: settings.inLine,
    axisDegrees: targets.axisDegrees,
    straight: aim.straight,
    held: why.map(({ key }) => key),
  });
}

function gapsFor(plan: Plan, entryId: string, raw: Spot): readonly SameDistance[] {
  const entry = paletteEntryOf(entryId);
  return entry ? gapsLike(plan, entry.kind, raw) : [];
}

/** Whether a cable is in the hand, which plugs in where it begins and ends. */
export const drawsCable = (tool: Tool): boolean =>
  tool.type === 'draw' && paletteEntryOf(tool.entryId)?.kind === 'cable';

/** Where a cable plugs in within reach, whatever else the hand might catch on; null where it does not, or begins there. */
function plugNear(plan: Plan, raw: Spot, reachMetres: number, from: Spot | null): SnapResult | null {
  const apart = (spot: Spot): number => metresBetween(raw, spot);
  const found = plugPlaces(plan)
    .filter(({ at }) => apart(at) <= reachMetres && !(from && metresBetween(from, at) < ON_METRES))
    .toSorted((a, b) => apart(a.at) - apart(b.at))[0];
  if (!found) return null;
  const word = `plugs into ${thingName(found.label)}`;
  return { at: found.at, why: [{ kind: 'end', word, key: `plug ${found.id}` }] };
}

/** The corners that are pressed already: the first closes what is drawn. */
function ownPoints(tool: Tool, corners: readonly Spot[]): SnapPoint[] {
  const closes = tool.type === 'draw' && corners.length >= 3;
  return corners.slice(0, -1).map((at, index) => ({
    at,
    kind: 'end',
    name: index === 0 ? 'the first corner' : 'a corner before',
    word: index === 0 && closes ? 'closes it' : 'at a corner of its own',
    key: `own ${index}`,
  }));
}

/** Bearings that a leg from the last corner may keep to: the leg before, the edge that it starts from, the roof. */
function squaresFrom(corners: readonly Spot[], from: Spot, targets: SnapTargets): SquareTo[] {
  const before = corners.at(-2);
  const squares: SquareTo[] = before ? [{ degrees: bearingOf(before, from), name: 'the last leg' }] : [];
  const begun = before
    ? null
    : targets.around(from, NEARLY_METRES).edges.find((edge) => runsThrough(edge, from));
  if (begun) squares.push({ degrees: bearingOf([...begun.from], [...begun.to]), name: begun.name });
  return [...squares, { degrees: targets.axisDegrees, name: 'the deck', loose: true }];
}

function runsThrough({ from, to }: SnapEdge, at: Spot): boolean {
  const around = metresBetween([...from], at) + metresBetween(at, [...to]);
  return around - metresBetween([...from], [...to]) < ON_METRES;
}

/** Lengths that the new leg may have again: that of the last leg, and those of legs nearby. */
function lengthsNear(corners: readonly Spot[], raw: Spot, targets: SnapTargets): SameDistance[] {
  const before = corners.at(-2);
  const last = corners.at(-1);
  const own =
    before && last ? [{ metres: metresBetween(before, last), word: 'same length as the last leg' }] : [];
  const near = targets
    .around(raw, LIKE_WITHIN_METRES)
    .edges.filter(({ rim }) => !rim)
    .map((edge) => ({
      metres: metresBetween([...edge.from], [...edge.to]),
      word: `same length as ${edge.name}`,
      away: metresBetween([(edge.from[0] + edge.to[0]) / 2, (edge.from[1] + edge.to[1]) / 2], raw),
    }))
    .filter(({ away }) => away <= LIKE_WITHIN_METRES)
    .sort((a, b) => a.away - b.away);
  return [...own, ...near.slice(0, MOST_LIKE)];
}
