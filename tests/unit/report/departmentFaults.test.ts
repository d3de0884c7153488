import { expect, test } from 'vitest';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { departmentFaults } from '../../../src/core/report/cameraNotices';
import { inOwnLengths } from '../../../src/screens/sheet/camera/MoveFaults';
import { planFrom } from '../../plans/bare';
import { DEMO, readPlan } from '../../plans/readPlan';

/** Without its night, which is about setups that are left out here. */
const { night: _, ...demo } = readPlan(DEMO);
const [first] = demo.setups;
const key = (atSeconds: number, x: number, more: object = {}) => ({
  atSeconds,
  position: [x, 1.2, 5],
  headingDegrees: 0,
  tiltDegrees: 0,
  rollDegrees: 0,
  ...more,
});

function planWith(setup: object, lens: object = {}): Plan {
  const { track: _, ...free } = first;
  return planFrom({
    ...demo,
    kit: {
      ...demo.kit,
      lenses: demo.kit.lenses.map((each) => (each.id === first.lens ? { ...each, ...lens } : each)),
    },
    setups: [{ ...free, ...setup }],
  });
}
const faultsOf = (plan: Plan, about: string) =>
  departmentFaults(plan, plan.setups[0]).filter((fault) => fault.about === about);

test('a camera that gets farther than what it is on is told so: sticks stay, a slider has its length, a shoulder walks', () => {
  const move = { ease: 'linear', keys: [key(9, 0), key(26, 1.5)] };
  const sentence = (support: string) => faultsOf(planWith({ support, move }), 'travel')[0]?.sentence;
  expect(sentence('sticks')).toBe(
    `“${first.label}” takes its camera 1.50\u00a0m away, and what it is on, sticks, stays where it stands: a slider, a dolly or a shoulder would carry it.`,
  );
  expect(sentence('slider')).toBe(
    `“${first.label}” takes its camera 1.50\u00a0m away, and what it is on, slider, carries it 1.20\u00a0m at most.`,
  );
  for (const free of ['handheld', 'dolly', 'body rig', 'jib']) expect(sentence(free)).toBeUndefined();
});

test('a zoom asked for more than it has is told its nearest, at the key that asks', () => {
  const move = { ease: 'linear', keys: [key(9, 0, { focalMm: 60 }), key(26, 0, { focalMm: 400 })] };
  const plan = planWith({ move }, { focalMm: 50, longestMm: 120 });
  expect(faultsOf(plan, 'zoom')).toEqual([
    {
      about: 'zoom',
      keyIndex: 1,
      nearest: 120,
      sentence: `A key of “${first.label}” asks for 400\u00a0mm, and its zoom goes from 50\u00a0mm to 120\u00a0mm. The nearest is 120\u00a0mm.`,
    },
  ]);
});

test('every objection has the nearest that would do, as a number', () => {
  const late = planWith({ move: { ease: 'linear', keys: [key(9, 0), key(60, 0)] } });
  expect(faultsOf(late, 'key')).toMatchObject([{ keyIndex: 1, nearest: 26 }]);
  const near = planWith({ focus: { metres: 0.2 }, move: { ease: 'linear', keys: [key(9, 0)] } });
  const { closeFocusMetres } = demo.kit.lenses.find(({ id }) => id === first.lens) ?? { closeFocusMetres: 0 };
  expect(faultsOf(near, 'focus')).toMatchObject([{ nearest: closeFocusMetres }]);
});

test('what the report says in metres is said in feet where lengths are', () => {
  const said = 'It runs at 1.6\u00a0m/s, and the track is 2.44\u00a0m long.';
  expect(inOwnLengths(said, 'm')).toBe(said);
  expect(inOwnLengths(said, 'ft-in')).toMatch(/^It runs at 1\.6\u00a0m\/s, and the track is 8′/);
});
