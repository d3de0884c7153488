import { expect, it } from 'vitest';
import { LampWatch } from '../../../../src/core/clearance/remedies/lampOnSubject';
import { moveItem } from '../../../../src/core/plan/edits/moveItem';
import type { Gear } from '../../../../src/core/plan/schema/gear';
import { standAt, stillRoof } from './remedied';

const TIGHT = { levelStops: 0.2, angleDegrees: 3 };

it.each([
  ['that a cue has lit is held to its tolerance', 0, 1, false],
  ['that a cue has put out is not', 1, 0, true],
])('a lamp %s', (_, dim, cued, isKept) => {
  const lamp: Gear = {
    id: 'lamp',
    label: 'Head 1',
    kind: 'head',
    head: 'spot',
    place: { on: 'stand' },
    aim: [0, 1.5, -2],
    dim,
    cues: [{ atSeconds: 0, dim: cued, fadeSeconds: 0 }],
  };
  const plan = stillRoof([standAt(), lamp]);
  const watch = new LampWatch(plan, plan.setups[0], 0.5);
  expect(watch.mayKeep(moveItem(plan, { id: 'stand', to: [4.5, -4] }), TIGHT)).toBe(isKept);
  expect(watch.mayKeepMoved(['lamp'], [4, 0], TIGHT)).toBe(isKept);
});
