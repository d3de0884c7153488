import { describe, expect, test } from 'vitest';
import { framingOf } from '../../../src/core/continuity/framing';
import { reframing, towardsWhat } from '../../../src/core/continuity/reframing';
import { cameraAt } from '../../../src/core/optics/camera';
import { reframe } from '../../../src/core/plan/edits/reframe';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { planFrom } from '../../plans/bare';
import { smallRoofDocument } from '../smallRoof';

const base = smallRoofDocument();

/** The small roof with one setup, square to Ana at the start, and whatever else is asked for. */
function roofWith(changes: {
  readonly setup?: object;
  readonly pieces?: readonly object[];
  readonly gear?: readonly object[];
}): Plan {
  return planFrom({
    ...base,
    pieces: [...base.pieces, ...(changes.pieces ?? [])],
    gear: changes.gear ?? [],
    kit: {
      ...base.kit,
      lenses: [base.kit.lenses[0], { ...base.kit.lenses[0], id: 'twice', label: '80 mm', focalMm: 80 }],
    },
    setups: [
      {
        ...base.setups[0],
        move: {
          ease: 'linear',
          keys: [
            { atSeconds: 0, position: [0, 1.5, 1], headingDegrees: 0, tiltDegrees: 0, rollDegrees: 0 },
            { atSeconds: 2, position: [0.4, 1.5, 1], headingDegrees: 0, tiltDegrees: 0, rollDegrees: 0 },
          ],
        },
        ...changes.setup,
      },
    ],
  });
}

const asked = { lensId: 'twice', performerId: 'ana', seconds: 0, behindMetres: 10 };

function found(plan: Plan) {
  const answer = reframing(plan, plan.setups[0], asked);
  if (!answer) throw new Error('nobody is there');
  return answer;
}

describe('the same framing on another lens', () => {
  test('takes a zoom as far in as the keys have it', () => {
    const bare = roofWith({});
    const { lenses } = bare.kit;
    const [setup] = bare.setups;
    const keys = setup.move.keys.map((key) => ({ ...key, focalMm: 120 }));
    const plan: Plan = {
      ...bare,
      kit: { ...bare.kit, lenses: [lenses[0], { ...lenses[1], longestMm: 200 }] },
      setups: [{ ...setup, move: { ...setup.move, keys } }],
    };
    // From 40 mm to 120 mm: three times as far.
    const [before, after] = found(plan).same.distanceMetres;
    expect(after / before).toBeCloseTo(3, 9);
  });

  test('shifts every key alike, and the head is as large at the same place', () => {
    const plan = roofWith({});
    const { same, change, why } = found(plan);
    expect(why).toBeNull();
    const after = reframe(plan, change);
    const [before] = plan.setups;
    const [moved] = after.setups;
    expect(moved.lens).toBe('twice');
    const way = moved.move.keys.map(({ position }, k) =>
      position.map((metres, axis) => metres - before.move.keys[k].position[axis]),
    );
    for (const axis of [0, 1, 2]) expect(way[1][axis]).toBeCloseTo(way[0][axis], 6);
    expect(way[0][2]).toBeCloseTo(same.distanceMetres[1] - same.distanceMetres[0], 5);
    const [small, large] = [
      framingOf(cameraAt(plan, before, 0), plan, plan.cast[0], 0),
      framingOf(cameraAt(after, moved, 0), after, after.cast[0], 0),
    ];
    expect(large?.eyes[0]).toBeCloseTo(small?.eyes[0] ?? Number.NaN, 5);
    expect(large?.eyes[1]).toBeCloseTo(small?.eyes[1] ?? Number.NaN, 5);
  });

  test('is refused outside the deck and inside a thing', () => {
    const far = [{ atSeconds: 0, position: [0, 1.5, 5], headingDegrees: 0, tiltDegrees: 0, rollDegrees: 0 }];
    expect(found(roofWith({ setup: { move: { ease: 'linear', keys: far } } })).why).toBe(
      'The place lies outside the deck.',
    );
    const crate = {
      id: 'crate',
      label: 'Crate',
      kind: 'box',
      material: 'timber',
      at: [0, 0, 4],
      headingDegrees: 0,
      size: [2, 2, 2],
    };
    expect(found(roofWith({ pieces: [crate] })).why).toBe('The place lies inside Crate.');
  });

  test('goes along a track, and says why it cannot leave it', () => {
    const track = (headingDegrees: number) => ({
      id: 'rails',
      label: 'Track 1',
      kind: 'track',
      gaugeMetres: 0.62,
      at: [0, 0, 3],
      headingDegrees,
      lengthMetres: 7,
    });
    const dolly = (alongs: readonly number[]) => ({
      support: 'dolly',
      track: 'rails',
      move: {
        ease: 'linear',
        keys: alongs.map((alongMetres, k) => ({
          atSeconds: 2 * k,
          position: [0, 1.5, 0],
          alongMetres,
          headingDegrees: 0,
          tiltDegrees: 0,
          rollDegrees: 0,
        })),
      },
    });
    // Rails that run away from Ana: z = 6.5 − along.
    const plan = roofWith({ gear: [track(0)], setup: dolly([5.5]) });
    const { same, change, why } = found(plan);
    expect(why).toBeNull();
    expect(change.alongMetres?.[0]).toBeCloseTo(5.5 - (same.distanceMetres[1] - same.distanceMetres[0]), 3);
    expect(cameraAt(reframe(plan, change), reframe(plan, change).setups[0], 0).pose.position[2]).toBeCloseTo(
      same.position[2],
      3,
    );
    // What the plan says of the key's place is where the camera is.
    const [written] = reframe(plan, change).setups[0].move.keys;
    expect(written.position[2]).toBeCloseTo(same.position[2], 3);
    expect(found(roofWith({ gear: [track(0)], setup: dolly([5.5, 2]) })).why).toMatch(
      /^The wheels of the dolly would run \d\.\d\d\u00a0m beyond the end of Track 1\.$/,
    );
    // Wheels are 0.45 m before and behind the middle: a key that would stop 0.20 m from the end has them 0.25 m off.
    const back = 5.5 - (change.alongMetres?.[0] ?? Number.NaN);
    expect(found(roofWith({ gear: [track(0)], setup: dolly([5.5, back + 0.5]) })).why).toBeNull();
    expect(found(roofWith({ gear: [track(0)], setup: dolly([5.5, back + 0.2]) })).why).toBe(
      'The wheels of the dolly would run 0.25\u00a0m beyond the end of Track 1.',
    );
    expect(found(roofWith({ gear: [track(90)], setup: dolly([3.5]) })).why).toMatch(
      /^The place lies \d\.\d\d\u00a0m off Track 1, and the dolly goes along it only\.$/,
    );
    expect(found(roofWith({ gear: [track(0)], setup: dolly([1]) })).why).toMatch(/from the end of Track 1/);
  });
});

test('a way leads towards the set piece that is straightest ahead', () => {
  const plan = roofWith({
    pieces: [
      {
        id: 'crate',
        label: 'Crate',
        kind: 'box',
        at: [9, 0, 0],
        headingDegrees: 0,
        material: 'timber',
        size: [1, 1, 1],
      },
    ],
  });
  expect(towardsWhat(plan, [0, 0], [1, 0])).toBe('Crate');
  expect(towardsWhat(plan, [0, 0], [0, -1])).toBe('Fence');
  expect(towardsWhat(plan, [0, 0], [0, 1])).toBeNull();
});

test('a lens that the kit lacks changes nothing', () => {
  const plan = roofWith({});
  expect(reframe(plan, { setupId: plan.setups[0].id, lens: 'none', by: [1, 0, 0], alongMetres: null })).toBe(
    plan,
  );
  expect(
    reframe(plan, {
      setupId: plan.setups[0].id,
      lens: plan.setups[0].lens,
      by: [0, 0, 0],
      alongMetres: null,
    }),
  ).toBe(plan);
});
