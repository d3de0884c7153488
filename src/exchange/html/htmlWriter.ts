import type { Setting } from '../pdf/marks';
import type { PartWriter } from '../pdf/partWriter';
import type { Cell, Column } from '../pdf/table';
import { html, Markup, NOTHING } from './markup';

/** From this grey on, words are a second voice. */
const QUIET = 0.2;

const textOf = (cell: Cell): string => (typeof cell === 'function' ? cell() : cell);

/** Writes parts of the pack as HTML, one after another; pages of paper mean nothing to it. */
export class HtmlWriter implements PartWriter {
  private readonly parts: Markup[] = [];

  /** @param level of what the parts call a subheading: 3 within a section, 4 within a card */
  constructor(private readonly level: 3 | 4 = 3) {}

  newPage(): void {}
  gap(): void {}
  keep(): void {}
  /** A part's heading is the section's, which is there already. */
  heading(): void {}

  subheading(text: string): void {
    this.parts.push(this.level === 3 ? html`<h3>${text}</h3>` : html`<h4>${text}</h4>`);
  }

  text(text: string, { weight, grey = 0 }: Setting = {}, indent = 0): void {
    const classes = [
      weight === 'strong' ? 'strong' : '',
      grey >= QUIET ? 'quiet' : '',
      indent > 0 ? 'in' : '',
    ]
      .filter((name) => name !== '')
      .join(' ');
    this.parts.push(classes === '' ? html`<p>${text}</p>` : html`<p class="${classes}">${text}</p>`);
  }

  table(columns: readonly Column[], rows: readonly (readonly Cell[])[]): void {
    if (rows.length === 0) return;
    const side = (k: number): Markup => (columns[k]?.align === 'right' ? new Markup(' class="r"') : NOTHING);
    // On a phone a row stands as a card: each cell brings its column's name along, a first one that is a number too.
    const named = (k: number): Markup => html` data-name="${columns[k]?.name ?? ''}"`;
    const cell = (value: Cell, k: number): Markup =>
      k === 0
        ? html`<th scope="row"${side(k)}${columns[0]?.align === 'right' ? named(0) : NOTHING}>${textOf(value)}</th>`
        : html`<td${side(k)}${named(k)}>${textOf(value)}</td>`;
    this.parts.push(
      html`<table><thead><tr>${columns.map(({ name }, k) => html`<th scope="col"${side(k)}>${name}</th>`)}</tr></thead><tbody>${rows.map((row) => html`<tr>${row.map(cell)}</tr>`)}</tbody></table>`,
    );
  }

  /** All that was written. */
  get written(): Markup {
    return html`${this.parts}`;
  }
}
