import { expect, test } from 'vitest';
import { ByInstant } from '../../../src/core/continuity/byInstant';
import { continuityOf, continuitySteps } from '../../../src/core/continuity/continuity';
import { shotSteps, shotsOf } from '../../../src/core/continuity/continuityShots';
import { coverageOf, coverageSteps } from '../../../src/core/continuity/coverage';
import { linesWanted } from '../../../src/core/continuity/linesWanted';
import { crowdedPlan } from '../../plans/crowd';

/** A plan that nothing is known of yet. */
const anew = (setups: number) => crowdedPlan(40, setups, 3, 4);

/** All shares that steps tell, and what they come to. */
function taken<Value>(steps: Generator<number, Value, void>): {
  readonly shares: number[];
  readonly value: Value;
} {
  const shares: number[] = [];
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return { shares, value: step.value };
    shares.push(step.value);
  }
}

const expectRising = (shares: readonly number[]): void => {
  expect(shares[0]).toBe(0);
  for (const [k, share] of shares.entries()) expect(share).toBeGreaterThanOrEqual(shares[k - 1] ?? 0);
  expect(shares.at(-1)).toBeLessThan(1);
};

test('continuity step by step comes to what it comes to in one go, and tells how far it is', () => {
  const { shares, value } = taken(continuitySteps(anew(6)));
  expect(value).toEqual(continuityOf(anew(6)));
  expectRising(shares);
});

test('whoever takes the steps of continuity can stop within every look and every setup', () => {
  const plan = anew(6);
  const { shares } = taken(continuitySteps(plan));
  const looks = shotsOf(plan).reduce((sum, { instants }) => sum + instants.length, 0);
  // Each look once; then each setup in the checks that go by setups: eyelines, neighbours, the dirty, headroom.
  expect(shares.length).toBeGreaterThan(looks + 4 * plan.setups.length);
  const largest = Math.max(...shares.map((share, k) => share - (shares[k - 1] ?? 0)));
  expect(largest).toBeLessThan(0.1);
});

test('coverage step by step is the same, and its looks are those of continuity', () => {
  const plan = anew(5);
  const { value } = taken(coverageSteps(plan));
  expect(value).toEqual(coverageOf(anew(5)));
  expect(taken(shotSteps(plan)).shares).toEqual([]);
  expect(taken(coverageSteps(plan)).shares).toHaveLength(value.rows.length);
});

test('the lines that a plan wants are looked for once', () => {
  const plan = anew(3);
  expect(linesWanted(plan)).toBe(linesWanted(plan));
});

test('what is asked of somebody at an instant is worked out once for each scene, be it nothing', () => {
  const [here, there] = [anew(1), anew(2)];
  const [first, second] = here.cast;
  let asked = 0;
  const known = new ByInstant((performer, scene, seconds) => {
    asked += 1;
    return seconds === 0 ? null : `${performer.id} ${scene.setups.length} ${seconds}`;
  });
  for (let times = 0; times < 3; times += 1) {
    expect(known.at(first, here, 0)).toBeNull();
    expect(known.at(first, here, 1)).toBe(`${first.id} 1 1`);
    expect(known.at(second, here, 1)).toBe(`${second.id} 1 1`);
    expect(known.at(first, there, 1)).toBe(`${first.id} 2 1`);
  }
  expect(asked).toBe(4);
});
