import { describe, expect, it } from 'vitest';
import { clippingOf } from '../../../../src/core/plan/clipping';
import { duplicateItems } from '../../../../src/core/plan/edits/duplicateItems';
import { letShow } from '../../../../src/core/plan/edits/letShow';
import { removeSetup } from '../../../../src/core/plan/edits/removeSetup';
import { takeBackShow } from '../../../../src/core/plan/edits/takeBackShow';
import { parsePlan } from '../../../../src/core/plan/parse';
import { setupReport } from '../../../../src/core/report/setupReport';
import { smallRoof } from '../../smallRoof';

const roof = smallRoof();
const accepted = letShow(roof, { id: 'stand-in', setupId: 'master', reason: ' Reads as a street lamp ' });
const showsOf = (plan: typeof roof, id = 'stand-in') => plan.gear.find((gear) => gear.id === id)?.shows;

describe('letting an item show', () => {
  it('is written in the plan with its reason, and taken back as if it had never been', () => {
    expect(showsOf(accepted)).toEqual([{ setup: 'master', reason: 'Reads as a street lamp' }]);
    expect(parsePlan(JSON.parse(JSON.stringify(accepted))).ok).toBe(true);
    expect(takeBackShow(accepted, { id: 'stand-in', setupId: 'master' })).toEqual(roof);
  });

  it('keeps the verdict in the report and says the reason, in that setup only', () => {
    const find = (plan: typeof roof, k: number) =>
      setupReport(plan, plan.setups[k], { at: 0 }).items.find(({ id }) => id === 'stand-in');
    expect(find(accepted, 0)).toEqual({
      ...find(roof, 0),
      accepted: { reason: 'Reads as a street lamp' },
    });
    expect(find(accepted, 1)).not.toHaveProperty('accepted');
  });

  it('changes nothing without a reason, a setup or an item', () => {
    for (const args of [
      { id: 'stand-in', setupId: 'master', reason: '  ' },
      { id: 'stand-in', setupId: 'master', reason: 'x'.repeat(201) },
      { id: 'stand-in', setupId: 'nowhere', reason: 'Why not' },
      { id: 'nothing', setupId: 'master', reason: 'Why not' },
    ])
      expect(letShow(roof, args)).toBe(roof);
    expect(letShow(accepted, { id: 'stand-in', setupId: 'master', reason: 'Reads as a street lamp' })).toBe(
      accepted,
    );
    expect(takeBackShow(roof, { id: 'stand-in', setupId: 'master' })).toBe(roof);
  });

  it('goes with its setup, and copies have to be accepted anew', () => {
    expect(showsOf(removeSetup(accepted, { setupId: 'master' }))).toBeUndefined();
    const copied = duplicateItems(accepted, { ids: ['stand-in'], by: [1, 0] });
    expect(copied.plan.gear.filter(({ shows }) => shows)).toHaveLength(1);
    expect(clippingOf(accepted, ['stand-in'])?.gear[0].shows).toBeUndefined();
  });

  it('is a fault of the plan where it names a setup that is not there', () => {
    const broken = { ...accepted, setups: accepted.setups.slice(1) };
    const read = parsePlan(JSON.parse(JSON.stringify(broken)));
    expect(read.ok ? '' : read.faults[0].sentence).toBe(
      'Item "Lamp stand 1", shows[0].setup: found "master", expected the id of a setup.',
    );
  });
});
