import { describe, expect, test } from 'vitest';
import { turned } from '../../../../src/core/form/build/placement';
import { add, directionOf, length, subtract } from '../../../../src/core/form/build/vector';
import { gearParts, standTop } from '../../../../src/core/form/gear';
import { clothPlace, clothSheet } from '../../../../src/core/form/gear/cloth';
import { ARM_STAND, FLAG, planOf, STAND } from './plans';
import { middleOf, partsNamed } from './solids';

const plan = planOf([STAND, ARM_STAND, FLAG]);
const clothOf = (parts: ReturnType<typeof gearParts>) => partsNamed(parts, 'cloth')[0];

describe('a cloth', () => {
  test('has its middle at a place of its own and its normal along heading and tilt', () => {
    const { placement, grip } = clothPlace(FLAG, plan);
    expect(grip).toBeNull();
    turned(placement, [0, 0, -1]).forEach((value, axis) => {
      expect(value).toBeCloseTo(directionOf(45, 10)[axis], 9);
    });
    middleOf(clothOf(gearParts(FLAG, plan))).forEach((value, axis) => {
      expect(value).toBeCloseTo([0, 2, 0][axis], 3);
    });
  });

  test('stands on the middle of its lower edge on a spigot', () => {
    const flag = { ...FLAG, place: { on: 'stand-1' }, tiltDegrees: 0 };
    const [x, y, z] = standTop(STAND).at;
    const middle = middleOf(clothOf(gearParts(flag, plan)));
    [x, y + 0.45, z].forEach((value, axis) => {
      expect(middle[axis]).toBeCloseTo(value, 3);
    });
  });

  test('lies on its middle on a spigot when it is level', () => {
    const bounce = {
      ...FLAG,
      kind: 'bounce' as const,
      reflectance: 0.8,
      place: { on: 'stand-1' },
      tiltDegrees: 90,
    };
    middleOf(clothOf(gearParts(bounce, plan))).forEach((value, axis) => {
      expect(value).toBeCloseTo(standTop(STAND).at[axis], 3);
    });
  });

  test('goes on from an arm that runs along it, and is held by its middle on an arm square to it', () => {
    const arm = { ...ARM_STAND, arm: { lengthMetres: 1, tiltDegrees: 0, headingDegrees: 90 } };
    const withArm = planOf([arm]);
    const end = standTop(arm).at;
    const along = { ...FLAG, place: { on: arm.id }, headingDegrees: 0, tiltDegrees: 0 };
    expect(middleOf(clothOf(gearParts(along, withArm)))[0]).toBeCloseTo(end[0] + 0.6, 3);
    const square = { ...along, headingDegrees: 90 };
    middleOf(clothOf(gearParts(square, withArm))).forEach((value, axis) => {
      expect(value).toBeCloseTo(end[axis], 3);
    });
  });

  test('moves without a jump while it is turned on its arm', () => {
    const middleAt = (headingDegrees: number): number[] => {
      const { placement } = clothPlace({ ...FLAG, place: { on: 'stand-2' }, headingDegrees }, plan);
      return [placement[3], placement[7], placement[11]];
    };
    for (let heading = 0; heading < 360; heading += 1) {
      const [before, after] = [middleAt(heading), middleAt(heading + 1)];
      expect(Math.hypot(...after.map((value, axis) => value - before[axis]))).toBeLessThan(0.03);
    }
  });

  test('is black for a flag, diffusion for a frame, white or silver for a bounce, and none is porous', () => {
    const bounce = { ...FLAG, kind: 'bounce' as const };
    const substances = [
      FLAG,
      { ...FLAG, kind: 'frame' as const, transmission: 0.5 },
      { ...bounce, reflectance: 0.7 },
      { ...bounce, reflectance: 0.9 },
    ].map((cloth) => clothOf(gearParts(cloth, plan)).shape);
    expect(substances.map(({ substance }) => substance)).toEqual([
      'black cloth',
      'diffusion',
      'white cloth',
      'silver',
    ]);
    expect(substances.map(({ openness }) => openness)).toEqual([null, null, null, null]);
  });

  test('is one porous layer for a net, as large as a solid flag of that size; a net of nothing is solid', () => {
    const net = clothOf(gearParts({ ...FLAG, transmission: 0.5 }, plan)).shape;
    expect(net).toMatchObject({ substance: 'net', openness: 0.5 });
    expect(net.indices.length).toBe(6);
    const solid = clothOf(gearParts({ ...FLAG, transmission: 0 }, plan)).shape;
    expect(solid).toMatchObject({ substance: 'black cloth', openness: null });
    const reach = ({ positions }: typeof net): number =>
      [...positions].reduce((most, each) => Math.max(most, Math.abs(each)), 0);
    expect(reach(net)).toBeCloseTo(reach(solid), 2);
    const { middle, right, up } = clothSheet({ ...FLAG, transmission: 0.5 }, plan);
    const corner = add(middle, add(right, up));
    const distances = Array.from({ length: 4 }, (_, k) =>
      length(subtract(corner, [net.positions[3 * k], net.positions[3 * k + 1], net.positions[3 * k + 2]])),
    );
    expect(Math.min(...distances)).toBeLessThan(1e-6);
  });

  test('has round members about it: wire for a small one, tubing for a large one', () => {
    const radii = (size: [number, number]): number[] =>
      partsNamed(gearParts({ ...FLAG, size }, plan), 'frame')[0].shape.tubes.map(({ radius }) => radius);
    expect(new Set(radii([1.2, 0.9]))).toEqual(new Set([0.005]));
    expect(new Set(radii([2.4, 2.4]))).toEqual(new Set([0.0125]));
  });
});
