import { describe, expect, it } from 'vitest';
import { remediesFor } from '../../../../src/core/clearance/remedies/remediesFor';
import { withRemedy } from '../../../../src/core/clearance/remedies/remedyEdits';
import { roomOn } from '../../../../src/core/optics/onTrack';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import type { Track } from '../../../../src/core/plan/trackLine';
import { setupReport } from '../../../../src/core/report/setupReport';
import { inOneGo } from '../../../../src/core/units/steps';
import { planFrom } from '../../../plans/bare';
import { LOOSE, standAt, stillRoof } from './remedied';

/** 4 m of rails along x through [0, 4], from their rear end at x = −2; the camera on them looks straight to the back. */
const TRACK: Track = {
  kind: 'track',
  id: 'rails',
  label: 'Rails',
  at: [0, 0, 4],
  headingDegrees: 90,
  lengthMetres: 4,
  gaugeMetres: 0.62,
};

/** A stand at the right edge of the frame of a camera that stands so far along its rails. */
function onRails(alongMetres: number): Plan {
  const [x, z] = [alongMetres - 2, 4];
  const roof = stillRoof([standAt({ at: [x + 1, 0, -4] })], { span: { from: 'start', to: 'start' } });
  const [setup] = roof.setups;
  const [key] = setup.move.keys;
  return planFrom({
    ...roof,
    gear: [...roof.gear, { ...TRACK, wish: 'either' }],
    setups: [
      {
        ...setup,
        support: 'dolly',
        track: 'rails',
        move: { ease: 'linear', keys: [{ ...key, position: [x, 1.6, z], alongMetres }] },
      },
    ],
  });
}

const nudges = (plan: Plan) =>
  inOneGo(remediesFor(plan, { setupId: 'single', itemId: 'stand', tolerance: LOOSE, ways: ['nudges'] }));
const isAlong = ({ words }: { readonly words: string }): boolean => words.includes('along its track');

describe('a camera on its track', () => {
  it('is nudged along it away from what it sees, and nowhere else but up and down', () => {
    const plan = onRails(2);
    const all = nudges(plan);
    const [nudge, ...others] = all.filter(isAlong);
    expect(others).toEqual([]);
    for (const { words } of all) expect(words).not.toMatch(/to its (left|right)|m (forwards|back) clears/);
    expect(nudge.words).toMatch(/^The camera of A 0\.\d.m along its track back clears it in A\.$/);
    const after = withRemedy(plan, nudge);
    const [key] = after.setups[0].move.keys;
    expect(key.alongMetres).toBeCloseTo(2 - nudge.cost.metres, 6);
    expect(key.position[0]).toBeCloseTo((key.alongMetres ?? 0) - 2, 5);
    expect(key.position[2]).toBe(4);
    const { items } = setupReport(after, after.setups[0]);
    expect(items.find(({ id }) => id === 'stand')?.verdict).toBe('clear');
  });

  it('keeps the room that its wheels need at the end of the rails', () => {
    for (const along of [0.5, 1.1]) {
      const plan = onRails(along);
      const [low] = roomOn(TRACK);
      for (const nudge of nudges(plan).filter(isAlong))
        expect(
          withRemedy(plan, nudge).setups[0].move.keys[0].alongMetres,
          `from ${along}`,
        ).toBeGreaterThanOrEqual(low);
    }
  });
});
