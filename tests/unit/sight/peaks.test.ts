import { describe, expect, it } from 'vitest';
import { type Course, intervalsWithPeaks } from '../../../src/core/sight/peaks';

/** A course of an item of one part that nothing mirrors: by frame, what shows of it and its outline. */
const courseOf = (...frames: readonly (readonly [shows: number, outline: number])[]): Course =>
  frames.map(([shows, outline]) =>
    outline === 0 ? null : Float64Array.from([shows, 0, outline - shows, outline, shows, 0]),
  );

describe('where a share may be larger between two frames than at both', () => {
  it('is nowhere while nothing of it changes, or nothing of it is there', () => {
    expect(intervalsWithPeaks(courseOf([0.02, 0.02], [0.02, 0.02], [0.02, 0.02]))).toEqual([]);
    expect(intervalsWithPeaks(courseOf([0, 0], [0, 0]))).toEqual([]);
    expect(intervalsWithPeaks([])).toEqual([]);
  });

  it('is next to the largest where it changes fast', () => {
    const course = courseOf([0.001, 0.03], [0.012, 0.03], [0.02, 0.03], [0.011, 0.03], [0.001, 0.03]);
    expect(intervalsWithPeaks(course)).toEqual(expect.arrayContaining([1, 2]));
  });

  it('is not where it changes slowly, by less than is worth a look', () => {
    const course = courseOf([0.02, 0.03], [0.0201, 0.03], [0.0202, 0.03], [0.0201, 0.03]);
    expect(intervalsWithPeaks(course)).toEqual([]);
  });

  it('is not far from the largest', () => {
    const course = courseOf([0.001, 0.031], [0.002, 0.032], [0.003, 0.033], [0.02, 0.05], [0.04, 0.07]);
    expect(intervalsWithPeaks(course)).not.toContain(0);
  });

  it('is found for a part, or a mirror’s image, whatever the whole does', () => {
    const course: Course = [0.001, 0.004, 0.001].map((part) =>
      Float64Array.from([0.02, 0.001, 0, 0.02, part, 0.001]),
    );
    expect(intervalsWithPeaks(course)).toEqual([0, 1]);
  });
});
