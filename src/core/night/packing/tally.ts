import type { Spared } from '../../plan/schema/night';
import type { Department, PackingNeed } from './types';

/** One thing of the plan as it goes into a line. */
export interface Counted {
  readonly label: string;
  readonly itemId: string;
  /** What about this one is worth saying, such as how high it stands. */
  readonly note?: string;
  /** How many or how much it is; 1 where left out. */
  readonly count?: number;
}

/** Things of one label put together, lines in the order in which they first came. */
export function tallied(
  department: Department,
  spared: Spared | null,
  things: readonly Counted[],
  unit: PackingNeed['unit'] = 'pieces',
): readonly PackingNeed[] {
  const lines = new Map<string, { count: number; notes: string[]; itemIds: string[] }>();
  for (const { label, itemId, note, count = 1 } of things) {
    const line = lines.get(label) ?? { count: 0, notes: [], itemIds: [] };
    lines.set(label, line);
    line.count += count;
    line.itemIds.push(itemId);
    if (note !== undefined) line.notes.push(note);
  }
  return [...lines].map(([label, { count, notes, itemIds }]) => ({
    department,
    label,
    count,
    unit,
    spared,
    detail: [...new Set(notes)].join(', '),
    itemIds: [...new Set(itemIds)],
  }));
}

/** A line of one thing that the plan has no item for. */
export const oneLine = (
  department: Department,
  label: string,
  count: number,
  more: Partial<Pick<PackingNeed, 'unit' | 'spared' | 'detail' | 'itemIds'>> = {},
): readonly PackingNeed[] =>
  count > 0
    ? [{ department, label, count, unit: 'pieces', spared: null, detail: '', itemIds: [], ...more }]
    : [];
