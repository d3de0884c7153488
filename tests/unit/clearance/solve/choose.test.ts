import { expect, it, test } from 'vitest';
import { choose, type Options } from '../../../../src/core/clearance/solve/choose';
import { smallestHitting } from '../../../../src/core/clearance/solve/conflict';
import { inOneGo } from '../../../../src/core/units/steps';
import { drawFrom } from '../../../plans/draw';
import { cases } from '../../../thorough';

interface Pick {
  readonly change: number;
  readonly name: number;
}

const optionsOf = (picks: readonly Pick[]): Options<Pick> => ({
  *at(k) {
    yield;
    return picks[k] ?? null;
  },
});

/** Every way to take one of each, tried: the least change of those that go together. */
function byTryingAll(
  lists: readonly (readonly Pick[])[],
  fits: (a: number, pick: Pick, b: number, other: Pick) => boolean,
): number | null {
  let best: number | null = null;
  const walk = (picks: readonly Pick[]): void => {
    if (picks.length === lists.length) {
      const change = picks.reduce((sum, pick) => sum + pick.change, 0);
      if (best === null || change < best) best = change;
      return;
    }
    for (const pick of lists[picks.length])
      if (picks.every((other, k) => fits(k, other, picks.length, pick))) walk([...picks, pick]);
  };
  walk([]);
  return best;
}

test('picks what trying all of them finds', () => {
  let impossible = 0;
  for (let seed = 1; seed <= cases(300); seed += 1) {
    const draw = drawFrom(seed);
    const lists = Array.from({ length: draw.whole(1, 4) }, () =>
      Array.from({ length: draw.whole(1, 5) }, (_, name) => ({ change: draw.whole(0, 6) / 2, name })).sort(
        (a, b) => a.change - b.change,
      ),
    );
    const against = new Set<string>();
    for (let a = 0; a < lists.length; a += 1)
      for (let b = a + 1; b < lists.length; b += 1)
        for (const one of lists[a])
          for (const other of lists[b])
            if (draw.chance(0.35)) against.add(`${a} ${one.name} ${b} ${other.name}`);
    const fits = (a: number, one: Pick, b: number, other: Pick): boolean =>
      !against.has(a < b ? `${a} ${one.name} ${b} ${other.name}` : `${b} ${other.name} ${a} ${one.name}`);
    const best = byTryingAll(lists, fits);
    const chosen = inOneGo(choose(lists.map(optionsOf), fits));
    if (best === null) {
      impossible += 1;
      expect('stuck' in chosen, `seed ${seed}`).toBe(true);
      continue;
    }
    if ('stuck' in chosen) throw new Error(`seed ${seed}: stuck, and ${best} is possible`);
    const { picks } = chosen;
    expect(
      picks.reduce((sum, { change }) => sum + change, 0),
      `seed ${seed}`,
    ).toBe(best);
    for (let b = 0; b < picks.length; b += 1)
      for (let a = 0; a < b; a += 1) expect(fits(a, picks[a], b, picks[b])).toBe(true);
  }
  expect(impossible).toBeGreaterThan(0);
});

it('names those that have nothing together', () => {
  const [one, other] = [optionsOf([{ change: 0, name: 0 }]), optionsOf([{ change: 1, name: 0 }])];
  const free = optionsOf([{ change: 0, name: 7 }]);
  expect(inOneGo(choose([one, free, other], (a, _, b) => a !== 0 || b !== 2))).toEqual({
    stuck: [0, 2],
    isCertain: true,
  });
  expect(inOneGo(choose([one, optionsOf([])], () => true))).toEqual({ stuck: [1], isCertain: true });
});

it('does not say that there is nothing together where it has not weighed all', () => {
  const endless: Options<Pick> = {
    *at(k) {
      yield;
      return { change: k, name: k };
    },
  };
  expect(inOneGo(choose([endless, endless], () => false))).toEqual({ stuck: [0, 1], isCertain: false });
});

test('the smallest set that has one of each list, against trying all', () => {
  for (let seed = 1; seed <= cases(300); seed += 1) {
    const draw = drawFrom(seed);
    const lists = Array.from({ length: draw.whole(1, 6) }, () =>
      [0, 1, 2, 3, 4].filter(() => draw.chance(0.4)),
    );
    const hits = Array.from({ length: 32 }, (_, bits) => [0, 1, 2, 3, 4].filter((k) => bits & (1 << k)))
      .filter((set) => lists.every((list) => list.some((each) => set.includes(each))))
      .sort((a, b) => a.length - b.length);
    const found = smallestHitting(lists);
    if (hits.length === 0) expect(found).toBe(null);
    else expect(found?.length, `seed ${seed}`).toBe(hits[0].length);
    if (found) expect(lists.every((list) => list.some((each) => found.includes(each)))).toBe(true);
  }
});
