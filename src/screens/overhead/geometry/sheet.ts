import type { Bounds, Spot } from './spots';

/** CSS pixels that a metre takes at a scale of 1 : 1, a CSS inch having 96 pixels by definition. */
export const PIXELS_PER_METRE_AT_ONE = 96 / 0.0254;
/** Closer than a tenth of life size nothing more is to be seen; farther than a small town neither. */
const NEAREST = 10;
const FARTHEST = 20_000;

/** The pane that the sheet is seen through, CSS pixels. */
export interface Pane {
  readonly width: number;
  readonly height: number;
}

/** Space kept free around what is fitted, CSS pixels. */
export interface Margins {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** How the sheet lies under the pane: the place at the pane's middle, and the N of 1 : N before it is made whole. */
export interface View {
  readonly middle: Spot;
  readonly denominator: number;
}

/** The whole N of 1 : N that is drawn and lettered. */
export const scaleOf = (view: View): number =>
  Math.round(Math.min(FARTHEST, Math.max(NEAREST, view.denominator)));

/** CSS pixels that a metre of the roof takes at 1 : N. */
export const pixelsPerMetre = (scale: number): number => PIXELS_PER_METRE_AT_ONE / scale;

/** From metres on the roof to pixels in the pane. */
export function toPane(view: View, pane: Pane, [x, z]: Spot): Spot {
  const perMetre = pixelsPerMetre(scaleOf(view));
  return [
    pane.width / 2 + (x - view.middle[0]) * perMetre,
    pane.height / 2 + (z - view.middle[1]) * perMetre,
  ];
}

/** From pixels in the pane to metres on the roof. */
export function toRoof(view: View, pane: Pane, [left, top]: Spot): Spot {
  const perMetre = pixelsPerMetre(scaleOf(view));
  return [
    view.middle[0] + (left - pane.width / 2) / perMetre,
    view.middle[1] + (top - pane.height / 2) / perMetre,
  ];
}

/** The largest scale of a whole five (a whole ten from 1 : 200 on) at which `bounds` fits between the margins. */
export function fittedView(bounds: Bounds, pane: Pane, margins: Margins): View {
  const [left, top, right, bottom] = bounds;
  const room = {
    width: Math.max(40, pane.width - margins.left - margins.right),
    height: Math.max(40, pane.height - margins.top - margins.bottom),
  };
  const needed =
    Math.max((right - left) / room.width, (bottom - top) / room.height) * PIXELS_PER_METRE_AT_ONE;
  const step = needed > 200 ? 10 : 5;
  const denominator = Math.min(FARTHEST, Math.max(NEAREST, Math.ceil(needed / step - 1e-9) * step));
  const perMetre = pixelsPerMetre(denominator);
  return {
    denominator,
    middle: [
      (left + right) / 2 + (margins.right - margins.left) / 2 / perMetre,
      (top + bottom) / 2 + (margins.bottom - margins.top) / 2 / perMetre,
    ],
  };
}

/** Zooms by `factor` (more than 1 comes closer) so that the place under `pointer`, in pixels, stays under it. */
export function zoomedAbout(view: View, pane: Pane, pointer: Spot, factor: number): View {
  const denominator = Math.min(FARTHEST, Math.max(NEAREST, view.denominator / factor));
  const held = toRoof(view, pane, pointer);
  const perMetre = pixelsPerMetre(scaleOf({ middle: held, denominator }));
  return {
    denominator,
    middle: [
      held[0] - (pointer[0] - pane.width / 2) / perMetre,
      held[1] - (pointer[1] - pane.height / 2) / perMetre,
    ],
  };
}

/** Moves the sheet under the pane by pixels. */
export function pannedBy(view: View, [right, down]: Spot): View {
  const perMetre = pixelsPerMetre(scaleOf(view));
  return { ...view, middle: [view.middle[0] - right / perMetre, view.middle[1] - down / perMetre] };
}

/** A round length for the scale bar: the largest of 1, 2, 5 × 10ⁿ metres that takes at most `room` pixels. */
export function barMetres(scale: number, room: number): number {
  const most = room / pixelsPerMetre(scale);
  const power = 10 ** Math.floor(Math.log10(most));
  const step = most / power;
  return (step >= 5 ? 5 : step >= 2 ? 2 : 1) * power;
}
