import type { FrameEdge, ItemReport } from '../../core/report/types';
import { formatLength, type LengthSystem } from '../../core/units/lengths';
import { type Box, overlap } from './pictureBox';

/** A bracket from the frame line out to a close item, with a glyph and the distance inside the frame. */
export interface CloseMark {
  readonly id: string;
  readonly path: string;
  readonly glyph: readonly [x: number, y: number];
  readonly text: string;
  readonly textAt: readonly [x: number, y: number];
  readonly anchor: 'start' | 'end';
  /** What glyph and text cover. */
  readonly box: Box;
}

const GLYPH = 14;
const LINE = 18;
const SHORTEST = 3;
/** Between the bracket and its words, and between the words and the ends of the edge. */
const GAP = 6;
export const PIXELS_PER_LETTER = 6.1;
/** Where an item's place along the edge is not known. */
const SOMEWHERE = 0.42;

/** So many lines further in or down words go to stay off what is outlined. */
const MOST_LINES = 6;

/**
 * Brackets where the items come nearest to the frame line: `alongOf` tells how far along their edge, 0..1. Words that
 * would lie over those of a mark before, or over something `outlined`, go some lines further in or down.
 */
export function closeMarks(
  items: readonly ItemReport[],
  frame: Box,
  lengths: LengthSystem,
  named: boolean,
  alongOf: (item: ItemReport, edge: FrameEdge) => number | null,
  outlined: readonly Box[] = [],
): readonly CloseMark[] {
  const placed: CloseMark[] = [];
  for (const item of items) {
    if (!item.margin) continue;
    const { edge, metres, frameWidths } = item.margin;
    const distance = formatLength(metres, lengths);
    // Of a name that would fill the frame the distance alone is told: the list has the name.
    const full = `${item.label}, ${distance}`;
    const text = named && widthOf(full) < frame.width / 2 ? full : distance;
    const away = Math.max(Math.min(frameWidths * frame.width, frame.left), SHORTEST);
    const mark = { id: item.id, text, edge, away, along: alongOf(item, edge) ?? SOMEWHERE };
    const isSide = edge === 'left' || edge === 'right';
    const tries = Array.from({ length: items.length + MOST_LINES }, (_, row) =>
      isSide ? atSide(mark, frame, row) : atEnd(mark, frame, row),
    );
    const free = tries.filter(({ box }) => placed.every((other) => !overlap(other.box, box)));
    const clear = free.find(({ box }) => outlined.every((other) => !overlap(other, box)));
    const found = clear ?? free[0] ?? tries[0];
    if (found) placed.push(found);
  }
  return placed;
}

interface Wanted {
  readonly id: string;
  readonly text: string;
  readonly edge: FrameEdge;
  /** How far out the bracket reaches, pixels. */
  readonly away: number;
  readonly along: number;
}

const widthOf = (text: string): number => GLYPH + 5 + text.length * PIXELS_PER_LETTER;
const within = (value: number, low: number, high: number): number =>
  Math.max(low, Math.min(value, Math.max(low, high)));

/** At the left or right edge, a row further where that place is taken. */
function atSide({ id, text, edge, away, along }: Wanted, frame: Box, row: number): CloseMark {
  const bottom = frame.top + frame.height;
  const y = within(frame.top + along * frame.height, frame.top + LINE / 2, bottom - LINE / 2);
  // Towards the middle, where there is room for more.
  const further = along > 0.5 ? -row * LINE : row * LINE;
  const middle = within(y + further, frame.top + LINE / 2, bottom - LINE / 2);
  const isLeft = edge === 'left';
  const x = isLeft ? frame.left : frame.left + frame.width;
  const out = isLeft ? x - away : x + away;
  const width = widthOf(text);
  return {
    id,
    text,
    path: `M${out} ${y}H${x}M${out} ${y - 4}v8M${x} ${y - 4}v8`,
    glyph: [isLeft ? x + GAP : x - GAP - GLYPH, middle - 8],
    textAt: [isLeft ? x + GAP + GLYPH + 5 : x - GAP - GLYPH - 5, middle + 3],
    anchor: isLeft ? 'start' : 'end',
    box: { left: isLeft ? x + GAP : x - GAP - width, top: middle - LINE / 2, width, height: LINE },
  };
}

/** At the upper or lower edge, a row further in where that place is taken. */
function atEnd({ id, text, edge, away, along }: Wanted, frame: Box, row: number): CloseMark {
  const right = frame.left + frame.width;
  const x = frame.left + along * frame.width;
  const isTop = edge === 'top';
  const y = isTop ? frame.top : frame.top + frame.height;
  const out = isTop ? y - away : y + away;
  const width = widthOf(text);
  const beside = along > 0.5 ? x - 8 - width : x + 8;
  const left = within(beside, frame.left + GAP, right - GAP - width);
  const top = isTop ? y + GAP + row * LINE : y - GAP - LINE - row * LINE;
  return {
    id,
    text,
    path: `M${x} ${out}V${y}M${x - 4} ${out}h8M${x - 4} ${y}h8`,
    glyph: [left, top + 1],
    textAt: [left + GLYPH + 5, top + 12],
    anchor: 'start',
    box: { left, top, width, height: LINE },
  };
}
