import type { Plan } from '../../plan/schema/plan';
import { islandsOf, linksOf } from '../graph';
import { voltAmperes } from '../loads';
import type { Network } from '../types';

/** Something that wants a cord to a supply, with all that hangs on it. */
export interface Target {
  /** What the cord is plugged into. */
  readonly id: string;
  /** The loads that get power by it. */
  readonly loadIds: readonly string[];
  /** What they draw at full. */
  readonly voltAmperes: number;
  readonly isBox: boolean;
}

/**
 * All that wants a cord: loads without one; what hangs together and has no supply, by its box where it has one; and boxes
 * that nothing is plugged into, which may come in useful.
 */
export function targetsOf(plan: Plan, network: Network): readonly Target[] {
  const drawn = (ids: readonly string[]): number =>
    ids.reduce((sum, id) => {
      const load = network.loads.get(id);
      return load ? sum + voltAmperes(load.watts, load.powerFactor) : sum;
    }, 0);
  const islands = islandsOf(linksOf(plan));
  const linked = new Set(islands.flatMap(({ ids }) => ids));
  const dead = islands.flatMap(({ ids }): Target[] => {
    const loadIds = ids.filter((id) => network.feeding.get(id) === 'no source');
    const box = ids.find((id) => network.distros.has(id));
    const hasSource = ids.some((id) => network.sources.has(id));
    const hasRing = ids.some((id) => network.feeding.get(id) === 'ring');
    const id = box ?? loadIds[0];
    if (hasSource || hasRing || id === undefined) return [];
    return [{ id, loadIds, voltAmperes: drawn(loadIds), isBox: box !== undefined }];
  });
  const bare = [...network.loads.keys()]
    .filter((id) => network.feeding.get(id) === 'no cord')
    .map((id): Target => ({ id, loadIds: [id], voltAmperes: drawn([id]), isBox: false }));
  const boxes = [...network.distros.keys()]
    .filter((id) => !linked.has(id))
    .map((id): Target => ({ id, loadIds: [], voltAmperes: 0, isBox: true }));
  return [...dead, ...boxes, ...bare];
}
