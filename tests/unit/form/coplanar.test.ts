import { describe, expect, test } from 'vitest';
import { figureParts } from '../../../src/core/form/figure';
import { formsAt } from '../../../src/core/form/formsAt';
import { gearParts } from '../../../src/core/form/gear';
import { pieceParts } from '../../../src/core/form/pieces';
import type { PlacedPart } from '../../../src/core/form/types';
import type { Gear } from '../../../src/core/plan/schema/gear';
import type { Piece } from '../../../src/core/plan/schema/pieces';
import { drawFrom } from '../../plans/draw';
import { CROWDED, DEMO, PAPER, readPlan } from '../../plans/readPlan';
import { GEAR_KINDS, someGear } from '../../plans/someGear';
import { PIECE_KINDS, roofPieces, somePiece } from '../../plans/somePiece';
import { coplanarPairs } from './coplanar';
import { acted, EVERYONE, STANCES } from './figure/people';
import { ARM_STAND, EVERY_KIND, planOf, STAND } from './gear/plans';
import { ROOFTOP, SKYLINE } from './pieces/rooftop';

const GROUND = { surface: 'concrete', wetness: 'wet down' } as const;
const ROOF = { halfX: 12, halfZ: 8 };
/** Records of each kind whose sizes are drawn. */
const DRAWN = 25;

/** What is wrong with the items, each line with the item it is about. */
const faults = <Item extends { readonly id: string }>(
  items: readonly Item[],
  partsOf: (item: Item) => readonly PlacedPart[],
): string[] => items.flatMap((item) => coplanarPairs(partsOf(item)).map((pair) => `${item.id}: ${pair}`));

const drawn = <Kind extends string, Item>(kind: Kind, make: (id: string, seed: number) => Item): Item[] =>
  Array.from({ length: DRAWN }, (_, k) => make(`${kind} ${k}`, 100 * k + kind.length));

describe('no two parts of an item have faces in one plane, one over the other', () => {
  test.each([...ROOFTOP, ...SKYLINE, ...roofPieces(ROOF)].map((piece) => [piece.label, piece] as const))(
    '%s',
    (_, piece) => {
      expect(coplanarPairs(pieceParts(piece, GROUND))).toEqual([]);
    },
  );

  test.each(PIECE_KINDS)('a %s of many sizes', (kind) => {
    const pieces = drawn(kind, (id, seed): Piece => somePiece(id, kind, ROOF, drawFrom(seed)));
    // Roofs that end with their walls, too.
    const flush = pieces.flatMap((piece): Piece[] =>
      piece.kind === 'shed' || piece.kind === 'stair house' ? [{ ...piece, overhangMetres: 0 }] : [],
    );
    expect(faults([...pieces, ...flush], (piece) => pieceParts(piece, GROUND))).toEqual([]);
  });

  test.each(EVERY_KIND.map((gear) => [gear.id, gear] as const))('%s', (_, gear) => {
    expect(coplanarPairs(gearParts(gear, planOf(EVERY_KIND)))).toEqual([]);
  });

  test.each(GEAR_KINDS)('a %s of many sizes', (kind) => {
    const { kit } = planOf([]);
    const standIds = [STAND.id, ARM_STAND.id];
    const gear = drawn(kind, (id, seed): Gear => someGear(id, kind, ROOF, { kit, standIds }, drawFrom(seed)));
    const plan = planOf([STAND, ARM_STAND, ...gear]);
    expect(faults(gear, (each) => gearParts(each, plan))).toEqual([]);
  });

  test.each(STANCES)('people, stance "%s"', (stance) => {
    const everyone = EVERYONE.map((who, k) => ({ ...who, id: `${who.id} ${k}` }));
    expect(
      faults(everyone, (who) => {
        const { plan, performer } = acted(who, [{ atSeconds: 0, stance, headingDegrees: 40 }]);
        return figureParts(performer, plan, 0);
      }),
    ).toEqual([]);
  });

  test.each([DEMO, CROWDED, PAPER])('%s', (path) => {
    expect(faults(formsAt(readPlan(path), 7), ({ parts }) => parts)).toEqual([]);
  });
});

describe('what counts', () => {
  const box = (name: string, x: number, z: number): PlacedPart => {
    const record: Piece = {
      id: name,
      label: name,
      kind: 'box',
      at: [x, 0, z],
      headingDegrees: 0,
      size: [1, 1, 1],
      material: 'brick',
    };
    return pieceParts(record, GROUND)[0];
  };

  test('faces beside, behind or against each other do not', () => {
    expect(coplanarPairs([box('a', 0, 0), box('b', 1, 0)])).toEqual([]);
    expect(coplanarPairs([box('a', 0, 0), box('b', 3, 0)])).toEqual([]);
  });

  test('faces one over the other do', () => {
    expect(coplanarPairs([box('a', 0, 0), box('b', 0.5, 0.3)])).toEqual(['box (0) and box (1): 7000.0 cm²']);
  });
});
