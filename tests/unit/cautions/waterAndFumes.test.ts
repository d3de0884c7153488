import { describe, expect, test } from 'vitest';
import { about, DECK, figureOf, HOUSE, parapet, performerAt, roof } from './roof';

const box = (id: string, kind: string, at: readonly number[], more: object = {}) => ({
  id,
  label: id,
  kind,
  at,
  headingDegrees: 0,
  size: [0.6, 0.5, 0.4],
  ...more,
});
const cable = (id: string, path: readonly (readonly number[])[], more: object = {}) => ({
  id,
  label: id,
  kind: 'cable',
  path,
  baseMetres: 0,
  diameterMetres: 0.014,
  ...more,
});
const puddle = {
  ground: {
    surface: 'concrete',
    wetness: 'dry',
    areas: [
      {
        id: 'puddle',
        wetness: 'puddled',
        outline: [
          [0, -6],
          [5, -6],
          [5, 6],
          [0, 6],
        ],
      },
    ],
  },
};
const onFeet = (id: string, at: readonly number[], size: readonly number[]) => ({
  id,
  label: id,
  kind: 'box',
  at,
  headingDegrees: 0,
  size,
  material: 'timber',
});

describe('water', () => {
  test('connections in a puddle, and only those', () => {
    const gear = [
      box('in', 'distro', [2, 0, 0]),
      box('raised', 'distro', [3, 0.2, 0]),
      box('out', 'distro', [-3, 0, 0]),
      cable('ends-in', [
        [-3, 1],
        [1, 1],
      ]),
      cable('passes', [
        [-3, 2],
        [8, 2],
      ]),
    ];
    const plan = roof({ gear, more: puddle });
    const [ends] = about(plan, 'wet-connections');
    expect(ends).toMatchObject({ standing: 'breaks', itemIds: ['in', 'ends-in'] });
    expect(figureOf(ends, 'height over the wet floor')).toBe(0);
    const low = roof({ gear: [box('low', 'distro', [2, 0.03, 0])], more: puddle });
    expect(figureOf(about(low, 'wet-connections')[0], 'height over the wet floor')).toBeCloseTo(0.03, 9);
    const [runs] = about(plan, 'wet-cables');
    expect(runs?.itemIds).toEqual(['ends-in', 'passes']);
    // One metre of the first, five of the second.
    expect(figureOf(runs, 'cable in the wet')).toBeCloseTo(6, 0);
  });

  test('on a box in a puddle it is dry', () => {
    const pieces = [DECK, parapet(1.2), onFeet('crate', [2, 0, 0], [1, 0.3, 1])];
    const plan = roof({ pieces, gear: [box('on', 'distro', [2, 0.3, 0])], more: puddle });
    expect(about(plan, 'wet-connections')).toEqual([]);
  });

  test('power outdoors is on ground-fault protection, whether it is wet or not', () => {
    expect(about(roof({ gear: [box('out', 'distro', [0, 0, 0])] }), 'wet-outdoors')[0]?.sentence).toContain(
      'ground-fault',
    );
    expect(about(roof({}), 'wet-outdoors')).toEqual([]);
  });
});

describe('exhaust', () => {
  const generator = (at: readonly number[]) => box('engine', 'generator', at);
  const withHouse = [DECK, parapet(1.2), HOUSE];

  test('is kept 20 feet from a door, as the housing measures', () => {
    // The door is at x = −6.5; the housing is 0.6 m wide.
    const at = (x: number) =>
      about(roof({ pieces: withHouse, gear: [generator([x, 0, 0])] }), 'exhaust-openings');
    const [near] = at(-2);
    expect(near?.standing).toBe('breaks');
    expect(figureOf(near, 'from the next opening')).toBeCloseTo(4.2, 6);
    expect(at(-0.11)).toHaveLength(1);
    expect(at(-0.09)).toEqual([]);
    expect(20 * 0.3048).toBeCloseTo(6.1, 2);
  });

  test('never in a shed or under a tank', () => {
    const shed = {
      id: 'shed',
      label: 'Shed',
      kind: 'shed',
      at: [4, 0, 0],
      headingDegrees: 0,
      size: [3, 2.5, 3],
      front: 'boards',
      shelves: 0,
      overhangMetres: 0.1,
      mesh: { cellMetres: 0.025, wireMetres: 0.001 },
    };
    const tank = {
      id: 'tank',
      label: 'Tank',
      kind: 'tank',
      at: [4, 0, 0],
      headingDegrees: 0,
      diameterMetres: 2,
      drumMetres: 2,
      legMetres: 2,
    };
    for (const over of [shed, tank]) {
      const plan = roof({ pieces: [DECK, parapet(1.2), over], gear: [generator([4, 0, 0])] });
      expect(about(plan, 'exhaust-openings')[0]?.sentence).toContain('gathers and kills');
    }
  });

  test('windows of a wall and of the next building count', () => {
    const wall = {
      id: 'wall',
      label: 'Wall',
      kind: 'wall',
      path: [
        [-5, 3],
        [5, 3],
      ],
      closed: false,
      baseMetres: 0,
      heightMetres: 2.5,
      thicknessMetres: 0.2,
      material: 'brick',
      openings: [{ id: 'window', alongMetres: 5, widthMetres: 1, sillMetres: 1, heightMetres: 1 }],
    };
    const plan = roof({ pieces: [DECK, parapet(1.2), wall], gear: [generator([0, 0, 0])] });
    expect(figureOf(about(plan, 'exhaust-openings')[0], 'from the next opening')).toBeCloseTo(2.8, 6);
  });

  test('who works near it, and how much air it has', () => {
    const plan = roof({ gear: [generator([9.2, 0, 0])], cast: [performerAt('Ann', [5, 0])] });
    expect(figureOf(about(plan, 'exhaust-people')[0], 'from somebody')).toBeCloseTo(3.9, 6);
    expect(figureOf(about(plan, 'exhaust-air')[0], 'free air around')).toBeCloseTo(0.3, 6);
    const free = roof({ gear: [generator([0, 0, 0])], cast: [performerAt('Ann', [9, 0])] });
    expect([...about(free, 'exhaust-people'), ...about(free, 'exhaust-air')]).toEqual([]);
    expect(about(free, 'exhaust-fuel')[0]?.sentence).toContain('cold before it is refuelled');
  });
});

describe('heat', () => {
  const hot = {
    id: 'hot',
    label: 'Hot',
    form: 'fresnel',
    size: [0.3, 0.3, 0.4],
    watts: 1000,
    powerFactor: 1,
  };
  const light = { peakCandela: 50000, beamDegrees: 20, fieldDegrees: 40, kelvin: 3200 };
  const plan = (metres: number, more: object = {}) =>
    roof({
      gear: [
        {
          id: 'head',
          label: 'Head',
          kind: 'head',
          head: 'hot',
          place: { at: [0, 2, 0] },
          aim: [0, 2, -9],
          dim: 1,
        },
        {
          id: 'flag',
          label: 'Flag',
          kind: 'flag',
          place: { at: [0, 2, -0.2 - metres] },
          headingDegrees: 0,
          tiltDegrees: 0,
          size: [1, 1],
        },
      ],
      more: { kit: { bodies: [], lenses: [], stands: [], heads: [{ ...hot, ...light, ...more }] } },
    });

  test('a kilowatt keeps a metre from cloth in its beam, four times the watts two', () => {
    expect(about(plan(0.95), 'heat-cloth')[0]?.figures[0]).toMatchObject({
      value: expect.closeTo(0.95, 9),
      expected: 1,
    });
    expect(about(plan(1.05), 'heat-cloth')).toEqual([]);
    expect(about(plan(1.95, { watts: 4000 }), 'heat-cloth')).toHaveLength(1);
  });

  test('behind it a third is enough, and what is not hot is left out', () => {
    expect(about(plan(-0.8), 'heat-cloth')).toEqual([]);
    expect(about(plan(-0.5), 'heat-cloth')).toHaveLength(0);
    expect(about(plan(-0.3), 'heat-cloth')).toHaveLength(1);
    expect(about(plan(0.5, { kelvin: 5600 }), 'heat-cloth')).toEqual([]);
    expect(about(plan(0.5, { kelvin: 5600, hot: true }), 'heat-cloth')).toHaveLength(1);
    expect(about(plan(0.5, { hot: false }), 'heat-cloth')).toEqual([]);
  });
});
