import { afterAll, describe, expect, test } from 'vitest';
import type { Ground, Plan } from '../../../src/core/plan/schema/plan';
import { reportOf } from '../../../src/core/report/report';
import type { ItemReport, Report, SetupReport } from '../../../src/core/report/types';
import { planToGlb } from '../../../src/exchange/glb';
import { CROWDED, DEMO, PAPER, readPlan } from '../../plans/readPlan';
import { cases } from '../../thorough';
import { smallRoof } from '../../unit/smallRoof';
import { readScene, type Scene } from './glbScene';
import { SceneTracer, type Traced } from './sceneTracer';

/** Rays across the frame. */
const WIDTH = 512;
/** Most that a share may differ, of the frame. */
const CEILING = 0.001;

/** The report as somebody reads it from the command line. */
const printed = (plan: Plan, at: number, setupIds?: readonly string[]): Report =>
  JSON.parse(JSON.stringify(reportOf(plan, { at, ...(setupIds && { setupIds }) })));

interface Row {
  readonly name: string;
  readonly told: number;
  readonly traced: number;
}

/** Numbers under a name on both sides, with 0 where one of them is silent. */
function side(
  what: string,
  told: readonly (readonly [string, number])[],
  traced: ReadonlyMap<string, number>,
): Row[] {
  const names = new Set([...told.map(([name]) => name), ...traced.keys()]);
  const toldOf = new Map(told);
  return [...names].map((name) => ({
    name: `${what} ${name}`,
    told: toldOf.get(name) ?? 0,
    traced: traced.get(name) ?? 0,
  }));
}

function rowsOf({ items }: SetupReport, traced: Traced): Row[] {
  const each = (pairs: (item: ItemReport) => readonly (readonly [string, number])[]) => items.flatMap(pairs);
  return [
    ...side(
      'share of',
      each(({ id, share }) => [[id, share]]),
      traced.items,
    ),
    ...side(
      'share of',
      each(({ id, parts }) => parts.map(({ name, share }) => [`${id}:${name}`, share] as const)),
      traced.parts,
    ),
    ...side(
      'mirrored share of',
      each(({ id, mirroredShare }) => [[id, mirroredShare]]),
      traced.mirrored,
    ),
    ...side(
      'covered,',
      each(({ id, coveredBy }) =>
        coveredBy.map((coverer) => [`${id} by ${coverer.id}`, coverer.share] as const),
      ),
      traced.coveredBy,
    ),
    ...side(
      'seen,',
      each(({ id, through }) => through.map((layer) => [`${id} through ${layer.id}`, layer.share] as const)),
      traced.through,
    ),
  ];
}

/** What has a wish and is met by rays although the report does not name it. Slivers of the rest are not looked for. */
function missed({ items }: SetupReport, traced: Traced): string[] {
  return items.flatMap(({ id, wish, share, mirroredShare }) => [
    ...(share === 0 && wish !== 'either' && traced.items.has(id) ? [`${id} shows`] : []),
    ...(mirroredShare === 0 && wish !== 'either' && traced.mirrored.has(id) ? [`${id} is mirrored`] : []),
  ]);
}

/** A dry roof with a puddle before the cameras, a dry patch in it, and a wet corner. */
const WET_IN_PARTS: Ground = {
  surface: 'asphalt',
  wetness: 'dry',
  areas: [
    {
      id: 'puddle',
      wetness: 'puddled',
      outline: [
        [-7, -6],
        [5, -7],
        [7, 5],
        [-1, 8],
        [-6, 3],
      ],
    },
    {
      id: 'patch',
      wetness: 'damp',
      outline: [
        [-2, -1.3],
        [1.2, -2],
        [1.7, 1.1],
      ],
    },
    {
      id: 'corner',
      wetness: 'wet down',
      outline: [
        [5, 3],
        [20, 3],
        [20, 20],
        [5, 20],
      ],
    },
  ],
};

let largest = 0;
let compared = 0;

function compare(plan: Plan, at: number, setupIds?: readonly string[]): void {
  const scene: Scene = readScene(planToGlb(plan, at));
  const tracer = new SceneTracer(scene);
  const report = printed(plan, at, setupIds);
  expect(report.setups.length).toBeGreaterThan(0);
  const far: string[] = [];
  const lost: string[] = [];
  for (const setup of report.setups) {
    const camera = scene.cameras.find((each) => each.setup === setup.id);
    if (!camera) throw new Error(`the scene has no camera "${setup.id}"`);
    expect(camera.seconds).toBe(at);
    expect(camera.aspect).toBeCloseTo(setup.aspect, 9);
    expect((2 * Math.atan(camera.tanHalfHeight) * 180) / Math.PI).toBeCloseTo(setup.angles.vertical, 9);
    const traced = tracer.raster(camera, WIDTH, 1);
    for (const { name, told, traced: found } of rowsOf(setup, traced)) {
      compared += 1;
      largest = Math.max(largest, Math.abs(told - found));
      if (Math.abs(told - found) > CEILING) far.push(`${setup.id}, ${name}: told ${told}, traced ${found}`);
    }
    lost.push(...missed(setup, traced).map((what) => `${setup.id}: ${what}`));
  }
  expect(far).toEqual([]);
  expect(lost).toEqual([]);
}

describe('the report against rays through the exported scene', () => {
  test.each([10, 21.4, 36].slice(0, cases(3)))('the demo night at %d s', (at) => compare(readPlan(DEMO), at));
  test.each([0.6, 2])('a small roof at %d s', (at) => compare(smallRoof(), at));
  test('a small roof that is wet in parts', () => {
    const plan = smallRoof();
    const scene = readScene(planToGlb({ ...plan, ground: WET_IN_PARTS }, 2));
    const deck = scene.parts.filter(({ part }) => part === 'top' || part === 'wet');
    expect(deck.map(({ part, reflects }) => [part, reflects])).toEqual([
      ['top', false],
      ['wet', true],
    ]);
    compare({ ...plan, ground: WET_IN_PARTS }, 2);
  });
  test.each([0])('the plan on paper at %d s', (at) => compare(readPlan(PAPER), at));
  test.each([5])('setups of a crowded night at %d s', (at) =>
    compare(readPlan(CROWDED), at, ['s2', 's8', 's15'].slice(0, cases(3))),
  );
});

afterAll(() =>
  console.log(`${compared} shares compared: largest difference ${(largest * 100).toFixed(4)} % of the frame`),
);
