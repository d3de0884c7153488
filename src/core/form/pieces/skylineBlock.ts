import { standingAt } from '../build/placement';
import { ShapeBuilder } from '../build/shapeBuilder';
import type { PlacedPart } from '../types';
import { fixed, type PieceOf } from './making/placed';
import { hashOf, shareOf } from './making/seededHash';
import { litWindows, WINDOW_COLOURS, type WindowTone } from './making/windows';

const PARAPET_METRES = 0.9;

/**
 * A building of the skyline: dark `block` of the record's size, one or two things on its roof, and its lit windows
 * in three tones, `windows warm`, `windows cool` and `windows dim`. All follow from the record's seed.
 */
export function skylineBlockParts(block: PieceOf<'skyline block'>): readonly PlacedPart[] {
  const placement = standingAt(block.at, block.headingDegrees);
  const body = new ShapeBuilder().box([0, block.size[1] / 2, 0], block.size);
  const sheets = litWindows(block.size, block.windows);
  return [
    fixed('block', body.finish({ substance: 'render' }, placement)),
    ...roofParts(block, placement),
    ...(['warm', 'cool', 'dim'] as const satisfies readonly WindowTone[])
      .filter((tone) => !sheets[tone].isEmpty)
      .map((tone) =>
        fixed(
          `windows ${tone}`,
          sheets[tone].finish({ substance: 'window', colour: WINDOW_COLOURS[tone] }, placement),
        ),
      ),
  ];
}

/** What stands on the roof, within the block's outline and above its height. */
function roofParts(block: PieceOf<'skyline block'>, placement: readonly number[]): readonly PlacedPart[] {
  const { size, windows } = block;
  const [width, height, depth] = size;
  const seed = hashOf(windows.seed, Math.round(width * 100), Math.round(height * 100));
  const small = Math.min(width, depth);
  const [x, z] = [width * (shareOf(seed, 1) - 0.5) * 0.5, depth * (shareOf(seed, 2) - 0.5) * 0.5];
  const parts: PlacedPart[] = [];
  const chance = shareOf(seed, 3);
  if (chance < 0.45) {
    const plant = new ShapeBuilder();
    const tall = Math.min(2 + 1.6 * shareOf(seed, 4), height);
    plant.box([x, height + tall / 2, z], [width * 0.34, tall, depth * 0.3]);
    parts.push(fixed('plant', plant.finish({ substance: 'render' }, placement)));
  } else if (chance < 0.75) {
    const tank = new ShapeBuilder();
    const radius = Math.min(1.5, small * 0.16);
    tank.sweep(
      [
        { at: [x, height, z], radii: [radius * 0.7, radius * 0.7] },
        { at: [x, height + radius * 1.2, z], radii: [radius * 0.7, radius * 0.7] },
        { at: [x, height + radius * 1.2, z], radii: [radius, radius] },
        { at: [x, height + radius * 3.2, z], radii: [radius, radius] },
        { at: [x, height + radius * 4, z], radii: [radius * 0.08, radius * 0.08] },
      ],
      10,
    );
    parts.push(fixed('tank', tank.finish({ substance: 'boards', smooth: true }, placement)));
  }
  if (shareOf(seed, 5) < 0.35) {
    const mast = new ShapeBuilder();
    const tall = Math.min(4 + 5 * shareOf(seed, 6), height);
    mast.tube([-x, height, -z], [-x, height + tall, -z], Math.min(0.06, small * 0.02));
    parts.push(fixed('mast', mast.finish({ substance: 'dark metal', smooth: true }, placement)));
  }
  if (shareOf(seed, 7) < 0.5) {
    const tall = Math.min(PARAPET_METRES, height * 0.1);
    const thick = small * 0.02;
    const parapet = new ShapeBuilder();
    for (const side of [-1, 1]) {
      parapet.box([0, height + tall / 2, side * (depth / 2 - thick)], [width, tall, thick]);
      parapet.box([side * (width / 2 - thick), height + tall / 2, 0], [thick, tall, depth - 3 * thick]);
    }
    parts.push(fixed('parapet', parapet.finish({ substance: 'render' }, placement)));
  }
  return parts;
}
