import { itemsOf } from '../items';
import type { Gear } from '../schema/gear';
import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import type { Wire } from '../schema/power';
import { addItem } from './addItem';
import { freeId } from './freeId';
import { freeLabel } from './freeLabel';
import { MOST } from './limits';
import { plugSpot } from './plugCable';
import { kept, tidyCoordinate, tidyMetres, tidySpot } from './tidy';

/** A cable that is to be laid from a supply to what it feeds. */
export interface NewCable {
  readonly fromId: string;
  readonly toId: string;
  /** Its ends come to lie where the two stand, wherever they are here. */
  readonly path: readonly Spot[];
  readonly baseMetres: number;
  readonly diameterMetres: number;
  readonly wire: Wire;
  /** Of the supply, from 1. */
  readonly circuit: number;
}

const LONGEST_LABEL = 80;

/**
 * Lays cables, each plugged in at both ends and named after what it feeds. One that leads from or to what is not there or
 * takes no plug, or that has fewer than two corners, is left out; so are those that the plan has no more room for.
 */
export function layCables(
  plan: Plan,
  { cables }: { readonly cables: readonly NewCable[] },
): { readonly plan: Plan; readonly ids: readonly string[] } {
  const ids: string[] = [];
  let laid = plan;
  for (const cable of cables) {
    const ends = [cable.fromId, cable.toId].map((id) => laid.gear.find((gear) => gear.id === id));
    const [from, to] = ends;
    if (!from || !to || from === to || from.kind === 'cable' || to.kind === 'cable') continue;
    const [start, end] = [plugSpot(laid, cable.fromId), plugSpot(laid, cable.toId)];
    if (!start || !end || cable.path.length < 2 || cable.path.length > MOST.corners) continue;
    const items = itemsOf(laid).map(({ record }) => record);
    const id = freeId(items, 'cable');
    const stem = `Cable to ${to.label}`;
    const isFree = stem.length <= LONGEST_LABEL && items.every(({ label }) => label !== stem);
    const record: Extract<Gear, { readonly kind: 'cable' }> = {
      id,
      label: isFree ? stem : freeLabel(laid, stem),
      kind: 'cable',
      path: [start, ...cable.path.slice(1, -1), end].map(tidySpot),
      baseMetres: tidyCoordinate(cable.baseMetres),
      diameterMetres: kept(tidyMetres(cable.diameterMetres), 0.002, 0.2),
      plugs: { from: cable.fromId, to: cable.toId },
      wire: cable.wire,
      circuit: kept(Math.round(cable.circuit), 1, 24),
    };
    const after = addItem(laid, { section: 'gear', record });
    if (after === laid) continue;
    laid = after;
    ids.push(id);
  }
  return { plan: laid, ids };
}
