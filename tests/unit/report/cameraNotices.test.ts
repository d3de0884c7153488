import { describe, expect, test } from 'vitest';
import { frameShapeOf } from '../../../src/core/optics/camera';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { departmentNotices } from '../../../src/core/report/cameraNotices';
import { findingSentence } from '../../../src/core/report/sentences';
import { setupReport } from '../../../src/core/report/setupReport';
import { planFrom } from '../../plans/bare';
import { smallRoofDocument } from '../smallRoof';

const base = smallRoofDocument();
const [first] = base.setups;
const key = (atSeconds: number, position: number[], more: object = {}) => ({
  atSeconds,
  position,
  headingDegrees: 0,
  tiltDegrees: 0,
  rollDegrees: 0,
  ...more,
});
const track = {
  id: 'rails',
  label: 'Rails',
  kind: 'track',
  at: [0, 0, 6],
  headingDegrees: 90,
  lengthMetres: 5,
  gaugeMetres: 0.62,
};

function planWith(setup: object, lens: object = {}, gear: readonly object[] = []): Plan {
  return planFrom({
    ...base,
    gear: [...base.gear, ...gear],
    kit: {
      ...base.kit,
      lenses: base.kit.lenses.map((each) => (each.id === first.lens ? { ...each, ...lens } : each)),
    },
    setups: [{ ...first, ...setup }],
  });
}

const said = (plan: Plan): string[] =>
  departmentNotices(plan, plan.setups[0]).map(({ sentence }) => sentence);
const still = (position: number[]) => ({ ease: 'linear', keys: [key(0, position)] });

describe('what a camera department objects to', () => {
  test('nothing, of a setup as it should be', () => {
    expect(said(planWith({ move: still([0, 1.5, 6]) }))).toEqual([]);
  });

  test('a stop that the lens does not have, and the nearest that it has', () => {
    const plan = planWith({ move: still([0, 1.5, 6]), stop: 1.4 }, { widestStop: 2.3 });
    expect(said(plan)).toEqual([`${first.label} asks for T1.4, and its lens opens no wider than T2.3.`]);
    const closed = planWith({ move: still([0, 1.5, 6]), stop: 32 }, { narrowestStop: 22 });
    expect(said(closed)).toEqual([`${first.label} asks for T32, and its lens closes no further than T22.`]);
  });

  test('a circle that leaves the corners dark', () => {
    const plan = planWith({ move: still([0, 1.5, 6]) }, { imageCircleMm: 12 });
    expect(said(plan)).toHaveLength(1);
    expect(said(plan)[0]).toMatch(
      /^The circle of .* is 12\.0\u00a0mm, and .* needs \d+\.\d\u00a0mm: \d+\u00a0% of the frame, its corners, stays dark\.$/,
    );
  });

  test('a key outside of the span', () => {
    const plan = planWith({ move: { ease: 'linear', keys: [key(0, [0, 1.5, 6]), key(99, [0.5, 1.5, 6])] } });
    expect(said(plan)).toHaveLength(1);
    expect(said(plan)[0]).toMatch(
      /^A key of .* lies at 99\.0\u00a0s, outside of what it covers\. The nearest moment is \d+\.\d\u00a0s\.$/,
    );
  });

  test('a dolly past the end of its track', () => {
    const at = (seconds: number, alongMetres: number) => key(seconds, [0, 1.5, 6], { alongMetres });
    const move = { ease: 'linear', keys: [at(0, 3.5), at(2, 4.9)] };
    const plan = planWith({ support: 'dolly', track: 'rails', move }, {}, [track]);
    expect(said(plan)).toEqual([
      `${first.label} takes its dolly to 4.90\u00a0m along Rails, which is 5.00\u00a0m long and needs 0.45\u00a0m at each end. The nearest place is 4.55\u00a0m.`,
    ]);
  });

  test('a focus nearer than the lens has', () => {
    const plan = planWith({ move: still([0, 1.5, 6]), focus: { metres: 0.3 } }, { closeFocusMetres: 0.85 });
    expect(said(plan)).toEqual([
      `${first.label} comes to a focus of 0.30\u00a0m at 0.0\u00a0s, and its lens focuses from 0.85\u00a0m on.`,
    ]);
  });

  test('a lens higher than what carries it reaches', () => {
    const plan = planWith({ move: still([0, 2.6, 6]), support: 'sticks' });
    expect(said(plan)).toEqual([
      `The lens of ${first.label} is 2.60\u00a0m high at 0.0\u00a0s; on sticks it goes from 0.30\u00a0m to 1.90\u00a0m. The nearest height is 1.90\u00a0m.`,
    ]);
  });

  test('a run', () => {
    const move = { ease: 'linear', keys: [key(0, [-4, 1.5, 6]), key(2, [4, 1.5, 6])] };
    const plan = planWith({ move, support: 'handheld' });
    expect(said(plan)).toHaveLength(1);
    expect(said(plan)[0]).toMatch(
      /runs at 4\.0\u00a0m\/s at .*, faster than a walking pace of 1\.4\u00a0m\/s\.$/,
    );
  });
});

describe('a counted sway', () => {
  const sway = { seed: 1, metres: 0.4, degrees: 15, counted: true };
  test('makes close what it may bring in, and says so', () => {
    const move = still([0, 1.5, 6]);
    const bare = planWith({ move });
    // A metre outside of the frame line, eight metres away.
    const { tanHalfWidth } = frameShapeOf(bare, bare.setups[0]);
    const aside = { ...base.gear[0], id: 'aside', at: [8 * tanHalfWidth + 1, 0, -2] };
    const steady = setupReport(planWith({ move }, {}, [aside]), bare.setups[0], { at: 0 });
    const plan = planWith({ move, support: 'handheld', sway }, {}, [aside]);
    const swaying = setupReport(plan, plan.setups[0], { at: 0 });
    const uncounted = planWith({ move, sway: { ...sway, counted: false } }, {}, [aside]);
    const clear = steady.items.filter(({ verdict }) => verdict === 'clear');
    const closer = swaying.items.filter(
      ({ id, verdict }) => verdict === 'close' && clear.some((item) => item.id === id),
    );
    // Shares never depend on it: only what is outside is looked at again.
    expect(swaying.items.map(({ share }) => share)).toEqual(steady.items.map(({ share }) => share));
    expect(setupReport(uncounted, uncounted.setups[0], { at: 0 })).toEqual(steady);
    expect(closer.length).toBeGreaterThan(0);
    for (const item of closer) {
      expect(item.margin?.swayMetres).toBeGreaterThan(item.margin?.metres ?? Number.POSITIVE_INFINITY);
      expect(findingSentence(item, swaying, 'm').text).toMatch(/The sway may bring it in\.$/);
    }
  });
});
