import { type Box, overlap } from './pictureBox';

const GAP = 8;
/** Places farther off are tried so far apart, and so far off at most, pixels: a longer line says no more of where to look. */
const STEP = 8;
const FARTHEST = 120;

/** What is marked in the picture, and how large its label is. */
export interface Labelled {
  readonly mark: Box;
  readonly width: number;
  readonly height: number;
}

const most = (low: number, value: number, high: number): number => Math.max(low, Math.min(value, high));

const within = (label: Box, area: Box): Box => ({
  ...label,
  left: most(area.left, label.left, area.left + area.width - label.width),
  top: most(area.top, label.top, area.top + area.height - label.height),
});

/** How far two rectangles are apart, pixels. */
const apart = (a: Box, b: Box): number =>
  Math.hypot(
    Math.max(0, a.left - b.left - b.width, b.left - a.left - a.width),
    Math.max(0, a.top - b.top - b.height, b.top - a.top - a.height),
  );

/** To the right, left, below and above of a mark, the likeliest first. */
function beside({ mark, width, height }: Labelled, area: Box): readonly Box[] {
  const size = { width, height };
  const right = mark.left + mark.width + GAP;
  const left = mark.left - GAP - width;
  const tries: readonly Box[] = [
    { left: right, top: mark.top, ...size },
    { left, top: mark.top, ...size },
    { left: mark.left, top: mark.top + mark.height + GAP, ...size },
    { left: mark.left, top: mark.top - GAP - height, ...size },
    { left: right, top: mark.top + mark.height - height, ...size },
    { left, top: mark.top + mark.height - height, ...size },
    { left, top: mark.top + height + GAP, ...size },
  ];
  return tries.map((label) => within(label, area)).filter((label) => !overlap(label, mark));
}

/** The place nearest to a mark that will do, wherever in the area; undefined where there is none. */
function nearest(
  { mark, width, height }: Labelled,
  area: Box,
  willDo: (label: Box) => boolean,
): Box | undefined {
  let found: Box | undefined;
  let least = FARTHEST;
  for (let top = area.top; top <= area.top + area.height - height; top += STEP) {
    for (let left = area.left; left <= area.left + area.width - width; left += STEP) {
      const label = { left, top, width, height };
      const far = apart(label, mark);
      if (far < GAP || far >= least || !willDo(label)) continue;
      [found, least] = [label, far];
    }
  }
  return found;
}

/**
 * Places a label beside each mark, to the right, left, below or above it, inside the area and over no label placed
 * before nor over what is `taken`; where it would lie over something `outlined`, a little farther off; over that where
 * there is no other room, and null where there is none at all. The first marks have the first choice.
 */
export function placeLabels(
  marks: readonly Labelled[],
  area: Box,
  taken: readonly Box[] = [],
  outlined: readonly Box[] = marks.map(({ mark }) => mark),
): readonly (Box | null)[] {
  const placed: Box[] = [...taken];
  return marks.map((labelled) => {
    const isFree = (label: Box): boolean => placed.every((other) => !overlap(label, other));
    const isClear = (label: Box): boolean =>
      isFree(label) && outlined.every((other) => !overlap(label, other));
    const tries = beside(labelled, area);
    const found = tries.find(isClear) ?? nearest(labelled, area, isClear) ?? tries.find(isFree) ?? null;
    if (found) placed.push(found);
    return found;
  });
}
