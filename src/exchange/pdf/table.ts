import type { At, Box, Pen, Setting } from './marks';

/** What a table is written on: pages from the top down. */
export interface TableSheet {
  readonly room: Box;
  /** Points from the top of the page. */
  readonly y: number;
  leading(setting?: Setting): number;
  linesOf(text: string, setting: Setting, width: number): readonly string[];
  line(text: string, at: At, setting?: Setting): void;
  later(text: () => string, at: At, setting?: Setting): void;
  shape(points: readonly At[], pen: Pen): void;
  gap(points: number): void;
  need(height: number): boolean;
}

/** A column of a table. */
export interface Column {
  readonly name: string;
  /** Its share of the width against the others'. */
  readonly share: number;
  readonly align?: 'left' | 'right';
}

/** What stands in a cell; a function for what is known only when all pages are there. */
export type Cell = string | (() => string);

const GAP = 8;
const PAD = 2.5;
/** Of a row that goes on over pages, at least so many lines are worth beginning. */
const LEAST_LINES = 3;
const NAMES: Setting = { size: 8, grey: 0.35 };
const TEXT: Setting = { size: 8.5 };

/** A table over the page's width: cells wrap, a row stays on one page where a page holds it, the names come again on each. Nothing where it has no rows. */
export function table(
  writer: TableSheet,
  columns: readonly Column[],
  rows: readonly (readonly Cell[])[],
): void {
  if (rows.length === 0) return;
  const [edge, top, right, bottom] = writer.room;
  const shares = columns.reduce((sum, { share }) => sum + share, 0);
  const room = right - edge - GAP * (columns.length - 1);
  const widths = columns.map(({ share }) => (room * share) / shares);
  const lefts = widths.map((_, k) => edge + widths.slice(0, k).reduce((sum, width) => sum + width + GAP, 0));
  const names = columns.map(({ name }) => name);

  const linesOf = (cells: readonly Cell[], setting: Setting): readonly (readonly Cell[])[] =>
    cells.map((cell, k) => (typeof cell === 'function' ? [cell] : writer.linesOf(cell, setting, widths[k])));
  const mostOf = (lines: readonly (readonly Cell[])[]): number =>
    Math.max(1, ...lines.map(({ length }) => length));
  const heightOf = (count: number, setting: Setting): number => count * writer.leading(setting) + 2 * PAD;

  const put = (lines: readonly (readonly Cell[])[], setting: Setting): void => {
    for (const [k, cell] of lines.entries()) {
      const align = columns[k].align ?? 'left';
      const x = align === 'right' ? lefts[k] + widths[k] : lefts[k];
      for (const [row, line] of cell.entries()) {
        const at = [x, writer.y + PAD + row * writer.leading(setting)] as const;
        if (typeof line === 'function') writer.later(line, at, { ...setting, align });
        else writer.line(line, at, { ...setting, align });
      }
    }
    writer.gap(heightOf(mostOf(lines), setting));
    writer.shape(
      [
        [edge, writer.y],
        [right, writer.y],
      ],
      { line: 0.75, width: 0.4 },
    );
  };
  const putNames = (): void => put(linesOf(names, NAMES), NAMES);
  /** What a page holds below the names. */
  const namesHeight = heightOf(mostOf(linesOf(names, NAMES)), NAMES);
  const mostLines = Math.floor((bottom - top - namesHeight - 2 * PAD) / writer.leading(TEXT));

  for (const [number, row] of rows.entries()) {
    const lines = linesOf(row, TEXT);
    const most = mostOf(lines);
    // A row that no page holds begins where it is and goes on over as many as it takes.
    for (let from = 0; from < most; ) {
      const above = number === 0 && from === 0 ? namesHeight : 0;
      const left = Math.floor((writer.room[3] - writer.y - above - 2 * PAD) / writer.leading(TEXT));
      const size = most > mostLines && left >= LEAST_LINES ? Math.min(left, mostLines) : mostLines;
      const some = lines.map((cell) => cell.slice(from, from + size));
      const isNewPage = writer.need(above + heightOf(mostOf(some), TEXT));
      if (above > 0 || isNewPage) putNames();
      put(some, TEXT);
      from += size;
    }
  }
}
