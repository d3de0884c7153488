import type { Plan } from '../../core/plan/schema/plan';
import type { Report } from '../../core/report/types';
import { plainText } from '../plainText';
import { setInColumns } from './columns';
import { continuityLines, holeLines } from './continuityLines';
import type { Ink } from './ink';
import { byWorst, ITEM_COLUMN_NAMES, ITEM_COLUMNS, itemRow, MARK } from './itemRow';
import { hasRow, restLines } from './rest';
import { setupHeading } from './setupHeading';
import { cutTo } from './textWidth';
import { intrudes, neverShown } from './wishes';

const INDENT = '  ';

/**
 * The report as lines to read: under each setup a row for each item that has a wish and for the cast, worst first;
 * then what may be in frame and is, on one line, and how many items are clear, on another; then what breaks the
 * continuity with the other setups, and what is said of it.
 */
export function reportTable(report: Report, plan: Plan, width: number, ink: Ink): string[] {
  const room = width - INDENT.length;
  const shown = report.setups.map((setup) => setup.items.filter(hasRow).sort(byWorst));
  const rows = report.setups.map((setup, index) => shown[index].map((item) => itemRow(item, setup, plan)));
  // All setups share their columns, so that the eye can run down the whole night.
  const [names, ...set] = setInColumns(ITEM_COLUMNS, [ITEM_COLUMN_NAMES, ...rows.flat()], room);
  const lines = [ink.strong(cutTo(plainText(report.title), width))];
  if (set.length > 0) lines.push('', INDENT + ink.faint(names));
  let next = 0;
  report.setups.forEach((setup, index) => {
    lines.push('', ...setupHeading(setup, plan, width, ink));
    for (const item of shown[index]) {
      lines.push(INDENT + (intrudes(item) ? ink.strong(set[next]) : set[next]));
      next += 1;
    }
    lines.push(...restLines(setup.items, room).map((line) => INDENT + ink.faint(line)));
    lines.push(...continuityLines(setup.continuity, room, ink).map((line) => INDENT + line));
  });
  if (shown.flat().some(intrudes)) lines.push('', `${MARK} should keep out, and can be seen`);
  const notes = [
    ...neverShown(report).map((item) => `${item.label} must show, and never does.`),
    ...holeLines(report.coverage),
    ...report.notices.map((notice) => notice.sentence),
  ];
  if (notes.length > 0) lines.push('', ...notes.map(plainText));
  return lines;
}
