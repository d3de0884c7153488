import { standingAt } from '../build/placement';
import { ShapeBuilder } from '../build/shapeBuilder';
import type { PlacedPart } from '../types';
import { fixed, type PieceOf } from './making/placed';

/** Sizes of common brickwork and pots; common practice, no source. */
const CAP_METRES = 0.1;
const OVERSAIL_METRES = 0.05;
const POT_METRES = 0.45;
const POT_RADIUS_METRES = 0.13;
const POT_SIDES = 12;

/**
 * A chimney: brick `stack` of the record's width and depth and an oversailing `cap`, together of the record's
 * height, and `pots` in a row above them along the longer side.
 */
export function chimneyParts(chimney: PieceOf<'chimney'>): readonly PlacedPart[] {
  const placement = standingAt(chimney.at, chimney.headingDegrees);
  const [width, height, depth] = chimney.size;
  const cap = Math.min(CAP_METRES, height / 4);
  const stack = new ShapeBuilder().box([0, (height - cap) / 2, 0], [width, height - cap, depth]);
  const slab = new ShapeBuilder().box(
    [0, height - cap / 2, 0],
    [width + 2 * OVERSAIL_METRES, cap, depth + 2 * OVERSAIL_METRES],
  );
  const parts = [
    fixed('stack', stack.finish({ substance: 'brick' }, placement)),
    fixed('cap', slab.finish({ substance: 'concrete' }, placement)),
  ];
  if (chimney.pots > 0) {
    const pots = potsOf(chimney).finish({ substance: 'terracotta', smooth: true }, placement);
    parts.push(fixed('pots', pots));
  }
  return parts;
}

function potsOf({ size, pots }: PieceOf<'chimney'>): ShapeBuilder {
  const builder = new ShapeBuilder();
  const [width, height, depth] = size;
  const [long, short] = [Math.max(width, depth), Math.min(width, depth)];
  const radius = Math.min(POT_RADIUS_METRES, (long / pots) * 0.45, short * 0.45);
  for (let k = 0; k < pots; k += 1) {
    const along = long * ((k + 0.5) / pots - 0.5);
    const [x, z] = width >= depth ? [along, 0] : [0, along];
    // Outside, from the foot up over the rolled rim, then down into the flue.
    const rings = [
      [0, 1],
      [0.82, 0.78],
      [0.84, 0.95],
      [1, 0.95],
      [1, 0.72],
      [0.45, 0.62],
    ].map(([rise, share]) => ({
      at: [x, height + POT_METRES * rise, z] as const,
      radii: [radius * share, radius * share] as const,
    }));
    builder.sweep(rings, POT_SIDES);
  }
  return builder;
}
