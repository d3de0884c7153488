import { hypot, sin } from '../../units/steadyMath';
import { hashOfText, shareOf } from '../build/seededHash';
import { ShapeBuilder } from '../build/shapeBuilder';
import { mix, type Vec3 } from '../build/vector';
import type { PartShape, PlacedPart } from '../types';
import { cord } from './making/cord';
import { fixed, type PieceOf } from './making/placed';

const STRETCHES = 16;
const CLOTH_COLUMNS = 6;
const CLOTH_ROWS = 3;
/** Range of a cloth's drop below the line, and how deep its waves are; common practice, no source. */
const DROP_METRES = [0.7, 1.3] as const;
const WAVE_METRES = 0.035;

/**
 * A line that hangs between two points, and its `cloths`. Its curve is the parabola of the given sag, which a
 * tight line follows closely; the cloths are sheets that count from both sides, spread along it by the id.
 */
export function lineParts(line: PieceOf<'line'>): readonly PlacedPart[] {
  const points = Array.from({ length: STRETCHES + 1 }, (_, k) => onLine(line, k / STRETCHES));
  const parts = [fixed('line', cord(points, line.diameterMetres / 2, { substance: 'rubber', smooth: true }))];
  if (line.cloths > 0) parts.push(fixed('cloths', clothsShape(line)));
  return parts;
}

function onLine({ from, to, sagMetres }: PieceOf<'line'>, share: number): Vec3 {
  const [x, y, z] = mix(from, to, share);
  return [x, y - sagMetres * 4 * share * (1 - share), z];
}

function clothsShape(line: PieceOf<'line'>): PartShape {
  const builder = new ShapeBuilder();
  const seed = hashOfText(line.id);
  const [dx, dz] = [line.to[0] - line.from[0], line.to[2] - line.from[2]];
  const run = hypot(dx, dz);
  const across: Vec3 = run > 0 ? [-dz / run, 0, dx / run] : [0, 0, 1];
  for (let cloth = 0; cloth < line.cloths; cloth += 1) {
    const bay = 1 / line.cloths;
    const width = bay * (0.45 + 0.45 * shareOf(seed, cloth, 1));
    const start = cloth * bay + (bay - width) * shareOf(seed, cloth, 2);
    const drop = DROP_METRES[0] + (DROP_METRES[1] - DROP_METRES[0]) * shareOf(seed, cloth, 3);
    const phase = 2 * Math.PI * shareOf(seed, cloth, 4);
    const rows = Array.from({ length: CLOTH_ROWS + 1 }, (_, row) =>
      Array.from({ length: CLOTH_COLUMNS + 1 }, (_, column) => {
        const top = onLine(line, start + (width * column) / CLOTH_COLUMNS);
        const down = row / CLOTH_ROWS;
        // The waves grow from the line, where the cloth is pegged, to its free edge.
        const wave = WAVE_METRES * down * sin(phase + (column / CLOTH_COLUMNS) * 3 * Math.PI);
        return builder.corner([top[0] + across[0] * wave, top[1] - drop * down, top[2] + across[2] * wave]);
      }),
    );
    for (let row = 0; row < CLOTH_ROWS; row += 1) {
      for (let column = 0; column < CLOTH_COLUMNS; column += 1) {
        const [a, b] = [rows[row + 1][column], rows[row + 1][column + 1]];
        const [c, d] = [rows[row][column + 1], rows[row][column]];
        builder.triangle(a, b, c).triangle(a, c, d);
      }
    }
  }
  return builder.finish({ substance: 'linen', smooth: true });
}
