/** Between the end of one label and the beginning of the next, pixels. */
const GAP = 10;

/** Something to be lettered from a place on, in as many words as there is room for. */
export interface Lettered {
  readonly x: number;
  /** From the fullest to the shortest. */
  readonly texts: readonly string[];
}

export interface Placed {
  /** Empty where not even the shortest has room. */
  readonly text: string;
  readonly row: number;
}

/**
 * Letters things along a line from left to right, in one row or in two by turns: each in the fullest words that end
 * before the next thing in its row. In the lower row a label breaks the line of the thing between the two.
 * @param widthOf of a text, pixels @param until where the line ends, pixels
 */
export function placeAlong(
  things: readonly Lettered[],
  widthOf: (text: string) => number,
  until: number,
  rows: 1 | 2 = 1,
): readonly Placed[] {
  return things.map(({ x, texts }, index) => {
    const room = (things[index + rows]?.x ?? until) - x - GAP;
    return { text: texts.find((text) => widthOf(text) <= room) ?? '', row: rows === 1 ? 0 : index % 2 };
  });
}

/** A text cut so that it ends within a width, with an ellipsis; empty where not three letters would be left. */
export function cutTo(text: string, widthOf: (text: string) => number, width: number): string {
  if (widthOf(text) <= width) return text;
  for (let length = text.length - 1; length >= 3; length -= 1) {
    const cut = `${text.slice(0, length).trimEnd()}\u2026`;
    if (widthOf(cut) <= width) return cut;
  }
  return '';
}

/** How far to either side of its middle each of several things takes a press, pixels: never over its neighbour's half. */
export function reaches(
  places: readonly number[],
  most: number,
): readonly { readonly before: number; readonly after: number }[] {
  return places.map((x, index) => {
    const before = index > 0 ? (x - places[index - 1]) / 2 : most;
    const after = index + 1 < places.length ? (places[index + 1] - x) / 2 : most;
    return { before: Math.min(most, Math.max(0, before)), after: Math.min(most, Math.max(0, after)) };
  });
}
