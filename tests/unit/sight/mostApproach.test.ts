import { describe, expect, it } from 'vitest';
import { formsAt } from '../../../src/core/form/formsAt';
import { poseOf } from '../../../src/core/optics/pose';
import type { Camera } from '../../../src/core/optics/types';
import { outsideOf } from '../../../src/core/sight/margin';
import { type SightStage, stageOf } from '../../../src/core/sight/stage';
import { type Interval, mostApproach } from '../../../src/core/sight/sweep';
import { MAN, troupe } from '../form/figure/people';

/** He has a box up to 2 s; she takes it, and has gone three metres to it in two seconds. */
const plan = troupe(
  [
    {
      who: { ...MAN, id: 'a', prop: 'box' },
      marks: [{ atSeconds: 0, headingDegrees: 90, stance: 'holding' }],
    },
    {
      who: { ...MAN, id: 'b' },
      marks: [
        { atSeconds: 0, at: [4, 0], headingDegrees: 270 },
        { atSeconds: 2, at: [1, 0], headingDegrees: 270, stance: 'holding' },
      ],
    },
  ],
  [{ atSeconds: 2, from: 'a', to: 'b' }],
);
const stageAt = (seconds: number): SightStage => stageOf(formsAt(plan, seconds));
const itemOf = ({ forms }: SightStage, id: string): number => forms.findIndex((form) => form.id === id);

/** Eight metres off, looking past both at their left. */
const camera: Camera = {
  pose: poseOf([-3, 1.5, 8], 0, 0, 0),
  frame: { tanHalfWidth: 0.2, tanHalfHeight: 0.1, aspect: 2, distortion: null },
};
const over = (stages: readonly SightStage[], metres = 0): Interval => ({
  stages,
  camera,
  field: { tanX: 0.2, tanY: 0.1 },
  motion: { metres, chord: 0 },
});

describe('how much nearer an item may come over an interval', () => {
  it('is nothing where nothing moves, and no less than what the camera does', () => {
    const still = stageAt(0);
    const item = itemOf(still, 'a');
    expect(mostApproach(item, over([still, still]))).toBe(0);
    expect(mostApproach(item, over([still, still], 0.5))).toBeGreaterThan(0.5);
  });

  it('is no less than what a walk brings', () => {
    const stages = Array.from({ length: 7 }, (_, frame) => stageAt(1 + frame / 24));
    const item = itemOf(stages[0], 'b');
    const metres = stages.map((stage) => {
      const outside = outsideOf(stage, item, camera);
      return outside === null || outside === 'inside' ? 0 : outside.metres;
    });
    expect(metres[0] - Math.min(...metres)).toBeGreaterThan(0.1);
    expect(mostApproach(item, over(stages))).toBeGreaterThanOrEqual(metres[0] - Math.min(...metres));
  });

  it('has no bound where something changes hands, or takes another shape', () => {
    const [before, after] = [stageAt(2 - 1 / 24), stageAt(2 + 1 / 24)];
    expect(mostApproach(itemOf(before, 'a'), over([before, after]))).toBe(Infinity);

    const item = itemOf(before, 'b');
    const [first] = before.parts.slice(before.firstPart[item]);
    const [other] = before.parts.slice(before.firstPart[item] + 1);
    const parts = before.parts.map((part) => (part === first ? { ...first, shape: other.shape } : part));
    expect(mostApproach(item, over([before, before]))).toBe(0);
    expect(mostApproach(item, over([before, { ...before, parts }]))).toBe(Infinity);
  });
});
