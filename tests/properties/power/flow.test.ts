import { expect, test } from 'vitest';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { type Power, powerOf } from '../../../src/core/power/powerOf';
import { type Draw, drawFrom } from '../../plans/draw';
import { box, cable, drawing, generator, wired } from '../../plans/wired';
import { cases, fewCases } from '../../thorough';

const CASES = cases(300);

const always = (law: (draw: Draw, seed: number) => void, trees = CASES): void => {
  for (let seed = 1; seed <= trees; seed += 1) {
    try {
      law(drawFrom(seed), seed);
    } catch (error) {
      throw new Error(`seed ${seed}: ${error instanceof Error ? error.message : String(error)}`);
    }
  }
};

/** A tree of a generator, boxes and loads at random, cables either way round, none of it so much that it collapses. */
function someTree(draw: Draw, change: (gear: readonly object[]) => readonly object[] = (gear) => gear): Plan {
  const legCount = draw.whole(1, 3);
  const legs = Array.from({ length: legCount }, (_, leg) => leg + 1);
  const gear: object[] = [
    generator('genny', {
      volts: draw.pick([120, 230]),
      continuousWatts: 20000,
      peakWatts: 20000,
      circuits: [
        { amps: 60, sockets: 6, legs },
        ...legs.map((leg) => ({ amps: 30, sockets: 4, legs: [leg] })),
      ],
    }),
  ];
  const owners = ['genny'];
  const count = draw.whole(1, 9);
  for (let k = 0; k < count; k += 1) {
    const from = draw.pick(owners);
    const isBox = draw.chance(0.3);
    const id = `${isBox ? 'box' : 'load'}-${k}`;
    if (isBox) gear.push(box(id, { circuits: legs.map((leg) => ({ amps: 20, sockets: 6, legs: [leg] })) }));
    else gear.push(drawing(id, draw.between(10, 600), draw.between(0.5, 1)));
    const [a, b] = draw.chance(0.5) ? [from, id] : [id, from];
    gear.push(cable(`cord-${k}`, a, b, draw.between(1, 25), { wire: { awg: draw.pick([14, 12, 10, 6]) } }));
    if (isBox || draw.chance(0.1)) owners.push(id);
  }
  return wired(change(gear));
}

const near = (a: number, b: number): void =>
  expect(Math.abs(a - b), `${a} and ${b}`).toBeLessThan(1e-7 * Math.max(1, Math.abs(a), Math.abs(b)));

test('what a source gives is what its loads take and its cords turn into heat, in watts and in volt-amperes', () => {
  always((draw) => {
    const { flow, network } = powerOf(someTree(draw));
    expect(flow.collapsed).toEqual([]);
    expect(network.faults.filter(({ kind }) => kind !== 'passes on' && kind !== 'too few sockets')).toEqual(
      [],
    );
    const loads = [...flow.loads.values()];
    const losses = [...flow.cords.values()].reduce((sum, { lossWatts }) => sum + lossWatts, 0);
    const source = flow.sources.get('genny');
    near(source?.watts ?? 0, loads.reduce((sum, { watts }) => sum + watts, 0) + losses);
    near(source?.voltAmperes ?? 0, loads.reduce((sum, { voltAmperes }) => sum + voltAmperes, 0) + losses);
    near(source?.lossWatts ?? 0, losses);
    for (const load of loads) near(load.watts, network.loads.get(load.loadId)?.watts ?? 0);
  });
});

test('at every box what comes in on a leg goes out on it', () => {
  always((draw) => {
    const { flow, network } = powerOf(someTree(draw));
    for (const feed of network.feeds) {
      const into = flow.cords.get(feed.cableId)?.legAmps ?? [];
      const out = feed.legs.map((leg) =>
        network.feeds
          .filter(({ fromId }) => fromId === feed.toId)
          .reduce((sum, next) => {
            const at = next.legs.indexOf(leg);
            return sum + (at < 0 ? 0 : (flow.cords.get(next.cableId)?.legAmps[at] ?? 0));
          }, 0),
      );
      const own = flow.loads.get(feed.toId);
      for (const [k, leg] of feed.legs.entries())
        near(into[k] ?? 0, (out[k] ?? 0) + (own && own.leg === leg ? own.amps : 0));
    }
  });
});

/** On one leg alone nothing can raise the volts of another. */
function oneLeg(draw: Draw, change: (gear: readonly object[]) => readonly object[]): Power {
  const seedTree = (gear: readonly object[]): readonly object[] =>
    change(
      gear.map((each) =>
        'kind' in each && each.kind === 'generator'
          ? generator('genny', {
              volts: 120,
              continuousWatts: 20000,
              peakWatts: 20000,
              circuits: [{ amps: 60, sockets: 24 }],
            })
          : each,
      ),
    );
  return powerOf(someTree(draw, seedTree));
}

const voltsIn = (power: Power): ReadonlyMap<string, number> =>
  new Map([...power.flow.loads.values()].map(({ loadId, volts }) => [loadId, volts]));

test('longer or thinner cords and more watts never give anything more volts', () => {
  const worse: readonly ((gear: readonly object[]) => readonly object[])[] = [
    (gear) =>
      gear.map((each) =>
        'path' in each && Array.isArray(each.path)
          ? { ...each, path: [each.path[0], [each.path[1][0] * 1.5, 0]] }
          : each,
      ),
    (gear) => gear.map((each) => ('path' in each ? { ...each, wire: { awg: 16 } } : each)),
    (gear) =>
      gear.map((each) =>
        'drawn' in each && typeof each.drawn === 'object' && each.drawn && 'watts' in each.drawn
          ? { ...each, drawn: { ...each.drawn, watts: Number(each.drawn.watts) * 1.3 } }
          : each,
      ),
  ];
  always((_, seed) => {
    const before = voltsIn(oneLeg(drawFrom(seed), (gear) => gear));
    for (const change of worse) {
      const after = voltsIn(oneLeg(drawFrom(seed), change));
      for (const [id, volts] of before) expect(after.get(id), id).toBeLessThanOrEqual(volts + 1e-9);
    }
  }, fewCases(300));
});
