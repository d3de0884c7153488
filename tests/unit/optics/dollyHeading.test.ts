import { describe, expect, test } from 'vitest';
import { stateAt } from '../../../src/core/optics/camera';
import { dollyHeadingAt, signedDegrees } from '../../../src/core/optics/dollyHeading';
import { putDollyUnder } from '../../../src/core/optics/onTrack';
import { formThrough } from '../../../src/core/optics/riding';
import type { Plan } from '../../../src/core/plan/schema/plan';
import type { CameraKey } from '../../../src/core/plan/schema/setup';
import { DEMO, readPlan } from '../../plans/readPlan';

const key = (atSeconds: number, x: number, z: number): CameraKey => ({
  atSeconds,
  position: [x, 1.2, z],
  headingDegrees: 0,
  tiltDegrees: 0,
  rollDegrees: 0,
});
const heading = (keys: readonly CameraKey[], seconds: number, own: number): number =>
  dollyHeadingAt({ keys, ease: 'linear' }, seconds, own);
/** Degrees between two headings, whichever way round. */
const apart = (a: number, b: number): number => Math.abs(signedDegrees(a - b));

describe('a dolly without a track', () => {
  test('stands along the way that the camera goes, the way round that is nearer to how it was put', () => {
    const east = [key(0, 0, 0), key(4, 3, 0)];
    for (const seconds of [-1, 0, 2, 4, 9]) {
      expect(apart(heading(east, seconds, 60), 90)).toBeLessThan(1e-9);
      expect(apart(heading(east, seconds, 250), 270)).toBeLessThan(1e-9);
    }
  });

  test('that goes nowhere stands as it was put', () => {
    expect(heading([key(0, 1, 1)], 3, 37)).toBe(37);
    expect(heading([key(0, 1, 1), key(4, 1.005, 1)], 2, 37)).toBe(37);
  });

  test('that shuttles is pushed back and forth, and not turned round', () => {
    const shuttle = [key(0, 0, 0), key(2, 3, 0), key(4, 0, 0), key(6, 3, 0)];
    for (let seconds = 0; seconds <= 6; seconds += 0.25)
      expect(apart(heading(shuttle, seconds, 90), 90)).toBeLessThan(1e-9);
  });

  test('turns into a corner with both axles on the way: half way through it when it stands on the corner', () => {
    const corner = [key(0, 0, 0), key(3, 3, 0), key(6, 3, 3)];
    expect(apart(heading(corner, 1, 90), 90)).toBeLessThan(1e-9);
    expect(apart(heading(corner, 3, 90), 135)).toBeLessThan(1e-9);
    expect(apart(heading(corner, 5, 90), 180)).toBeLessThan(1e-9);
    // Never more than a few degrees from one frame to the next.
    for (let frame = 1; frame <= 144; frame += 1)
      expect(apart(heading(corner, frame / 24, 90), heading(corner, (frame - 1) / 24, 90))).toBeLessThan(8);
    // Begun backwards, it goes backwards through it.
    expect(apart(heading(corner, 5, 270), 0)).toBeLessThan(1e-9);
  });

  test('turns back at a sharp corner by being pushed back', () => {
    // East, then back to the west and to the south by 45 degrees: backwards, pointing north-east.
    const sharp = [key(0, 0, 0), key(3, 3, 0), key(6, 0, 3)];
    expect(apart(heading(sharp, 1, 90), 90)).toBeLessThan(1e-9);
    expect(apart(heading(sharp, 5, 90), 45)).toBeLessThan(1e-9);
  });
});

test('the dolly under a free camera is drawn and judged along its way', () => {
  const demo = readPlan(DEMO);
  const { track: _, operator: __, ...setup } = demo.setups[0];
  const bare: Plan = {
    ...demo,
    setups: [
      {
        ...setup,
        support: 'dolly',
        move: { ease: 'linear', keys: [key(9, -1, 6), key(12, 1, 6), key(15, 1, 8)] },
      },
    ],
  };
  const plan = putDollyUnder(bare, { setupId: setup.id });
  const id = plan.gear.find(({ kind }) => kind === 'dolly')?.id ?? '';
  const [rider] = plan.setups;
  const forwardAt = (seconds: number): readonly number[] => {
    const worldFromPart = formThrough(plan, rider, id, seconds)?.parts[0].worldFromPart;
    if (!worldFromPart) throw new Error('found no dolly under the camera');
    return [worldFromPart[2], worldFromPart[10]].map((value) => -value);
  };
  expect(stateAt(plan, rider, 10).headingDegrees).toBe(0);
  const [x, z] = forwardAt(10);
  expect(Math.abs(x)).toBeCloseTo(1, 6);
  expect(z).toBeCloseTo(0, 6);
  expect(Math.abs(forwardAt(14.5)[1])).toBeCloseTo(1, 6);
});
