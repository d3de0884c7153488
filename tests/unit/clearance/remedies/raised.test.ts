import { expect, it } from 'vitest';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { remediesOf, standAt, stillRoof } from './remedied';

const RISE_METRES = 2;

/** The same roof with all that stands on it, so much higher. */
function raised(plan: Plan): Plan {
  const up = ([x, y, z]: readonly [number, number, number]): [number, number, number] => [
    x,
    y + RISE_METRES,
    z,
  ];
  return {
    ...plan,
    pieces: plan.pieces.map((piece) =>
      piece.kind === 'deck' ? { ...piece, topMetres: piece.topMetres + RISE_METRES } : piece,
    ),
    gear: plan.gear.map((gear) => (gear.kind === 'stand' ? { ...gear, at: up(gear.at) } : gear)),
    setups: plan.setups.map((setup) => ({
      ...setup,
      move: { ...setup.move, keys: setup.move.keys.map((key) => ({ ...key, position: up(key.position) })) },
    })),
  };
}

it('a camera goes as low and as high on a higher deck as on the lowest', () => {
  const plan = stillRoof([standAt({ heightMetres: 2.6, locked: true })], {}, 9);
  const nudges = (of: Plan) =>
    remediesOf(of, 'stand')
      .filter(({ kind }) => kind === 'nudge the camera')
      .map(({ words }) => words);
  expect(nudges(plan).some((words) => words.includes('higher'))).toBe(true);
  expect(nudges(raised(plan))).toEqual(nudges(plan));
});
