import { describe, expect, it } from 'vitest';
import { withReason } from '../../../../src/core/clearance/remedies/covering';
import { withRemedy } from '../../../../src/core/clearance/remedies/remedyEdits';
import { setupReport } from '../../../../src/core/report/setupReport';
import { smallRoof } from '../../smallRoof';
import { ofKind, remediesOf, standAt, stillRoof } from './remedied';

const verdictOf = (plan: ReturnType<typeof stillRoof>, id: string) =>
  setupReport(plan, plan.setups[0]).items.find((item) => item.id === id)?.verdict;

describe('what the camera can do about a finding', () => {
  // At the right edge: its middle 0.2 m inside the frame line.
  const edge = stillRoof([standAt({ at: [1, 0, -4] })]);
  const remedies = remediesOf(edge, 'stand');

  it('pans, and is nudged, no farther than it has to', () => {
    const pan = ofKind(remedies, 'pan');
    expect(pan.words).toMatch(/^A pan of \d\.\d.degrees to the left clears it in A\.$/);
    expect(verdictOf(withRemedy(edge, pan), 'stand')).toBe('clear');
    const nudge = ofKind(remedies, 'nudge the camera');
    expect(nudge.words).toMatch(/^The camera of A [\d.]+.m to its left clears it in A\.$/);
    expect(verdictOf(withRemedy(edge, nudge), 'stand')).toBe('clear');
  });

  it('takes the next longer lens of the kit, and keeps whom it holds', () => {
    const wide = stillRoof([standAt({ at: [3, 0, -4] })], { lens: 'wide' });
    const longer = ofKind(remediesOf(wide, 'stand'), 'another lens');
    expect(longer.words).toBe('A longer lens that holds its cast, 85 mm, clears it in A.');
    const ana = smallRoof().cast.map((performer) => ({
      ...performer,
      marks: performer.marks.slice(0, 1).map((mark) => ({ ...mark, at: [-2, -4] as [number, number] })),
    }));
    const kinds = remediesOf({ ...wide, cast: ana }, 'stand').map(({ kind }) => kind);
    expect(kinds).not.toContain('another lens');
  });

  it('shortens a move that comes to where it is seen', () => {
    const [key] = edge.setups[0].move.keys;
    const keys = [
      { ...key, position: [-1.2, 1.6, 4] as [number, number, number] },
      { ...key, atSeconds: 1, position: [0, 1.6, 4] as [number, number, number] },
    ];
    const moving = stillRoof([standAt({ at: [1, 0, -4] })], { move: { ease: 'linear', keys } });
    const shorter = ofKind(remediesOf(moving, 'stand'), 'shorten the move');
    expect(shorter.words).toMatch(/^The move of A [\d.]+.m shorter at its end clears it in A\.$/);
    expect(verdictOf(withRemedy(moving, shorter), 'stand')).toBe('clear');
    // By way of a third key that stays where it is, 0.5 m to the side, less of the way is saved than its end is drawn in.
    const bent = [
      keys[0],
      { ...key, atSeconds: 0.5, position: [-0.6, 1.6, 4.5] as [number, number, number] },
      keys[1],
    ];
    const longWay = stillRoof([standAt({ at: [1, 0, -4] })], { move: { ease: 'linear', keys: bent } });
    const saved = ofKind(remediesOf(longWay, 'stand'), 'shorten the move');
    const [, middle, last] = withRemedy(longWay, saved).setups[0].move.keys;
    const leg = (end: readonly number[]): number =>
      Math.hypot(...end.map((value, axis) => value - middle.position[axis]));
    expect(saved.cost.metres).toBeCloseTo(leg(bent[2].position) - leg(last.position), 9);
  });

  it('lets it show last, once there is a reason', () => {
    const last = remedies[remedies.length - 1];
    expect(last).toMatchObject({ kind: 'let it show', relies: 'likeness', asksReason: true });
    expect(withRemedy(edge, last)).toBe(edge);
    const accepted = withRemedy(edge, withReason(last, 'Reads as a street lamp'));
    expect(accepted.gear[0].shows).toEqual([{ setup: 'single', reason: 'Reads as a street lamp' }]);
    expect(remediesOf(accepted, 'stand').map(({ kind }) => kind)).not.toContain('let it show');
  });

  it('says each in at most 24 words, least disturbing first of those that rest on geometry', () => {
    for (const { words } of remedies) expect(words.split(/\s+/).length).toBeLessThanOrEqual(24);
    expect(remedies.map(({ relies }) => relies)).toEqual(
      remedies.map(({ relies }) => relies).toSorted((a, b) => (a === b ? 0 : a === 'geometry' ? -1 : 1)),
    );
    expect(remedies[0].kind).toBe('move');
  });
});
