import { carrierOf } from '../../../core/plan/edits/anchorOf';
import { heightsOf, middleOf } from '../../../core/plan/edits/extent';
import { raiseItems } from '../../../core/plan/edits/raiseItems';
import { setStandHeight, standReach } from '../../../core/plan/edits/setStandHeight';
import { kept, tidyMetres } from '../../../core/plan/edits/tidy';
import { itemOf } from '../../../core/plan/items';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatLength } from '../../../core/units/lengths';
import { towards } from '../geometry/spots';
import { readMetres, stepped } from './reading';
import { halfSize, headingOf } from './turning';
import { type Handle, type HandleInput, STEP_METRES } from './types';

/** Metres for a pixel of the pull, whatever the scale of the sheet: height has none. */
const METRES_PER_PIXEL = 0.01;
/** How far beside what it raises the lead stands, pixels. */
const BESIDE = 30;
/** Above or below the middle, wherever the ring that turns is not; pixels. */
const ASIDE = 28;

/** The stand that the one thing is, or is carried by; null for what has a base of its own. */
function standOf(plan: Plan, ids: readonly string[]): string | null {
  const [id] = ids;
  if (ids.length !== 1 || id === undefined) return null;
  const stand = carrierOf(plan, id) ?? id;
  const item = itemOf(plan, stand);
  return item?.section === 'gear' && item.record.kind === 'stand' ? stand : null;
}

/** The height that is read: a stand's spigot above its foot, else the lowest base. */
function heightOf(plan: Plan, ids: readonly string[]): number | null {
  const stand = standOf(plan, ids);
  const record = stand === null ? null : itemOf(plan, stand)?.record;
  if (record && 'heightMetres' in record) return record.heightMetres;
  const heights = ids.flatMap((id) => {
    const own = itemOf(plan, id)?.record;
    return own ? heightsOf(own) : [];
  });
  return heights.length > 0 ? Math.min(...heights) : null;
}

/** The upright lead beside what is chosen: pulled up and down it raises a stand, or the base of what has none. */
export function raiseHandle(input: HandleInput, called: string): Handle | null {
  const { plan, ids, lengths } = input;
  const middle = middleOf(plan, ids);
  const height = heightOf(plan, ids);
  if (!middle || height === null) return null;
  const stand = standOf(plan, ids);
  const raiseTo = (before: Plan, metres: number): Plan => {
    const from = heightOf(before, ids) ?? 0;
    const reach = stand === null ? null : standReach(before, stand);
    if (stand === null || !reach) return raiseItems(before, { ids, byMetres: tidyMetres(metres - from) });
    const heightMetres = kept(
      tidyMetres(metres),
      Math.min(reach.lowestMetres, from),
      Math.max(reach.highestMetres, from),
    );
    return setStandHeight(before, { id: stand, heightMetres });
  };
  const by = (before: Plan, metres: number): Plan => raiseTo(before, (heightOf(before, ids) ?? 0) + metres);
  return {
    key: 'raise',
    kind: 'raise',
    name: `Raise ${called}`,
    at: middle,
    off: [Math.min(130, halfSize(input)) + BESIDE, towards(headingOf(plan, ids))[1] < 0 ? ASIDE : -ASIDE],
    figure: formatLength(height, lengths),
    pull: (before, { moved, free }) => {
      const wanted = (heightOf(before, ids) ?? 0) - moved[1] * METRES_PER_PIXEL;
      return raiseTo(before, free ? wanted : stepped(wanted, STEP_METRES));
    },
    step: (before, [right, down]) => by(before, (right - down) * STEP_METRES),
    typed: (before, text, system) => {
      const reach = stand === null ? null : standReach(before, stand);
      const metres = reach
        ? readMetres(text, system, reach.lowestMetres, reach.highestMetres)
        : readMetres(text, system, -100, 500);
      return typeof metres === 'string' ? metres : raiseTo(before, metres);
    },
  };
}
