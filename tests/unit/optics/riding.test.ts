import { expect, test } from 'vitest';
import { RAIL_TOP_METRES } from '../../../src/core/form/gear/track';
import { stateAt } from '../../../src/core/optics/camera';
import { layTrack, putDollyUnder } from '../../../src/core/optics/onTrack';
import { dollyPlaceAt, formsThrough, formThrough, itemNow } from '../../../src/core/optics/riding';
import { removeSetup } from '../../../src/core/plan/edits/removeSetup';
import { setRides } from '../../../src/core/plan/edits/setRides';
import { itemOf } from '../../../src/core/plan/items';
import { parsePlan } from '../../../src/core/plan/parse';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { setupReport } from '../../../src/core/report/setupReport';
import { DEMO, readPlan } from '../../plans/readPlan';

const demo = readPlan(DEMO);
const setupId = demo.setups[0].id;

/** The demo with its first camera on a track of its own, and on a dolly. */
const ridden: Plan = putDollyUnder(layTrack(demo, { setupId, bent: false }), { setupId });
const dollyOf = (plan: Plan) => {
  const found = plan.gear.find((gear) => gear.kind === 'dolly');
  if (found?.kind !== 'dolly') throw new Error('found no dolly, expected the one that was put in');
  return found;
};
const [from, to] = [10, 17];

test('a dolly goes where the camera is that rides on it, on the rails and along them', () => {
  const [setup] = ridden.setups;
  for (const seconds of [from, 13.3, to]) {
    const { position } = stateAt(ridden, setup, seconds);
    const place = dollyPlaceAt(ridden, dollyOf(ridden), setup, seconds);
    expect(place.at).toEqual([position[0], RAIL_TOP_METRES, position[2]]);
    // The mount lies the head and half the body below the lens, to the centimetre.
    expect(place.columnMetres).toBeCloseTo(Math.floor((position[1] - RAIL_TOP_METRES - 0.3) * 100) / 100, 9);
  }
  const track = ridden.gear.find(({ id }) => id === setup.track);
  expect(track?.kind === 'track' && track.headingDegrees).toBeCloseTo(
    dollyPlaceAt(ridden, dollyOf(ridden), setup, from).headingDegrees,
    6,
  );
});

test('its own setup has it in its forms where it is, the others not at all, the roof under its camera', () => {
  const id = dollyOf(ridden).id;
  const [own, other] = ridden.setups;
  const form = formThrough(ridden, own, id, from);
  expect(form?.parts.map(({ name }) => name)).toEqual(['chassis', 'wheels', 'push bar', 'column']);
  const { position } = stateAt(ridden, own, from);
  expect(form?.parts[0].worldFromPart?.[3]).toBe(position[0]);
  expect(form?.parts[0].worldFromPart?.[11]).toBe(position[2]);
  expect(formThrough(ridden, other, id, from)).toBeNull();
  expect(formsThrough(ridden, other, from).some((each) => each.id === id)).toBe(false);
  expect(formsThrough(ridden, null, from).find((each) => each.id === id)).toEqual(form);
});

test('what has not moved comes back as the same objects, and what has keeps its shapes', () => {
  const [own] = ridden.setups;
  const id = dollyOf(ridden).id;
  const first = formsThrough(ridden, own, from);
  const again = formsThrough(ridden, own, from);
  expect(again.every((form, k) => form === first[k])).toBe(true);
  const later = formThrough(ridden, own, id, to);
  const before = first.find((form) => form.id === id);
  expect(later).not.toBe(before);
  later?.parts.forEach(({ shape }, k) => {
    expect(shape).toBe(before?.parts[k].shape);
  });
  // Without dollies the forms are those of the instant.
  expect(formsThrough(demo, own, from)).toEqual(formsThrough(demo, null, from));
});

test('a dolly shows in its own shot when the lens looks down far enough', () => {
  const down: Plan = {
    ...ridden,
    setups: ridden.setups.map((setup, index) =>
      index > 0
        ? setup
        : {
            ...setup,
            operator: undefined,
            move: { ...setup.move, keys: setup.move.keys.map((key) => ({ ...key, tiltDegrees: -75 })) },
          },
    ),
  };
  const [own, other] = down.setups;
  const verdictOf = (setup: typeof own): string | undefined =>
    setupReport(down, setup, { at: 20 }).items.find(({ id }) => id === dollyOf(down).id)?.verdict;
  expect(verdictOf(own)).toBe('showing');
  expect(verdictOf(other)).toBeUndefined();
});

test('a camera rides on one dolly, and one whose setup goes stays where it was put', () => {
  const [, other] = ridden.setups;
  const { id } = dollyOf(ridden);
  const second = putDollyUnder(ridden, { setupId });
  const riding = second.gear.filter((gear) => gear.kind === 'dolly' && gear.rides === setupId);
  expect(riding.map((gear) => gear.id)).not.toContain(id);
  expect(riding).toHaveLength(1);
  const moved = setRides(ridden, { id, setupId: other.id });
  expect(dollyOf(moved).rides).toBe(other.id);
  expect(setRides(moved, { id, setupId: other.id })).toBe(moved);
  expect(setRides(ridden, { id, setupId: 'nobody' })).toBe(ridden);
  const left = removeSetup(ridden, { setupId });
  expect(dollyOf(left).rides).toBeUndefined();
  expect(parsePlan(JSON.parse(JSON.stringify(left))).ok).toBe(true);
  const item = itemOf(ridden, id);
  if (item?.section !== 'gear') throw new Error('found no gear, expected the dolly');
  const now = itemNow(ridden, item, to);
  expect('at' in now.record && now.record.at[0]).toBe(stateAt(ridden, ridden.setups[0], to).position[0]);
});

test('a plan whose dolly carries a setup that is not there is refused with a sentence', () => {
  const wrong = {
    ...ridden,
    gear: ridden.gear.map((gear) => (gear.kind === 'dolly' ? { ...gear, rides: 'nobody' } : gear)),
  };
  const read = parsePlan(JSON.parse(JSON.stringify(wrong)));
  expect(read.ok ? '' : read.faults[0].sentence).toMatch(/rides.*nobody.*setup/);
});
