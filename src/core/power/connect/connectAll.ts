import { type CordSize, cordsOf } from '../../kit/powerCords';
import { standUnder } from '../../plan/edits/anchorOf';
import { layCables, type NewCable } from '../../plan/edits/layCables';
import { MOST } from '../../plan/edits/limits';
import { plugSpot } from '../../plan/edits/plugCable';
import { metresBetween } from '../../plan/runs';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import { footOf } from '../../plan/surfaces';
import { cablesTo } from '../behind';
import { type Power, powerOf } from '../powerOf';
import { DROP_SHARE } from '../ratings';
import { type Ground, groundFor } from './ground';
import { packed, type Wanted } from './pack';
import { roomsOf, type Socket } from './rooms';
import { type Ways, waysFrom, wayTo } from './routes';
import { type Target, targetsOf } from './targets';

/** Why something is left without a cord. */
export type LeftWhy = 'no supply' | 'no room' | 'plan is full' | 'tangled';

/** What connecting everything came to. */
export interface Connected {
  readonly plan: Plan;
  /** The cables that were laid, as items of the plan. */
  readonly cableIds: readonly string[];
  readonly left: readonly { readonly id: string; readonly why: LeftWhy }[];
  /** Cables that run straight, since no way round was found. */
  readonly straightIds: readonly string[];
}

/** Losses in the cords come on top of what is drawn: as much as they may lose, and a little. */
const WITH_LOSSES = 1 + DROP_SHARE + 0.01;
/** A way that does not exist is taken last. */
const NO_WAY = 1e7;
/** A socket of several legs is kept for boxes as long as another is near. */
const FOR_BOXES = 20;

interface Planned {
  readonly cable: NewCable;
  readonly isStraight: boolean;
}

/** Ways over the ground between the things of a plan, each asked once. */
class Router {
  private readonly ground: Ground;
  private readonly ways = new Map<string, Ways>();

  constructor(
    private readonly plan: Plan,
    ids: readonly string[],
  ) {
    const spots = ids.flatMap((id): Spot[] => {
      const spot = plugSpot(plan, id);
      return spot ? [spot] : [];
    });
    const heights = ids.map((id) => this.footMetres(id));
    this.ground = groundFor(plan, [Math.min(...heights), Math.max(...heights)], spots);
  }

  footMetres(id: string): number {
    const record = this.plan.gear.find((gear) => gear.id === id);
    const stand = record ? standUnder(record) : null;
    return footOf(this.plan, stand ?? id)?.metres ?? 0;
  }

  way(
    fromId: string,
    toId: string,
  ): { readonly path: Spot[]; readonly cost: number; readonly isStraight: boolean } {
    const [from, to] = [plugSpot(this.plan, fromId), plugSpot(this.plan, toId)];
    if (!from || !to) return { path: [], cost: NO_WAY, isStraight: true };
    const ways = this.ways.get(fromId) ?? waysFrom(this.ground, from);
    this.ways.set(fromId, ways);
    const found = wayTo(this.ground, ways, to);
    if (found && found.path.length <= MOST.corners) return { ...found, isStraight: false };
    return { path: [from, to], cost: NO_WAY + metresBetween(from, to), isStraight: true };
  }
}

/** The thinnest cord that a breaker cannot overheat; the thickest where none is enough. */
function cordFor(cords: readonly CordSize[], ratedAmps: number): CordSize {
  return cords.find(({ amps }) => amps >= ratedAmps) ?? cords[cords.length - 1];
}

function plannedCable(router: Router, socket: Socket, toId: string, cords: readonly CordSize[]): Planned {
  const { path, isStraight } = router.way(socket.ownerId, toId);
  const { wire, diameterMetres } = cordFor(cords, socket.ratedAmps);
  const baseMetres = router.footMetres(socket.ownerId);
  const { ownerId: fromId, circuit } = socket;
  return { cable: { fromId, toId, path, baseMetres, diameterMetres, wire, circuit }, isStraight };
}

/** Boxes without power, each on the nearest source's strongest free circuit that has room for what hangs on it. */
function boxCables(plan: Plan, power: Power, boxes: readonly Target[], router: Router): readonly Planned[] {
  const cords = cordsOf(power.mainsVolts);
  const planned: Planned[] = [];
  const { sockets, room } = roomsOf(power);
  const left = [...room];
  const taken = new Map<Socket, number>();
  for (const box of boxes) {
    const open = sockets.filter(
      (socket) =>
        power.network.sources.has(socket.ownerId) &&
        socket.free - (taken.get(socket) ?? 0) > 0 &&
        socket.draws.every((each) => left[each] >= box.voltAmperes * WITH_LOSSES),
    );
    const strength = ({ ratedAmps, legs }: Socket): number => ratedAmps * legs.length;
    const nearest = open.toSorted(
      (a, b) =>
        router.way(a.ownerId, box.id).cost - router.way(b.ownerId, box.id).cost || strength(b) - strength(a),
    )[0];
    if (!nearest || plugSpot(plan, box.id) === null) continue;
    taken.set(nearest, (taken.get(nearest) ?? 0) + 1);
    for (const each of nearest.draws) left[each] -= box.voltAmperes * WITH_LOSSES;
    planned.push(plannedCable(router, nearest, box.id, cords));
  }
  return planned;
}

/** All other targets, packed into the circuits that have room, near ones first, one leg after the other. */
function loadCables(power: Power, targets: readonly Target[], router: Router): readonly Planned[] {
  const cords = cordsOf(power.mainsVolts);
  const { sockets, room } = roomsOf(power);
  const largestFirst = targets.toSorted((a, b) => b.voltAmperes - a.voltAmperes);
  const wanted = largestFirst.map(({ id, voltAmperes }, k): Wanted => {
    const dear = sockets.map(
      ({ ownerId, legs }) => router.way(ownerId, id).cost + (legs.length > 1 ? FOR_BOXES : 0),
    );
    const turn = (place: number): number => (place + sockets.length - (k % sockets.length)) % sockets.length;
    const places = sockets.map((_, place) => place).sort((a, b) => dear[a] - dear[b] || turn(a) - turn(b));
    return { id, size: voltAmperes * WITH_LOSSES, places };
  });
  const given = packed(
    wanted,
    sockets,
    sockets.map(({ free }) => free),
    room,
  );
  return largestFirst.flatMap(({ id }) => {
    const place = given.get(id);
    return place === undefined ? [] : [plannedCable(router, sockets[place], id, cords)];
  });
}

/** The most that sizes are gone up by, all cables together. */
const MOST_STEPS = 200;

/** Cables as thick as their loads' volts ask for, as far as there are thicker ones. */
function thickEnough(
  plan: Plan,
  planned: readonly Planned[],
  cords: readonly CordSize[],
): readonly NewCable[] {
  let cables = planned.map(({ cable }) => cable);
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const laid = layCables(plan, { cables });
    if (laid.ids.length !== cables.length) return cables;
    const { flow, network } = powerOf(laid.plan, 1);
    const worst = [...flow.loads.values()]
      .filter(({ dropShare }) => dropShare > DROP_SHARE)
      .flatMap(({ loadId, dropShare }) => {
        const own = cablesTo(network, loadId).filter((id) => {
          const { wire } = cables[laid.ids.indexOf(id)] ?? {};
          return wire !== undefined && wire !== cords[cords.length - 1].wire;
        });
        const dropOf = (id: string): number => flow.cords.get(id)?.dropVolts ?? 0;
        const thin = own.toSorted((a, b) => dropOf(b) - dropOf(a))[0];
        return thin === undefined ? [] : [{ dropShare, thin }];
      })
      .sort((a, b) => b.dropShare - a.dropShare)[0];
    if (!worst) return cables;
    const at = laid.ids.indexOf(worst.thin);
    const next = cords[cords.findIndex(({ wire }) => wire === cables[at].wire) + 1];
    cables = cables.with(at, { ...cables[at], wire: next.wire, diameterMetres: next.diameterMetres });
  }
  return cables;
}

/** One round of it. */
function connectOnce(plan: Plan): Connected {
  const before = powerOf(plan, 1);
  const targets = targetsOf(plan, before.network);
  const tangled = [...before.network.feeding].flatMap(([id, how]) =>
    how === 'ring' || how === 'two sources' ? [{ id, why: 'tangled' } as const] : [],
  );
  const loads = targets.filter(({ isBox }) => !isBox);
  const boxes = targets.filter(({ isBox, loadIds }) => isBox && (loadIds.length > 0 || loads.length > 0));
  if (loads.length + boxes.length === 0) return { plan, cableIds: [], left: tangled, straightIds: [] };
  if (before.network.sources.size === 0) {
    const left = targets.flatMap(({ loadIds }) => loadIds.map((id) => ({ id, why: 'no supply' }) as const));
    return { plan, cableIds: [], left: [...tangled, ...left], straightIds: [] };
  }
  const ids = [
    ...new Set([
      ...before.network.sources.keys(),
      ...before.network.distros.keys(),
      ...targets.map(({ id }) => id),
    ]),
  ];
  const router = new Router(plan, ids);
  const toBoxes = boxCables(plan, before, boxes, router);
  const withBoxes = layCables(plan, { cables: toBoxes.map(({ cable }) => cable) }).plan;
  const toLoads = loadCables(powerOf(withBoxes, 1), loads, router);
  // A box that nothing was plugged into was not needed.
  const isUsed = ({ cable }: Planned): boolean =>
    toLoads.some((other) => other.cable.fromId === cable.toId) ||
    boxes.some(({ id, loadIds }) => id === cable.toId && loadIds.length > 0);
  const planned = [...toBoxes.filter(isUsed), ...toLoads];
  const laid = layCables(plan, { cables: thickEnough(plan, planned, cordsOf(before.mainsVolts)) });
  const after = powerOf(laid.plan, 1);
  const isFull = laid.ids.length < planned.length;
  const left = targets
    .flatMap(({ loadIds }) => loadIds)
    .filter((id) => after.network.feeding.get(id) !== 'fed')
    .map((id) => ({ id, why: isFull ? ('plan is full' as const) : ('no room' as const) }));
  const straightIds = laid.ids.filter((_, k) => planned[k]?.isStraight);
  return { plan: laid.plan, cableIds: laid.ids, left: [...tangled, ...left], straightIds };
}

/** Rounds beyond the first only fill what the first kept free for losses. */
const MOST_ROUNDS = 6;

/**
 * Runs a cord to all that has none: first to boxes, then from boxes, generators, batteries and sockets of the house to
 * the loads. Each takes the shortest way along walls and edges that keeps off frames, walks and the wet (see `groundFor`),
 * on a circuit that stays under four fifths of its breaker, of a supply that gives it for long. Cords are as thick as
 * their breakers and 3 % of the volts ask for. What is plugged in already stays as it is.
 */
export function connectAll(plan: Plan): Connected {
  let whole = connectOnce(plan);
  for (let round = 1; round < MOST_ROUNDS && whole.left.length > 0; round += 1) {
    const more = connectOnce(whole.plan);
    if (more.cableIds.length === 0) break;
    whole = {
      plan: more.plan,
      cableIds: [...whole.cableIds, ...more.cableIds],
      left: more.left,
      straightIds: [...whole.straightIds, ...more.straightIds],
    };
  }
  return whole;
}
