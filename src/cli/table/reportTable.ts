import { glassOf } from '../../core/optics/camera';
import type { Plan } from '../../core/plan/schema/plan';
import { setupLetter } from '../../core/plan/setupLetter';
import { type ItemReport, type Report, type SetupReport, VERDICTS } from '../../core/report/types';
import { formatDegrees } from '../../core/units/angles';
import { formatSeconds } from '../../core/units/seconds';
import { formatShare } from '../../core/units/shares';
import { plainText } from '../plainText';
import { type ColumnRule, setInColumns } from './columns';
import type { Ink } from './ink';
import { noteOf, whenOf } from './itemWords';
import { cutTo, textWidth } from './textWidth';
import { intrudes } from './wishes';

const COLUMNS: readonly ColumnRule[] = [
  {},
  {},
  { side: 'right' },
  { leastWidth: 12 },
  { leastWidth: 8, spare: true },
  { leastWidth: 10, spare: true },
  { leastWidth: 10, spare: true },
];
const NAMES = ['', 'verdict', 'share', 'item', 'part', 'when', 'note'];
const MARK = '×';
const INDENT = '  ';

/** The report as lines to read: under each setup its items, worst first, and the clear ones counted. */
export function reportTable(report: Report, plan: Plan, width: number, ink: Ink): string[] {
  const shown = report.setups.map((setup) =>
    setup.items.filter(({ verdict }) => verdict !== 'clear').sort(byWorst),
  );
  const rows = report.setups.map((setup, index) => shown[index].map((item) => rowOf(item, setup, plan)));
  // All setups share their columns, so that the eye can run down the whole night.
  const [names, ...set] = setInColumns(COLUMNS, [NAMES, ...rows.flat()], width - INDENT.length);
  const lines = [ink.strong(cutTo(plainText(report.title), width))];
  if (set.length > 0) lines.push('', INDENT + ink.faint(names));
  let next = 0;
  report.setups.forEach((setup, index) => {
    lines.push('', ...headingLines(setup, plan, width, ink));
    for (const item of shown[index]) {
      lines.push(INDENT + (intrudes(item) ? ink.strong(set[next]) : set[next]));
      next += 1;
    }
    const clear = setup.items.length - shown[index].length;
    if (clear > 0) lines.push(INDENT + ink.faint(clearLine(clear, shown[index].length)));
  });
  if (shown.flat().some(intrudes)) lines.push('', `${MARK} should keep out, and can be seen.`);
  if (report.notices.length > 0) lines.push('', ...report.notices.map(({ sentence }) => plainText(sentence)));
  return lines;
}

function clearLine(clear: number, others: number): string {
  return `${clear} ${others > 0 ? 'more ' : ''}${clear === 1 ? 'item' : 'items'} clear of the frame`;
}

function headingLines(setup: SetupReport, plan: Plan, width: number, ink: Ink): string[] {
  const [heading, glass] = headingOf(setup, plan);
  const together = textWidth(heading) + INDENT.length + textWidth(glass);
  if (together <= width) return [`${ink.strong(heading)}${INDENT}${glass}`];
  return [ink.strong(cutTo(heading, width)), cutTo(INDENT + glass, width)];
}

/** `A  Wide on the stair house`, and the lens, angles and span in words. */
function headingOf(setup: SetupReport, plan: Plan): readonly [string, string] {
  const place = plan.setups.findIndex((each) => each.id === setup.id);
  const { lens } = glassOf(plan, plan.setups[place]);
  const squeeze = lens.squeeze === 1 ? '' : `, ${lens.squeeze}x squeeze`;
  const angles = `${formatDegrees(setup.angles.horizontal)} by ${formatDegrees(setup.angles.vertical)}`;
  const [from, to] = setup.seconds;
  const span = from === to ? `at ${formatSeconds(from)}` : `${formatSeconds(from)} to ${formatSeconds(to)}`;
  return [
    plainText(`${setupLetter(place)}  ${setup.label}`),
    `${lens.focalMm}\u00a0mm${squeeze}, ${angles}, ${span}`,
  ];
}

/** What breaks a wish first, then by verdict, then by how much of the frame it takes. */
function byWorst(a: ItemReport, b: ItemReport): number {
  const share = (item: ItemReport): number => (item.verdict === 'mirrored' ? item.mirroredShare : item.share);
  return (
    Number(intrudes(b)) - Number(intrudes(a)) ||
    VERDICTS.indexOf(a.verdict) - VERDICTS.indexOf(b.verdict) ||
    Number(b.wish === 'keep out') - Number(a.wish === 'keep out') ||
    share(b) - share(a)
  );
}

function rowOf(item: ItemReport, setup: SetupReport, plan: Plan): string[] {
  const mirrored = item.verdict === 'mirrored';
  const share = mirrored ? item.mirroredShare : item.share;
  const parts = [...(mirrored ? item.mirroredParts : item.parts)].sort((a, b) => b.share - a.share);
  const part =
    parts.length === 0
      ? ''
      : parts.length === 1
        ? parts[0].name
        : `${parts[0].name}, ${parts.length - 1} more`;
  return [
    intrudes(item) ? MARK : '',
    item.verdict,
    share > 0 ? formatShare(share) : '',
    plainText(item.label),
    plainText(part),
    whenOf(mirrored ? item.mirroredSpans : item.spans, setup.seconds),
    noteOf(item, plan),
  ];
}
