import { itemOf } from '../../plan/items';
import { named } from '../../plan/named';
import type { Plan } from '../../plan/schema/plan';
import { setupLetter } from '../../plan/setupLetter';
import { formatDegrees } from '../../units/angles';
import { formatLength, type LengthSystem } from '../../units/lengths';
import { formatNumber, NBSP } from '../../units/numbers';
import { formatSeconds } from '../../units/seconds';
import { metresTo } from './metresTo';
import type { Explanation, PlaceOnPart } from './types';

/** Which edge a thing lies beyond, in the words of the frame. */
const BEYOND = {
  left: 'beyond frame left',
  right: 'beyond frame right',
  top: 'above the frame',
  bottom: 'below the frame',
} as const;

const percent = (share: number): string => `${formatNumber(100 * share, 0)}${NBSP}%`;

/** Where in the frame a line crosses it, from the nearer side. */
function crossing([x, y]: readonly [number, number]): string {
  const across = x <= 0.5 ? `${percent(x)} from frame left` : `${percent(1 - x)} from frame right`;
  return `${across}, ${percent(y)} down from the top`;
}

const labelIn = (plan: Plan, id: string): string => named(itemOf(plan, id)?.record.label ?? id);

/** `the column of Lamp stand 2`; the label alone where the part is called the same. */
function placeWords(plan: Plan, { itemId, part }: PlaceOnPart): string {
  const label = labelIn(plan, itemId);
  return label.toLowerCase().includes(part.toLowerCase()) ? label : `the ${part} of ${label}`;
}

/** An explanation as one sentence or two: who sees what from where, what turns the line or ends it, how far away. */
export function explanationWords(plan: Plan, told: Explanation, lengths: LengthSystem): string {
  const letter = setupLetter(plan.setups.findIndex(({ id }) => id === told.setupId));
  const when = `At ${formatSeconds(told.seconds)}`;
  if (told.kind === 'behind')
    return `${when} ${labelIn(plan, told.itemId)} is behind the camera of ${letter}.`;
  const what = placeWords(plan, told.end);
  const far = (place: PlaceOnPart): string => formatLength(metresTo(told, place.at), lengths);
  const where = crossing(told.frameAt);
  switch (told.kind) {
    case 'showing':
      return `${when} ${letter} sees ${what}, ${far(told.end)} from the lens: the line crosses the frame ${where}.`;
    case 'mirrored': {
      const mirror = labelIn(plan, told.mirror.itemId);
      const angle = formatDegrees(told.angleDegrees, 0);
      return `${when} ${letter} sees ${what} in ${mirror}: the line turns ${far(told.mirror)} from the lens, at ${angle} to it before and after, and crosses the frame ${where}.`;
    }
    case 'covered':
      return `${when} ${placeWords(plan, told.coverer)}, ${far(told.coverer)} from the lens, hides ${what}, which is ${far(told.end)} away: the line crosses the frame ${where}.`;
    case 'outside': {
      const by = told.outside
        ? `, ${formatLength(told.outside.metres, lengths)} ${BEYOND[told.outside.edge]}`
        : '';
      return `${when} ${labelIn(plan, told.itemId)} stays out of ${letter}: ${what} comes nearest${by}.`;
    }
  }
}
