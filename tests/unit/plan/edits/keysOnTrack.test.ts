import { describe, expect, test } from 'vitest';
import { stateAt } from '../../../../src/core/optics/camera';
import { layTrack } from '../../../../src/core/optics/onTrack';
import { mirrorItems } from '../../../../src/core/plan/edits/mirrorItems';
import { moveItems } from '../../../../src/core/plan/edits/moveItems';
import { removeItems } from '../../../../src/core/plan/edits/removeItems';
import { reshapeItem } from '../../../../src/core/plan/edits/reshapeItem';
import { turnItem } from '../../../../src/core/plan/edits/turnItem';
import { parsePlan } from '../../../../src/core/plan/parse';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { DEMO, readPlan } from '../../../plans/readPlan';

const demo = readPlan(DEMO);
const setupId = demo.setups[0].id;
/** The demo's first camera on a straight track of its own. */
const laid = layTrack(demo, { setupId, bent: false });
const trackId = laid.setups[0].track ?? '';
const track = (plan: Plan) => {
  const found = plan.gear.find(({ id }) => id === trackId);
  if (found?.kind !== 'track') throw new Error('found no track, expected the one that was laid');
  return found;
};
const keys = (plan: Plan) => plan.setups[0].move.keys;

/** What is written of each key is where the camera is at its moment. */
function holdsTrue(plan: Plan): void {
  const [setup] = plan.setups;
  for (const key of keys(plan)) {
    const { position } = stateAt(plan, setup, key.atSeconds);
    for (const axis of [0, 1, 2]) expect(key.position[axis]).toBeCloseTo(position[axis], 5);
  }
  expect(parsePlan(JSON.parse(JSON.stringify(plan))).ok).toBe(true);
}

describe('keys of a camera on a track that is', () => {
  test('moved go with it, as far along as before', () => {
    const moved = moveItems(laid, { ids: [trackId], by: [0.4, -0.25] });
    holdsTrue(moved);
    keys(moved).forEach((key, k) => {
      const before = keys(laid)[k];
      expect(key.alongMetres).toBe(before.alongMetres);
      expect(key.position[0]).toBeCloseTo(before.position[0] + 0.4, 5);
      expect(key.position[1]).toBe(before.position[1]);
      expect(key.position[2]).toBeCloseTo(before.position[2] - 0.25, 5);
    });
    // The cameras that ride on other tracks, or on none, are not touched.
    expect(moved.setups.slice(1).every((setup, k) => setup === laid.setups[k + 1])).toBe(true);
  });

  test('turned by a right angle lie square to where they lay, about its middle', () => {
    const { at, headingDegrees } = track(laid);
    const turned = turnItem(laid, { id: trackId, headingDegrees: headingDegrees + 90 });
    holdsTrue(turned);
    keys(turned).forEach((key, k) => {
      const [x, , z] = keys(laid)[k].position;
      expect(key.position[0]).toBeCloseTo(at[0] - (z - at[2]), 4);
      expect(key.position[2]).toBeCloseTo(at[2] + (x - at[0]), 4);
    });
  });

  test('bent, made longer, or mirrored lie on its line again', () => {
    const bent = reshapeItem(laid, { id: trackId, patch: { bendMetres: 5 } });
    holdsTrue(bent);
    expect(keys(bent)[0].position).not.toEqual(keys(laid)[0].position);
    expect(keys(bent).map(({ alongMetres }) => alongMetres)).toEqual(
      keys(laid).map(({ alongMetres }) => alongMetres),
    );
    holdsTrue(reshapeItem(laid, { id: trackId, patch: { lengthMetres: track(laid).lengthMetres + 1 } }));
    const { at } = track(laid);
    holdsTrue(
      mirrorItems(bent, { ids: [trackId], axis: { at: [at[0], at[2]], bearingDegrees: 20 }, copy: false })
        .plan,
    );
  });

  test('taken away stay where they were last, and keys that say no length along it are given one', () => {
    const plain: Plan = {
      ...laid,
      setups: laid.setups.map((setup, index) =>
        index > 0
          ? setup
          : {
              ...setup,
              move: { ...setup.move, keys: setup.move.keys.map(({ alongMetres: _, ...key }) => key) },
            },
      ),
    };
    const moved = moveItems(plain, { ids: [trackId], by: [0, 0.5] });
    holdsTrue(moved);
    expect(keys(moved)[0].alongMetres).toBeCloseTo(keys(laid)[0].alongMetres ?? Number.NaN, 3);
    const left = removeItems(moved, { ids: [trackId] });
    expect(left.setups[0].track).toBeUndefined();
    expect(keys(left).map(({ position }) => position)).toEqual(keys(moved).map(({ position }) => position));
  });
});

test('what changes no track keeps the setups as they are', () => {
  expect(moveItems(laid, { ids: ['nuno'], by: [0.1, 0] }).setups).toBe(laid.setups);
  expect(reshapeItem(laid, { id: trackId, patch: { gaugeMetres: 0.6 } }).setups).toBe(laid.setups);
});
