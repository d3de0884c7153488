import type { ItemReport, Report } from '../../core/report/types';

/** Whether something that should keep out can be seen, in the lens or in a reflecting surface. */
export function intrudes({ wish, verdict }: ItemReport): boolean {
  return wish === 'keep out' && (verdict === 'showing' || verdict === 'mirrored');
}

/** Items that must show and show in none of the setups, in the order of the report. */
export function neverShown(report: Report): ItemReport[] {
  const missing = new Map<string, ItemReport>();
  const shown = new Set<string>();
  for (const item of report.setups.flatMap((setup) => setup.items)) {
    if (item.wish !== 'must show') continue;
    if (item.verdict === 'showing') shown.add(item.id);
    else if (!missing.has(item.id)) missing.set(item.id, item);
  }
  return [...missing.values()].filter((item) => !shown.has(item.id));
}
