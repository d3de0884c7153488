import { describe, expect, test } from 'vitest';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { startingFrom } from '../../../src/core/plan/startingFrom';
import { type Doings, HINT_IDS, type HintId, MOST_HINTS, nextHint } from '../../../src/desk/hints/hints';
import { DEMO, readPlan } from '../../plans/readPlan';

const demo = readPlan(DEMO);
const bare: Plan = startingFrom({ ...demo, pieces: [] }, 'Bare', { gear: false, cast: false, setups: false });
const roof: Plan = { ...bare, pieces: demo.pieces };

const doings = (plan: Plan, done: Partial<Doings> = {}): Doings => ({
  plan,
  edits: 0,
  playing: false,
  looksElsewhere: false,
  readKeys: false,
  ...done,
});

describe('the first minute', () => {
  test('on an empty plan goes from the deck to the keys', () => {
    expect(nextHint(doings(bare), [])?.id).toBe('deck');
    expect(nextHint(doings(roof), ['deck'])?.id).toBe('stand');
    const lit = { ...roof, gear: demo.gear };
    expect(nextHint(doings(lit), ['deck', 'stand'])?.id).toBe('camera');
    const filmed = { ...lit, setups: demo.setups };
    expect(nextHint(doings(filmed), ['deck', 'stand', 'camera'])?.id).toBe('drag');
    expect(nextHint(doings(filmed, { edits: 1 }), ['deck', 'stand', 'camera', 'drag'])?.id).toBe('strip');
  });

  test('on a plan that stands begins with the drag, and passes over what has been done', () => {
    expect(nextHint(doings(demo), [])?.id).toBe('drag');
    expect(nextHint(doings(demo, { edits: 3 }), [])?.id).toBe('strip');
    expect(nextHint(doings(demo, { edits: 3, looksElsewhere: true }), [])?.id).toBe('play');
    expect(nextHint(doings(demo, { edits: 3, looksElsewhere: true, playing: true }), [])?.id).toBe('keys');
    const all = doings(demo, { edits: 3, looksElsewhere: true, playing: true, readKeys: true });
    expect(nextHint(all, [])).toBeNull();
  });

  test('never shows more than five', () => {
    let gone: readonly HintId[] = [];
    let shown = 0;
    for (const plan of [bare, roof, { ...roof, gear: demo.gear }, demo, demo, demo, demo, demo]) {
      const hint = nextHint(doings(plan), gone);
      if (!hint) continue;
      shown += 1;
      gone = [...gone, hint.id];
    }
    expect(shown).toBe(MOST_HINTS);
    expect(nextHint(doings(demo), HINT_IDS)).toBeNull();
  });
});
