import fc from 'fast-check';
import { expect, test } from 'vitest';
import { keySides } from '../../../src/core/continuity/keySide';
import type { Vec3 } from '../../../src/core/form/build/vector';
import { type Face, faceLight } from '../../../src/core/light/face';
import { lightScene } from '../../../src/core/light/lightScene';
import { darkRoof, flagAt, lampAt } from '../../plans/darkRoof';
import { keyedFace, keyOn } from '../../plans/keyedFace';

/** Everything at the other side of the plane x = 0. */
const across = ([x, y, z]: Vec3): Vec3 => [-x, y, z];
const SWAPPED = { left: 'right', right: 'left', front: 'front', back: 'back', dark: 'dark' } as const;

/** A face at the height of a head that looks along a heading. */
function faceAlong(headingDegrees: number): Face {
  const turn = (headingDegrees * Math.PI) / 180;
  return {
    performerId: 'nobody',
    at: [0, 1.6, 0],
    forward: [Math.sin(turn), 0, -Math.cos(turn)],
    right: [Math.cos(turn), 0, Math.sin(turn)],
    up: [0, 1, 0],
    headingDegrees,
  };
}

const place = fc.tuple(
  fc.double({ min: -6, max: 6, noNaN: true }),
  fc.double({ min: 1, max: 4, noNaN: true }),
  fc.double({ min: -6, max: 6, noNaN: true }),
);
const farOff = place.filter(([x, , z]) => Math.hypot(x, z) > 1.5);

test('the light on a face that is mirrored with its lamps and flags is mirrored: left is right, and as strong', () => {
  const scene = (lamps: readonly Vec3[], flag: Vec3) =>
    lightScene(
      darkRoof({
        gear: [
          ...lamps.map((lamp, k) =>
            lampAt(`lamp-${k}`, k % 2 ? 'panel' : 'point', lamp, [-lamp[0], 1.6 - lamp[1], -lamp[2]]),
          ),
          flagAt('flag', flag, [1, 1]),
        ],
      }),
      null,
      0,
    );
  fc.assert(
    fc.property(
      fc.array(farOff, { minLength: 1, maxLength: 4 }),
      farOff,
      fc.integer({ min: 0, max: 359 }),
      (lamps, flag, heading) => {
        const one = faceLight(scene(lamps, flag), faceAlong(heading));
        const other = faceLight(scene(lamps.map(across), across(flag)), faceAlong(-heading));
        // The fixed places on a lamp's face are not mirrored with it: a soft edge may differ by a sixteenth or two.
        const close = (a: number, b: number) =>
          expect(Math.abs(a - b)).toBeLessThan(0.16 * Math.max(a, b) + 0.5);
        close(other.lux.left, one.lux.right);
        close(other.lux.right, one.lux.left);
        close(other.lux.front, one.lux.front);
        if (one.key && other.key?.itemId === one.key.itemId) {
          const sum = one.key.bearingDegrees + other.key.bearingDegrees;
          expect(Math.abs(sum) < 4 || Math.abs(Math.abs(sum) - 360) < 4).toBe(true);
        }
      },
    ),
    { numRuns: 60 },
  );
});

test('mirroring the plan swaps the sides of every key, the face’s own and the camera’s, and the way to turn it', () => {
  const found = (sign: 1 | -1, key: readonly [number, number], cheatHeading: number) => {
    const plan = keyedFace({
      gear: keyOn('1', [sign * key[0], key[1]], [0, 0]),
      cameras: [
        { id: 'wide', label: 'Wide', at: [0, 6], headingDegrees: 0, lens: 'wide' },
        {
          id: 'other',
          label: 'Other',
          at: [sign * 1.5, 5.5],
          headingDegrees: sign * -15.3,
          lens: 'wide',
          cheats: [
            {
              performer: 'vera',
              mark: 'v1',
              at: [sign * 0.2, 0.1],
              headingDegrees: 180 + sign * cheatHeading,
            },
          ],
        },
      ],
    });
    return keySides(plan);
  };
  fc.assert(
    fc.property(
      fc.integer({ min: 15, max: 75 }),
      fc.integer({ min: -60, max: 60 }).filter((degrees) => Math.abs(degrees) > 5),
      fc.constantFrom(1, -1),
      (bearing, cheat, side) => {
        const turn = (bearing * Math.PI) / 180;
        const key = [side * 3.5 * Math.sin(turn), 3.5 * Math.cos(turn)] as const;
        const [one, other] = [found(1, key, cheat), found(-1, key, cheat)];
        expect(other.length).toBe(one.length);
        one.forEach((finding, k) => {
          const mirrored = other[k];
          const off = Math.abs(finding.key.offFaceDegrees ?? 90);
          // Nobody stands quite even, so what is nearly frontal, or nearly from the side, may fall either way.
          if (Math.abs(off - 10) < 4 || Math.abs(off - 90) < 4) return;
          expect(mirrored.key.from).toBe(SWAPPED[finding.key.from]);
          expect(mirrored.standing).toBe(finding.standing);
          if (finding.turn && mirrored.turn)
            expect(Math.abs(finding.turn.turnDegrees + mirrored.turn.turnDegrees)).toBeLessThan(4);
          const lens = Math.abs(finding.key.offLensDegrees ?? 10);
          if (finding.key.cameraSide && lens > 14 && lens < 166)
            expect(mirrored.key.cameraSide).toBe(SWAPPED[finding.key.cameraSide]);
        });
      },
    ),
    { numRuns: 15 },
  );
});
