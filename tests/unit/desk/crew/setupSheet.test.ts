import { expect, test } from 'vitest';
import { spanOf, stateAt } from '../../../../src/core/optics/camera';
import { setupSheet } from '../../../../src/desk/crew/setupSheet';
import { placeFacts } from '../../../../src/screens/crew/setup/factWords';
import { DEMO, readPlan } from '../../../plans/readPlan';

const plan = readPlan(DEMO);
const setupOf = (id: string) => {
  const setup = plan.setups.find((each) => each.id === id);
  if (!setup) throw new Error(`the demo has no setup "${id}"`);
  return setup;
};

test('a move is told along its way and as its operator sees it', () => {
  const setup = setupOf('last-wide');
  const [from, until] = spanOf(plan, setup);
  const [first, last] = [stateAt(plan, setup, from), stateAt(plan, setup, until)];
  const { way } = setupSheet(plan, setup);
  const apart = Math.hypot(...first.position.map((value, axis) => last.position[axis] - value));
  // A straight slide is as long as its ends are apart, whichever way it is told.
  expect(way?.metres).toBeCloseTo(apart, 3);
  expect(Math.hypot(way?.right ?? 0, way?.up ?? 0, way?.ahead ?? 0)).toBeCloseTo(apart, 9);
  expect(way?.panDegrees).toBeCloseTo(last.headingDegrees - first.headingDegrees, 9);
});

test('a camera that faces north and goes east goes right, one that faces east goes ahead', () => {
  const setup = setupOf('wide');
  const [key] = setup.move.keys;
  const sheetAt = (headingDegrees: number) =>
    setupSheet(plan, {
      ...setup,
      support: 'handheld',
      move: {
        ease: 'linear',
        keys: [
          { ...key, atSeconds: 0, headingDegrees, position: [0, 1, 0] },
          { ...key, atSeconds: 60, headingDegrees, position: [2, 1, 0] },
        ],
      },
    });
  const [east, ahead] = [sheetAt(0).way, sheetAt(90).way];
  expect([east?.right, east?.ahead].map((metres) => (metres ?? 0) > 0.01)).toEqual([true, false]);
  expect([ahead?.right, ahead?.ahead].map((metres) => (metres ?? 0) > 0.01)).toEqual([false, true]);
});

test('a camera that turns and comes back is told as that', () => {
  const setup = setupOf('wide');
  const [key] = setup.move.keys;
  const [from, until] = spanOf(plan, setup);
  const keys = [10, 30, 10].map((headingDegrees, k) => ({
    ...key,
    atSeconds: from + ((until - from) * k) / 2,
    headingDegrees,
  }));
  const turned: typeof setup = { ...setup, support: 'sticks', move: { ease: 'linear', keys } };
  const facts = placeFacts(turned, setupSheet(plan, turned), 'm');
  expect(facts.find(({ name }) => name === 'move')?.value).toBe('turns and comes back');
});

test('an operator who holds somebody past south pans as far as the camera turns, not all the way round', () => {
  const setup = setupOf('wide');
  const [key] = setup.move.keys;
  const [from, until] = spanOf(plan, setup);
  const [performer] = plan.cast;
  const [mark] = performer.marks;
  const here = { ...plan, cast: [{ ...performer, marks: [mark] }] };
  // From the north of them, looking south, and walked from their east to their west.
  const keys = [1, -1].map((aside, k) => ({
    ...key,
    atSeconds: k === 0 ? from : until,
    position: [mark.at[0] + aside, 1.6, mark.at[1] - 3] as [number, number, number],
  }));
  const held: typeof setup = {
    ...setup,
    support: 'handheld',
    move: { ease: 'linear', keys },
    operator: { hold: performer.id, at: [0.5, 0.5] },
  };
  const [first, last] = [from, until].map((seconds) => stateAt(here, held, seconds).headingDegrees);
  expect(last - first).toBeGreaterThan(300);
  expect(setupSheet(here, held).way?.panDegrees).toBeCloseTo(last - first - 360, 6);
});

test('a still camera has no way, and the parapet is as far as a tape from its face says', () => {
  const parapet = {
    ...plan.pieces[1],
    id: 'only',
    label: 'Only parapet',
    kind: 'parapet' as const,
    path: [[-10, -3] as [number, number], [10, -3] as [number, number]],
    closed: false,
    baseMetres: 0,
    heightMetres: 1,
    thicknessMetres: 0.3,
    copingMetres: 0,
    material: 'brick' as const,
    openings: undefined,
  };
  const setup = setupOf('wide');
  const [key] = setup.move.keys;
  const { openings: _, ...piece } = parapet;
  const sheet = setupSheet(
    { ...plan, pieces: [piece] },
    {
      ...setup,
      support: 'sticks',
      move: { ease: 'linear', keys: [{ ...key, position: [1, 1.2, 0] }] },
    },
  );
  expect(sheet.way).toBeNull();
  // From z = 0 to the face at z = −3 + 0.15.
  expect(sheet.parapet).toEqual({ label: 'Only parapet', metres: expect.closeTo(2.85, 9) });
});

test('who is in it is told by the sizes at which they are first and last seen', () => {
  const sheet = setupSheet(plan, setupOf('feet-up'));
  expect(sheet.cast.map(({ label }) => label)).toContain('Vera');
  expect(sheet.burning.length).toBeGreaterThan(0);
  for (const { fromDim, untilDim } of sheet.burning) expect(fromDim + untilDim).toBeGreaterThan(0);
});
