import type { ItemReport, Report, SetupReport } from '../../../src/core/report/types';

/** A setup of a report by its id; throws where there is none. */
export function setupIn({ setups }: Report, id: string): SetupReport {
  const found = setups.find((setup) => setup.id === id);
  if (!found) throw new Error(`the report has no setup "${id}"`);
  return found;
}

/** An item in a setup's report by its id; throws where there is none. */
export function itemIn({ items }: SetupReport, id: string): ItemReport {
  const found = items.find((item) => item.id === id);
  if (!found) throw new Error(`the setup's report has no item "${id}"`);
  return found;
}
