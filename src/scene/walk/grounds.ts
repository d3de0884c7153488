import type { Vec3 } from '../../core/form/build/vector';
import { formOf } from '../../core/form/formsAt';
import type { ItemForm } from '../../core/form/types';
import { type Item, itemOf } from '../../core/plan/items';
import { headingWay } from '../../core/plan/runs';
import type { Spot } from '../../core/plan/schema/numbers';
import type { Plan } from '../../core/plan/schema/plan';
import { solidOf } from '../../core/sight/closed';
import { worldOf } from '../../core/sight/stage';

/** The room that a thing takes: its ground as a ring of corners, from its lowest to its highest part. */
export interface Room {
  /** Corners on the ground, in order. */
  readonly ground: readonly Spot[];
  /** Whether the last corner joins the first. */
  readonly closed: boolean;
  /** Whether it is drawn along corners or between ends, and its ground is that line. */
  readonly isRun: boolean;
  readonly lowMetres: number;
  readonly highMetres: number;
}

/** The round that a thing stands on. */
export interface Round {
  readonly centre: Vec3;
  readonly radiusMetres: number;
}

const rooms = new WeakMap<ItemForm, Room | null>();

/** The room of an item at an instant; null for what is not there. */
export function roomOf(plan: Plan, id: string, seconds: number): Room | null {
  const item = itemOf(plan, id);
  const form = item && formOf(plan, id, seconds);
  if (!item || !form) return null;
  const known = rooms.get(form);
  if (known !== undefined) return known;
  const room = measure(item, form);
  rooms.set(form, room);
  return room;
}

function measure(item: Item, form: ItemForm): Room | null {
  const { record } = item;
  const [east, south] = headingWay('headingDegrees' in record ? record.headingDegrees : 0);
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (const part of form.parts) {
    const box = solidOf(part.shape);
    for (let corner = 0; corner < 8; corner += 1) {
      const own: Vec3 = [
        (corner & 1 ? box.high : box.low)[0],
        (corner & 2 ? box.high : box.low)[1],
        (corner & 4 ? box.high : box.low)[2],
      ];
      const [x, y, z] = worldOf(part, own);
      // Along the heading and across it, so that a turned thing has a box as narrow as itself.
      const placed = [x * -south + z * east, y, x * -east + z * -south];
      for (let axis = 0; axis < 3; axis += 1) {
        low[axis] = Math.min(low[axis], placed[axis]);
        high[axis] = Math.max(high[axis], placed[axis]);
      }
    }
  }
  if (!(high[0] >= low[0])) return null;
  const run = runOf(item);
  const back = (across: number, along: number): Spot => [
    across * -south + along * -east,
    across * east + along * -south,
  ];
  const ground = run?.corners ?? [
    back(low[0], low[2]),
    back(high[0], low[2]),
    back(high[0], high[2]),
    back(low[0], high[2]),
  ];
  return { ground, closed: run?.closed ?? true, isRun: run !== null, lowMetres: low[1], highMetres: high[1] };
}

/** The corners of what is drawn along corners or between two ends; null for what stands on one spot. */
export function runOf(item: Item): { readonly corners: readonly Spot[]; readonly closed: boolean } | null {
  const { record } = item;
  if ('path' in record) return { corners: record.path, closed: 'closed' in record && record.closed };
  if ('outline' in record) return { corners: record.outline, closed: true };
  if ('from' in record) {
    return {
      corners: [
        [record.from[0], record.from[2]],
        [record.to[0], record.to[2]],
      ],
      closed: false,
    };
  }
  return null;
}

/** A round under a room, with some room to spare. */
export function roundUnder(
  { ground, lowMetres }: Pick<Room, 'ground' | 'lowMetres'>,
  spareMetres: number,
): Round {
  let [left, back, right, front] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, z] of ground) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    back = Math.min(back, z);
    front = Math.max(front, z);
  }
  const centre: Vec3 = [(left + right) / 2, lowMetres, (back + front) / 2];
  const radius = Math.max(...ground.map(([x, z]) => Math.hypot(x - centre[0], z - centre[2])));
  return { centre, radiusMetres: radius + spareMetres };
}

/** The edges of a room: round its foot, round its top, and up from each corner. */
export function edgesOf({ ground, closed, lowMetres, highMetres }: Room): readonly (readonly [Vec3, Vec3])[] {
  const edges: (readonly [Vec3, Vec3])[] = [];
  const at = ([x, z]: Spot, metres: number): Vec3 => [x, metres, z];
  ground.forEach((corner, index) => {
    edges.push([at(corner, lowMetres), at(corner, highMetres)]);
    const next = ground[index + 1] ?? (closed ? ground[0] : null);
    if (next === null) return;
    for (const metres of [lowMetres, highMetres]) edges.push([at(corner, metres), at(next, metres)]);
  });
  return edges;
}
