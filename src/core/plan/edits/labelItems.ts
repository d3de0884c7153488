import { itemsOf } from '../items';
import type { Plan } from '../schema/plan';
import { editCommon } from './editCommon';
import { numbered } from './freeLabel';

/** Names items by a stem and numbers from 1 on, in the order given; numbers that other items have are left out. */
export function labelItems(
  plan: Plan,
  { ids, stem }: { readonly ids: readonly string[]; readonly stem: string },
): Plan {
  const word = stem.replace(/\s+/g, ' ').trim();
  if (word === '') return plan;
  const chosen = new Set(ids);
  const taken = new Set(itemsOf(plan).flatMap(({ record }) => (chosen.has(record.id) ? [] : [record.label])));
  const labels = new Map<string, string>();
  let number = 0;
  for (const id of chosen) {
    do number += 1;
    while (taken.has(numbered(word, number)));
    labels.set(id, numbered(word, number));
  }
  return editCommon(plan, chosen, (entry) => {
    const label = labels.get(entry.id) ?? entry.label;
    return label === entry.label ? entry : { ...entry, label };
  });
}
