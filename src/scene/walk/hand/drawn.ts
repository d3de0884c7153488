import type { Vec3 } from '../../../core/form/build/vector';
import { edgesOf, type Room, type Round } from '../grounds';
import type { Pixel, WalkView } from '../walkView';
import type { Handle } from './handles';

/** What is drawn over the walk-round's picture for the hand. */
export interface Overlay {
  readonly handles: readonly Handle[];
  /** The handle that is pointed at or held. */
  readonly near: Handle | null;
  /** What is being put or drawn and is not in the plan yet. */
  readonly drafts: readonly Room[];
  /** The line that is being drawn, leg by leg. */
  readonly stroke: readonly (readonly [Vec3, Vec3])[];
  /** Where the picked tool would press. */
  readonly crosshair: Vec3 | null;
  /** Lines that say why something catches where it does. */
  readonly guides: readonly (readonly [Vec3, Vec3])[];
}

const CROSS_PIXELS = 9;
const SIDES = 48;

/** Where a handle's grip appears; null behind the eye. */
export function gripOf({ place, liftPixels }: Handle, view: WalkView): Pixel | null {
  const at = view.pixelOf(place);
  return at && [at[0], at[1] - liftPixels];
}

/** Whether two handles do the same to the same thing. */
export const isSameHandle = (a: Handle | null, b: Handle | null): boolean =>
  a !== null && b !== null && a.kind === b.kind && a.index === b.index;

/** The handle whose grip is nearest to a pixel, within reach. */
export function handleNear(
  handles: readonly Handle[],
  view: WalkView,
  at: Pixel,
  reachPixels: number,
): Handle | null {
  let best: { readonly handle: Handle; readonly pixels: number } | null = null;
  for (const handle of handles) {
    const grip = gripOf(handle, view);
    if (!grip) continue;
    const pixels = Math.hypot(grip[0] - at[0], grip[1] - at[1]);
    if (pixels <= reachPixels && (!best || pixels < best.pixels)) best = { handle, pixels };
  }
  return best?.handle ?? null;
}

/** The drawing as the inside of an SVG element, in CSS pixels; numbers and fixed words only. */
export function overlayMarkup(
  { handles, near, drafts, stroke, crosshair, guides }: Overlay,
  view: WalkView,
): string {
  const parts: string[] = [];
  for (const draft of drafts) parts.push(...haloed('draft', edgesOf(draft), view));
  if (stroke.length > 0) parts.push(...haloed('draft', stroke, view));
  if (guides.length > 0) parts.push(...haloed('guide', guides, view));
  for (const handle of handles) {
    if (handle.round) parts.push(...haloed('lead', roundEdges(handle.round), view));
    if (handle.lead) parts.push(...haloed('lead', [handle.lead], view, handle));
  }
  // Corners first: the others lie over them where they meet.
  const ordered = [...handles].sort((a, b) => Number(b.kind === 'corner') - Number(a.kind === 'corner'));
  for (const handle of ordered) {
    const grip = gripOf(handle, view);
    if (grip) parts.push(gripMarkup(handle, grip, isSameHandle(handle, near)));
  }
  const cross = crosshair && view.pixelOf(crosshair);
  if (cross) {
    const [x, y] = cross;
    const path = `M${n(x - CROSS_PIXELS)} ${n(y)}H${n(x + CROSS_PIXELS)}M${n(x)} ${n(y - CROSS_PIXELS)}V${n(y + CROSS_PIXELS)}`;
    parts.push(`<path class="halo" d="${path}"/><path class="crosshair" d="${path}"/>`);
  }
  return parts.join('');
}

const n = (pixels: number): string => (Math.round(pixels * 10) / 10).toString();

function haloed(
  kind: string,
  edges: readonly (readonly [Vec3, Vec3])[],
  view: WalkView,
  to: Handle | null = null,
): string[] {
  let path = '';
  for (const [from, end] of edges) {
    const seen = view.segmentOf(from, end);
    if (seen) path += `M${n(seen[0][0])} ${n(seen[0][1])}L${n(seen[1][0])} ${n(seen[1][1])}`;
  }
  const grip = to && to.liftPixels > 0 ? gripOf(to, view) : null;
  if (grip) path += `V${n(grip[1])}`;
  return path === '' ? [] : [`<path class="halo" d="${path}"/><path class="${kind}" d="${path}"/>`];
}

function roundEdges({ centre: [x, y, z], radiusMetres }: Round): readonly (readonly [Vec3, Vec3])[] {
  const at = (side: number): Vec3 => {
    const turn = (2 * Math.PI * side) / SIDES;
    return [x + Math.sin(turn) * radiusMetres, y, z - Math.cos(turn) * radiusMetres];
  };
  return Array.from({ length: SIDES }, (_, side) => [at(side), at(side + 1)] as const);
}

/** Each grip has a shape of its own: a turn is round, a raise points up and down, an aim is crossed, a corner is square. */
const SHAPES: Readonly<Record<Handle['kind'], string>> = {
  turn: '<circle class="body" r="7"/><circle class="dot" r="1.5"/>',
  raise: '<path class="body" d="M0 -11L7 -3H-7ZM0 11L7 3H-7Z"/>',
  aim: '<circle class="body" r="7"/><path class="mark" d="M-11 0H11M0 -11V11"/>',
  corner: '<rect class="body" x="-5" y="-5" width="10" height="10"/>',
};

function gripMarkup({ kind }: Handle, [x, y]: Pixel, isNear: boolean): string {
  const near = isNear ? ' near' : '';
  return `<g class="grip ${kind}${near}" transform="translate(${n(x)} ${n(y)})">${SHAPES[kind]}</g>`;
}
