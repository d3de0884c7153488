import { describe, expect, it } from 'vitest';
import { clearGround } from '../../../src/core/clearance/ground/clearGround';
import { middleOf } from '../../../src/core/clearance/ground/squares';
import {
  type ClearGround,
  GROUND_STATES,
  type GroundState,
  type GroundThing,
} from '../../../src/core/clearance/ground/types';
import type { Point } from '../../../src/core/plan/schema/numbers';
import type { Piece } from '../../../src/core/plan/schema/pieces';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { setupReport } from '../../../src/core/report/setupReport';
import { staged } from '../../plans/staged';
import { standsOn, triedId } from '../../plans/standOn';
import { cases } from '../../thorough';

/**
 * Clear ground against trying: stands, or boxes that hang, are put on a square at its middle and its corners, turned this
 * way and that, and looked at by the report. The worst of it is what the square is; clear ground may call it worse, but
 * seldom.
 */
const OFFS = [
  [0, 0],
  [0.98, 0.98],
  [-0.98, 0.98],
  [0.98, -0.98],
  [-0.98, -0.98],
] as const;
const HEADINGS = [0, 30, 60, 90];
/** Of the squares of a state where it meets another, and of the others: so many are tried. */
const [TRIED_AT_BORDER, TRIED_INSIDE] = [36, 36].map(cases);

const CODES: ReadonlyMap<string, number> = new Map(GROUND_STATES.map((state, code) => [state, code]));

const crate = (id: string, at: Point, heading: number, size: Point) =>
  ({ id, label: id, kind: 'box', at, headingDegrees: heading, size, material: 'timber' }) as const;

/** The middles of the crates. */
const CRATES: Readonly<Record<'tall' | 'low', Point>> = { tall: [-0.5, 0, 1], low: [4, 0, -1] };

const TALL = crate('tall', CRATES.tall, 8, [2.5, 2.2, 0.8]);
const LOW = crate('low', CRATES.low, 20, [2.5, 1.4, 0.8]);

/** A deck with a tall crate and a low one before one still camera. */
function roof(
  wetness: 'dry' | 'wet down',
  tiltDegrees: number,
  crates: readonly Piece[] = [TALL, LOW],
): Plan {
  const bare = staged({
    cast: {},
    setups: [{ id: 'a', keys: [{ at: [0.3, 5], height: 1.4, heading: 12 }], from: 'start', to: 'start' }],
  });
  const [setup] = bare.setups;
  const keys = setup.move.keys.map((key) => ({ ...key, tiltDegrees }));
  return {
    ...bare,
    ground: { ...bare.ground, wetness },
    pieces: [...bare.pieces, ...crates],
    setups: [{ ...setup, move: { ...setup.move, keys } }],
  };
}

interface Place {
  readonly square: number;
  readonly headingDegrees: number;
  readonly off: (typeof OFFS)[number];
}

/** The plan with a thing on each place. */
function withThings(plan: Plan, ground: ClearGround, of: GroundThing, places: readonly Place[]): Plan {
  if ('heightMetres' in of) return standsOn(plan, ground, of.heightMetres, places);
  if (!('lowMetres' in of)) throw new Error('an item is not tried');
  const { columns, corner, stepMetres, deckMetres } = ground;
  // The corners of the box are half of 0.6 m from its middle.
  const side = 0.6 * Math.SQRT1_2;
  const hung = places.map(({ square, headingDegrees, off }, k): Piece => {
    const x = corner[0] + ((square % columns) + 0.5 + off[0] / 2) * stepMetres;
    const z = corner[1] + (Math.floor(square / columns) + 0.5 + off[1] / 2) * stepMetres;
    const size: Point = [side, of.highMetres - of.lowMetres, side];
    return crate(triedId(k), [x, deckMetres[square] + of.lowMetres, z], headingDegrees, size);
  });
  return { ...plan, pieces: [...plan.pieces, ...hung] };
}

/** What the report says of a thing on each place, as the code of a state. */
function codesOf(plan: Plan, ground: ClearGround, of: GroundThing, places: readonly Place[]): number[] {
  const tried = withThings(plan, ground, of, places);
  const { items } = setupReport(tried, tried.setups[0]);
  return places.map((place, k): number => {
    const item = items.find(({ id }) => id === triedId(k));
    const code = CODES.get(item?.verdict ?? '');
    if (!item || code === undefined) throw new Error(`${item?.verdict} is no state of a square`);
    // What another one that is tried hides is looked at by itself.
    const isAlone = places.length === 1 || item.coveredBy.every(({ id }) => !id.startsWith('tried-'));
    return item.verdict !== 'covered' || isAlone ? code : codesOf(plan, ground, of, [place])[0];
  });
}

/** The worst of all that is tried on some squares; a square is left as soon as it is as bad as its state. */
function triedOn(plan: Plan, ground: ClearGround, of: GroundThing, squares: readonly number[]) {
  const worst = new Map(squares.map((square) => [square, 0]));
  for (const headingDegrees of HEADINGS)
    for (const off of OFFS) {
      const open = squares.filter((square) => (worst.get(square) ?? 0) < ground.states[square]);
      const places = open.map((square) => ({ square, headingDegrees, off }));
      const codes = places.length === 0 ? [] : codesOf(plan, ground, of, places);
      for (const [k, square] of open.entries()) worst.set(square, Math.max(codes[k], worst.get(square) ?? 0));
    }
  return worst;
}

/** Whether a square lies under or at one of the crates, where nothing can stand. */
const isInCrate = (ground: ClearGround, square: number): boolean => {
  const [x, z] = middleOf(ground, square);
  return Object.values(CRATES).some(([cx, , cz]) => Math.hypot(x - cx, z - cz) < 1.35);
};

const evenly = (squares: readonly number[], count: number): readonly number[] => {
  const step = Math.max(1, squares.length / count);
  return Array.from(
    { length: Math.min(count, squares.length) },
    (_, k) => squares[Math.floor((k + 0.5) * step)],
  );
};

/** For a state: how many squares are called so, and of the whole deck about how large a share is really what. */
interface Called {
  readonly count: number;
  readonly shareOf: (found: GroundState) => number;
}

/** The squares that are called so, without those that a crate takes. */
function squaresOf(plan: Plan, of: GroundThing, state: GroundState) {
  const answer = clearGround(plan, { setupIds: ['a'], of });
  if ('why' in answer) throw new Error(answer.why);
  const { ground } = answer;
  const code = GROUND_STATES.indexOf(state);
  const all = [...ground.states.keys()].filter(
    (square) => ground.states[square] === code && !isInCrate(ground, square),
  );
  return { ground, code, all };
}

/** How a state is borne out, from squares at the borders of its areas and from others, each weighed by how many there are. */
function calledOf(plan: Plan, of: GroundThing, state: GroundState): Called {
  const { ground, code, all } = squaresOf(plan, of, state);
  const { states, columns } = ground;
  const isBorder = (square: number): boolean =>
    [1, -1, columns, -columns].some((by) => (states[square + by] ?? code) !== code);
  const shares = new Map<string, number>();
  for (const [squares, most] of [
    [all.filter(isBorder), TRIED_AT_BORDER],
    [all.filter((square) => !isBorder(square)), TRIED_INSIDE],
  ] as const) {
    const some = evenly(squares, most);
    for (const [, found] of triedOn(plan, ground, of, some)) {
      // What is called clear is never worse, and all else seldom better.
      expect(found, `${state} squares are at worst ${GROUND_STATES[found]}`).toBeLessThanOrEqual(code);
      const name = GROUND_STATES[found];
      shares.set(name, (shares.get(name) ?? 0) + squares.length / some.length / states.length);
    }
  }
  return { count: all.length, shareOf: (found) => shares.get(found) ?? 0 };
}

const STAND = { heightMetres: 1.7 } as const;
/** A head over the frame of a camera that looks down on a wet deck. */
const HUNG = { lowMetres: 2.6, highMetres: 3 } as const;

describe('what a square is called is what is found there, but for one square of a hundred', () => {
  const dry = roof('dry', 0);

  it('showing, on an open deck: nowhere clear, and hardly anywhere just outside', () => {
    const { count, shareOf } = calledOf(roof('dry', 0, []), STAND, 'showing');
    expect(count).toBeGreaterThan(1000);
    expect(shareOf('clear')).toBe(0);
    expect(shareOf('close')).toBeLessThan(0.01);
    expect(shareOf('showing')).toBeGreaterThan(0.3);
  });

  it('showing, among crates: nowhere clear, and mostly it shows at the middle of the square', () => {
    const { ground, all } = squaresOf(dry, STAND, 'showing');
    const places = evenly(all, 60).map((square) => ({ square, headingDegrees: 30, off: OFFS[0] }));
    const codes = codesOf(dry, ground, STAND, places);
    expect(codes.filter((code) => GROUND_STATES[code] === 'clear')).toEqual([]);
    expect(codes.filter((code) => GROUND_STATES[code] === 'showing').length).toBeGreaterThan(50);
  });

  it('covered: something of it is in frame behind a crate', () => {
    const { count, shareOf } = calledOf(dry, STAND, 'covered');
    expect(count).toBeGreaterThan(300);
    expect(shareOf('clear')).toBe(0);
    expect(shareOf('close')).toBeLessThan(0.01);
  });

  it('close: within the margin', () => {
    const { count, shareOf } = calledOf(dry, STAND, 'close');
    expect(count).toBeGreaterThan(100);
    expect(shareOf('clear')).toBeLessThan(0.01);
  });

  it('clear: so it is, wherever it stands there', () => {
    const { count, shareOf } = calledOf(dry, STAND, 'clear');
    expect(shareOf('clear')).toBeCloseTo(count / 5120, 9);
  });

  it('mirrored: its image is in frame though it hangs over it', () => {
    const { count, shareOf } = calledOf(roof('wet down', -14), HUNG, 'mirrored');
    expect(count).toBeGreaterThan(100);
    for (const better of ['clear', 'close', 'covered'] as const)
      expect(shareOf(better), better).toBeLessThan(0.01);
  });
});
