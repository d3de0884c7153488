import { describe, expect, it } from 'vitest';
import { withRemedy } from '../../../../../src/core/clearance/remedies/remedyEdits';
import type { Remedy } from '../../../../../src/core/clearance/remedies/types';
import type { Plan } from '../../../../../src/core/plan/schema/plan';
import {
  byTrust,
  costWords,
  proposalOf,
  triedWords,
} from '../../../../../src/screens/sheet/remedies/remedyWords';
import { keyedFace, keyOn } from '../../../../plans/keyedFace';

const plan: Plan = keyedFace({
  gear: keyOn('back', [1, -3], [0, 0], 0.05, 2.4),
  cameras: [
    { id: 'wide', label: 'Wide', at: [0, 6], headingDegrees: 0 },
    { id: 'side', label: 'Side', at: [6, 0], headingDegrees: 270 },
  ],
});
const about = { setupId: 'wide', seconds: 0, lengths: 'm' } as const;

const remedy = (over: Partial<Remedy>, cost: Partial<Remedy['cost']> = {}): Remedy => ({
  kind: 'move',
  words: 'So much to frame right of A clears it in A.',
  edits: [{ edit: 'moveItem', args: { id: 'back-stand', to: [1.4, -3] } }],
  after: 'clear',
  relies: 'geometry',
  proved: true,
  ...over,
  cost: { metres: 0, stops: 0, degrees: 0, otherSetups: [], ...cost },
});

describe('the order of trust', () => {
  it('puts geometry first, then the dark, whatever the rank, and leaves out what asks for a reason', () => {
    const dark = remedy({ kind: 'black', relies: 'dark' });
    const near = remedy({ words: 'near' });
    const far = remedy({ words: 'far' });
    const show = remedy({ kind: 'let it show', relies: 'likeness', asksReason: true });
    const groups = byTrust([dark, near, show, far]);
    expect(groups.map(({ head }) => head)).toEqual(['By geometry', 'By the dark']);
    expect(groups.map(({ remedies }) => remedies)).toEqual([[near, far], [dark]]);
    expect(groups[1]?.words).toContain('as long as the light stays');
    expect(byTrust([show])).toEqual([]);
  });
});

describe('what is said where there is none', () => {
  it('is what was tried, and what stands in the way of more', () => {
    expect(triedWords(plan, 'back-stand')).toContain('moving it up to 4\u00a0m');
    expect(triedWords(plan, 'vera')).toMatch(/^Nothing was found .*: other lenses/);
    const locked = { ...plan, gear: plan.gear.map((gear) => ({ ...gear, locked: true as const })) };
    expect(triedWords(locked, 'back')).toMatch(
      /: somebody or a crate in front.* other lenses.* Stand of back, which carries it, is locked/,
    );
    expect(triedWords(locked, 'back-stand')).toContain('Stand of back is locked and stays');
  });
});

describe('what a remedy costs', () => {
  it('is told in centimetres, degrees, stops, and by what changes elsewhere', () => {
    const otherSetups = [
      { setupId: 'side', itemId: 'back', before: 'clear', after: 'close' },
      { setupId: 'wide', itemId: 'back', before: 'close', after: 'clear' },
    ] as const;
    expect(costWords(plan, remedy({}, { metres: 0.404, degrees: 12, stops: 0.24, otherSetups }), 'm')).toBe(
      '40\u00a0cm, 12\u00a0degrees, 0.2\u00a0stops less on its subject, in B Head back goes from clear to close, in A Head back goes from close to clear',
    );
    expect(costWords(plan, remedy({}, { degrees: 1, stops: -1 }), 'm')).toBe(
      '1\u00a0degree, 1.0\u00a0stop more on its subject, changes nothing elsewhere',
    );
    expect(costWords(plan, remedy({}), 'm')).toBe('nothing goes anywhere, changes nothing elsewhere');
    expect(costWords(plan, remedy({}, { metres: 0.4 }), 'ft-in')).toMatch(/^1′\u00a0/);
  });

  it('counts what is more than three changes elsewhere', () => {
    const change = { setupId: 'side', itemId: 'back', before: 'clear', after: 'close' } as const;
    expect(costWords(plan, remedy({}, { otherSetups: Array(5).fill(change) }), 'm')).toMatch(/, and 2 more$/);
  });
});

describe('a remedy as a proposal', () => {
  it('has the way of the stand, and all that is drawn anew', () => {
    const move = remedy({}, { metres: 0.4 });
    const made = proposalOf(plan, move, about);
    expect(made.stands).toEqual([{ from: [1, -3], to: [1.4, -3], label: 'Stand of back' }]);
    expect(made.changed).toEqual(['back-stand', 'back']);
    expect(made.place).toBeUndefined();
    expect(made.change(plan)).toEqual(withRemedy(plan, move));
  });

  it('says what is done to what stays on its place', () => {
    const lower = remedy(
      { kind: 'lower', edits: [{ edit: 'setStandHeight', args: { id: 'back-stand', heightMetres: 2 } }] },
      { metres: 0.4 },
    );
    expect(proposalOf(plan, lower, about).stands).toEqual([
      { from: [1, -3], to: [1, -3], label: 'Stand of back', words: '40\u00a0cm lower' },
    ]);
  });

  it('has the way of somebody who is cheated, for that setup alone', () => {
    const [performer] = plan.cast;
    const [mark] = performer.marks;
    const at: [number, number] = [mark.at[0] + 0.4, mark.at[1]];
    const cheat = remedy(
      {
        kind: 'cheat in front',
        edits: [
          { edit: 'setCheat', args: { setupId: 'wide', performerId: performer.id, markId: mark.id, at } },
        ],
      },
      { metres: 0.4 },
    );
    const made = proposalOf(plan, cheat, about);
    expect(made.stands).toEqual([{ from: mark.at, to: at, label: performer.label }]);
    expect(made.change(plan).setups[0].cheats).toHaveLength(1);
    expect(proposalOf(plan, cheat, { ...about, setupId: 'side' }).stands).toEqual([]);
  });

  it('has the way of the camera', () => {
    const nudge = remedy({
      kind: 'nudge the camera',
      edits: [{ edit: 'setKey', args: { setupId: 'wide', keyIndex: 0, patch: { position: [0.5, 1.5, 6] } } }],
    });
    const made = proposalOf(plan, nudge, about);
    expect(made.place).toMatchObject({ from: [0, 6], to: [0.5, 6], letter: 'A' });
    expect(made.stands).toEqual([]);
  });
});
