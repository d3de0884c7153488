import { cutTo, padTo, textWidth } from './textWidth';

/** A column of a table: which side its cells keep to, and how far it may be cut when the line is too long. */
export interface ColumnRule {
  readonly side?: 'left' | 'right';
  /** The width it keeps when others can give way; a column without it is never cut. */
  readonly leastWidth?: number;
  /** May go altogether where the line is still too long; the last such column goes first. */
  readonly spare?: boolean;
}

const GAP = '  ';

/**
 * Sets rows in aligned columns within a width. Columns that are empty throughout vanish; where the lines would be
 * too long, the widest column that may be cut gives way, again and again, and then the spare ones go.
 */
export function setInColumns(
  rules: readonly ColumnRule[],
  rows: readonly (readonly string[])[],
  width: number,
): string[] {
  const widths = rules.map((_, column) => {
    return rows.reduce((widest, row) => Math.max(widest, textWidth(row[column])), 0);
  });
  const used = (): number => {
    const shown = widths.filter((each) => each > 0);
    return shown.reduce((sum, each) => sum + each, 0) + GAP.length * Math.max(0, shown.length - 1);
  };
  while (used() > width) {
    let widest = -1;
    rules.forEach((rule, column) => {
      const mayShrink = rule.leastWidth !== undefined && widths[column] > rule.leastWidth;
      if (mayShrink && (widest < 0 || widths[column] > widths[widest])) widest = column;
    });
    if (widest < 0) break;
    widths[widest] -= 1;
  }
  for (let column = rules.length - 1; used() > width && column >= 0; column -= 1) {
    if (rules[column].spare) widths[column] = 0;
  }
  return rows.map((row) =>
    row
      .map((cell, column) => padTo(cutTo(cell, widths[column]), widths[column], rules[column].side))
      .filter((_, column) => widths[column] > 0)
      .join(GAP)
      .trimEnd(),
  );
}
