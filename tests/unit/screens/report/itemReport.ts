import type { ItemReport, SetupReport } from '../../../../src/core/report/types';

/** An item of a report that keeps out and is clear, but for what a test says. */
export function itemReport(changes: Partial<ItemReport> & { readonly id: string }): ItemReport {
  return {
    label: changes.id,
    kind: 'stand',
    wish: 'keep out',
    verdict: 'clear',
    share: 0,
    spans: [],
    parts: [],
    coveredBy: [],
    through: [],
    mirroredShare: 0,
    mirroredSpans: [],
    mirroredParts: [],
    mirroredExtent: null,
    margin: null,
    extent: null,
    touches: [],
    worstAtSeconds: 0,
    moveOutMetres: null,
    ...changes,
  };
}

export function setupReport(...items: readonly ItemReport[]): SetupReport {
  return {
    id: 'a',
    label: 'Wide',
    seconds: [0, 8],
    angles: { horizontal: 50, vertical: 20 },
    aspect: 2.39,
    items,
  };
}
