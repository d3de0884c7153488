import { PALETTE } from '../../core/kit/palette';
import { toolStore } from '../../desk/tools/toolStore';

const MOST = 6;
let recent: readonly string[] = [];

toolStore.subscribe(({ tool }) => {
  if (tool.type !== 'put' || recent[0] === tool.entryId) return;
  recent = [tool.entryId, ...recent.filter((id) => id !== tool.entryId)].slice(0, MOST);
});

/** Ids of the entries of the palette that were in the hand lately, filled up with the first of each heading. */
export function recentEntries(): readonly string[] {
  const headings = new Set<string>();
  const first = PALETTE.filter(({ group, how }) => {
    if (how !== 'spot' || headings.has(group)) return false;
    headings.add(group);
    return true;
  });
  return [...new Set([...recent, ...first.map(({ id }) => id)])].slice(0, MOST);
}
