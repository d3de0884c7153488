import type { Plan } from '../../core/plan/schema/plan';
import type { Report } from '../../core/report/types';
import { plainText } from '../plainText';
import { cautionLines } from './cautionLines';
import { setInColumns } from './columns';
import { continuityLines, holeLines } from './continuityLines';
import { givenLines } from './givenLines';
import type { Ink } from './ink';
import { byWorst, ITEM_COLUMN_NAMES, ITEM_COLUMNS, itemRow, MARK } from './itemRow';
import { levelTable, lightLines } from './lightLines';
import { meterTable } from './meterTable';
import { hasRow, restLines } from './rest';
import { setupHeading } from './setupHeading';
import { cutTo } from './textWidth';
import { intrudes, neverShown, neverShownWords } from './wishes';

const INDENT = '  ';

/**
 * The report as lines to read: under each setup a row for each item that has a wish and for the cast, worst first;
 * then what may be in frame and is, on one line, and how many items are clear, on another; then the levels on the faces
 * that it shows, what lights them, and what its meters read; what breaks in its light, and what breaks the continuity
 * with the other setups; and what is said of both.
 */
export function reportTable(report: Report, plan: Plan, width: number, ink: Ink): string[] {
  const room = width - INDENT.length;
  const shown = report.setups.map((setup) => setup.items.filter(hasRow).sort(byWorst));
  const rows = report.setups.map((setup, index) => shown[index].map((item) => itemRow(item, setup, plan)));
  // All setups share their columns, so that the eye can run down the whole night.
  const [names, ...set] = setInColumns(ITEM_COLUMNS, [ITEM_COLUMN_NAMES, ...rows.flat()], room);
  const levels = levelTable(report, plan, room, ink);
  const meters = meterTable(report, plan, room, ink);
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
    lines.push(...levels[index].map((line) => INDENT + line));
    lines.push(...givenLines(setup, plan, room).map((line) => INDENT + line));
    lines.push(...meters[index].map((line) => INDENT + line));
    lines.push(...lightLines(setup, room, ink).map((line) => INDENT + line));
    lines.push(...continuityLines(setup.continuity, room, ink).map((line) => INDENT + line));
  });
  if (shown.flat().some(intrudes)) lines.push('', `${MARK} should keep out, and can be seen`);
  const cautions = cautionLines(report.cautions, width, ink);
  if (cautions.length > 0) lines.push('', ...cautions);
  const notes = [
    ...neverShown(report).map((item) => `${item.label} ${neverShownWords(item)}`),
    ...holeLines(report.coverage),
    ...report.notices.map((notice) => notice.sentence),
  ];
  if (notes.length > 0) lines.push('', ...notes.map(plainText));
  return lines;
}
