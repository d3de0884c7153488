import { describe, expect, test } from 'vitest';
import { framingOf } from '../../../src/core/continuity/framing';
import { poseOf } from '../../../src/core/optics/pose';
import type { Camera } from '../../../src/core/optics/types';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { planFrom } from '../../plans/bare';
import { smallRoofDocument } from '../../unit/smallRoof';

/** The median man of the survey, ANSUR II (Army 2012, public data): stature 1755 mm. */
const STATURE = 1.755;

function withOne(figure: 'male' | 'female', statureMetres: number): Plan {
  const base = smallRoofDocument();
  return planFrom({
    ...base,
    cast: [
      {
        ...base.cast[0],
        figure,
        build: 'medium',
        statureMetres,
        marks: [{ ...base.cast[0].marks[0], at: [0, 0], headingDegrees: 180, stance: 'stand' }],
      },
    ],
    setups: [],
  });
}

const plan = withOne('male', STATURE);

/** A camera square to the man whose lower frame line lies at one height of him, and its upper one at another; metres. */
function cuttingAt(low: number, high: number): Camera {
  const away = 20;
  const half = (high - low) / 2;
  return {
    pose: poseOf([0, (high + low) / 2, away], 0, 0, 0),
    frame: { tanHalfHeight: half / away, tanHalfWidth: (2.39 * half) / away, aspect: 2.39, distortion: null },
  };
}

const sizeAt = (low: number, high = STATURE + 0.1) =>
  framingOf(cuttingAt(low, high), plan, plan.cast[0], 0)?.size;

describe('shot sizes by where the lower frame line cuts', () => {
  /**
   * cinematography.net/Lessons/Basic Framing Examples.html, read there: mid shot at the waist, medium close-up at the
   * breast pocket, close-up at the tie knot, cowboy at mid-thigh. Heights of the median man from ANSUR II: waist 1055,
   * chest 1289, suprasternale 1437 mm; mid-thigh between crotch 845 and knee 487.
   */
  test.each([
    ['close-up', 1.437],
    ['medium close-up', 1.289],
    ['mid shot', 1.055],
    ['cowboy', 0.68],
  ] as const)('%s', (size, low) => {
    expect(sizeAt(low)).toBe(size);
    // A hand's breadth of frame line above or below does not change what it is called.
    expect(sizeAt(low + 0.03)).toBe(size);
    expect(sizeAt(low - 0.03)).toBe(size);
  });

  /**
   * The same cuts on the median woman of the survey, stature 1626 mm: waist 979, suprasternale 1328, mid-thigh between
   * crotch 782 and knee 448 mm.
   */
  test.each([
    ['close-up', 1.328],
    ['mid shot', 0.979],
    ['cowboy', 0.615],
  ] as const)('%s of a woman', (size, low) => {
    const woman = withOne('female', 1.626);
    expect(framingOf(cuttingAt(low, 1.726), woman, woman.cast[0], 0)?.size).toBe(size);
  });

  /** School curriculum glossary (k10outline.scsa.wa.edu.au, camera shots), read there: the whole body is a long or full shot. */
  test('the whole body is a full shot, and farther away a long shot', () => {
    expect(sizeAt(-0.05)).toBe('full shot');
    expect(sizeAt(-2, 3.8)).toBe('long shot');
  });

  test('above the chin it is extreme, and without a head it is nothing', () => {
    expect(sizeAt(1.56, 1.72)).toBe('extreme close-up');
    expect(sizeAt(0.2, 1.2)).toBeNull();
  });
});

test('headroom and head height are shares of the frame', () => {
  const framing = framingOf(cuttingAt(0.755, 1.955), plan, plan.cast[0], 0);
  expect(framing?.headroom).toBeCloseTo(0.2 / 1.2, 2);
  expect(framing?.held).toBe(true);
  expect(framingOf(cuttingAt(0.6, 1.7), plan, plan.cast[0], 0)?.held).toBe(false);
});
