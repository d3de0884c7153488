import { carrierOf } from '../../core/plan/edits/anchorOf';
import { itemOf } from '../../core/plan/items';
import type { Plan } from '../../core/plan/schema/plan';
import { type Room, type Round, roomOf, roundUnder } from './grounds';

/** What the chosen things stand on, as it is drawn: rounds for what stands on a spot, outlines for what runs. */
export interface Chosen {
  readonly rounds: readonly Round[];
  readonly outlines: readonly Room[];
}

/** Above so many, one box around them all says the same with less. */
const MOST_ROUNDS = 50;
const SPARE_METRES = 0.18;

const NONE: Chosen = { rounds: [], outlines: [] };
let kept: {
  readonly ids: readonly string[];
  readonly rooms: readonly Room[];
  readonly chosen: Chosen;
} | null = null;

/** The rooms of all chosen items that are there, a stand's for what a stand carries. */
export function chosenRooms(plan: Plan, ids: readonly string[], seconds: number): readonly Room[] {
  const standing = new Set(ids.map((id) => carrierOf(plan, id) ?? id));
  return [...standing].flatMap((id) => {
    const isHidden = itemOf(plan, id)?.record.hidden === true;
    return isHidden ? [] : (roomOf(plan, id, seconds) ?? []);
  });
}

/** The same object as long as nothing chosen has changed. */
export function chosenAt(plan: Plan, ids: readonly string[], seconds: number): Chosen {
  if (ids.length === 0) return NONE;
  const rooms = chosenRooms(plan, ids, seconds);
  const isSame =
    kept?.ids === ids &&
    kept.rooms.length === rooms.length &&
    rooms.every((room, k) => room === kept?.rooms[k]);
  if (kept && isSame) return kept.chosen;
  const chosen = rooms.length > MOST_ROUNDS ? { rounds: [], outlines: [around(rooms)] } : apart(rooms);
  kept = { ids, rooms, chosen };
  return chosen;
}

const apart = (rooms: readonly Room[]): Chosen => ({
  rounds: rooms.filter(({ isRun }) => !isRun).map((room) => roundUnder(room, SPARE_METRES)),
  outlines: rooms.filter(({ isRun }) => isRun),
});

/** One box around many. */
function around(rooms: readonly Room[]): Room {
  const across = rooms.flatMap(({ ground }) => ground.map(([x]) => x));
  const along = rooms.flatMap(({ ground }) => ground.map(([, z]) => z));
  const [left, right, back, front] = [
    Math.min(...across),
    Math.max(...across),
    Math.min(...along),
    Math.max(...along),
  ];
  return {
    ground: [
      [left, back],
      [right, back],
      [right, front],
      [left, front],
    ],
    closed: true,
    isRun: true,
    lowMetres: Math.min(...rooms.map(({ lowMetres }) => lowMetres)),
    highMetres: Math.max(...rooms.map(({ highMetres }) => highMetres)),
  };
}
