import type { Plan } from '../../../core/plan/schema/plan';
import { NBSP } from '../../../core/units/numbers';
import { cos, sin } from '../../../core/units/steadyMath';
import { corners } from '../boxes';
import type { At, Setting } from '../marks';
import type { Drawing } from './drawing';
import type { SheetScale } from './sheetScale';

const SMALL: Setting = { size: 7 };
/** How long a bar of the scale may be, points. */
const LONGEST_BAR = 150;
const BARS = [100, 50, 20, 10, 5, 2, 1, 0.5] as const;

/** A scale in words: `1:100`. */
export const scaleWords = ({ oneTo }: SheetScale): string => `1:${oneTo}`;

/** A bar of whole metres with its scale above; `[x, y]` is its top left. */
export function scaleBar(writer: Drawing, scale: SheetScale, [x, y]: At): void {
  writer.line(`Scale ${scaleWords(scale)}`, [x, y], { ...SMALL, weight: 'strong' });
  metreBar(writer, scale.pointsPerMetre, [x, y + 12]);
}

/** A bar of whole metres; `[x, y]` is its top left. */
export function metreBar(writer: Drawing, pointsPerMetre: number, [x, top]: At): void {
  const metres = BARS.find((each) => each * pointsPerMetre <= LONGEST_BAR) ?? BARS[BARS.length - 1];
  const length = metres * pointsPerMetre;
  const bottom = top + 4;
  for (let part = 0; part < 5; part += 1) {
    const [from, to] = [x + (length * part) / 5, x + (length * (part + 1)) / 5];
    writer.shape(corners([from, top, to, bottom]), { fill: part % 2, line: 0, width: 0.4 });
  }
  writer.line('0', [x, bottom + 2], SMALL);
  writer.line(`${metres}${NBSP}m`, [x + length, bottom + 2], { ...SMALL, align: 'middle' });
}

/** An arrow to true north about a middle. */
export function northArrow(writer: Drawing, plan: Plan, [x, y]: At): void {
  const turn = (plan.place.northDegrees * Math.PI) / 180;
  const spot = (along: number, across: number): At => [
    x + along * sin(turn) + across * cos(turn),
    y - along * cos(turn) + across * sin(turn),
  ];
  writer.shape([spot(14, 0), spot(-10, 5), spot(-6, 0), spot(-10, -5)], { fill: 0, line: 0, width: 0.4 });
  const [textX, textY] = spot(21, 0);
  writer.line('N', [textX, textY - 5], { size: 8, weight: 'strong', align: 'middle' });
}

/** Points from one row of samples to the next. */
const ROW = 12;

/** Samples of how things are drawn, each with its word, in rows no farther right than `right`; gives the top of what may follow below. */
export function legend(
  writer: Drawing,
  [x, y]: At,
  right: number,
  entries: readonly { readonly word: string; readonly draw: (at: At) => void }[],
): number {
  let [left, top] = [x, y];
  for (const { word, draw } of entries) {
    const width = 18 + writer.widthOf(word, SMALL);
    if (left > x && left + width > right) [left, top] = [x, top + ROW];
    draw([left, top]);
    writer.line(word, [left + 18, top - 1], SMALL);
    left += width + 10;
  }
  return top + ROW;
}

/** The samples of a drawing of the roof; gives the top of what may follow below. */
export function roofLegend(writer: Drawing, at: At, right: number): number {
  const square = ([x, y]: At, fill: number): void =>
    writer.shape(corners([x, y, x + 14, y + 7]), { fill, line: 0.2, width: 0.5 });
  const stroke = ([x, y]: At, dash: readonly number[], grey: number): void =>
    writer.shape(
      [
        [x, y + 4],
        [x + 14, y + 4],
      ],
      { line: grey, width: 0.6, dash },
    );
  return legend(writer, at, right, [
    { word: 'set', draw: (spot) => square(spot, 0.88) },
    { word: 'gear', draw: (spot) => square(spot, 1) },
    { word: 'cable', draw: (spot) => stroke(spot, [3, 1.5], 0.35) },
    { word: 'edge of a frame', draw: (spot) => stroke(spot, [6, 2], 0.35) },
    { word: 'way of a camera', draw: (spot) => stroke(spot, [1, 1.5], 0) },
    {
      word: 'camera',
      draw: ([x, y]) =>
        writer.shape(
          [
            [x + 2, y + 3.5],
            [x + 12, y],
            [x + 12, y + 7],
          ],
          { fill: 0, line: 0, width: 0.4 },
        ),
    },
    {
      word: 'performer',
      draw: ([x, y]) =>
        writer.shape(
          Array.from({ length: 16 }, (_, k): At => {
            const angle = (k * Math.PI) / 8;
            return [x + 7 + 3.5 * cos(angle), y + 3.5 + 3.5 * sin(angle)];
          }),
          { fill: 0.7, line: 0, width: 0.5 },
        ),
    },
  ]);
}
