import { describe, expect, test } from 'vitest';
import { type MatchBy, matchSetup } from '../../../src/core/continuity/matchSetup';
import { compareSingles, type SinglesAspect, singleAt } from '../../../src/core/continuity/singles';
import { reposeCamera } from '../../../src/core/plan/edits/reposeCamera';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { type FaceOff, faceOff, keyAt, ON_BEA, onAna } from '../../plans/faceOff';

const SOMEWHERE = keyAt([1.4, 1.3, 1.1], 300, 6);

function matched(plan: Plan, by: MatchBy = 'distance', seconds = 0) {
  const found = matchSetup(plan, { setupId: 'setup-2', modelId: 'setup-1', seconds, by });
  if (!found) throw new Error('there is nobody to match');
  return { found, after: reposeCamera(plan, found.change) };
}

/** How far the two setups lie apart after a match. */
function apartIn(plan: Plan, seconds = 0): ReadonlyMap<SinglesAspect, number> {
  const [a, b] = plan.setups.map((setup) => singleAt(plan, setup, seconds));
  if (!a || !b) throw new Error('a setup is about nobody');
  return new Map(compareSingles(a, b).map(({ aspect, apart }) => [aspect, apart]));
}

const pair = (more: Partial<FaceOff> = {}, second: Partial<FaceOff['setups'][number]> = {}): Plan =>
  faceOff({ setups: [{ keys: [ON_BEA] }, { keys: [SOMEWHERE], ...second }], ...more });

const ALL_EQUAL = 1e-3;

describe('a setup that matches another', () => {
  test('stands where the mirror of the model does, and reads equal in everything', () => {
    const { found, after } = matched(pair({}, { lens: 'short' }));
    expect(found.why).toBeNull();
    expect(found.lensId).toBe('long');
    expect([found.performerId, found.modelPerformerId]).toEqual(['ana', 'bea']);
    const [key] = after.setups[1].move.keys;
    const wanted = onAna(ON_BEA);
    for (const axis of [0, 1, 2]) expect(key.position[axis]).toBeCloseTo(wanted.position[axis], 3);
    expect((key.headingDegrees + 360) % 360).toBeCloseTo(319, 1);
    for (const [aspect, apart] of apartIn(after)) {
      expect(apart, aspect).toBeLessThan(ALL_EQUAL);
    }
  });

  test('keeps distance and eyeline with a smaller body, or the height of the head', () => {
    const smaller = { ana: { statureMetres: 1.52 } };
    const { after } = matched(pair(smaller));
    const apart = apartIn(after);
    for (const aspect of ['lens', 'distance', 'height', 'tilt', 'looking room', 'eyeline'] as const)
      expect(apart.get(aspect), aspect).toBeLessThan(ALL_EQUAL);
    // Heads grow with the bodies: 1.68 over 1.52, less one.
    expect(apart.get('head')).toBeCloseTo(1.68 / 1.52 - 1, 2);

    const byHead = matched(pair(smaller), 'head');
    const nearer = apartIn(byHead.after);
    for (const aspect of ['lens', 'head', 'tilt', 'looking room', 'eyeline'] as const)
      expect(nearer.get(aspect), aspect).toBeLessThan(ALL_EQUAL);
    expect(nearer.get('distance')).toBeCloseTo(1.68 / 1.52 - 1, 2);
    expect(byHead.found.distanceMetres).toBeLessThan(matched(pair(smaller)).found.distanceMetres);
  });

  test('keeps its own squeeze and delivery; the zoom goes in as far as it takes', () => {
    const squeezed = matched(pair({}, { lens: 'wide' }));
    expect(squeezed.found.lensId).toBe('wide');
    expect(squeezed.found.sameField).toBe(false);
    const onZoom = faceOff({
      setups: [
        { keys: [ON_BEA], lens: 'long' },
        { keys: [SOMEWHERE], lens: 'zoom' },
      ],
      plan: {},
    });
    const without = {
      ...onZoom,
      kit: {
        ...onZoom.kit,
        // The model's lens has another squeeze, so that the zoom is what there is.
        lenses: onZoom.kit.lenses.map((lens) => (lens.id === 'long' ? { ...lens, squeeze: 1.5 } : lens)),
      },
    };
    const { found, after } = matched(without);
    expect(found.lensId).toBe('zoom');
    expect(found.sameField).toBe(true);
    // 85 mm and a squeeze of 1.5: the gate's height is cut for 2.39, its width is 1.5 times as wide a field.
    expect(after.setups[1].move.keys[0].focalMm).toBeCloseTo(85 / 1.5, 3);
    expect(apartIn(after).get('lens')).toBeLessThan(ALL_EQUAL);
  });

  test('shifts and turns the keys of a move alike, and is right at the instant that is asked for', () => {
    const moving = [SOMEWHERE, keyAt([1.1, 1.4, 1.5], 311, 5)];
    const plan = faceOff({
      setups: [{ keys: [ON_BEA], span: { from: 'start', to: 'end' } }, { keys: moving }],
    });
    const { found, after } = matched(plan, 'distance', 1);
    expect(found.why).toBeNull();
    const [before, then] = [plan.setups[1].move.keys, after.setups[1].move.keys];
    for (const axis of [0, 1, 2]) {
      expect(then[1].position[axis] - before[1].position[axis]).toBeCloseTo(
        then[0].position[axis] - before[0].position[axis],
        5,
      );
    }
    const turns = [0, 1].map((k) => then[k].headingDegrees - before[k].headingDegrees);
    expect(turns[0]).toBeCloseTo(turns[1], 5);
    for (const [aspect, apart] of apartIn(after, 1)) expect(apart, aspect).toBeLessThan(ALL_EQUAL);
  });

  test('gives an operator who holds somebody the mirrored place', () => {
    const plan = pair({}, { operator: { hold: 'ana', at: [0.5, 0.5] } });
    const { after } = matched(plan);
    const model = singleAt(plan, plan.setups[0], 0);
    expect(after.setups[1].operator?.hold).toBe('ana');
    // Bea looks to frame left: what is ahead of her is from the left edge to her eyes.
    expect(after.setups[1].operator?.at[0]).toBeCloseTo(1 - (model?.aheadShare ?? 0), 6);
    for (const [aspect, apart] of apartIn(after)) {
      if (aspect !== 'tilt') expect(apart, aspect).toBeLessThan(ALL_EQUAL);
    }
  });
});

describe('a match that cannot be had', () => {
  test('says so inside of a thing and off the track', () => {
    const [x, , z] = onAna(ON_BEA).position;
    const crate = {
      id: 'crate',
      label: 'Crate',
      kind: 'box',
      material: 'timber',
      at: [x, 0, z],
      headingDegrees: 0,
      size: [0.4, 2, 0.4],
    };
    const deck = pair().pieces[0];
    expect(matched(pair({ plan: { pieces: [deck, crate] } })).found.why).toBe('The place lies inside Crate.');
    const rails = {
      id: 'rails',
      label: 'Track 1',
      kind: 'track',
      gaugeMetres: 0.62,
      at: [3, 0, 3],
      headingDegrees: 0,
      lengthMetres: 2.4,
    };
    const dolly = pair({ plan: { gear: [rails] } }, { support: 'dolly', track: 'rails' });
    expect(matched(dolly).found.why).toMatch(/from the end of Track 1|off Track 1/);
  });

  test('goes along a track that leads there', () => {
    const [x, , z] = onAna(ON_BEA).position;
    const rails = {
      id: 'rails',
      label: 'Track 1',
      kind: 'track',
      gaugeMetres: 0.62,
      at: [x, 0, z],
      headingDegrees: 90,
      lengthMetres: 3,
    };
    const key = { ...SOMEWHERE, position: [x + 1, 1.4, z] as [number, number, number], alongMetres: 2.5 };
    const plan = pair({ plan: { gear: [rails] } }, { support: 'dolly', track: 'rails', keys: [key] });
    const { found, after } = matched(plan);
    expect(found.why).toBeNull();
    expect(after.setups[1].move.keys[0].alongMetres).toBeCloseTo(1.5, 3);
    for (const [aspect, apart] of apartIn(after)) expect(apart, aspect).toBeLessThan(2 * ALL_EQUAL);
  });

  test('is none with nobody to frame, with itself, or of a setup that is not there', () => {
    const plan = pair({}, { keys: [keyAt([0, 1.5, 5], 180)] });
    const ask = (setupId: string, modelId: string) => matchSetup(plan, { setupId, modelId, seconds: 0 });
    expect(ask('setup-2', 'setup-1')).toBeNull();
    expect(ask('setup-1', 'setup-1')).toBeNull();
    expect(ask('setup-1', 'never')).toBeNull();
    const named = matchSetup(plan, {
      setupId: 'setup-2',
      modelId: 'setup-1',
      seconds: 0,
      performerId: 'ana',
    });
    expect(named?.why).toBeNull();
  });
});

test('an edit that could not be written changes nothing', () => {
  const plan = pair();
  const nothing = {
    setupId: 'setup-2',
    lens: 'long',
    by: [0, 0, 0] as [number, number, number],
    alongMetres: null,
    panDegrees: 0,
    tiltDegrees: 0,
    rollDegrees: 0,
    focalMm: null,
    operator: null,
  };
  expect(reposeCamera(plan, nothing)).toBe(plan);
  expect(reposeCamera(plan, { ...nothing, lens: 'never' })).toBe(plan);
  expect(reposeCamera(plan, { ...nothing, setupId: 'never' })).toBe(plan);
  expect(reposeCamera(plan, { ...nothing, lens: 'short', tiltDegrees: 100 })).toBe(plan);
  expect(reposeCamera(plan, { ...nothing, operator: { hold: 'nobody', at: [0.5, 0.5] } })).toBe(plan);
  expect(reposeCamera(plan, { ...nothing, panDegrees: 355 }).setups[1].move.keys[0].headingDegrees).toBe(-65);
});
