/** The first of `stem-1`, `stem-2`, … that no entry has. */
export function freeId(entries: readonly { readonly id: string }[], stem: string): string {
  const taken = new Set(entries.map((entry) => entry.id));
  let number = 1;
  while (taken.has(`${stem}-${number}`)) number += 1;
  return `${stem}-${number}`;
}
