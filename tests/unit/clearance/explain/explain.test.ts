import { describe, expect, it } from 'vitest';
import { explain } from '../../../../src/core/clearance/explain/explain';
import type { Explanation } from '../../../../src/core/clearance/explain/types';
import { explanationWords } from '../../../../src/core/clearance/explain/words';
import { dot, subtract, unit, type Vec3 } from '../../../../src/core/form/build/vector';
import { cameraAt, spanOf } from '../../../../src/core/optics/camera';
import { projectPoint } from '../../../../src/core/optics/project';
import type { Piece } from '../../../../src/core/plan/schema/pieces';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { setupReport } from '../../../../src/core/report/setupReport';
import { DEMO, readPlan } from '../../../plans/readPlan';
import { cases } from '../../../thorough';
import { standAt, stillRoof } from '../remedies/remedied';

type Of<Kind extends Explanation['kind']> = Extract<Explanation, { readonly kind: Kind }>;

/** The explanation, which has to be of a kind; throws otherwise. */
function explained<Kind extends Explanation['kind']>(plan: Plan, kind: Kind, itemId = 'stand'): Of<Kind> {
  const told = explain(plan, { setupId: plan.setups[0]?.id ?? 'none', itemId, seconds: 0 });
  if (told?.kind !== kind) throw new Error(`told ${told?.kind ?? 'nothing'}, not ${kind}`);
  return told as Of<Kind>;
}

/** How far a place is off the line between two others, as a share of its length. */
function offLine(from: Vec3, to: Vec3, place: Vec3): number {
  const way = unit(subtract(to, from));
  const rest = subtract(place, from);
  const along = dot(rest, way);
  return Math.sqrt(Math.max(0, dot(rest, rest) - along * along)) / Math.sqrt(dot(rest, rest));
}

const wall: Piece = {
  id: 'wall',
  label: 'Wall',
  kind: 'wall',
  path: [
    [-3, -2],
    [3, -2],
  ],
  heightMetres: 4,
  thicknessMetres: 0.2,
  openings: [],
  closed: false,
  baseMetres: 0,
  material: 'brick',
};

describe('why an item has its verdict', () => {
  it('draws the line from the pupil to a place on the part that shows, through the frame at its distance', () => {
    const plan = stillRoof([standAt()]);
    const told = explained(plan, 'showing');
    expect(told.eye).toEqual([0, 1.6, 4]);
    // 0.5 m to the right of the middle, 8 m away, on the outside of a thin upright.
    expect(told.end.at[0]).toBeCloseTo(0.5, 1);
    expect(told.end.at[2]).toBeCloseTo(-4, 1);
    const camera = cameraAt(plan, plan.setups[0], 0);
    const seen = projectPoint(camera, told.end.at);
    expect(seen?.x).toBeCloseTo(told.frameAt[0], 9);
    expect(seen?.y).toBeCloseTo(told.frameAt[1], 9);
    expect(told.frameAt[0]).toBeGreaterThan(0.5);
    // The frame is as wide there as the lens takes in.
    const [left, right, low] = told.frame;
    expect(right[0] - left[0]).toBeCloseTo(2 * camera.frame.tanHalfWidth * (4 - told.end.at[2]), 9);
    expect(left[1] - low[1]).toBeCloseTo(2 * camera.frame.tanHalfHeight * (4 - told.end.at[2]), 9);
    expect(explanationWords(plan, told, 'm')).toMatch(
      /^At 0\.0.s A sees the \w+ of Lamp stand, \d\.\d+.m from the lens: the line crosses the frame \d+.% from frame right, \d+.% down from the top\.$/,
    );
  });

  it('finds what is finer than a pixel', () => {
    const plan = stillRoof([standAt({ at: [0.3, 0, -9.5], heightMetres: 3 })]);
    const told = explained(plan, 'showing');
    expect(told.end.at[0]).toBeCloseTo(0.3, 0);
  });

  it('names what hides it, between the lens and the part', () => {
    const plan = { ...stillRoof([standAt()]), pieces: [...stillRoof([]).pieces, wall] };
    const told = explained(plan, 'covered');
    expect(told.coverer).toMatchObject({ itemId: 'wall' });
    expect(told.coverer.at[2]).toBeCloseTo(-1.9, 6);
    expect(offLine(told.eye, told.end.at, told.coverer.at)).toBeLessThan(1e-7);
    expect(told.end.at[2]).toBeLessThan(told.coverer.at[2]);
    expect(explanationWords(plan, told, 'm')).toMatch(/Wall, .*, hides the \w+ of Lamp stand, which is/);
  });

  it('turns the line in the wet deck at equal angles', () => {
    // The camera looks down: the stand itself is above the frame, its image in it.
    const dry = stillRoof([standAt({ at: [0.2, 0, -8], heightMetres: 3 })], {}, -24);
    const plan: Plan = { ...dry, ground: { surface: 'asphalt', wetness: 'wet down' } };
    const told = explained(plan, 'mirrored');
    expect(told.mirror.itemId).toBe(plan.pieces[0]?.id);
    expect(told.mirror.at[1]).toBeCloseTo(0, 9);
    const before = unit(subtract(told.mirror.at, told.eye));
    const after = unit(subtract(told.end.at, told.mirror.at));
    expect(after[0]).toBeCloseTo(before[0], 9);
    expect(after[1]).toBeCloseTo(-before[1], 9);
    expect(after[2]).toBeCloseTo(before[2], 9);
    expect(Math.sin((told.angleDegrees * Math.PI) / 180)).toBeCloseTo(after[1], 9);
    expect(explanationWords(plan, told, 'm')).toContain('° to it before and after');
  });

  it('says where it comes nearest when it stays outside, and by how much', () => {
    const plan = stillRoof([standAt({ at: [2.6, 0, -4] })]);
    const told = explained(plan, 'outside');
    expect(told.frameAt[0]).toBeGreaterThan(1);
    const margin = setupReport(plan, plan.setups[0]).items.find(({ id }) => id === 'stand')?.margin;
    expect(told.outside?.metres).toBeCloseTo(margin?.metres ?? 0, 9);
    expect(told.outside?.edge).toBe('right');
    expect(explanationWords(plan, told, 'ft-in')).toContain('beyond frame right');
  });

  it('says that it is behind the camera, and nothing of what is not there', () => {
    const plan = stillRoof([standAt({ at: [0, 0, 8] })]);
    expect(explanationWords(plan, explained(plan, 'behind'), 'm')).toBe(
      'At 0.0\u00a0s Lamp stand is behind the camera of A.',
    );
    const setupId = plan.setups[0]?.id ?? '';
    expect(explain(plan, { setupId, itemId: 'nobody', seconds: 0 })).toBeNull();
    expect(explain(plan, { setupId: 'none', itemId: 'stand', seconds: 0 })).toBeNull();
  });

  it('agrees with the report about all gear of the demo at the beginning of setups', () => {
    const plan = readPlan(DEMO);
    const KINDS = {
      showing: ['showing'],
      mirrored: ['mirrored'],
      covered: ['covered'],
      close: ['outside'],
      clear: ['outside', 'behind'],
      'lost in the dark': ['showing'],
    } as const;
    for (const setup of plan.setups.slice(0, cases(plan.setups.length))) {
      const [seconds] = spanOf(plan, setup);
      const keeping = setupReport(plan, setup, { at: seconds }).items.filter(
        ({ wish }) => wish === 'keep out',
      );
      for (const { id, verdict, kind } of keeping) {
        const told = explain(plan, { setupId: setup.id, itemId: id, seconds });
        if (told === null) continue;
        expect(KINDS[verdict] as readonly string[], `${setup.id}: ${id}, a ${kind}, is ${verdict}`).toContain(
          told.kind,
        );
      }
    }
  });
});
