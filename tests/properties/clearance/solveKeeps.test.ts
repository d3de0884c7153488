import { expect, it } from 'vitest';
import { withRemedy } from '../../../src/core/clearance/remedies/remedyEdits';
import { carrierOf } from '../../../src/core/plan/edits/anchorOf';
import type { Gear } from '../../../src/core/plan/schema/gear';
import type { Piece } from '../../../src/core/plan/schema/pieces';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { setupReport } from '../../../src/core/report/setupReport';
import { drawFrom } from '../../plans/draw';
import { cases } from '../../thorough';
import { standAt, stillRoof } from '../../unit/clearance/remedies/remedied';
import { solved } from '../../unit/clearance/solve/solved';

/**
 * A stand in frame that may go; beside it, at random, a locked stand with a lamp, a free one with a lamp, a locked
 * chest, and a sign that must show, now in frame, now not.
 */
function lockedRoof(seed: number): Plan {
  const draw = drawFrom(seed);
  const place = (reach: number): [number, number, number] => [
    draw.between(-reach, reach),
    0,
    draw.between(-5.5, -2.5),
  ];
  const head = (id: string, on: string, locked: boolean): Gear => ({
    id,
    label: id,
    kind: 'head',
    head: 'spot',
    place: { on },
    aim: [0, 1.5, 0],
    dim: 0.5,
    locked,
  });
  const sign: Piece = {
    id: 'sign',
    label: 'Sign',
    kind: 'box',
    at: place(0.7),
    headingDegrees: draw.between(0, 180),
    size: [0.7, 1.4, 0.1],
    material: 'timber',
    wish: 'must show',
    locked: draw.chance(0.5),
  };
  const roof = stillRoof(
    [
      standAt({ at: place(1), heightMetres: 1.8 }),
      standAt({ id: 'locked', label: 'Locked stand', at: place(1.6), locked: true }),
      head('on-locked', 'locked', false),
      standAt({ id: 'free', label: 'Free stand', at: place(1.6) }),
      head('on-free', 'free', false),
      {
        id: 'chest',
        label: 'Chest',
        kind: 'distro',
        at: place(1.6),
        headingDegrees: 0,
        size: [0.5, 0.4, 0.4],
        locked: true,
      },
    ],
    { span: { from: 'start', to: 'start' } },
    -4,
  );
  return { ...roof, pieces: [...roof.pieces, sign] };
}

const isHeld = (plan: Plan, id: string): boolean => {
  const carrier = carrierOf(plan, id);
  return [...plan.gear, ...plan.pieces].some(
    (each) => each.locked && (each.id === id || each.id === carrier),
  );
};

it('a solved night leaves what is locked, with what it carries, and keeps in sight what must show', () => {
  let [changed, kept] = [0, 0];
  for (let seed = 1; seed <= cases(12); seed += 1) {
    const plan = lockedRoof(seed);
    const answer = solved(plan);
    const { best } = answer;
    if (!best) continue;
    changed += 1;
    const after = withRemedy(plan, best);
    for (const [section, records] of Object.entries({ pieces: plan.pieces, gear: plan.gear }))
      for (const record of records)
        if (isHeld(plan, record.id))
          expect(
            [...after.pieces, ...after.gear].find(({ id }) => id === record.id),
            `seed ${seed}, ${section}`,
          ).toEqual(record);
    expect(best.items.filter(({ itemId }) => isHeld(plan, itemId))).toEqual([]);
    const now = setupReport(after, after.setups[0]).items;
    for (const { id, wish, verdict } of setupReport(plan, plan.setups[0]).items)
      if (wish === 'must show' && verdict === 'showing') {
        kept += 1;
        expect(now.find((item) => item.id === id)?.verdict, `seed ${seed}`).toBe('showing');
      }
  }
  expect(Math.min(changed, kept)).toBeGreaterThan(1);
});
