import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dirtyAt } from '../../../src/core/continuity/dirty';
import { makeDirty } from '../../../src/core/continuity/makeDirty';
import { matchSetup } from '../../../src/core/continuity/matchSetup';
import { compareSingles, singleAt } from '../../../src/core/continuity/singles';
import { whereabouts } from '../../../src/core/form/figure/whereabouts';
import { reposeCamera } from '../../../src/core/plan/edits/reposeCamera';
import { drawFrom } from '../../plans/draw';
import { faceOff, keyAt, OVER_ANA } from '../../plans/faceOff';

const SEEDS = fc.noShrink(fc.integer({ min: 0, max: 1e9 }));
const DEGREES = 180 / Math.PI;

const EMPTY = faceOff({ setups: [] });
const EYES = EMPTY.cast.map((performer) => whereabouts(performer, EMPTY, 0)?.eyes ?? [0, 0, 0]);

/** A camera at random that has somebody's eyes near the middle of its frame and sees the face. */
function onSomebody(seed: number, who: 0 | 1) {
  const draw = drawFrom(seed);
  const eyes = EYES[who];
  const ahead = who === 0 ? 90 : 270;
  const off = (draw.pick([-1, 1]) * draw.between(25, 70) + ahead) / DEGREES;
  const away = draw.between(2, 4);
  const above = draw.between(-0.3, 0.3);
  const [dx, dz] = [away * Math.sin(off), -away * Math.cos(off)];
  const heading = Math.atan2(-dx, dz) * DEGREES + draw.between(-2.5, 2.5);
  const tilt = -Math.atan2(above, away) * DEGREES + draw.between(-1, 0.5);
  return {
    keys: [
      {
        ...keyAt([eyes[0] + dx, eyes[1] + above, eyes[2] + dz], heading, tilt),
        rollDegrees: draw.pick([0, 0, -8, 5]),
      },
    ],
    lens: draw.pick(['long', 'short']),
  };
}

test('a setup that was matched reads as its model does', () => {
  let matched = 0;
  fc.assert(
    fc.property(SEEDS, SEEDS, (one, other) => {
      const plan = faceOff({ setups: [onSomebody(one, 1), onSomebody(other, 0)] });
      const found = matchSetup(plan, {
        setupId: 'setup-2',
        modelId: 'setup-1',
        seconds: 0,
        performerId: 'ana',
        modelPerformerId: 'bea',
      });
      if (!found || found.why !== null) return;
      const after = reposeCamera(plan, found.change);
      const [model, own] = [
        singleAt(plan, plan.setups[0], 0, 'bea'),
        singleAt(after, after.setups[1], 0, 'ana'),
      ];
      expect(model && own).not.toBeNull();
      if (!model || !own) return;
      matched += 1;
      for (const { aspect, apart } of compareSingles(model, own)) expect(apart, aspect).toBeLessThan(1e-3);
    }),
    { numRuns: 150 },
  );
  expect(matched).toBeGreaterThan(60);
});

test('a single that was made dirty has the share that was wanted, on the same side of the line', () => {
  let made = 0;
  fc.assert(
    fc.property(SEEDS, (seed) => {
      const draw = drawFrom(seed);
      const [x, y, z] = OVER_ANA.position;
      const at = [x + draw.between(-0.2, 0.2), y, z + draw.between(-0.1, 0.5)] as const;
      const heading = Math.atan2(0.5 - at[0], at[2]) * DEGREES + draw.between(-1.5, 1.5);
      const plan = faceOff({
        setups: [{ keys: [keyAt(at, heading, -1)], lens: draw.pick(['long', 'short']) }],
      });
      const share = draw.pick([0, 0.02, 0.05, 0.1, 0.15]);
      const found = makeDirty(plan, plan.setups[0], { seconds: 0, share, nearId: 'ana' });
      if (!found || found.why !== null) return;
      const after = reposeCamera(plan, found.change);
      const reading = dirtyAt(after, after.setups[0], 0, 640);
      if (!reading) return;
      made += 1;
      const near = reading.near.find(({ performerId }) => performerId === 'ana')?.share ?? 0;
      expect(Math.abs(near - share)).toBeLessThan(0.005);
      expect(Math.abs(found.arcDegrees)).toBeLessThanOrEqual(40);
      expect(after.setups[0].move.keys[0].position[2]).toBeGreaterThan(0);
    }),
    { numRuns: 16 },
  );
  expect(made).toBeGreaterThan(8);
});
