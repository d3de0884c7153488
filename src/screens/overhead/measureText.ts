/** Styles of lettering on the drawing, as the style sheet has them. */
export type Lettering = 'mark' | 'strong' | 'letter';

const WEIGHTS = { mark: 500, strong: 600, letter: 600 } as const;
/** Width of a letter in ems where it cannot be measured: the narrow face runs near it. */
const MEAN_EM = 0.47;

let context: CanvasRenderingContext2D | null | undefined;
const known = new Map<string, number>();

/** Size of a style of lettering in CSS pixels; on touch screens the drawing is lettered larger. */
export function letteringPixels(style: Lettering, touch: boolean): number {
  if (style === 'letter') return 16;
  return style === 'strong' ? (touch ? 14 : 12) : touch ? 13 : 11;
}

/** Width of a line of lettering, CSS pixels. */
export function textWidth(text: string, style: Lettering, touch: boolean): number {
  const pixels = letteringPixels(style, touch);
  const key = `${style}${pixels}${text}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  context ??= typeof document === 'undefined' ? null : document.createElement('canvas').getContext('2d');
  let width = text.length * MEAN_EM * pixels;
  if (context) {
    context.font = `${WEIGHTS[style]} ${pixels}px "Encode Sans", "Helvetica Neue", Arial, sans-serif`;
    // 75 %, the width that all lettering on drawings has.
    if ('fontStretch' in context) context.fontStretch = 'condensed';
    width = context.measureText(text).width;
  }
  known.set(key, width);
  return width;
}

/** Forgets all widths: once the typeface has come, they are other ones. */
export const forgetWidths = (): void => known.clear();
