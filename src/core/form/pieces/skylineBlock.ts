import { type Placement, standingAt } from '../build/placement';
import { hashOf, shareOf } from '../build/seededHash';
import { ShapeBuilder } from '../build/shapeBuilder';
import type { Vec3 } from '../build/vector';
import type { PartShape, PlacedPart } from '../types';
import { fixed, type PieceOf } from './making/placed';
import { run, uprightSection } from './making/run';
import { litWindows, WINDOW_COLOURS, type WindowTone } from './making/windows';

const PARAPET_METRES = 0.9;
/** Fronts at night, each a little off the next so that overlapping blocks part. */
const FRONT_COLOURS = ['#2a2e38', '#33333a', '#26303a', '#37322f'] as const;

/**
 * A building of the skyline: dark `block` of the record's size, one or two things on its roof, and its lit windows
 * in three tones, `windows warm`, `windows cool` and `windows dim`. All follow from the record's seed.
 */
export function skylineBlockParts(block: PieceOf<'skyline block'>): readonly PlacedPart[] {
  const placement = standingAt(block.at, block.headingDegrees);
  const body = new ShapeBuilder().box([0, block.size[1] / 2, 0], block.size);
  const sheets = litWindows(block.size, block.windows);
  return [
    fixed('block', body.finish({ substance: 'render', colour: frontColour(block) }, placement)),
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

const frontColour = ({ windows }: PieceOf<'skyline block'>): string =>
  FRONT_COLOURS[hashOf(windows.seed, 8) % FRONT_COLOURS.length];

/** What stands on the roof, within the block's outline and above its height. */
function roofParts(block: PieceOf<'skyline block'>, placement: Placement): readonly PlacedPart[] {
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
    parts.push(fixed('plant', plant.finish({ substance: 'render', colour: frontColour(block) }, placement)));
  } else if (chance < 0.75) {
    parts.push(fixed('tank', roofTank([x, height, z], Math.min(1.5, small * 0.16), placement)));
  }
  if (shareOf(seed, 5) < 0.35) {
    const mast = new ShapeBuilder();
    const tall = Math.min(4 + 5 * shareOf(seed, 6), height);
    // Across the roof from what else stands there; where that is in the middle, beside it.
    const isBeside = Math.abs(2 * x) < width * 0.2 && Math.abs(2 * z) < depth * 0.2;
    const mastX = isBeside ? x - Math.sign(x || 1) * width * 0.25 : -x;
    mast.tube([mastX, height, -z], [mastX, height + tall, -z], Math.min(0.06, small * 0.02));
    parts.push(fixed('mast', mast.finish({ substance: 'dark metal', smooth: true }, placement)));
  }
  if (shareOf(seed, 7) < 0.5) {
    const tall = Math.min(PARAPET_METRES, height * 0.1);
    const half = small * 0.01;
    const [right, back] = [width / 2 - half, depth / 2 - half];
    const parapet = new ShapeBuilder();
    run(
      parapet,
      [
        [-right, -back],
        [right, -back],
        [right, back],
        [-right, back],
      ],
      true,
      uprightSection(half * 2, height, height + tall),
    );
    parts.push(
      fixed('parapet', parapet.finish({ substance: 'render', colour: frontColour(block) }, placement)),
    );
  }
  return parts;
}

/** A drum with a pointed lid on four square legs, its foot at `foot`. */
function roofTank([x, y, z]: Vec3, radius: number, placement: Placement): PartShape {
  const builder = new ShapeBuilder();
  const legs = radius * 1.3;
  for (const [right, back] of [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ])
    builder.box(
      [x + right * radius * 0.6, y + legs * 0.51, z + back * radius * 0.6],
      [radius * 0.12, legs * 1.02, radius * 0.12],
    );
  const rings = [
    [legs, 1],
    [legs + radius * 2, 1],
    [legs + radius * 2.7, 0.08],
  ].map(([rise, share]) => ({
    at: [x, y + rise, z] as const,
    radii: [radius * share, radius * share] as const,
  }));
  return builder.sweep(rings, 12).finish({ substance: 'boards', smooth: true }, placement);
}
