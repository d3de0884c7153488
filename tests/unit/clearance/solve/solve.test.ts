import { describe, expect, it, test } from 'vitest';
import { withRemedy } from '../../../../src/core/clearance/remedies/remedyEdits';
import { solveSteps } from '../../../../src/core/clearance/solve/solve';
import type { SolveProgress } from '../../../../src/core/clearance/solve/types';
import { parsePlan } from '../../../../src/core/plan/parse';
import type { Gear } from '../../../../src/core/plan/schema/gear';
import type { Piece } from '../../../../src/core/plan/schema/pieces';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { LOOSE, standAt, stillRoof } from '../remedies/remedied';
import { seenIn, solved } from './solved';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

const withPieces = (plan: Plan, ...pieces: Piece[]): Plan => ({
  ...plan,
  pieces: [...plan.pieces, ...pieces],
});

const wall = (id: string, path: [number, number][], heightMetres: number): Piece => ({
  id,
  label: `Wall ${id}`,
  kind: 'wall',
  path,
  closed: false,
  baseMetres: 0,
  heightMetres,
  thicknessMetres: 0.1,
  material: 'brick',
});

test('moves a stand out of the frame by the nearer side, and nothing else', () => {
  const plan = stillRoof([standAt(), standAt({ id: 'far', label: 'Far stand', at: [8, 0, 6] })]);
  const answer = solved(plan);
  if (!answer.best) throw new Error(answer.sentence);
  expect(answer).toMatchObject({ outcome: 'solved', cleared: 1, setups: 1, obstacles: [] });
  expect(answer.best.items.map(({ itemId }) => itemId)).toEqual(['stand']);
  expect(answer.best.items[0].to[0]).toBeGreaterThan(0.5);
  expect(plain(answer.sentence)).toMatch(/^Changing Lamp stand, [\d.]+ m, clears the setup\.$/);
  const after = withRemedy(plan, answer.best);
  expect(seenIn(after)).toEqual([]);
  expect(parsePlan(JSON.parse(JSON.stringify(after))).ok).toBe(true);
  expect(answer.best.change).toBeCloseTo(answer.best.metres, 9);
});

test('lowers what a wall in front of it would hide, where that is less than to move it', () => {
  // The camera at 1.6 m looks over a wall of 1.35 m, 6 m away, at what is 8 m away: what is lower than 1.26 m is hidden.
  const plan = withPieces(
    stillRoof([standAt({ heightMetres: 1.5 })]),
    wall(
      'low',
      [
        [-9, -2],
        [9, -2],
      ],
      1.35,
    ),
  );
  const answer = solved(plan);
  if (!answer.best) throw new Error(answer.sentence);
  expect(answer.best.items[0].words).toMatch(/lower$/);
  expect(answer.best.metres).toBeLessThan(0.4);
  expect(seenIn(withRemedy(plan, answer.best))).toEqual([]);
});

test('keeps two stands that leave by the same side out of each other, with the least of both', () => {
  const gear = [standAt({ at: [0.5, 0, -4] }), standAt({ id: 'other', label: 'Other', at: [0.9, 0, -4] })];
  const plan = stillRoof(gear);
  const answer = solved(plan);
  if (!answer.best) throw new Error(answer.sentence);
  const [a, b] = answer.best.items.map(({ to }) => to);
  expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeGreaterThanOrEqual(0.4 - 1e-6);
  expect(seenIn(withRemedy(plan, answer.best))).toEqual([]);
});

test('moves what comes to light as what hid it goes', () => {
  const crate: Piece = {
    id: 'crate',
    label: 'Crate',
    kind: 'box',
    at: [0, 0, -3],
    headingDegrees: 0,
    size: [1.6, 3.2, 0.5],
    material: 'timber',
    wish: 'keep out',
  };
  const plan = withPieces(stillRoof([standAt({ spreadMetres: 0.4, at: [0, 0, -4.5] })]), crate);
  expect(seenIn(plan)).toEqual(['single crate']);
  const answer = solved(plan, { movable: ['stand', 'crate'] });
  if (!answer.best) throw new Error(answer.sentence);
  expect(answer.outcome).toBe('solved');
  expect(answer.best.items.map(({ itemId }) => itemId)).toEqual(['crate', 'stand']);
  expect(seenIn(withRemedy(plan, answer.best))).toEqual([]);
  const alone = solved(plan, { movable: ['crate'] });
  expect(alone.outcome).toBe('none');
  expect(alone.sentence).toContain('Moving Crate uncovers Lamp stand in A.');
});

test('leaves what is accepted as it is', () => {
  const plan = stillRoof([standAt({ shows: [{ setup: 'single', reason: 'It passes for a post.' }] })]);
  expect(solved(plan)).toMatchObject({ outcome: 'clear', best: null, cleared: 1 });
});

test('tells how far it is, with the best so far, and is the same each time', () => {
  const plan = stillRoof([standAt(), standAt({ id: 'other', label: 'Other', at: [-0.5, 0, -3] })]);
  const told: SolveProgress[] = [];
  const steps = solveSteps(plan, { tolerance: LOOSE });
  let step = steps.next();
  for (; !step.done; step = steps.next()) told.push(step.value);
  expect(told.every(({ share }, k) => share >= (told[k - 1]?.share ?? 0) && share <= 1)).toBe(true);
  const half = told.find(({ best }) => best?.items.length === 1)?.best;
  if (!half) throw new Error('there was never a best of one thing');
  expect(seenIn(withRemedy(plan, half))).toEqual(['single other']);
  expect(solved(plan)).toEqual(step.value);
});

describe('where there is no way', () => {
  const locked = standAt({ id: 'locked', label: 'Locked stand', at: [-1, 0, -4], locked: true });

  it('says what is seen and may not move, and gives what clears the rest', () => {
    const plan = stillRoof([standAt(), locked]);
    const answer = solved(plan);
    expect(answer.outcome).toBe('none');
    expect(plain(answer.sentence)).toMatch(
      /^Locked stand can be seen in A, and is locked\. Changing Lamp stand, [\d.]+ m, clears 0 of 1 setup\.$/,
    );
    expect(seenIn(withRemedy(plan, answer.best ?? { edits: [] }))).toEqual(['single locked']);
    const alone = solved(stillRoof([standAt(), { ...locked, locked: false }]), { movable: ['stand'] });
    expect(alone.sentence).toContain('Locked stand can be seen in A, and is not among what may move.');
  });

  /** The stand on a narrow deck, before cameras that look straight to the back from places at their instants. */
  function lane(
    halfMetres: number,
    cameras: readonly (readonly {
      readonly x: number;
      readonly headingDegrees: number;
      readonly atSeconds: number;
    }[])[],
  ): Plan {
    const roof = stillRoof([standAt({ at: [0, 0, -4] })]);
    const [setup] = roof.setups;
    const [key] = setup.move.keys;
    const [deck] = roof.pieces;
    const corners: [number, number][] = [
      [-halfMetres, -7.5],
      [halfMetres, -7.5],
      [halfMetres, -2],
      [-halfMetres, -2],
    ];
    return {
      ...roof,
      pieces: [{ ...deck, outline: corners } as Piece],
      setups: cameras.map((keys, k) => ({
        ...setup,
        id: `camera-${k}`,
        move: {
          ease: 'linear',
          keys: keys.map(({ x, headingDegrees, atSeconds }) => ({
            ...key,
            position: [x, 1.6, 4],
            headingDegrees,
            atSeconds,
          })),
        },
      })),
    };
  }
  const still = (x: number, headingDegrees = 0) => [{ x, headingDegrees, atSeconds: 0 }];

  it('names the piece of a move without which there is', () => {
    const pan = [
      { x: 0, headingDegrees: 120, atSeconds: 0 },
      { x: 0, headingDegrees: 0, atSeconds: 1 },
    ];
    const plan = lane(1, [still(0, 180), pan]);
    const answer = solved(plan);
    expect(answer.outcome).toBe('none');
    expect(answer.obstacles).toHaveLength(1);
    const [{ setupIds, trim, sentence }] = answer.obstacles;
    expect(setupIds).toEqual(['camera-1']);
    expect(trim).toMatchObject({ setupId: 'camera-1', end: 'last' });
    expect(plain(sentence)).toMatch(
      /^B leaves no clear ground for Lamp stand within 4 m; without the last [\d.]+ s of B there is\.$/,
    );
    // So long before its end there is.
    const cut: Plan = {
      ...plan,
      beats: plan.beats.map((beat) =>
        beat.id === plan.setups[1].span.to ? { ...beat, atSeconds: 1 - (trim?.seconds ?? 0) } : beat,
      ),
    };
    expect(solved(cut).outcome).toBe('solved');
  });

  it('names the fewest setups that leave no clear ground together', () => {
    const answer = solved(lane(1.5, [still(0, 180), still(-1), still(1)]));
    expect(answer.outcome).toBe('none');
    expect(plain(answer.sentence)).toBe('B and C together leave no clear ground for Lamp stand within 4 m.');
    expect(answer.obstacles[0].setupIds).toEqual(['camera-1', 'camera-2']);
    for (const one of [-1, 1]) expect(solved(lane(1.5, [still(one)])).outcome).toBe('solved');
  });
});

describe('what cannot be searched', () => {
  const refused = (plan: Plan, movable?: readonly string[]): string => {
    const answer = solved(plan, movable ? { movable } : {});
    expect([answer.outcome, answer.best]).toEqual(['refused', null]);
    return answer.sentence;
  };
  const roof = stillRoof([standAt()]);

  it.each([
    [
      'no setups',
      { ...roof, setups: [] },
      undefined,
      'This plan has no setups: there is nothing to stay clear of.',
    ],
    [
      'everything locked',
      stillRoof([standAt({ locked: true })]),
      undefined,
      'Nothing may move: all gear that should keep out is locked, or there is none.',
    ],
    [
      'no gear',
      stillRoof([]),
      undefined,
      'Nothing may move: all gear that should keep out is locked, or there is none.',
    ],
    ['nothing named', roof, [], 'Nothing was named that may move.'],
    ['what is not there', roof, ['ghost'], 'There is no item “ghost” in this plan.'],
    [
      'what is locked',
      stillRoof([standAt({ locked: true })]),
      ['stand'],
      'Lamp stand is locked: unlock it, or leave it out.',
    ],
    [
      'what may show',
      roof,
      ['deck'],
      'Nothing of what may move has to keep out of frame: there is nothing to be gained by moving it.',
    ],
  ] satisfies [string, Plan, string[] | undefined, string][])('says so: %s', (_, plan, movable, sentence) => {
    expect(refused(plan, movable)).toBe(sentence);
  });

  it('says that nothing is to be done, and what must show and never does', () => {
    const hidden = standAt({ id: 'hidden', label: 'Sign stand', at: [0, 0, 7], wish: 'must show' });
    const answer = solved(stillRoof([standAt({ at: [8, 0, 6] }), hidden]));
    expect(answer.outcome).toBe('clear');
    expect(plain(answer.sentence)).toBe(
      'Nothing that should keep out is seen in the setup: there is nothing to solve. Sign stand must show and never does: no move of gear is looked for to change that.',
    );
  });

  it('says of a stand that should keep out under a lamp that must show that no place does both', () => {
    const lamp: Gear = {
      id: 'lamp',
      label: 'Lamp',
      kind: 'head',
      head: 'spot',
      place: { on: 'stand' },
      aim: [0, 1, 0],
      dim: 1,
      wish: 'must show',
    };
    const answer = solved(stillRoof([standAt({ heightMetres: 1.6 }), lamp]));
    expect(answer.outcome).toBe('none');
    expect(answer.sentence).toBe(
      'Lamp must show, and what goes along with it should keep out: no place of Lamp stand does both.',
    );
  });
});
