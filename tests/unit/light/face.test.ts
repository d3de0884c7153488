import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../../src/core/form/build/vector';
import { ambientLux, USUAL_AMBIENT } from '../../../src/core/light/ambient';
import { type Face, faceAt, faceLight } from '../../../src/core/light/face';
import { cylindricalLux, luxOn } from '../../../src/core/light/illuminance';
import { lightAt } from '../../../src/core/light/lightAt';
import { lightScene } from '../../../src/core/light/lightScene';
import type { Gear } from '../../../src/core/plan/schema/gear';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { darkRoof, flagAt, lampAt } from '../../plans/darkRoof';
import { keyedFace, keyOn } from '../../plans/keyedFace';

/** A face at the origin of the level that looks along −z; its own right is +x. */
const FACE: Face = {
  performerId: 'nobody',
  at: [0, 0, 0],
  forward: [0, 0, -1],
  right: [1, 0, 0],
  up: [0, 1, 0],
  headingDegrees: 0,
};
/** A lamp so many metres off, at a bearing to the face's own right, aimed at it. */
function lampFrom(id: string, bearingDegrees: number, metres: number, dim = 1): Gear {
  const turn = (bearingDegrees * Math.PI) / 180;
  const at: Vec3 = [metres * Math.sin(turn), 0, -metres * Math.cos(turn)];
  return { ...lampAt(id, 'point', at, [-at[0], 0, -at[2]]), dim };
}
const lit = (...gear: readonly Gear[]) => faceLight(lightScene(darkRoof({ gear: [...gear] }), null, 0), FACE);

describe('the light on a face', () => {
  test('from 45° to its own right falls square on that three-quarter plane and not at all on the other', () => {
    const { key, keyLux, lux, from } = lit(lampFrom('a', 45, 5));
    expect(key?.bearingDegrees).toBeCloseTo(45, 6);
    expect(keyLux).toBeCloseTo(400, 2);
    expect(key?.lux.front).toBeCloseTo(400 * Math.SQRT1_2, 2);
    // Square to the plane, half of the lens is a hair before it.
    expect(key?.lux.left).toBeLessThan(0.2);
    expect(lux.left).toBeLessThan(ambientLux(USUAL_AMBIENT, [-Math.SQRT1_2, 0, -Math.SQRT1_2]) + 0.2);
    expect(from).toBe('right');
  });

  test('key, fill and back are told apart: 4 to 1 with the fill a stop and a half under', () => {
    const { key, fillLux, keyLux, back, backLux, ratio, from } = lit(
      lampFrom('fill', 45, 5, 1 / 4),
      lampFrom('key', -45, 5, 3 / 4),
      lampFrom('back', 180, 4, 0.2),
    );
    expect([key?.itemId, back?.itemId, from]).toEqual(['key', 'back', 'left']);
    expect(keyLux).toBeCloseTo(300, 1);
    // 100 lx of the fill lamp, and the sky.
    expect(fillLux).toBeCloseTo(100 + ambientLux(USUAL_AMBIENT, [1, 0, 0]), 1);
    expect(ratio).toBeCloseTo(4, 1);
    // 125 lx square on, at 45° to the edge.
    expect(backLux).toBeCloseTo(125 * Math.SQRT1_2, 1);
  });

  test('within 10° of the front shows no side, from behind alone no key, from nowhere the sky', () => {
    expect(lit(lampFrom('a', 9, 5)).from).toBe('front');
    expect(lit(lampFrom('a', -11, 5)).from).toBe('left');
    expect(lit(lampFrom('a', 170, 5)).from).toBe('back');
    expect(lit().from).toBe('dark');
    // A key four stops and more under the backlight counts as none.
    expect(lit(lampFrom('back', 180, 5), lampFrom('a', 40, 5, 0.04)).from).toBe('back');
    expect(lit(lampFrom('back', 180, 5), lampFrom('a', 40, 5, 0.06)).from).toBe('right');
  });

  test('does not come through a flag', () => {
    const { key, from } = lit(lampFrom('a', 0, 5), flagAt('flag', [0, 0, -2.5], [1, 1]));
    expect([key, from]).toEqual([null, 'dark']);
  });
});

describe('the sky', () => {
  test('gives what faces up the light from above, what faces down that of the streets', () => {
    // Luminance of (0.55, 0.60, 0.85) and (0.70, 0.50, 0.32), by hand.
    expect(ambientLux(USUAL_AMBIENT, [0, 1, 0])).toBeCloseTo(0.6074, 3);
    expect(ambientLux(USUAL_AMBIENT, [0, -1, 0])).toBeCloseTo(0.5295, 3);
    expect(ambientLux(USUAL_AMBIENT, [1, 0, 0])).toBeCloseTo((0.6074 + 0.5295) / 2, 3);
  });

  test('is in what a plane and a cylinder get', () => {
    const light = lightAt(lightScene(darkRoof({}), null, 0), [0, 0, 0]);
    expect(luxOn(light, [0, 1, 0])).toBe(ambientLux(USUAL_AMBIENT, [0, 1, 0]));
    expect(cylindricalLux(light)).toBe(ambientLux(USUAL_AMBIENT, [1, 0, 0]));
  });

  test('a level lamp gives a cylinder 1 ÷ π of what it gives a surface that faces it', () => {
    const light = lightAt(lightScene(darkRoof({ gear: [lampFrom('a', 20, 5)] }), null, 0), [0, 0, 0]);
    expect(cylindricalLux(light) - ambientLux(USUAL_AMBIENT, [1, 0, 0])).toBeCloseTo(400 / Math.PI, 2);
  });
});

test('a performer’s face is between the eyes, and nobody’s own body stands in its light', () => {
  const plan = keyedFace({
    gear: [lampAt('a', 'point', [0, 1.6, -5], [0, 0, 1])].map((head) => ({ ...head, head: 'spot' })),
    cameras: [],
  });
  const [vera] = plan.cast;
  const face = faceAt(vera, plan, 0);
  if (!face) throw new Error('Vera is nowhere');
  expect(face.at[1]).toBeGreaterThan(1.5);
  // She faces +z: her own right is at −x. The lamp is behind her.
  expect(face.right[0]).toBeLessThan(-0.99);
  const { back, from } = faceLight(lightScene(plan, null, 0), face);
  expect([back?.itemId, back?.visible, from]).toEqual(['a', 1, 'back']);
});

test('who stands in the way takes the key off a face', () => {
  // At 11° over her eyes the key passes 0.14 m over them where he stands.
  const plan = keyedFace({ gear: keyOn('key', [-2.5, 2.5], [0, 0]), cameras: [] });
  const [vera] = plan.cast;
  const [mark] = vera.marks;
  const nuno = {
    ...vera,
    id: 'nuno',
    label: 'Nuno',
    statureMetres: 1.95,
    marks: [{ ...mark, at: [-0.5, 0.5] as [number, number] }],
  };
  const lightWith = (others: Plan['cast']) => {
    const acted = { ...plan, cast: [vera, ...others] };
    const face = faceAt(vera, acted, 0);
    if (!face) throw new Error('Vera is nowhere');
    return faceLight(lightScene(acted, null, 0), face);
  };
  expect(lightWith([]).key?.itemId).toBe('key');
  expect(lightWith([nuno]).key).toBeNull();
});
