import { describe, expect, test } from 'vitest';
import { cameraReading } from '../../../src/core/continuity/cameraReading';
import { focusTrack } from '../../../src/core/continuity/focusTrack';
import { whereabouts } from '../../../src/core/form/figure/whereabouts';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { planFrom } from '../../plans/bare';
import { smallRoofDocument } from '../smallRoof';

const base = smallRoofDocument();
const [first] = base.setups;

function planWith(setup: object, pupilToImageMm = 0): Plan {
  const mark = base.cast[0].marks[0];
  return planFrom({
    ...base,
    place: { ...base.place, northDegrees: 30 },
    kit: { ...base.kit, lenses: base.kit.lenses.map((lens) => ({ ...lens, pupilToImageMm })) },
    cast: [
      {
        ...base.cast[0],
        marks: [{ ...mark, at: [0, 0], headingDegrees: 180, stance: 'stand', floorMetres: 0 }],
      },
    ],
    setups: [{ ...first, ...setup }],
  });
}

const key = (atSeconds: number, position: number[], headingDegrees = 0) => ({
  atSeconds,
  position,
  headingDegrees,
  tiltDegrees: 0,
  rollDegrees: 0,
});
const still = (position: number[], headingDegrees = 0) => ({
  ease: 'linear',
  keys: [key(0, position, headingDegrees)],
});

describe('the reading of a camera', () => {
  test('tells height, bearing and the tape to the eyes', () => {
    const plan = planWith({ move: still([0, 1.2, 5]) }, 100);
    const [setup] = plan.setups;
    const eyes = whereabouts(plan.cast[0], plan, 0)?.eyes ?? [0, 0, 0];
    const reading = cameraReading(plan, setup, 0);
    expect(reading.heightMetres).toBeCloseTo(1.2, 9);
    // Looking along −z, with true north 30° clockwise of it.
    expect(reading.bearingDegrees).toBeCloseTo(330, 9);
    const [who] = reading.performers;
    expect(who.axisMetres).toBeCloseTo(5 - eyes[2] + 0.1, 9);
    expect(who.tapeMetres).toBeCloseTo(Math.hypot(eyes[0], 5 - eyes[2] + 0.1, eyes[1] - 1.2), 6);
    expect(Math.abs(who.offAxisDegrees)).toBeLessThan(0.5);
    // The face looks along +z, straight at the camera.
    expect(Math.abs(who.offFaceDegrees)).toBeLessThan(0.5);
  });

  test('a camera round to one side is off the face by as much', () => {
    // At the face's own left as it looks along +z: at +x, 45° counter-clockwise from above.
    const plan = planWith({ move: still([4, 1.6, 4], 315) });
    const [who] = cameraReading(plan, plan.setups[0], 0).performers;
    expect(Math.abs(who.offFaceDegrees)).toBeGreaterThan(40);
    expect(Math.abs(who.offFaceDegrees)).toBeLessThan(50);
    expect(who.offFaceDegrees).toBeLessThan(0);
    expect(Math.abs(who.offAxisDegrees)).toBeLessThan(1);
  });
});

describe('the focus along a move', () => {
  test('is sharp on whom it follows, and the depth runs about it', () => {
    const move = { ease: 'linear', keys: [key(0, [0, 1.6, 6]), key(2, [0, 1.6, 3])] };
    const plan = planWith({ move, focus: { follow: base.cast[0].id } });
    const samples = focusTrack(plan, plan.setups[0], 5);
    expect(samples).toHaveLength(5);
    for (const { focusMetres, nearMetres, farMetres, performers } of samples) {
      expect(performers[0].sharp).toBe(true);
      expect(performers[0].metres).toBeCloseTo(focusMetres ?? Number.NaN, 9);
      expect(nearMetres).toBeLessThan(focusMetres ?? 0);
      expect(farMetres).toBeGreaterThan(focusMetres ?? Number.POSITIVE_INFINITY);
    }
    expect((samples[0].focusMetres ?? 0) - (samples[4].focusMetres ?? 0)).toBeCloseTo(3, 1);
  });

  test('says how soft somebody is who is not in focus', () => {
    const plan = planWith({ move: still([0, 1.6, 6]), focus: { metres: 2 }, stop: 2.8 });
    const [{ performers }] = focusTrack(plan, plan.setups[0], 2);
    expect(performers[0].sharp).toBe(false);
    expect(performers[0].blurMm).toBeGreaterThan(0.1);
  });
});
