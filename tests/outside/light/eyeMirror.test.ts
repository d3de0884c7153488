import { describe, expect, test } from 'vitest';
import { length, scale, subtract, unit, type Vec3 } from '../../../src/core/form/build/vector';
import type { Eye } from '../../../src/core/form/figure/eyes';
import { CORNEA_METRES, imageMetres, mirroring } from '../../../src/core/light/eyeMirror';

const EYE: Eye = {
  eye: 'right',
  apex: [0, 0, 0],
  forward: [0, 0, -1],
  right: [1, 0, 0],
  up: [0, 1, 0],
};

/**
 * The place on the ball by which light takes the shortest way: on a convex mirror that is where it is turned back. By
 * halving steps over two angles, without any normal. Source: Fermat's principle, any textbook of optics
 */
function shortestWay(source: Vec3, viewer: Vec3): Vec3 {
  const placeOf = (turn: number, rise: number): Vec3 => [
    CORNEA_METRES * Math.sin(turn) * Math.cos(rise),
    CORNEA_METRES * Math.sin(rise),
    CORNEA_METRES - CORNEA_METRES * Math.cos(turn) * Math.cos(rise),
  ];
  const way = (turn: number, rise: number): number => {
    const at = placeOf(turn, rise);
    return length(subtract(source, at)) + length(subtract(viewer, at));
  };
  let best: readonly [number, number] = [0, 0];
  for (let step = 0.4; step > 1e-7; step /= 2) {
    for (let again = true; again; ) {
      again = false;
      for (const [a, b] of [
        [step, 0],
        [-step, 0],
        [0, step],
        [0, -step],
      ]) {
        const next = [best[0] + a, best[1] + b] as const;
        if (way(...next) < way(...best) - 1e-15) {
          best = next;
          again = true;
        }
      }
    }
  }
  return placeOf(...best);
}

describe('an eye as a mirror', () => {
  test.each<readonly [string, Vec3, Vec3]>([
    ['key and lens a step apart', [-1, 0.8, -2], [0.3, 0, -3]],
    ['a key beside the lens', [0.2, 0.1, -4], [0, 0, -4]],
    ['a bounce close to the face', [0.3, -0.3, -0.5], [-0.5, 0.1, -1.5]],
    ['a lamp far off', [-12, 6, -20], [1.5, 0.2, -6]],
  ])('turns %s where the way is shortest', (_name, source, viewer) => {
    const found = mirroring(EYE, source, viewer);
    const shortest = shortestWay(source, viewer);
    // A hundredth of a millimetre of an iris of 11.7.
    expect(length(subtract(found?.at ?? [1, 1, 1], shortest))).toBeLessThan(1e-5);
  });

  test('makes an image as large as a textbook’s mirror does: 1 ÷ u + 1 ÷ v = 2 ÷ r', () => {
    // Of what is far away, 3.90 mm behind the cornea of 7.80 mm. Source: [purkinje-image]
    for (const away of [0.3, 1, 2, 8]) {
      const behind = 1 / (2 / 0.0078 + 1 / away);
      expect(imageMetres(1.2, away)).toBeCloseTo((1.2 * behind) / away, 9);
      expect(behind).toBeLessThan(0.0039);
    }
    // A square of a metre at two metres is a sixth of an iris.
    expect(imageMetres(1, 2) / 0.0117).toBeCloseTo(1 / 6, 2);
  });

  test('turns nothing that the lids cover, nothing from the side, nothing from behind', () => {
    const lens: Vec3 = [0, 0, -3];
    expect(mirroring(EYE, [0, 3, -3], lens)).not.toBeNull();
    expect(mirroring(EYE, [0, 9, -3], lens)).toBeNull();
    expect(mirroring(EYE, [0, -9, -1], lens)).toBeNull();
    expect(mirroring(EYE, [-9, 0, 3], lens)).toBeNull();
    expect(mirroring(EYE, [0, 0, 4], scale(unit([1, 0, -1]), 3))).toBeNull();
  });
});
