import type { ItemReport, Report } from '../../core/report/types';

/** Whether something that should keep out can be seen, in the lens or in a reflecting surface. */
export function intrudes({ wish, verdict }: ItemReport): boolean {
  return wish === 'keep out' && (verdict === 'showing' || verdict === 'mirrored');
}

/** Whether something that should keep out is in frame, and nobody sees it as long as the light stays as it is. */
export const reliesOnTheDark = ({ wish, verdict }: ItemReport): boolean =>
  wish === 'keep out' && verdict === 'lost in the dark';

/** Items that must show and show in none of the setups, in the order of the report. */
export function neverShown(report: Report): ItemReport[] {
  const missing = new Map<string, ItemReport>();
  const shown = new Set<string>();
  for (const item of report.setups.flatMap((setup) => setup.items)) {
    if (item.wish !== 'must show') continue;
    if (item.verdict === 'showing') shown.add(item.id);
    // Lost in the dark comes before out of frame: it says what would mend it.
    else if (!missing.has(item.id) || item.verdict === 'lost in the dark') missing.set(item.id, item);
  }
  return [...missing.values()].filter((item) => !shown.has(item.id));
}

/** What is said of an item that must show and never does. */
export const neverShownWords = ({ verdict }: ItemReport): string =>
  verdict === 'lost in the dark'
    ? 'must show, and is lost in the dark wherever it is in frame.'
    : 'must show, and never does.';
