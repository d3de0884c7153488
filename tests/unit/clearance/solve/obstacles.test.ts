import { expect, it } from 'vitest';
import type { Mover } from '../../../../src/core/clearance/solve/movers';
import { crowdObstacle, lightObstacle } from '../../../../src/core/clearance/solve/obstacles';
import type { Placement } from '../../../../src/core/clearance/solve/places';

const mover = (label: string): Mover => ({ id: label, label, members: new Set([label]) });
const placed = (label: string, metres: number): Placement => ({
  mover: mover(label),
  shape: { edits: [], metres: 0, degrees: 0, words: '' },
  by: [metres, 0],
  edits: metres > 0 ? [{ edit: 'moveItem', args: { id: label, to: [metres, 0] } }] : [],
  change: metres,
});

it('says that things have no ground together only where all of it was weighed', () => {
  const movers = [mover('Key stand'), mover('Back stand')];
  expect(crowdObstacle({ movers, isCertain: true }).sentence).toBe(
    'Key stand and Back stand each have clear ground, and are in each other’s way on all of it.',
  );
  expect(crowdObstacle({ movers, isCertain: false }).sentence).toBe(
    'Key stand and Back stand each have clear ground, and no way was found to have all of them on it at once.',
  );
});

it('says of what has moved, and of that alone, that a lamp loses its light by all of it', () => {
  const told = lightObstacle([placed('Still stand', 0), placed('Key stand', 1), placed('Back stand', 2)]);
  expect(told).toMatchObject({ itemId: 'Key stand', setupIds: [], trim: null });
  expect(told.sentence).toBe(
    'With Key stand and Back stand put there, a lamp leaves its tolerance on whom it lights.',
  );
});
