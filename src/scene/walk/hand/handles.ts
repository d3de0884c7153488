import type { Vec3 } from '../../../core/form/build/vector';
import { headPlace } from '../../../core/form/gear/headPlace';
import { headClassOf } from '../../../core/form/gear/references';
import { spigotTop } from '../../../core/form/gear/standTop';
import { cameraAt } from '../../../core/optics/camera';
import { carrierOf } from '../../../core/plan/edits/anchorOf';
import { itemOf } from '../../../core/plan/items';
import { headingWay } from '../../../core/plan/runs';
import type { Plan } from '../../../core/plan/schema/plan';
import { chosenRooms } from '../chosenRounds';
import { type Round, roundUnder, runOf } from '../grounds';
import type { WalkView } from '../walkView';

/** What handles are for: chosen items, or a camera. */
export type Subject =
  | { readonly type: 'items'; readonly ids: readonly string[] }
  | { readonly type: 'camera'; readonly setupId: string };

export type HandleKind = 'turn' | 'raise' | 'aim' | 'corner';

/** Something in the picture by which a chosen thing is changed. */
export interface Handle {
  readonly kind: HandleKind;
  /** Tells corners apart; 0 for the others. */
  readonly index: number;
  /** Where it takes hold, metres. */
  readonly place: Vec3;
  /** How far above that its grip is drawn, pixels. */
  readonly liftPixels: number;
  /** The line that it is seen with, from what it changes. */
  readonly lead: readonly [Vec3, Vec3] | null;
  /** What a turn goes round; null for the others. */
  readonly round: Round | null;
}

/** A turn's round looks at least this large, so that there is room beside the thing; pixels. */
const LEAST_ROUND_PIXELS = 46;
/** A round larger than this, metres, would lie outside the picture: the thing's own corners will do. */
const MOST_ROUND_METRES = 6;
const RAISE_PIXELS = 30;
const SPARE_METRES = 0.18;
/** A run of more corners is shown without grips: they would hide it. */
const MOST_CORNERS = 60;

/** The handles of what is chosen, as they lie at an instant; none for what is locked or hidden. */
export function handlesOf(plan: Plan, subject: Subject, seconds: number, view: WalkView): readonly Handle[] {
  if (subject.type === 'camera') return cameraHandles(plan, subject.setupId, seconds, view);
  const ids = subject.ids.filter((id) => isFree(plan, id));
  const rooms = chosenRooms(plan, ids, seconds);
  if (rooms.length === 0) return [];
  const low = Math.min(...rooms.map(({ lowMetres }) => lowMetres));
  const handles: Handle[] = [];
  const round = roundUnder({ ground: rooms.flatMap(({ ground }) => ground), lowMetres: low }, SPARE_METRES);
  const item = ids.length === 1 ? itemOf(plan, ids[0]) : null;
  if (round.radiusMetres < MOST_ROUND_METRES || !item) {
    handles.push(turnHandle(round, ids.length === 1 ? headingOf(plan, ids[0]) : 0, view));
  }
  const top = topOf(plan, ids, Math.max(...rooms.map(({ highMetres }) => highMetres)), round.centre);
  if (top) {
    const foot: Vec3 = [top[0], low, top[2]];
    handles.push({
      kind: 'raise',
      index: 0,
      place: top,
      liftPixels: RAISE_PIXELS,
      lead: [foot, top],
      round: null,
    });
  }
  return item
    ? [...handles, ...aimHandle(plan, item.record.id), ...cornerHandles(plan, item.record.id)]
    : handles;
}

function isFree(plan: Plan, id: string): boolean {
  const record = itemOf(plan, id)?.record;
  return record !== undefined && !record.locked && !record.hidden;
}

/** The heading that a turn's grip shows; 0 where the thing has none. */
function headingOf(plan: Plan, id: string): number {
  const record = itemOf(plan, id)?.record;
  if (record && 'headingDegrees' in record) return record.headingDegrees;
  if (record && 'aim' in record) return headPlace(record, headClassOf(record, plan), plan).headingDegrees;
  const carrier = carrierOf(plan, id);
  return carrier === null ? 0 : headingOf(plan, carrier);
}

function turnHandle({ centre, radiusMetres }: Round, headingDegrees: number, view: WalkView): Handle {
  const radius = Math.max(radiusMetres, LEAST_ROUND_PIXELS * view.metresPerPixelAt(centre));
  const [east, south] = headingWay(headingDegrees);
  return {
    kind: 'turn',
    index: 0,
    place: [centre[0] + east * radius, centre[1], centre[2] + south * radius],
    liftPixels: 0,
    lead: null,
    round: { centre, radiusMetres: radius },
  };
}

/** Where the raise takes hold: the spigot of a stand, else the top of the thing. Null for what stays on the floor. */
function topOf(plan: Plan, ids: readonly string[], highMetres: number, [x, , z]: Vec3): Vec3 | null {
  if (ids.length !== 1) return [x, highMetres, z];
  const item = itemOf(plan, carrierOf(plan, ids[0]) ?? ids[0]);
  if (!item || item.section === 'cast') return null;
  const { record } = item;
  if (record.kind === 'deck' || record.kind === 'skyline block' || record.kind === 'cable') return null;
  if (record.kind === 'stand') return spigotTop(record);
  const run = runOf(item);
  if (!run) return [x, highMetres, z];
  const [[ax, az], [bx, bz]] = run.corners;
  return [(ax + bx) / 2, highMetres, (az + bz) / 2];
}

function aimHandle(plan: Plan, id: string): readonly Handle[] {
  const record = itemOf(plan, id)?.record;
  if (!record || !('kind' in record) || record.kind !== 'head') return [];
  const { pivot } = headPlace(record, headClassOf(record, plan), plan);
  return [
    { kind: 'aim', index: 0, place: record.aim, liftPixels: 0, lead: [pivot, record.aim], round: null },
  ];
}

function cornerHandles(plan: Plan, id: string): readonly Handle[] {
  const item = itemOf(plan, id);
  const run = item && runOf(item);
  if (!run || run.corners.length > MOST_CORNERS) return [];
  const { record } = item;
  const levelOf = (index: number): number => {
    if ('from' in record) return (index === 0 ? record.from : record.to)[1];
    if ('topMetres' in record) return record.topMetres;
    return 'baseMetres' in record ? record.baseMetres : 0;
  };
  return run.corners.map(([x, z], index) => ({
    kind: 'corner',
    index,
    place: [x, levelOf(index), z],
    liftPixels: 0,
    lead: null,
    round: null,
  }));
}

function cameraHandles(plan: Plan, setupId: string, seconds: number, view: WalkView): readonly Handle[] {
  const setup = plan.setups.find(({ id }) => id === setupId);
  if (!setup) return [];
  const { position, forward } = cameraAt(plan, setup, seconds).pose;
  const level = Math.hypot(forward[0], forward[2]);
  const headingDegrees = level > 1e-6 ? (Math.atan2(forward[0], -forward[2]) * 180) / Math.PI : 0;
  const foot: Vec3 = [position[0], 0, position[2]];
  return [
    turnHandle({ centre: position, radiusMetres: 0.5 }, headingDegrees, view),
    {
      kind: 'raise',
      index: 0,
      place: position,
      liftPixels: RAISE_PIXELS,
      lead: [foot, position],
      round: null,
    },
  ];
}
