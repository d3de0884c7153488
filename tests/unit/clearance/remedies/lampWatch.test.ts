import { expect, it } from 'vitest';
import { keepsWithin, LampWatch } from '../../../../src/core/clearance/remedies/lampOnSubject';
import { moveItem } from '../../../../src/core/plan/edits/moveItem';
import type { Gear } from '../../../../src/core/plan/schema/gear';
import { keyedFace, keyOn } from '../../../plans/keyedFace';
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

it('a lamp keeps wherever what it loses and how far it turns are within the tolerance', () => {
  const wall: Gear = {
    id: 'flag',
    label: 'Flag',
    kind: 'distro',
    at: [1.2, 1, -1.5],
    headingDegrees: 20,
    size: [0.5, 1.2, 0.05],
  };
  const lit = keyedFace({
    headingDegrees: 0,
    gear: [...keyOn('lamp', [0, -3], [0, 0], 1), wall],
    cameras: [{ id: 'one', label: 'One', at: [0, 4], headingDegrees: 0 }],
  });
  const watch = new LampWatch(lit, lit.setups[0], 0);
  const counted = { true: 0, false: 0 };
  for (let x = -2; x <= 2; x += 0.5)
    for (let z = -5; z <= -1; z += 0.5)
      for (const tolerance of [TIGHT, { levelStops: 1, angleDegrees: 20 }]) {
        const moved = moveItem(lit, { id: 'lamp-stand', to: [x, z] });
        const isKept = keepsWithin(watch.changes(moved), tolerance);
        expect(watch.keeps(moved, tolerance), `${x}, ${z}`).toBe(isKept);
        counted[`${isKept}`] += 1;
      }
  expect(Math.min(counted.true, counted.false)).toBeGreaterThan(3);
});
