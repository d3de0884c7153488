import { expect, test } from 'vitest';
import { heightLimitSteps } from '../../../../../src/core/clearance/ground/heightLimit';
import { cameraAt } from '../../../../../src/core/optics/camera';
import type { Plan } from '../../../../../src/core/plan/schema/plan';
import { inOneGo } from '../../../../../src/core/units/steps';
import { limitFigure } from '../../../../../src/screens/overhead/clearGround/GroundReading';
import { staged } from '../../../../plans/staged';

/**
 * One camera at [0, 5], 1.5 m over a dry deck, looks along −z and up by so much: what stands before it reaches up to the
 * lower line of its frame, which rises from there on.
 */
const HIGH = 1.5;
const TILT = 25;
const bare = staged({
  cast: {},
  setups: [{ id: 'a', keys: [{ at: [0, 5], height: HIGH, heading: 0 }], from: 'start', to: 'start' }],
});
const [setup] = bare.setups;
const plan: Plan = {
  ...bare,
  ground: { ...bare.ground, wetness: 'dry' },
  setups: [{ ...setup, move: { ...setup.move, keys: [{ ...setup.move.keys[0], tiltDegrees: TILT }] } }],
};

const answer = inOneGo(heightLimitSteps(plan, { setupIds: ['a'] }));
if ('why' in answer) throw new Error(answer.why);
const { limits } = answer;

/** The number that is said at a spot. */
function saidAt(x: number, z: number): number {
  const found = /^up to (\d+\.\d).m stays clear$/.exec(limitFigure(limits, [x, z], 'm') ?? '');
  if (!found) throw new Error(`not a height: ${limitFigure(limits, [x, z], 'm')}`);
  return Number(found[1]);
}

/**
 * By hand: of a point `ahead` metres before the camera and `up` over it the depth along the axis is
 * ahead · cos + up · sin and the height over the axis up · cos − ahead · sin, of its tilt; it keeps clear while it is at
 * least the margin below −depth · tanY. That is linear in `up`, so the highest such `up` is a quotient.
 */
function highest(ahead: number): number {
  const { tanHalfWidth, tanHalfHeight } = cameraAt(plan, plan.setups[0], 0).frame;
  const [sin, cos] = [Math.sin((TILT * Math.PI) / 180), Math.cos((TILT * Math.PI) / 180)];
  const { metres, frameWidths } = plan.safety;
  const underLine = (tangent: number, margin: number): number =>
    (ahead * (sin - tangent * cos) - margin) / (cos + tangent * sin);
  const byMetres = underLine(tanHalfHeight, metres);
  const byWidths = underLine(tanHalfHeight + 2 * tanHalfWidth * frameWidths, 0);
  return HIGH + Math.min(byMetres, byWidths);
}

test.each([3, 5, 7, 9])(
  '%i m before a camera that looks up it says the height under its lower line',
  (ahead) => {
    // The middle of a square of 0.25 m: its near side is an eighth nearer, and a column at most 0.1 m thick.
    const said = saidAt(0.125, 5 - ahead - 0.125);
    expect(said).toBeLessThanOrEqual(highest(ahead) + 1e-9);
    // Said downwards to a decimetre.
    expect(said).toBeGreaterThan(highest(ahead - 0.1) - 0.05 - 0.1);
  },
);

test('behind the camera any height, and what is said rises with the line', () => {
  expect(limitFigure(limits, [0, 7.5], 'm')).toBe('any height stays clear');
  expect([3, 5, 7, 9].map((ahead) => saidAt(0.125, 5 - ahead - 0.125))).toEqual([1.7, 2.1, 2.6, 3]);
  expect(limitFigure(limits, [0.125, -0.125], 'm')).toBe('up to 2.1\u00a0m stays clear');
  expect(limitFigure(limits, [500, 0], 'm')).toBeNull();
});
