import { expect, test } from 'vitest';
import { formsAt } from '../../../src/core/form/formsAt';
import { poseOf } from '../../../src/core/optics/pose';
import type { Camera } from '../../../src/core/optics/types';
import { gridOf, reachOf } from '../../../src/core/sight/grid';
import { type SightStage, stageOf } from '../../../src/core/sight/stage';
import { mayEnter } from '../../../src/core/sight/sweep';
import { MAN, troupe } from '../form/figure/people';

/** He has a box up to 2 s, she from then on, a metre to his right. */
const plan = troupe(
  [
    {
      who: { ...MAN, id: 'a', prop: 'box' },
      marks: [{ atSeconds: 0, headingDegrees: 90, stance: 'holding' }],
    },
    {
      who: { ...MAN, id: 'b' },
      marks: [{ atSeconds: 0, at: [1, 0], headingDegrees: 270, stance: 'holding' }],
    },
  ],
  [{ atSeconds: 2, from: 'a', to: 'b' }],
);

/** A lens so long that only what lies in one line is in frame, from afar, on the middle of a part. */
const onPart = ({ parts }: SightStage, part: number): Camera => ({
  pose: poseOf([parts[part].centre[0], parts[part].centre[1], parts[part].centre[2] + 40], 0, 0, 0),
  frame: { tanHalfWidth: 1e-4, tanHalfHeight: 1e-4, aspect: 1, distortion: null },
});

test('what changes hands between two asked frames is asked about in both pairs of hands', () => {
  const stages = [-3, -2, -1, 0, 1, 2, 3].map((frame) => stageOf(formsAt(plan, 2 + frame / 24)));
  let asked = 0;
  for (const stage of stages) {
    for (const part of stage.parts) {
      if (stage.forms[part.item].section === 'piece') continue;
      const camera = onPart(stage, part.index);
      const interval = {
        stages,
        camera,
        field: reachOf(gridOf(camera.frame, 16)),
        motion: { metres: 0, chord: 0 },
      };
      asked += 1;
      expect(mayEnter(part.item, interval, []), `${part.name} of ${stage.forms[part.item].id}`).toBe(true);
    }
  }
  expect(asked).toBeGreaterThan(7 * 40);
});
