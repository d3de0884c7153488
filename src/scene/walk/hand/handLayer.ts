import type { Pixel, WalkView } from '../walkView';
import { type Overlay, overlayMarkup } from './drawn';

/** Above the hand, so that a finger does not cover it; pixels. */
const ABOVE = { mouse: 34, touch: 74 };
const EDGE = 6;

/** A value, where the hand is. */
export interface Readout {
  readonly words: string;
  readonly at: Pixel;
  readonly touch: boolean;
}

/** The drawing over the walk-round's picture: it lies in the page, so that pointing at something draws no picture anew. */
export class HandLayer {
  private readonly root = document.createElement('div');
  private readonly svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  private readonly chip = document.createElement('div');
  private drawn = '';
  private said = '';

  constructor() {
    this.root.className = 'walk-hands';
    this.root.setAttribute('aria-hidden', 'true');
    this.chip.className = 'walk-readout';
    this.chip.hidden = true;
    this.root.append(this.svg, this.chip);
  }

  attach(element: HTMLElement): void {
    element.append(this.root);
  }

  detach(): void {
    this.root.remove();
  }

  /** Of the element that the drawing lies on; none for the element's own. */
  setCursor(cursor: string): void {
    const { parentElement } = this.root;
    if (parentElement && parentElement.style.cursor !== cursor) parentElement.style.cursor = cursor;
  }

  draw(overlay: Overlay, view: WalkView): void {
    const markup = overlayMarkup(overlay, view);
    if (markup === this.drawn) return;
    this.drawn = markup;
    this.svg.innerHTML = markup;
  }

  say(readout: Readout | null, { width }: WalkView): void {
    const now = readout ? `${readout.words} ${readout.at}` : '';
    if (now === this.said) return;
    this.said = now;
    this.chip.hidden = readout === null;
    if (!readout) return;
    this.chip.textContent = readout.words;
    const above = readout.touch ? ABOVE.touch : ABOVE.mouse;
    const left = Math.min(
      width - this.chip.offsetWidth - EDGE,
      Math.max(EDGE, readout.at[0] - this.chip.offsetWidth / 2),
    );
    const top = readout.at[1] - above > EDGE ? readout.at[1] - above : readout.at[1] + 28;
    this.chip.style.transform = `translate(${Math.round(left)}px, ${Math.round(top)}px)`;
  }
}
