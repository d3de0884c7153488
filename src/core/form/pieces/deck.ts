import type { Ground } from '../../plan/schema/ground';
import { isMirroring } from '../../plan/wetness';
import { ShapeBuilder } from '../build/shapeBuilder';
import type { PlacedPart } from '../types';
import { holesThatFit } from './making/holes';
import { fixed, type PieceOf } from './making/placed';
import { LEVEL, prism, sheet } from './making/prism';
import type { Pieces } from './making/slabs';
import { wetPartsOf } from './making/wetParts';

/** The building's walls start this far below the surface, so that the two never fight for a pixel. */
const BELOW_METRES = 0.02;
/** What is left under a hole: the floor of its well lies this far above the foot of the walls. */
const WELL_FLOOR_METRES = 0.1;

/** A level sheet of triangles; corners at one place are one. */
function levelSheet(pieces: Pieces, topMetres: number): ShapeBuilder {
  const builder = new ShapeBuilder();
  const numbers = new Map<string, number>();
  const cornerOf = ([x, z]: readonly [number, number]): number => {
    const key = `${x} ${z}`;
    const known = numbers.get(key);
    if (known !== undefined) return known;
    const number = builder.corner([x, topMetres, z]);
    numbers.set(key, number);
    return number;
  };
  for (const [a, b, c] of pieces) builder.triangle(cornerOf(a), cornerOf(b), cornerOf(c));
  return builder;
}

/**
 * A roof deck: `top`, the walking surface as a sheet that faces up and mirrors when the ground is wet down or
 * puddled, and `walls`, the closed body of the building below it. Where areas make a part of the surface mirror and
 * the rest not, what mirrors is a part of its own, `wet`, cut exactly along their outlines. A hole goes through the
 * surface and down the building as a well with a floor at the foot of the walls.
 */
export function deckParts(deck: PieceOf<'deck'>, ground: Ground): readonly PlacedPart[] {
  const holes = holesThatFit(
    deck.outline,
    (deck.holes ?? []).map(({ outline }) => outline),
  );
  const walls = new ShapeBuilder();
  const gap = Math.min(BELOW_METRES, deck.dropMetres / 2);
  const foot = deck.topMetres - deck.dropMetres;
  prism(walls, deck.outline, foot, deck.topMetres - gap, LEVEL, {
    outlines: holes,
    floor: foot + Math.min(WELL_FLOOR_METRES, (deck.dropMetres - gap) / 2),
  });
  const [x, z] = deck.outline[0];
  const dry = { substance: ground.surface };
  const wet = { ...dry, mirror: { normal: [0, 1, 0], point: [x, deck.topMetres, z] } } as const;
  const parts = wetPartsOf(ground, deck.outline, holes);
  const body = fixed('walls', walls.finish({ substance: 'brick' }));
  if (typeof parts === 'object')
    return [
      fixed('top', levelSheet(parts.others, deck.topMetres).finish(dry)),
      fixed('wet', levelSheet(parts.mirroring, deck.topMetres).finish(wet)),
      body,
    ];
  const top = new ShapeBuilder();
  sheet(top, deck.outline, deck.topMetres, LEVEL, holes);
  const mirrors = parts === 'all' || (parts === 'too many crossings' && isMirroring(ground.wetness));
  return [fixed('top', top.finish(mirrors ? wet : dry)), body];
}
