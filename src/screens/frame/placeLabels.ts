import { type Box, overlap } from './pictureBox';

const GAP = 8;

function within(label: Box, area: Box): Box {
  const most = (low: number, value: number, high: number): number => Math.max(low, Math.min(value, high));
  return {
    ...label,
    left: most(area.left, label.left, area.left + area.width - label.width),
    top: most(area.top, label.top, area.top + area.height - label.height),
  };
}

/**
 * Places a label beside each mark, to the right, left, below or above it, inside the area and over no label placed
 * before nor over what is `taken`; null for one that finds no room. The first marks have the first choice.
 */
export function placeLabels(
  marks: readonly { readonly mark: Box; readonly width: number; readonly height: number }[],
  area: Box,
  taken: readonly Box[] = [],
): readonly (Box | null)[] {
  const placed: Box[] = [...taken];
  return marks.map(({ mark, width, height }) => {
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
    const free = tries
      .map((label) => within(label, area))
      .filter((label) => !overlap(label, mark) && placed.every((other) => !overlap(label, other)));
    // Rather over no other mark either; over one, if that is the only room.
    const found = free.find((label) => marks.every((other) => !overlap(label, other.mark))) ?? free[0];
    if (!found) return null;
    placed.push(found);
    return found;
  });
}
