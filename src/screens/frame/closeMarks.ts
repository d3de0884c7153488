import type { ItemReport } from '../../core/report/types';
import { formatLength, type LengthSystem } from '../../core/units/lengths';
import type { Box } from './pictureBox';

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
const ROW = 22;
const SHORTEST = 3;
export const PIXELS_PER_LETTER = 6.1;

/**
 * Where the report gives the edge but not the place along it, marks of one edge stand in a row: from two fifths
 * of the height down, or from the middle to the right.
 */
export function closeMarks(
  items: readonly ItemReport[],
  frame: Box,
  lengths: LengthSystem,
  named: boolean,
): readonly CloseMark[] {
  const rows = new Map<string, number>();
  return items.flatMap((item): CloseMark[] => {
    if (!item.margin) return [];
    const { edge, metres, frameWidths } = item.margin;
    const row = rows.get(edge) ?? 0;
    rows.set(edge, row + 1);
    const distance = formatLength(metres, lengths);
    const text = named ? `${item.label}, ${distance}` : distance;
    const width = GLYPH + 5 + text.length * PIXELS_PER_LETTER;
    const away = Math.max(Math.min(frameWidths * frame.width, frame.left), SHORTEST);
    const place = { id: item.id, text };

    if (edge === 'left' || edge === 'right') {
      const y = frame.top + frame.height * 0.42 + row * ROW;
      const isLeft = edge === 'left';
      const x = isLeft ? frame.left : frame.left + frame.width;
      const out = isLeft ? x - away : x + away;
      const left = isLeft ? x + 6 : x - 6 - width;
      return [
        {
          ...place,
          path: `M${out} ${y}H${x}M${out} ${y - 4}v8M${x} ${y - 4}v8`,
          glyph: [isLeft ? left : x - 6 - GLYPH, y - 8],
          textAt: [isLeft ? left + GLYPH + 5 : x - 6 - GLYPH - 5, y + 3],
          anchor: isLeft ? 'start' : 'end',
          box: { left, top: y - 9, width, height: 18 },
        },
      ];
    }
    const isTop = edge === 'top';
    const x = frame.left + frame.width / 2;
    const y = isTop ? frame.top : frame.top + frame.height;
    const out = isTop ? y - away : y + away;
    const top = isTop ? y + 6 + row * ROW : y - 22 - row * ROW;
    return [
      {
        ...place,
        path: row === 0 ? `M${x} ${out}V${y}M${x - 4} ${out}h8M${x - 4} ${y}h8` : '',
        glyph: [x + 8, top],
        textAt: [x + 8 + GLYPH + 5, top + 11],
        anchor: 'start',
        box: { left: x + 8, top, width, height: 18 },
      },
    ];
  });
}
