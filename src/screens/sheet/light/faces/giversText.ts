import type { CatchLights } from '../../../../core/light/catchLight';
import type { EdgeLight } from '../../../../core/light/edgeLight';
import type { Plan } from '../../../../core/plan/schema/plan';
import { shadowEdgeWords } from '../../../../core/report/light/givenWords';
import type { FaceNow } from '../../../../core/report/light/lightNow';
import { itemName, namedItem } from '../../../../core/report/light/lightWords';
import type { LengthSystem } from '../../../../core/units/lengths';
import { formatSigned } from '../../../../core/units/numbers';
import type { InstantLight } from '../../../../desk/workers/reportApi';

function givenName(
  plan: Plan,
  { itemId, fedBy }: { readonly itemId: string; readonly fedBy: string | null },
): string {
  const name = itemName(plan, itemId);
  return fedBy === null ? name : `${name}, fed by ${namedItem(plan, fedBy)}`;
}

/** What is mirrored in the eyes; nothing is said of eyes that the setup does not see. */
function eyesText(plan: Plan, eyes: CatchLights | undefined): string | null {
  if (!eyes?.seesEyes) return null;
  const [first] = eyes.lights;
  return first
    ? `Catch light: ${namedItem(plan, first.itemId)}, at ${first.clock} o’clock.`
    : 'No catch light.';
}

/** Which edge is lit, as the camera sees it, the strongest first. */
function edgeText(plan: Plan, edges: readonly EdgeLight[]): string | null {
  const [first] = edges;
  if (!first) return null;
  if (first.itemId === null || first.side === 'none') return 'No edge is lit.';
  const side = first.side === 'both' ? 'Both edges' : first.side === 'top' ? 'Hair' : `Edge ${first.side}`;
  const over = first.stopsOverKey === null ? '' : `, ${formatSigned(first.stopsOverKey, 1)} against the key`;
  return `${side}: ${namedItem(plan, first.itemId)}${over}.`;
}

/** How soft the key is, by the edge of a shadow that it throws onto the face; null for a lamp in the face. */
function softText(key: FaceNow['key'], lengths: LengthSystem): string | null {
  if (!key || key.shadowEdgeMetres === null) return null;
  const words = shadowEdgeWords(key.shadowEdgeMetres, lengths);
  return `${words[0].toUpperCase()}${words.slice(1)}.`;
}

/** Which lamps a face has its light from: key and how soft it is, edge and what is in the eyes. */
export function giversText(
  plan: Plan,
  { performerId, key, back }: FaceNow,
  { eyes, edges }: Pick<InstantLight, 'eyes' | 'edges'>,
  lengths: LengthSystem,
): string {
  const edge = edgeText(
    plan,
    edges.filter((each) => each.performerId === performerId),
  );
  const behind = back ? `From behind: ${givenName(plan, back)}.` : 'Nothing from behind.';
  const parts = [
    key ? `Key: ${givenName(plan, key)}.` : null,
    softText(key, lengths),
    edge ?? behind,
    eyesText(
      plan,
      eyes.find((each) => each.performerId === performerId),
    ),
  ];
  return parts.filter((part) => part !== null).join(' ');
}
