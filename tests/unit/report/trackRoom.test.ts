import { describe, expect, test } from 'vitest';
import { layTrack } from '../../../src/core/optics/onTrack';
import { moveItem } from '../../../src/core/plan/edits/moveItem';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { departmentFaults } from '../../../src/core/report/cameraNotices';
import { tightTrack } from '../../../src/core/report/trackRoom';
import { planFrom } from '../../plans/bare';
import { DEMO, readPlan } from '../../plans/readPlan';

/** Without its night, which is about setups that are left out here. */
const { night: _, ...demo } = readPlan(DEMO);
const [first] = demo.setups;
/** A roof of 20 × 12 m about the origin. */
const deck = {
  kind: 'deck',
  id: 'roof',
  label: 'Roof',
  wish: 'either',
  outline: [
    [-10, -6],
    [10, -6],
    [10, 6],
    [-10, 6],
  ],
  topMetres: 0,
  dropMetres: 20,
};
/** A box whose nearer side lies at z = `front`, from x = −1 to 1. */
const box = (front: number, more: object = {}) => ({
  kind: 'box',
  id: 'box',
  label: 'Vent',
  wish: 'either',
  at: [0, 0, front + 0.5],
  headingDegrees: 0,
  size: [2, 1, 1],
  material: 'timber',
  ...more,
});
const track = {
  kind: 'track',
  id: 'rails',
  label: 'Rails',
  at: [0, 0, 0],
  headingDegrees: 90,
  lengthMetres: 6,
  gaugeMetres: 0.62,
};
const key = (atSeconds: number, alongMetres: number, headingDegrees: number) => ({
  atSeconds,
  position: [alongMetres - 3, 1.2, 0],
  headingDegrees,
  tiltDegrees: 0,
  rollDegrees: 0,
  alongMetres,
});

/** A camera that runs from one end of 6 m of track along x to the other and looks along a heading. */
function plan(
  pieces: readonly object[],
  options: { heading?: number; gear?: object[]; rails?: object } = {},
): Plan {
  const { heading = 0, gear = [], rails = {} } = options;
  const { operator: _, ...setup } = first;
  return planFrom({
    ...demo,
    pieces: [deck, ...pieces],
    gear: [{ ...track, ...rails }, ...gear],
    setups: [
      {
        ...setup,
        support: 'dolly',
        track: 'rails',
        move: { ease: 'linear', keys: [key(9, 0.45, heading), key(26, 5.55, heading)] },
      },
    ],
  });
}
const tight = (of: Plan) => tightTrack(of, of.setups[0]);

// A dolly 0.66 m wide needs 0.33 m from the middle of the rails, and 0.6 m more where somebody walks: 0.93 m.
describe('a dolly on track', () => {
  test('has room where nothing stands, and where what stands is on the side that the lens looks to', () => {
    expect(tight(plan([]))).toBeNull();
    // The lens looks to −z: whoever operates walks at +z.
    expect(tight(plan([box(0.5)], { heading: 180 }))).toBeNull();
  });

  test('lacks it where a thing leaves less than the dolly and a walkway, and is told the nearest place that has it', () => {
    const short = plan([box(0.7)]);
    expect(tight(short)).toMatchObject({
      neededMetres: expect.closeTo(0.93, 9),
      walkwayMetres: 0.6,
      by: 'Vent',
    });
    expect(tight(short)?.freeMetres).toBeCloseTo(0.7, 6);
    expect(departmentFaults(short, short.setups[0]).find(({ about }) => about === 'room')).toEqual({
      about: 'room',
      keyIndex: null,
      nearest: 0.25,
      sentence: `The dolly of “${first.label}” needs 0.93\u00a0m beside the middle of Rails, 0.60\u00a0m of it to walk; Vent leaves 0.70\u00a0m. 0.25\u00a0m farther away there is room.`,
    });
    expect(tight(plan([box(0.94)]))).toBeNull();
    // Put there it has it, a step nearer it would not.
    const { away } = tight(short) ?? { away: null };
    expect(away?.by).toEqual([0, -0.25].map((metres) => expect.closeTo(metres, 9)));
    expect(tight(moveItem(short, { id: 'rails', to: [0, -0.25] }))).toBeNull();
    expect(tight(moveItem(short, { id: 'rails', to: [0, -0.2] }))).not.toBeNull();
  });

  test('does not get past what stands nearer than its own half, on whichever side', () => {
    const blocked = plan([box(0.2)], { heading: 180 });
    expect(tight(blocked)).toMatchObject({ neededMetres: 0.33, walkwayMetres: 0, by: 'Vent' });
    expect(tight(plan([box(-0.3)]))).toMatchObject({ freeMetres: 0, by: 'Vent' });
  });

  test('walks along on either side where the lens looks along the track', () => {
    expect(tight(plan([box(0.5)], { heading: 90 }))).toBeNull();
    const other = box(-1.6, { id: 'other', label: 'Hatch' });
    expect(tight(plan([box(0.5), other], { heading: 90 }))).toMatchObject({
      by: 'Hatch',
      freeMetres: expect.closeTo(0.6, 6),
    });
  });

  test('is held to the stretch that it uses, and to what stands at walking height', () => {
    const beyond = box(0.5, { at: [4.2, 0, 1] });
    expect(tight(plan([beyond]))).toBeNull();
    expect(tight(plan([box(0.5, { at: [3.9, 0, 1] })]))).not.toBeNull();
    expect(tight(plan([box(0.5, { size: [2, 0.1, 1] })]))).toBeNull();
    expect(tight(plan([box(0.5, { at: [0, 2, 1] })]))).toBeNull();
  });

  test('lacks it at the edge of the deck, and where no place within two metres has it, that is said', () => {
    const edge = plan([], { rails: { at: [0, 0, 5.4] } });
    expect(tight(edge)).toMatchObject({ by: 'the edge of Roof', walkwayMetres: 0.6 });
    expect(tight(edge)?.freeMetres).toBeCloseTo(0.6, 2);
    expect(tight(edge)?.away?.by[1]).toBeCloseTo(-0.35, 6);
    const wall = box(-1.9, { id: 'wall', label: 'Wall', size: [12, 2, 1] });
    const narrow = plan([wall, box(0.7, { size: [12, 2, 1] })]);
    // Half a metre is all that could be gone back, and the other side is then too near.
    expect(tight(narrow)).toMatchObject({ by: 'Vent', away: { metres: 0.25 } });
    const gap = plan([
      box(-1.4, { id: 'wall', label: 'Wall', size: [12, 2, 1] }),
      box(0.7, { size: [12, 2, 1] }),
    ]);
    expect(tight(gap)?.away).toBeNull();
    expect(departmentFaults(gap, gap.setups[0]).find(({ about }) => about === 'room')?.sentence).toMatch(
      /Nowhere within 2\.00\u00a0m is there room\.$/,
    );
  });

  test('takes its own width from the dolly that is in the plan', () => {
    const dolly = {
      kind: 'dolly',
      id: 'wide',
      label: 'Wide dolly',
      at: [0, 0, 3],
      headingDegrees: 0,
      size: [1, 1.05, 1.2],
      rides: first.id,
    };
    expect(tight(plan([box(1)]))).toBeNull();
    expect(tight(plan([box(1)], { gear: [dolly] }))).toMatchObject({ neededMetres: 1.1 });
  });

  test('on a bend is held to the bend', () => {
    // To the right about (0, 5): at x = ±2 the track has come 0.42 m nearer to what stands at z = 1.2.
    const bent = { bendMetres: 5 };
    expect(tight(plan([box(1.2)], { rails: bent }))).toBeNull();
    const aside = box(1.2, { at: [2, 0, 1.7], size: [1, 1, 1] });
    expect(tight(plan([aside], { rails: bent }))).toMatchObject({ by: 'Vent' });
    expect(tight(plan([aside]))).toBeNull();
  });
});

test("the demo's camera laid on track is held to its roof", () => {
  const laid = layTrack(demo, { setupId: first.id, bent: false });
  expect(() => tightTrack(laid, laid.setups[0])).not.toThrow();
});
