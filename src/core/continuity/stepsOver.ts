/**
 * What is found of each of a list, one after the other, so that whoever takes the steps may stop between two of them:
 * yields the done share, 0..1.
 */
export function* stepsOver<Item, Found>(
  items: readonly Item[],
  find: (item: Item, place: number) => readonly Found[],
): Generator<number, readonly Found[], void> {
  const found: Found[] = [];
  for (const [place, item] of items.entries()) {
    yield place / items.length;
    found.push(...find(item, place));
  }
  return found;
}
