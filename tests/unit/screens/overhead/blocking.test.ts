import { describe, expect, test } from 'vitest';
import { cameraWise } from '../../../../src/core/continuity/cameraWise';
import { walksOf } from '../../../../src/core/form/figure/walks';
import { addWayPoint } from '../../../../src/core/plan/edits/addWayPoint';
import { setCheat } from '../../../../src/core/plan/edits/setCheat';
import { parsePlan } from '../../../../src/core/plan/parse';
import { played } from '../../../../src/core/plan/played';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { linesOnRoof } from '../../../../src/desk/blocking/lines';
import {
  markNow,
  moveTape,
  nextMark,
  putBackTape,
  tapeOf,
  turnMark,
} from '../../../../src/desk/blocking/tape';
import { tapeAt } from '../../../../src/desk/blocking/tapeShape';
import { cheatsOn } from '../../../../src/screens/overhead/blocking/cheats';
import { crowdedBy } from '../../../../src/screens/overhead/blocking/crowding';
import { throughBoth } from '../../../../src/screens/overhead/blocking/lines';
import { clearWayFor, roofWalks } from '../../../../src/screens/overhead/blocking/walks';
import { cheatWords, hitWords, walkWords } from '../../../../src/screens/overhead/blocking/words';
import { walkDrawing } from '../../../../src/screens/overhead/geometry/along';
import { handlesOf } from '../../../../src/screens/overhead/handles/handlesOf';
import { DEMO, readPlan } from '../../../plans/readPlan';

const demo = readPlan(DEMO);
const of = (plan: Plan, id: string) => {
  const performer = plan.cast.find((each) => each.id === id);
  if (!performer) throw new Error(`no ${id}`);
  return performer;
};
const setupOf = (plan: Plan, id: string) => {
  const setup = plan.setups.find((each) => each.id === id);
  if (!setup) throw new Error(`no ${id}`);
  return setup;
};
const placeOf = (plan: Plan, id: string, markId: string) =>
  of(plan, id).marks.find((mark) => mark.id === markId)?.at;

test('a taped T has its bar under the toes, 0.30 m either way, and turns with the heading', () => {
  const spots = tapeAt([2, 3], 90);
  const [xs, zs] = [spots.map(([x]) => x), spots.map(([, z]) => z)];
  // Facing along +x: the bar lies ahead, from z − 0.15 to z + 0.15, and the stem comes back to the heels.
  expect(Math.max(...zs) - Math.min(...zs)).toBeCloseTo(0.3, 9);
  expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(0.3, 9);
  const ahead = spots.filter(([, z]) => Math.abs(z - 3) > 0.1);
  expect(ahead).toHaveLength(4);
  expect(ahead.every(([x]) => x > 2.1 && x < 2.16)).toBe(true);
  expect(Math.min(...xs)).toBeCloseTo(2 - 0.145, 9);
});

test('the line of a walk stays off its marks, and its arrow comes in along the last of the way', () => {
  const walk = walkDrawing([
    [0, 0],
    [4, 0],
    [4, 3],
  ]);
  expect(walk?.line[0]?.[0]).toBeCloseTo(0.28, 9);
  expect(walk?.line.at(-1)).toEqual([4, expect.closeTo(3 - 0.28 - 0.26, 9)]);
  const [tip, left, right] = walk?.arrow ?? [];
  expect(tip).toEqual([4, expect.closeTo(2.72, 9)]);
  // Southward: its left hand is east.
  expect(left?.[0]).toBeCloseTo(4.085, 9);
  expect(right).toEqual([expect.closeTo(3.915, 9), expect.closeTo(2.46, 9)]);
  expect(
    walkDrawing([
      [0, 0],
      [0.5, 0],
    ]),
  ).toBeNull();
});

describe('words', () => {
  const walk = {
    fromMark: 'a',
    toMark: 'b',
    path: [],
    metres: 4.5,
    leaveSeconds: 5,
    arriveSeconds: 8.6,
    cruisingMetresPerSecond: 1.3,
    gait: 'walk',
    tooFast: false,
  } as const;

  test('of a walk', () => {
    expect(walkWords(walk, 'm')).toBe('4.5\u00a0m in 3.6\u00a0s');
    expect(walkWords({ ...walk, gait: 'run' }, 'm')).toBe('runs 4.5\u00a0m in 3.6\u00a0s');
    expect(walkWords({ ...walk, tooFast: true, cruisingMetresPerSecond: 7.14 }, 'm')).toBe(
      '4.5\u00a0m in 3.6\u00a0s, 7.1\u00a0m/s is too fast',
    );
    expect(walkWords({ ...walk, arriveSeconds: 5, tooFast: true }, 'm')).toBe(
      '4.5\u00a0m in no time, too fast',
    );
    const [fence] = demo.pieces.filter(({ kind }) => kind === 'fence');
    const at: [number, number] = [0, 0];
    const hit = { pieceId: fence?.id ?? '', at, alongMetres: 1 };
    expect(hitWords(demo, { ...hit, how: 'into a hole' })).toBe('over a hole in loft yard fence');
  });

  test('of a cheat are left and right as the camera has them, and towards it or away', () => {
    // A camera that looks up the sheet has +x at its right, and what comes down the sheet comes towards it.
    expect(cameraWise([0, 0], [-0.4, 0.3], 0)).toEqual({
      rightMetres: expect.closeTo(-0.4, 9),
      towardsMetres: expect.closeTo(0.3, 9),
    });
    // One that looks along +x has +z at its right.
    expect(cameraWise([0, 0], [-0.4, 0.3], 90)).toEqual({
      rightMetres: expect.closeTo(0.3, 9),
      towardsMetres: expect.closeTo(0.4, 9),
    });
    const words = (rightMetres: number, towardsMetres: number, turn = 0) =>
      cheatWords({ rightMetres, towardsMetres }, turn, 'F', 'm');
    expect(words(-0.4, 0)).toBe('0.40\u00a0m to the left in F only');
    expect(words(-0.4, 0.04)).toBe('0.40\u00a0m to the left in F only');
    expect(words(0, -0.3)).toBe('0.30\u00a0m away from the camera in F only');
    expect(words(0.1, 0.3)).toBe('0.30\u00a0m towards and 0.10\u00a0m to the right in F only');
    expect(words(0, 0, -20)).toBe('turned 20° anticlockwise in F only');
    expect(words(0.4, 0, 12)).toBe('0.40\u00a0m to the right and turned 12° clockwise in F only');
  });
});

describe('tape', () => {
  test('is one for marks that follow one another in one place; another time there is another', () => {
    const ids = (markId: string) => tapeOf(demo, of(demo, 'vera'), markId).map(({ id }) => id);
    expect(ids('v4')).toEqual(['v3', 'v4', 'v5']);
    expect(ids('v6')).toEqual(['v6']);
    expect(ids('none')).toEqual([]);
  });

  test('the next mark is where somebody goes, the one now where they were last', () => {
    const at = (seconds: number) => [
      nextMark(demo, of(demo, 'vera'), seconds)?.id,
      markNow(demo, of(demo, 'vera'), seconds)?.id,
    ];
    expect(at(16)).toEqual(['v3', 'v2']);
    expect(at(18)).toEqual(['v3', 'v3']);
    expect(at(99)).toEqual(['v6', 'v6']);
  });

  test('is moved for all setups, or only for one, and put back there', () => {
    const moved = moveTape(demo, { performerId: 'vera', markId: 'v4' }, [-0.6, 0.2], null);
    expect(['v3', 'v4', 'v5'].map((id) => placeOf(moved, 'vera', id))).toEqual(Array(3).fill([-0.6, 0.2]));
    const cheated = moveTape(demo, { performerId: 'vera', markId: 'v4' }, [-0.6, 0.2], setupOf(demo, 'ring'));
    expect(cheated.cast).toBe(demo.cast);
    const shot = played(cheated, setupOf(cheated, 'ring'));
    expect(['v3', 'v4', 'v5'].map((id) => placeOf(shot, 'vera', id))).toEqual(Array(3).fill([-0.6, 0.2]));
    expect(played(cheated, setupOf(cheated, 'wide'))).toBe(cheated);
    expect(parsePlan(cheated).ok).toBe(true);
    const back = putBackTape(cheated, { performerId: 'vera', markId: 'v3' }, setupOf(cheated, 'ring'));
    expect(setupOf(back, 'ring').cheats ?? []).toEqual([]);
  });

  test('turns one mark alone, in one setup where one is given', () => {
    const vera = { performerId: 'vera', markId: 'v4' };
    expect(of(turnMark(demo, vera, -30, null), 'vera').marks.map((mark) => mark.headingDegrees)).toEqual([
      90, 75, 90, 330, 90, 285,
    ]);
    const only = turnMark(demo, vera, 120, setupOf(demo, 'ring'));
    expect(only.cast).toBe(demo.cast);
    expect(setupOf(only, 'ring').cheats).toEqual([
      { performer: 'vera', mark: 'v4', at: [-0.42, 0], headingDegrees: 120 },
    ]);
  });

  test('laid where somebody stands at that moment is told', () => {
    const at = moveTape(demo, { performerId: 'vera', markId: 'v4' }, [0.42, 0.1], null);
    expect(crowdedBy(at, { performerId: 'vera', markId: 'v4' })?.other.id).toBe('nuno');
    expect(crowdedBy(demo, { performerId: 'vera', markId: 'v4' })).toBeNull();
  });
});

test('what a setup cheats is said once for a piece of tape, by its own camera', () => {
  const cheated = moveTape(demo, { performerId: 'vera', markId: 'v3' }, [-0.42, 0.5], setupOf(demo, 'ring'));
  const drawn = cheatsOn(cheated, setupOf(cheated, 'ring'), 'm');
  expect(drawn).toHaveLength(1);
  // The camera pans to 15.6°: 0.5 m down the sheet is cos 15.6° · 0.5 towards it, sin 15.6° · 0.5 to its right.
  expect(drawn[0]?.words).toBe('0.48\u00a0m towards and 0.13\u00a0m to the right in F only');
  expect(cheatsOn(cheated, setupOf(cheated, 'wide'), 'm')).toEqual([]);
});

test('a walk through a fence is told where, with the clear way round', () => {
  expect(roofWalks(demo).every(({ hit }) => hit === null)).toBe(true);
  const through = addWayPoint(demo, { performerId: 'vera', markId: 'v2', at: [-3.2, -4.6] });
  const [walk] = roofWalks(through).filter(({ hit }) => hit !== null);
  if (!walk?.hit) throw new Error('nothing is met');
  expect([walk.performer.id, walk.walk.toMark, walk.hit.how]).toEqual(['vera', 'v2', 'through']);
  const way = clearWayFor(through, walk);
  expect(way?.metres).toBeLessThan(walk.walk.metres);
  const round = handlesOf({
    plan: through,
    ids: ['vera'],
    setupId: null,
    seconds: 0,
    lengths: 'm',
    perMetre: 25,
    at: ([x, z]) => [x * 25, z * 25],
  }).find(({ key }) => key === 'round v2');
  const mended = round?.press?.(through);
  expect(mended && roofWalks(mended).some(({ hit }) => hit !== null)).toBe(false);
});

test('the line goes through both over the whole deck; the plan names its pairs', () => {
  expect(
    throughBoth(
      [
        [0, 0],
        [1, 1],
      ],
      [-4, -2, 4, 2],
    ),
  ).toEqual([
    [expect.closeTo(-2, 9), expect.closeTo(-2, 9)],
    [expect.closeTo(2, 9), expect.closeTo(2, 9)],
  ]);
  const named: Plan = { ...demo, lines: [{ id: 'l', pair: ['nuno', 'vera'] }] };
  expect(linesOnRoof(named, null).pairs).toEqual([['nuno', 'vera']]);
  expect(linesOnRoof(demo, null).pairs).toEqual([]);
});

describe('handles of somebody', () => {
  const handles = (plan: Plan, onlyIn: string | null = null) =>
    handlesOf({
      plan: onlyIn === null ? plan : played(plan, setupOf(plan, onlyIn)),
      master: plan,
      onlyIn,
      ids: ['vera'],
      setupId: onlyIn,
      seconds: 18,
      lengths: 'm',
      perMetre: 25,
      at: ([x, z]) => [x * 25, z * 25],
    });
  const by = (plan: Plan, key: string, onlyIn: string | null = null) => {
    const found = handles(plan, onlyIn).find((handle) => handle.key === key);
    if (!found) throw new Error(`no ${key} among ${handles(plan, onlyIn).map((handle) => handle.key)}`);
    return found;
  };
  const pull = { moved: [0, 0], straight: false, free: true, reachMetres: 0 } as const;

  test('put, move, curve and take out the places of a way', () => {
    const put = by(demo, 'insert v2 0').pull(demo, { ...pull, to: [-4, -1] });
    expect(of(put, 'vera').marks[1]?.way).toEqual({ through: [[-4, -1]], line: 'straight' });
    const moved = by(put, 'way v2 0').pull(put, { ...pull, to: [-5, -1] });
    const curved = by(moved, 'bend v2').press?.(moved) ?? moved;
    expect(of(curved, 'vera').marks[1]?.way).toEqual({ through: [[-5, -1]], line: 'curved' });
    expect(walksOf(of(curved, 'vera'), curved)[0]?.path.length).toBeGreaterThan(8);
    const out = by(curved, 'way v2 0').remove?.(curved);
    expect(out && of(out, 'vera').marks[1]?.way).toBeUndefined();
  });

  test('in one setup alone leave the master and its ways', () => {
    const cheated = by(demo, 'mark v3', 'ring').step(demo, [2, 0]);
    expect(cheated.cast).toBe(demo.cast);
    expect(placeOf(played(cheated, setupOf(cheated, 'ring')), 'vera', 'v4')).toEqual([-0.32, 0]);
    expect(handles(cheated, 'ring').some(({ kind }) => kind === 'insert')).toBe(false);
    const turned = by(cheated, 'turn', 'ring').pull(cheated, { ...pull, to: [5, 0.0001] });
    expect(turned.cast).toBe(demo.cast);
    const back = by(cheated, 'back v3', 'ring').press?.(cheated);
    expect(back && setupOf(back, 'ring').cheats).toBeUndefined();
  });

  test('none of somebody locked', () => {
    const cast = demo.cast.map((each) => (each.id === 'vera' ? { ...each, locked: true } : each));
    expect(handles({ ...demo, cast })).toEqual([]);
  });
});

test('a cheat that another sets is drawn in its own setup only', () => {
  const plan = setCheat(demo, { setupId: 'wide', performerId: 'rui', markId: 'r1', at: [-11, -4] });
  expect(cheatsOn(plan, setupOf(plan, 'ring'), 'm')).toEqual([]);
  expect(cheatsOn(plan, setupOf(plan, 'wide'), 'm')[0]?.performerId).toBe('rui');
});
