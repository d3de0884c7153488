import { describe, expect, it } from 'vitest';
import { withRemedy } from '../../../../src/core/clearance/remedies/remedyEdits';
import type { Gear } from '../../../../src/core/plan/schema/gear';
import { setupReport } from '../../../../src/core/report/setupReport';
import { ofKind, remediesOf, standAt, stillRoof } from './remedied';

const verdictOf = (plan: ReturnType<typeof stillRoof>, id: string) =>
  setupReport(plan, plan.setups[0]).items.find((item) => item.id === id)?.verdict;

describe('what things can do about a finding', () => {
  it('moves a stand just out of the frame, by the nearer side', () => {
    const plan = stillRoof([standAt()]);
    const move = ofKind(remediesOf(plan, 'stand'), 'move');
    const after = withRemedy(plan, move);
    // Half the frame is 1.17 m there; the legs reach 0.55 m, the margin is 0.3 m: from 0.5 m some 1.5 m to the right.
    expect(move.cost.metres).toBeGreaterThan(0.9);
    expect(move.cost.metres).toBeLessThan(1.6);
    expect(move.words).toMatch(/^[\d.]+.m to frame right of A clears it in A\.$/);
    expect(verdictOf(after, 'stand')).toBe('clear');
    expect(move).toMatchObject({ after: 'clear', relies: 'geometry', proved: true });
  });

  it('says what the lamp on it loses, and keeps it within its tolerance', () => {
    const roof = stillRoof([standAt()]);
    const lamp: Gear = {
      id: 'lamp',
      label: 'Head 1, backlight',
      kind: 'head',
      head: 'spot',
      place: { on: 'stand' },
      aim: [0, 1.5, -2],
      dim: 1,
    };
    const plan = { ...roof, gear: [...roof.gear, lamp] };
    const move = ofKind(remediesOf(plan, 'stand'), 'move');
    expect(verdictOf(withRemedy(plan, move), 'lamp')).toBe('clear');
    const tight = remediesOf(plan, 'stand', { tolerance: { levelStops: 0.2, angleDegrees: 3 } });
    expect(tight.filter(({ kind }) => kind === 'move')).toEqual([]);
  });

  it('lowers a stand whose top alone is in frame', () => {
    // Tilted up: of 8 m away the lower frame line is at some 2.3 m.
    const plan = stillRoof([standAt({ heightMetres: 2.6 })], {}, 9);
    const lower = ofKind(remediesOf(plan, 'stand'), 'lower');
    expect(lower.words).toMatch(/m lower, at \d\.\d.m, clears it in A\.$/);
    expect(verdictOf(withRemedy(plan, lower), 'stand')).toBe('clear');
  });

  it('raises a head out above the frame', () => {
    const lamp: Gear = {
      id: 'lamp',
      label: 'Head 1',
      kind: 'head',
      head: 'spot',
      place: { on: 'stand' },
      aim: [0, 1.5, 0],
      dim: 0,
    };
    const plan = stillRoof([standAt({ wish: 'either', heightMetres: 1.8 }), lamp]);
    const raise = ofKind(remediesOf(plan, 'lamp'), 'raise');
    expect(raise.words).toContain('higher');
    expect(verdictOf(withRemedy(plan, raise), 'lamp')).toBe('clear');
  });

  it('swings the arm of a stand that stands outside', () => {
    const plan = stillRoof([
      standAt({
        at: [3, 0, -4],
        heightMetres: 1.8,
        arm: { lengthMetres: 2.2, tiltDegrees: 0, headingDegrees: 270 },
      }),
    ]);
    const swing = ofKind(remediesOf(plan, 'stand'), 'swing the arm');
    expect(swing.words).toMatch(/^The arm swung [\d.]+.degrees (anti)?clockwise clears it in A\.$/);
    expect(verdictOf(withRemedy(plan, swing), 'stand')).toBe('clear');
  });

  it('turns a long thing that reaches in with its end', () => {
    const cart: Gear = {
      id: 'cart',
      label: 'Cart',
      kind: 'generator',
      at: [2.4, 0, -4],
      headingDegrees: 0,
      size: [3, 1.6, 0.4],
    };
    const plan = stillRoof([cart]);
    const turn = ofKind(remediesOf(plan, 'cart'), 'turn');
    expect(turn.cost.degrees).toBeGreaterThan(10);
    expect(verdictOf(withRemedy(plan, turn), 'cart')).toBe('clear');
  });
});
