import { describe, expect, test } from 'vitest';
import { cameraAt } from '../../../src/core/optics/camera';
import { isInFrame, projectPoint } from '../../../src/core/optics/project';
import { parsePlan } from '../../../src/core/plan/parse';
import { legsOf, runLength, spotAlong } from '../../../src/core/plan/runs';
import type { Gear } from '../../../src/core/plan/schema/gear';
import type { Spot } from '../../../src/core/plan/schema/numbers';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { obstaclesOn } from '../../../src/core/plan/walkWays/obstacles';
import { fromOutline } from '../../../src/core/plan/walkWays/planar';
import { type Connected, connectAll } from '../../../src/core/power/connect/connectAll';
import { packed } from '../../../src/core/power/connect/pack';
import { walkersOver, wetMetresOf } from '../../../src/core/power/places';
import { powerOf } from '../../../src/core/power/powerOf';
import { connectSentences } from '../../../src/core/report/power/connectSentences';
import { BODY, lensOf, stillSetup } from '../../plans/bare';
import { box, cable, drawing, generator, lamp, wired } from '../../plans/wired';

type Cable = Extract<Gear, { readonly kind: 'cable' }>;
const laidBy = ({ plan, cableIds }: Connected): readonly Cable[] =>
  plan.gear.filter((gear): gear is Cable => gear.kind === 'cable' && cableIds.includes(gear.id));

const outline = (left: number, near: number, right: number, far: number): Spot[] => [
  [left, near],
  [right, near],
  [right, far],
  [left, far],
];
const DECK = {
  kind: 'deck',
  id: 'deck',
  label: 'Deck',
  outline: outline(-10, -6, 10, 6),
  topMetres: 0,
  dropMetres: 10,
};
const at = (x: number, z: number) => ({ place: { at: [x, 0, z] } });
const SIX = { circuits: [{ amps: 20, sockets: 6 }] };

function crossesNothing(plan: Plan, cables: readonly Cable[]): void {
  for (const { path, label } of cables)
    for (const [a, b] of legsOf(path, false))
      for (const obstacle of obstaclesOn(plan, [0, 0]))
        expect(fromOutline(obstacle.outline, a, b), `${label} over ${obstacle.pieceId}`).toBeGreaterThan(0);
}

test('every load gets a cable from the generator, an item that is plugged in at both ends', () => {
  const plan = wired(
    [generator('genny', SIX), lamp('a', at(4, 3)), lamp('b', at(-5, 2)), drawing('c', 200)],
    {
      pieces: [DECK],
    },
  );
  const before = JSON.stringify(plan);
  const connected = connectAll(plan);
  expect(JSON.stringify(plan)).toBe(before);
  expect(parsePlan(connected.plan)).toEqual({ ok: true, value: connected.plan });
  expect(connected).toMatchObject({ left: [], straightIds: [] });
  const cables = laidBy(connected);
  expect(cables.map(({ label }) => label).sort()).toEqual(['Cable to a', 'Cable to b', 'Cable to c']);
  for (const { plugs, path } of cables) {
    expect(plugs?.from).toBe('genny');
    expect(path[0]).toEqual([0, 0]);
  }
  const { network, circuits } = powerOf(connected.plan);
  expect([...network.feeding.values()]).toEqual(['fed', 'fed', 'fed']);
  for (const { continuousShare } of circuits) expect(continuousShare).toBeLessThanOrEqual(1);
  expect(connectAll(connected.plan)).toMatchObject({ plan: connected.plan, cableIds: [], left: [] });
});

test('a cable goes round a wall, along what it comes by, and not much longer than it has to', () => {
  const wall = {
    kind: 'wall',
    id: 'wall',
    label: 'Wall',
    path: [
      [2, -6],
      [2, 3],
    ],
    closed: false,
    baseMetres: 0,
    heightMetres: 3,
    thicknessMetres: 0.2,
    material: 'brick',
  };
  const plan = wired([generator('genny', {}, [0, 0, -4]), lamp('a', at(4, -4))], { pieces: [DECK, wall] });
  const connected = connectAll(plan);
  const cables = laidBy(connected);
  crossesNothing(connected.plan, cables);
  // The shortest way round the wall's end: down to it, over, and back up.
  const shortest = 2 * Math.hypot(1.9, 7) + 0.2;
  expect(runLength(cables[0].path, false)).toBeGreaterThan(shortest - 0.2);
  expect(runLength(cables[0].path, false)).toBeLessThan(shortest * 1.15 + 0.5);
});

describe('wet ground', () => {
  const pool = (left: number, near: number, right: number, far: number) => ({
    ground: {
      surface: 'concrete',
      wetness: 'dry',
      areas: [{ id: 'pool', wetness: 'puddled', outline: outline(left, near, right, far) }],
    },
    pieces: [DECK],
  });
  const gear = [generator('genny', {}, [-6, 0, 0]), lamp('a', at(6, 0))];

  test('is gone round as long as there is a way', () => {
    const connected = connectAll(wired(gear, pool(-2, -4, 2, 5)));
    for (const each of laidBy(connected)) expect(wetMetresOf(connected.plan, each)).toBe(0);
  });

  test('is crossed where it is narrowest when there is none', () => {
    const band = pool(-2, -6.5, 2, 6.5);
    const narrow = outline(-2, -6.5, 2, 6.5);
    narrow[2] = [-1, 6.5];
    const [area] = band.ground.areas;
    const ground = { ...band.ground, areas: [{ ...area, outline: narrow }] };
    const connected = connectAll(wired(gear, { ...band, ground }));
    expect(connected.left).toEqual([]);
    const [only] = laidBy(connected);
    // From 4 m at one edge of the deck to 1 m at the other: at the narrow end, and not along it.
    expect(wetMetresOf(connected.plan, only)).toBeGreaterThan(0.5);
    expect(wetMetresOf(connected.plan, only)).toBeLessThan(2.4);
  });
});

test('a cable keeps out of the frame where it can', () => {
  const gear = [generator('genny', {}, [-6, 0, -3]), lamp('a', at(6, -3))];
  const plan = wired(gear, {
    kit: { bodies: [BODY], lenses: [lensOf('lens', 40)], heads: wired([]).kit.heads, stands: [] },
    setups: [stillSetup('still', 'lens', { position: [0, 1.6, 3], headingDegrees: 0, tiltDegrees: -14 })],
    pieces: [DECK],
  });
  const seenOf = (path: readonly Spot[]): number => {
    const camera = cameraAt(plan, plan.setups[0], 0);
    return Array.from({ length: 400 }, (_, k) => spotAlong(path, false, (runLength(path, false) * k) / 399))
      .map(({ spot: [x, z] }) => projectPoint(camera, [x, 0, z]))
      .filter((seen) => seen !== null && isInFrame(seen)).length;
  };
  const [straight] = laidBy(connectAll(wired(gear, { pieces: [DECK] })));
  const [round] = laidBy(connectAll(plan));
  expect(seenOf(straight.path)).toBeGreaterThan(60);
  expect(seenOf(round.path)).toBe(0);
});

test('a cable keeps off somebody’s way where it can', () => {
  const gear = [generator('genny', {}, [-6, 0, 0]), lamp('a', at(6, 0))];
  const mark = (id: string, beat: string, spot: Spot) => ({
    id,
    beat,
    at: spot,
    headingDegrees: 0,
    stance: 'stand',
    holdSeconds: 0,
  });
  const walks = {
    pieces: [DECK],
    beats: [
      { id: 'start', label: 'Start', atSeconds: 0 },
      { id: 'end', label: 'End', atSeconds: 5 },
    ],
    cast: [
      {
        id: 'anna',
        label: 'Anna',
        figure: 'female',
        statureMetres: 1.7,
        build: 'medium',
        clothes: {
          upper: 'coat',
          upperColour: '#2c3038',
          lowerColour: '#1e2126',
          head: 'cap',
          headColour: '#1c1e22',
          skinColour: '#b98a6b',
        },
        marks: [mark('one', 'start', [0, -4]), mark('two', 'end', [0, 3])],
      },
    ],
  };
  const plan = wired(gear, walks);
  const [straight] = laidBy(connectAll(wired(gear, { pieces: [DECK] })));
  const [round] = laidBy(connectAll(plan));
  expect(walkersOver(plan, straight)).toEqual(['anna']);
  expect(walkersOver(plan, round)).toEqual([]);
});

test('cords are as thick as their breakers and their volts ask for', () => {
  const connected = connectAll(
    wired([
      generator('genny', SIX, [-60, 0, 0]),
      drawing('near', 1200, 1, {}, [-55, 0, 0]),
      drawing('far', 600, 1, {}, [40, 0, 0]),
    ]),
  );
  const size = (id: string): unknown => laidBy(connected).find(({ plugs }) => plugs?.to === id)?.wire;
  // 25 A for a breaker of 20 A; and 100 m of it would lose 8 V of 120.
  expect(size('near')).toEqual({ awg: 12 });
  expect(size('far')).toEqual({ awg: 8 });
  const { flow } = powerOf(connected.plan);
  for (const { dropShare } of flow.loads.values()) expect(dropShare).toBeLessThanOrEqual(0.03);
});

test('what finds no room is left and told, and nothing is overloaded', () => {
  const plan = wired([
    generator('genny', { continuousWatts: 1600, peakWatts: 2000, circuits: [{ amps: 20, sockets: 2 }] }),
    drawing('kettle', 1400, 1, {}, [3, 0, 0]),
    drawing('lamp', 500, 1, {}, [3, 0, 2]),
    drawing('charger', 60, 1, {}, [3, 0, 4]),
  ]);
  const connected = connectAll(plan);
  expect(connected.left).toEqual([{ id: 'lamp', why: 'no room' }]);
  expect(powerOf(connected.plan).sources[0].share).toBeLessThanOrEqual(1);
  expect(connectSentences(plan, connected).join(' ')).toContain(
    'lamp is left without: no circuit with a free socket would stay under four fifths of its breaker',
  );
});

test('without a supply, or tangled, nothing is laid and it is said why', () => {
  expect(connectAll(wired([lamp('a')]))).toMatchObject({
    cableIds: [],
    left: [{ id: 'a', why: 'no supply' }],
  });
  const tangled = wired([
    generator('genny'),
    lamp('a'),
    cable('one', 'genny', 'a'),
    cable('two', 'a', 'genny'),
  ]);
  expect(connectAll(tangled)).toMatchObject({ plan: tangled, left: [{ id: 'a', why: 'tangled' }] });
});

test('a box is fed first where sockets are short, and left out where it is not needed', () => {
  const many = Array.from({ length: 4 }, (_, k) => lamp(`lamp-${k}`, at(5, k)));
  const short = generator('genny', { circuits: [{ amps: 30, sockets: 2, legs: [1, 2] }] });
  const boxed = connectAll(wired([short, box('box'), ...many]));
  expect(boxed.left).toEqual([]);
  const fromBox = laidBy(boxed).filter(({ plugs }) => plugs?.from === 'box');
  expect(fromBox.length).toBeGreaterThanOrEqual(3);
  const { sources } = powerOf(boxed.plan);
  const [one = 0, two = 0] = sources[0].legAmps;
  expect(Math.min(one, two)).toBeGreaterThan(0);
  const near = connectAll(wired([generator('genny', SIX), box('box', {}, [50, 0, 0]), lamp('a', at(1, 0))]));
  expect(laidBy(near).map(({ plugs }) => plugs)).toEqual([{ from: 'genny', to: 'a' }]);
});

test('packing steps back where the first choice would leave somebody out', () => {
  // The large one prefers the place that is the only one for the small one.
  const places = [{ draws: [0] }, { draws: [1] }];
  const wanted = [
    { id: 'large', size: 5, places: [0, 1] },
    { id: 'small', size: 4, places: [0] },
  ];
  expect(Object.fromEntries(packed(wanted, places, [1, 1], [10, 10]))).toEqual({ large: 1, small: 0 });
  expect(Object.fromEntries(packed(wanted, places, [1, 0], [10, 10]))).toEqual({ large: 0 });
});
