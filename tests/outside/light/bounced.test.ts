import { describe, expect, test } from 'vitest';
import { directionOf, scale, type Vec3 } from '../../../src/core/form/build/vector';
import { illuminance } from '../../../src/core/light/illuminance';
import { lightScene } from '../../../src/core/light/lightScene';
import type { Gear } from '../../../src/core/plan/schema/gear';
import { darkRoof, flagAt, lampAt } from '../../plans/darkRoof';
import { givenOn, type Sheet } from './pathTracer';

/** A cloth on the roof and the same sheet for the tracer: 1.2 m by 1.8 m, turned to a heading, leaning back. */
interface Hung {
  readonly at: Vec3;
  readonly headingDegrees: number;
  readonly tiltDegrees: number;
}
const SIZE: [number, number] = [1.2, 1.8];

function sheetOf({ at, headingDegrees, tiltDegrees }: Hung, kind: 'bounce' | 'frame'): Sheet {
  const right = directionOf(headingDegrees + 90);
  const up = directionOf(headingDegrees, tiltDegrees + 90);
  return {
    middle: at,
    across: scale(right, SIZE[0] / 2),
    up: scale(up, SIZE[1] / 2),
    reflectance: kind === 'bounce' ? 0.85 : 0,
    transmittance: kind === 'frame' ? 0.4 : 0,
  };
}
const clothOf = ({ at, headingDegrees, tiltDegrees }: Hung, kind: 'bounce' | 'frame'): Gear =>
  ({
    id: kind,
    label: kind,
    kind,
    place: { at: [at[0], at[1], at[2]] },
    headingDegrees,
    tiltDegrees,
    size: SIZE,
    ...(kind === 'bounce' ? { reflectance: 0.85 } : { transmission: 0.4 }),
  }) as Gear;

const LAMP: Vec3 = [1.6, 2.4, 0.4];
const FACE: Vec3 = [0, 1.6, 0];
const bulb = lampAt('lamp', 'bulb', LAMP, [0, -1, 0]);
const lamps = [{ at: LAMP, candela: 10000 }];

function onFace(gear: readonly Gear[], kind: string, normal: Vec3): number {
  const { shares } = illuminance(lightScene(darkRoof({ gear: [bulb, ...gear] }), null, 0), FACE, normal);
  return shares.find(({ itemId }) => itemId === kind)?.lux ?? 0;
}

describe('what a cloth gives to a face, against a path tracer', () => {
  // The cloth's own middle lies a hair off the place of its yoke; leaning back 10° it looks up to the lamp.
  const before: Hung = { at: [-0.4, 1.7, -1.8], headingDegrees: 170, tiltDegrees: 10 };
  const towards: readonly (readonly [string, Vec3])[] = [
    ['that looks at it', [0, 0, -1]],
    ['that looks past it', [0.6, 0, -0.8]],
    ['seen from below', [0, -0.6, -0.8]],
  ];

  test.each(towards)('a white bounce, on a plane %s', (_name, normal) => {
    const traced = givenOn({ sheets: [sheetOf(before, 'bounce')], lamps }, FACE, normal);
    expect(traced).toBeGreaterThan(50);
    expect(Math.abs(onFace([clothOf(before, 'bounce')], 'bounce', normal) / traced - 1)).toBeLessThan(0.05);
  });

  test('a white bounce of which a flag takes a part', () => {
    const flag: Sheet = {
      middle: [0.9, 2.2, -0.9],
      across: [0.4, 0, 0],
      up: [0, 0.3, 0],
      reflectance: 0,
      transmittance: 0,
    };
    const open = givenOn({ sheets: [sheetOf(before, 'bounce')], lamps }, FACE, [0, 0, -1]);
    const traced = givenOn({ sheets: [sheetOf(before, 'bounce'), flag], lamps }, FACE, [0, 0, -1]);
    const own = onFace(
      [clothOf(before, 'bounce'), flagAt('flag', [0.9, 2.2, -0.9], [0.8, 0.6])],
      'bounce',
      [0, 0, -1],
    );
    expect(traced).toBeLessThan(0.9 * open);
    expect(Math.abs(own / traced - 1)).toBeLessThan(0.1);
  });

  test('a diffusion frame between the lamp and the face', () => {
    const between: Hung = { at: [0.9, 2.05, 0.22], headingDegrees: 255, tiltDegrees: 0 };
    const normal: Vec3 = [0.96, 0.28, 0];
    const traced = givenOn({ sheets: [sheetOf(between, 'frame')], lamps }, FACE, normal);
    expect(traced).toBeGreaterThan(50);
    expect(Math.abs(onFace([clothOf(between, 'frame')], 'frame', normal) / traced - 1)).toBeLessThan(0.1);
  });

  test('two bounces that face each other give a little more than each from the lamp alone, and that is left out', () => {
    const other: Hung = { at: [0.4, 1.7, 1.8], headingDegrees: 10, tiltDegrees: 0 };
    const sheets = [sheetOf(before, 'bounce'), sheetOf(other, 'bounce')];
    const once = givenOn({ sheets, lamps }, FACE, [0, 0, -1], 1);
    const often = givenOn({ sheets, lamps }, FACE, [0, 0, -1], 4);
    expect(often / once).toBeGreaterThan(1);
    expect(often / once).toBeLessThan(1.1);
  });
});
