import { describe, expect, test } from 'vitest';
import { gearParts } from '../../../src/core/form/gear';
import { pieceParts } from '../../../src/core/form/pieces';
import { drawFrom } from '../../plans/draw';
import { GEAR_KINDS, someGear } from '../../plans/someGear';
import { PIECE_KINDS, somePiece } from '../../plans/somePiece';
import { ARM_STAND, EVERY_KIND, planOf, STAND } from './gear/plans';
import { pieceVolumes } from './gear/solids';
import { ROOFTOP } from './pieces/rooftop';
import { axesOutside, isSound, openEdges, SHEETS, windings } from './solids';

const GROUND = { surface: 'concrete', wetness: 'dry' } as const;
const ROOF = { halfX: 12, halfZ: 8 };
const DRAWN = 12;

describe('axes of round members lie inside them', () => {
  test.each(ROOFTOP.map((piece) => [piece.label, piece] as const))('%s', (_, piece) => {
    for (const { name, shape } of pieceParts(piece, GROUND)) expect(axesOutside(shape), name).toEqual([]);
  });

  test.each(EVERY_KIND.map((gear) => [gear.id, gear] as const))('%s', (_, gear) => {
    for (const { name, shape } of gearParts(gear, planOf(EVERY_KIND)))
      expect(axesOutside(shape), name).toEqual([]);
  });
});

describe('of many sizes solids are closed, face outwards and hold their axes', () => {
  test.each(PIECE_KINDS)('a %s', (kind) => {
    for (let seed = 0; seed < DRAWN; seed += 1) {
      const piece = somePiece(`${kind} ${seed}`, kind, ROOF, drawFrom(seed));
      for (const { name, shape } of pieceParts(piece, GROUND)) {
        expect(isSound(shape), name).toBe(true);
        if (SHEETS.test(name)) continue;
        expect(openEdges(shape), `${seed}: ${name}`).toEqual([]);
        for (const volume of pieceVolumes(shape)) expect(volume, `${seed}: ${name}`).toBeGreaterThan(0);
        expect(axesOutside(shape), `${seed}: ${name}`).toEqual([]);
      }
    }
  });

  test.each(GEAR_KINDS)('a %s', (kind) => {
    const { kit } = planOf([]);
    const standIds = [STAND.id, ARM_STAND.id];
    for (let seed = 0; seed < DRAWN; seed += 1) {
      const gear = someGear(`${kind} ${seed}`, kind, ROOF, { kit, standIds }, drawFrom(seed));
      for (const { name, shape } of gearParts(gear, planOf([STAND, ARM_STAND, gear]))) {
        expect(isSound(shape), name).toBe(true);
        expect(openEdges(shape), `${seed}: ${name}`).toEqual([]);
        for (const volume of pieceVolumes(shape)) expect(volume, `${seed}: ${name}`).toBeGreaterThan(0);
        expect(axesOutside(shape), `${seed}: ${name}`).toEqual([]);
      }
    }
  });
});

test('windings are counted: none outside of a solid, one inside', () => {
  const box = ROOFTOP.find(({ kind }) => kind === 'box');
  if (box?.kind !== 'box') throw new Error('The rooftop has no box.');
  const [{ shape }] = pieceParts({ ...box, at: [0, 0, 0], headingDegrees: 0 }, GROUND);
  expect(windings(shape, [0, 0.4, 0])).toBeCloseTo(1, 9);
  expect(windings(shape, [0, 0.9, 0])).toBeCloseTo(0, 9);
});
