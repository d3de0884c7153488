import { expect, test } from 'vitest';
import { isWithin } from '../../../src/core/plan/areas';
import { parsePlan } from '../../../src/core/plan/parse';
import { metresBetween } from '../../../src/core/plan/runs';
import type { Spot } from '../../../src/core/plan/schema/numbers';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { obstaclesOn } from '../../../src/core/plan/walkWays/obstacles';
import { fromOutline, fromPiece } from '../../../src/core/plan/walkWays/planar';
import { connectAll } from '../../../src/core/power/connect/connectAll';
import { wetMetresOf } from '../../../src/core/power/places';
import { powerOf } from '../../../src/core/power/powerOf';
import { type Draw, drawFrom } from '../../plans/draw';
import { box, drawing, generator, wired } from '../../plans/wired';
import { cases } from '../../thorough';

const CASES = cases(60);

const always = (law: (draw: Draw) => void): void => {
  for (let seed = 1; seed <= CASES; seed += 1) {
    try {
      law(drawFrom(seed));
    } catch (error) {
      throw new Error(`seed ${seed}: ${error instanceof Error ? error.message : String(error)}`);
    }
  }
};

const HALF = { x: 8, z: 6 };
const rectangle = (x: number, z: number, wide: number, deep: number): Spot[] => [
  [x - wide, z - deep],
  [x + wide, z - deep],
  [x + wide, z + deep],
  [x - wide, z + deep],
];

/** A deck with walls, pools, supplies and loads at random, apart from each other by half a metre and more. */
function someRoof(draw: Draw, roomy: boolean): Plan {
  const taken: Spot[] = [];
  const pools = Array.from({ length: draw.whole(0, 3) }, () =>
    rectangle(draw.between(-5, 5), draw.between(-4, 4), draw.between(0.3, 2.5), draw.between(0.3, 3)),
  );
  const walls = Array.from({ length: draw.whole(0, 3) }, (): [Spot, Spot] => {
    const from: Spot = [draw.between(-6, 6), draw.between(-4, 4)];
    return [from, [from[0] + draw.between(-3, 3), from[1] + draw.between(1, 3)]];
  });
  const place = (): [number, number, number] => {
    for (;;) {
      const at: Spot = [draw.between(-7, 7), draw.between(-5, 5)];
      const isFree =
        taken.every((spot) => metresBetween(spot, at) > 0.5) &&
        walls.every(([from, to]) => fromPiece(from, to, at) > 0.6) &&
        pools.every(
          (pool) => !isWithin(pool, at) && pool.every((a, k) => fromPiece(a, pool[(k + 1) % 4], at) > 0.6),
        );
      if (!isFree) continue;
      taken.push(at);
      return [at[0], 0, at[1]];
    }
  };
  const supplies = Array.from({ length: draw.whole(1, 3) }, (_, k) =>
    generator(
      `genny-${k}`,
      roomy
        ? { continuousWatts: 9000, peakWatts: 9000, circuits: [{ amps: 100, sockets: 12 }] }
        : {
            continuousWatts: draw.pick([900, 1600, 2800]),
            peakWatts: 3000,
            circuits: draw.pick([
              [{ amps: 20, sockets: 2 }],
              [
                { amps: 20, sockets: 2, legs: [1] },
                { amps: 15, sockets: 1, legs: [2] },
                { amps: 30, sockets: 1, legs: [1, 2] },
              ],
            ]),
          },
      place(),
    ),
  );
  const loads = Array.from({ length: draw.whole(1, 8) }, (_, k) =>
    drawing(`load-${k}`, draw.between(20, 1100), draw.between(0.6, 1), {}, place()),
  );
  return wired([...supplies, ...(draw.chance(0.4) ? [box('box', {}, place())] : []), ...loads], {
    ground: {
      surface: 'concrete',
      wetness: 'dry',
      areas: pools.map((outline, k) => ({ id: `pool-${k}`, wetness: 'wet down', outline })),
    },
    pieces: [
      {
        kind: 'deck',
        id: 'deck',
        label: 'Deck',
        outline: rectangle(0, 0, HALF.x, HALF.z),
        topMetres: 0,
        dropMetres: 10,
      },
      ...walls.map((path, k) => ({
        kind: 'wall',
        id: `wall-${k}`,
        label: `Wall ${k}`,
        path,
        closed: false,
        baseMetres: 0,
        heightMetres: 3,
        thicknessMetres: 0.15,
        material: 'brick',
      })),
    ],
  });
}

/** Whether one can get from a place to another over dry, open deck with 0.45 m to spare: a flood over a raster of its own. */
function hasDryWay(plan: Plan, from: Spot, to: Spot): boolean {
  const step = 0.2;
  const spare = 0.45;
  const obstacles = obstaclesOn(plan, [0, 0]);
  const pools = (plan.ground.areas ?? []).map(({ outline }) => outline);
  const keyOf = (x: number, z: number): string => `${x} ${z}`;
  const isOpen = (x: number, z: number): boolean => {
    const at: Spot = [from[0] + x * step, from[1] + z * step];
    if (metresBetween(at, from) < 0.5 || metresBetween(at, to) < 0.5) return true;
    return (
      Math.abs(at[0]) < HALF.x - spare &&
      Math.abs(at[1]) < HALF.z - spare &&
      obstacles.every(({ outline }) => fromOutline(outline, at, at) > spare) &&
      pools.every(
        (pool) => !isWithin(pool, at) && pool.every((a, k) => fromPiece(a, pool[(k + 1) % 4], at) > spare),
      )
    );
  };
  const queue: [number, number][] = [[0, 0]];
  const seen = new Set([keyOf(0, 0)]);
  for (let head = 0; head < queue.length; head += 1) {
    const [x, z] = queue[head];
    if (metresBetween([from[0] + x * step, from[1] + z * step], to) < step) return true;
    for (const [dx, dz] of [
      [1, 0],
      [-1, 0],
      [0, 1],
      [0, -1],
    ]) {
      const key = keyOf(x + dx, z + dz);
      if (seen.has(key) || !isOpen(x + dx, z + dz)) continue;
      seen.add(key);
      queue.push([x + dx, z + dz]);
    }
  }
  return false;
}

test('nothing is overloaded; what is left out was told; a second time changes nothing', () => {
  always((draw) => {
    const plan = someRoof(draw, false);
    const connected = connectAll(plan);
    expect(parsePlan(connected.plan)).toEqual({ ok: true, value: connected.plan });
    expect(connected.plan.gear.slice(0, plan.gear.length)).toEqual(plan.gear);
    const power = powerOf(connected.plan);
    expect(power.network.faults.filter(({ kind }) => kind !== 'no cord')).toEqual([]);
    for (const { continuousShare } of power.circuits) expect(continuousShare).toBeLessThanOrEqual(1 + 1e-9);
    for (const { share } of power.sources) expect(share ?? 0).toBeLessThanOrEqual(1 + 1e-9);
    for (const { dropShare } of power.flow.loads.values()) expect(dropShare).toBeLessThanOrEqual(0.03);
    const left = new Set(connected.left.map(({ id }) => id));
    for (const [id, how] of power.network.feeding) expect(how, id).toBe(left.has(id) ? 'no cord' : 'fed');
    expect(connectAll(connected.plan).plan).toBe(connected.plan);
  });
});

test('with room for all, all are fed, over dry ground wherever there is a dry way, and through no wall', () => {
  always((draw) => {
    const plan = someRoof(draw, true);
    const { plan: after, left, cableIds, straightIds } = connectAll(plan);
    expect(left).toEqual([]);
    for (const gear of after.gear) {
      if (gear.kind !== 'cable' || !cableIds.includes(gear.id) || straightIds.includes(gear.id)) continue;
      const [from, to] = [gear.path[0], gear.path[gear.path.length - 1]];
      for (const { outline, kind } of obstaclesOn(after, [0, 0]))
        for (const [k, spot] of gear.path.slice(1).entries())
          expect(fromOutline(outline, gear.path[k], spot), `${gear.label}, ${kind}`).toBeGreaterThan(0);
      if (wetMetresOf(after, gear) > 0)
        expect(hasDryWay(after, from, to), `${gear.label} goes through the wet`).toBe(false);
    }
  });
});
