import type { At, Box, Pen, Setting } from '../pdf/marks';
import type { Drawing } from '../pdf/roof/drawing';
import { stepOf } from './greys';
import { escaped, html, Markup } from './markup';

const SIZE = 9;
const LEADING = 1.36;
/** How wide letters of the page's face are on average, of their size: measured on names of the demo night. */
const LETTER_WIDTH = 0.54;
/** Letters of East Asia are as wide as high. */
const WIDE = /[\u1100-\u11ff\u2e80-\ua4cf\uac00-\ud7a3\uf900-\ufaff\uff00-\uff60]/u;

const rounded = (value: number): number => Math.round(value * 100) / 100;
const placed = ([x, y]: At): string => `${rounded(x)} ${rounded(y)}`;

/** Draws into an SVG picture that takes its colours from the file's style. */
export class SvgDrawing implements Drawing {
  private parts: string[] = [];
  private clips = 0;

  /** @param name unique in its file, for what parts of it refer to */
  constructor(
    private readonly name: string,
    private readonly size: readonly [number, number],
  ) {}

  shape(points: readonly At[], pen: Pen, closed = pen.fill !== undefined): void {
    if (points.length < 2) return;
    const classes = [
      pen.fill === undefined ? 'f' : `f${stepOf(pen.fill)}`,
      ...(pen.line === undefined ? [] : [`l${stepOf(pen.line)}`]),
    ].join(' ');
    const line = pen.line === undefined ? '' : ` stroke-width="${rounded(pen.width ?? 0.5)}"`;
    const dash = pen.dash ? ` stroke-dasharray="${pen.dash.map(rounded).join(' ')}"` : '';
    const path = `M${points.map(placed).join('L')}${closed ? 'Z' : ''}`;
    this.parts.push(`<path class="${classes}"${line}${dash} d="${path}"/>`);
  }

  within([left, top, right, bottom]: Box, draw: () => void): void {
    this.clips += 1;
    const id = `${this.name}-${this.clips}`;
    const [width, height] = [right - left, bottom - top].map(rounded);
    this.parts.push(
      `<clipPath id="${id}"><rect x="${rounded(left)}" y="${rounded(top)}" width="${width}" height="${height}"/></clipPath>`,
      `<g clip-path="url(#${id})">`,
    );
    draw();
    this.parts.push('</g>');
  }

  line(text: string, [x, y]: At, { size = SIZE, weight, grey = 0, align = 'left' }: Setting = {}): void {
    const anchor = { left: '', middle: ' text-anchor="middle"', right: ' text-anchor="end"' }[align];
    const strong = weight === 'strong' ? ' font-weight="600"' : '';
    const at = `x="${rounded(x)}" y="${rounded(y + size * 1.02)}"`;
    this.parts.push(
      `<text class="t f${stepOf(grey)}" ${at} font-size="${size}"${anchor}${strong}>${escaped(text)}</text>`,
    );
  }

  widthOf(text: string, { size = SIZE }: Setting = {}): number {
    let letters = 0;
    for (const letter of text) letters += WIDE.test(letter) ? 1 : LETTER_WIDTH;
    return letters * size;
  }

  leading({ size = SIZE }: Setting = {}): number {
    return size * LEADING;
  }

  /** The picture. @param about what is to be seen in it, for who does not */
  picture(about: string): Markup {
    const [width, height] = this.size.map(rounded);
    return html`<svg viewBox="0 0 ${width} ${height}" role="img" aria-label="${about}">${new Markup(this.parts.join(''))}</svg>`;
  }
}
