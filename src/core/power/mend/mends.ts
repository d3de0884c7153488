import { type CordSize, cordOf, cordsOf } from '../../kit/powerCords';
import type { Plan } from '../../plan/schema/plan';
import { cablesTo } from '../behind';
import { cordAmps, cordOfCable } from '../cords';
import { islandsOf, linksAt, linksOf, otherEnd } from '../graph';
import { type Power, powerOf } from '../powerOf';
import { DROP_SHARE } from '../ratings';
import type { NetworkFault } from '../types';
import type { Mend } from './types';
import { withMend } from './withMend';

/** The longest of some cables: what goes is what is most to lay. */
function longestOf(plan: Plan, ids: readonly string[]): string | null {
  const cables = plan.gear.flatMap((gear) =>
    gear.kind === 'cable' && ids.includes(gear.id)
      ? [{ id: gear.id, metres: cordOfCable(plan, gear).lengthMetres }]
      : [],
  );
  return cables.toSorted((a, b) => b.metres - a.metres)[0]?.id ?? null;
}

/** The cables from one thing to another of what hangs together; none where there is no way. */
function cablesBetween(plan: Plan, fromId: string, toId: string): readonly string[] {
  const island = islandsOf(linksOf(plan)).find(({ ids }) => ids.includes(fromId));
  if (!island) return [];
  const at = linksAt(island);
  const came = new Map<string, { readonly cableId: string; readonly fromId: string } | null>([
    [fromId, null],
  ]);
  const queue = [fromId];
  for (let head = 0; head < queue.length; head += 1)
    for (const link of at.get(queue[head]) ?? []) {
      const id = otherEnd(link, queue[head]);
      if (came.has(id)) continue;
      came.set(id, { cableId: link.cableId, fromId: queue[head] });
      queue.push(id);
    }
  const way: string[] = [];
  for (let step = came.get(toId); step; step = came.get(step.fromId)) way.push(step.cableId);
  return way;
}

/** Cables at something that name a circuit there. */
const namingCables = (plan: Plan, ownerId: string): readonly string[] =>
  plan.gear.flatMap((gear) =>
    gear.kind === 'cable' &&
    gear.circuit !== undefined &&
    (gear.plugs?.from === ownerId || gear.plugs?.to === ownerId)
      ? [gear.id]
      : [],
  );

/** What would take care of something wrong with how things are plugged together. */
export function mendsOfFault(plan: Plan, { network }: Power, fault: NetworkFault): readonly Mend[] {
  switch (fault.kind) {
    case 'ring': {
      const cableId = longestOf(plan, fault.cableIds);
      return cableId === null ? [] : [{ act: 'pull', cableId }];
    }
    case 'two sources': {
      const [one, other] = fault.sourceIds;
      const cableId = longestOf(plan, cablesBetween(plan, one ?? '', other ?? ''));
      return cableId === null ? [] : [{ act: 'pull', cableId }];
    }
    case 'no cord':
      return [
        ...(network.sources.size > 0 ? [{ act: 'connect' } as const] : []),
        { act: 'own', itemIds: fault.itemIds },
      ];
    case 'no source':
      return network.sources.size > 0 ? [{ act: 'connect' }] : [];
    case 'open end':
      return [{ act: 'pull', cableId: fault.cableId }];
    case 'takes no plug': {
      const cable = plan.gear.find(({ id }) => id === fault.cableId);
      const isFrom = cable?.kind === 'cable' && cable.plugs?.from === fault.itemId;
      return [{ act: 'pull end', cableId: fault.cableId, end: isFrom ? 'from' : 'to' }];
    }
    case 'no such circuit':
      return [{ act: 'any circuit', cableIds: [fault.cableId] }];
    case 'too few sockets': {
      const cableIds = namingCables(plan, fault.itemId);
      return cableIds.length > 0 && fault.cables <= fault.sockets ? [{ act: 'any circuit', cableIds }] : [];
    }
    case 'loose':
    case 'passes on':
      return [];
  }
}

/** What would let a cord carry what it does: unwound, or thicker. */
export function mendsOfCord({ cords, flow, mainsVolts }: Power, cableId: string): readonly Mend[] {
  const cord = cords.get(cableId);
  const carried = flow.cords.get(cableId)?.amps ?? 0;
  if (!cord) return [];
  const isEnough = cord.coiledShare > 0 && cordAmps(cordOf(cord.wire), 0) >= carried;
  const size = cordsOf(mainsVolts).find((each) => cordAmps(each, cord.coiledShare) >= carried);
  return [
    ...(isEnough ? [{ act: 'unwind', cableId } as const] : []),
    ...(size
      ? [
          {
            act: 'thicker',
            cables: [{ id: cableId, wire: size.wire, diameterMetres: size.diameterMetres }],
          } as const,
        ]
      : []),
  ];
}

/** More steps than sizes times cables are not to be gone. */
const MOST_STEPS = 60;

/** Thicker cords on the way to a load, each time the one that loses most, until it gets enough; none where no size does. */
export function mendsOfDrop(plan: Plan, power: Power, loadId: string): readonly Mend[] {
  const sizes = cordsOf(power.mainsVolts);
  const chosen = new Map<string, CordSize>();
  const mendNow = (): Extract<Mend, { act: 'thicker' }> => ({
    act: 'thicker',
    cables: [...chosen].map(([id, { wire, diameterMetres }]) => ({ id, wire, diameterMetres })),
  });
  let now = power;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    if ((now.flow.loads.get(loadId)?.dropShare ?? 0) <= DROP_SHARE) return chosen.size > 0 ? [mendNow()] : [];
    const next = cablesTo(now.network, loadId)
      .flatMap((id) => {
        const ohms = now.cords.get(id)?.ohms ?? 0;
        const metres = now.cords.get(id)?.lengthMetres ?? 0;
        const thicker = sizes.find((size) => size.ohmsPerMetre * metres < ohms * (1 - 1e-6));
        return thicker ? [{ id, thicker, drop: now.flow.cords.get(id)?.dropVolts ?? 0 }] : [];
      })
      .toSorted((a, b) => b.drop - a.drop)[0];
    if (!next) return [];
    chosen.set(next.id, next.thicker);
    now = powerOf(withMend(plan, mendNow()), 1);
  }
  return [];
}

/** Circuits shared out anew at what has a breaker that carries too much, where that leaves none that does. */
export function mendsOfBreaker(plan: Plan, power: Power, ownerId: string): readonly Mend[] {
  const cableIds = namingCables(plan, ownerId);
  if (cableIds.length === 0) return [];
  const mend: Mend = { act: 'any circuit', cableIds };
  const worst = ({ circuits }: Power): number =>
    Math.max(
      0,
      ...circuits.filter((each) => each.ownerId === ownerId).map(({ continuousShare }) => continuousShare),
    );
  const after = worst(powerOf(withMend(plan, mend), 1));
  return after <= 1 && after < worst(power) ? [mend] : [];
}
