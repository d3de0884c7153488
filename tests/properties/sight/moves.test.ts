import { describe, expect, it } from 'vitest';
import { cameraAt, spanOf } from '../../../src/core/optics/camera';
import { formsThrough } from '../../../src/core/optics/riding';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { reportOf } from '../../../src/core/report/report';
import { runsOf } from '../../../src/core/sight/frames';
import { look, scratchFor } from '../../../src/core/sight/look';
import { outsideOf } from '../../../src/core/sight/margin';
import { type Reading, readSetup } from '../../../src/core/sight/reading';
import { stageOf } from '../../../src/core/sight/stage';
import { INSIDE, type ItemTally, MIRRORED, note, SHOWS, tallyFor } from '../../../src/core/sight/tally';
import { findThin } from '../../../src/core/sight/thin';
import { planFrom } from '../../plans/bare';
import { cases } from '../../thorough';
import { smallRoofDocument } from '../../unit/smallRoof';
import { movingPlan } from './movingPlans';

const PLANS = cases(12);
/** Every how many frames the reading asks about everything: a quarter of a second. */
const QUARTER = 6;
/** Most that the largest share over a move may fall short of the true one, of the frame. */
const CEILING = 0.0005;
/** Most that the nearest approach may be told too far: no frame that may be the nearest goes without being measured. */
const NEAREST_CEILING_METRES = 1e-9;

function readingOf(plan: Plan): Reading {
  const [setup] = plan.setups;
  const steps = readSetup(plan, setup, spanOf(plan, setup));
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** Every frame asked in full, one after the other. */
function bruteForce(plan: Plan, instants: Float64Array): ItemTally[] {
  const [setup] = plan.setups;
  const scratch = scratchFor(cameraAt(plan, setup, instants[0]));
  const tallies: ItemTally[] = [];
  instants.forEach((seconds, frame) => {
    const stage = stageOf(formsThrough(plan, setup, seconds));
    const seen = look(stage, cameraAt(plan, setup, seconds), scratch);
    findThin(seen);
    stage.forms.forEach((_, item) => {
      tallies[item] ??= tallyFor(instants.length);
      note(tallies[item], seen, item, frame);
    });
  });
  return tallies;
}

/** Frames where two tallies differ in a bit, apart from those between two quarters that have the bit at both ends. */
function differences(told: ItemTally, truth: ItemTally, bit: number): number[] {
  const last = truth.states.length - 1;
  const has = (frame: number) => (truth.states[Math.min(frame, last)] & bit) !== 0;
  return Array.from(truth.states.keys()).filter((frame) => {
    if ((told.states[frame] & bit) === (truth.states[frame] & bit)) return false;
    const from = frame - (frame % QUARTER);
    return !(has(from) && has(from + QUARTER));
  });
}

interface Comparison {
  readonly seed: number;
  readonly reading: Reading;
  readonly truth: readonly ItemTally[];
}

/** Items with a wish: of the others nothing less than a quarter of a second is asked. */
const wished = ({ stage }: Reading): { readonly id: string; readonly item: number }[] =>
  stage.forms.flatMap(({ id, wish }, item) => (wish === 'either' ? [] : [{ id, item }]));

describe('a reading of a move against every frame asked in full', () => {
  const compared: Comparison[] = [];
  /** Worked out by whichever test comes first. */
  const comparisons = (): readonly Comparison[] => {
    for (let seed = compared.length + 1; seed <= PLANS; seed += 1) {
      const plan = movingPlan(seed);
      const reading = readingOf(plan);
      compared.push({ seed, reading, truth: bruteForce(plan, reading.instants) });
    }
    return compared;
  };

  it('tells for each frame whether an item shows or is mirrored', () => {
    const wrong: string[] = [];
    let runs = 0;
    for (const { seed, reading, truth } of comparisons()) {
      for (const { id, item } of wished(reading)) {
        const [told, real] = [reading.tallies[item], truth[item]];
        runs += runsOf(real.states.map((state) => state & SHOWS)).length;
        for (const [bit, word] of [
          [SHOWS, 'shows'],
          [MIRRORED, 'is mirrored'],
        ] as const) {
          for (const frame of differences(told, real, bit))
            wrong.push(`plan ${seed}, ${id} ${word}, frame ${frame}`);
        }
      }
    }
    expect(wrong).toEqual([]);
    expect(runs).toBeGreaterThan((20 / 12) * PLANS);
  });

  it('tells exactly how near to the frame an item comes that never enters it', () => {
    let outside = 0;
    for (const { seed, reading, truth } of comparisons()) {
      for (const { id, item } of wished(reading)) {
        if (truth[item].states.some((state) => (state & INSIDE) !== 0)) continue;
        const metres = Array.from(reading.instants.keys()).flatMap((frame) => {
          const now = reading.at(frame);
          const found = outsideOf(now.stage, item, now.camera);
          return found === null ? [] : [found === 'inside' ? 0 : found.metres];
        });
        const told = reading.nearest[item]?.outside.metres ?? Infinity;
        const real = Math.min(Infinity, ...metres);
        outside += 1;
        if (told === real) continue;
        expect(told, `plan ${seed}, ${id}`).toBeGreaterThanOrEqual(real);
        expect(told - real, `plan ${seed}, ${id}`).toBeLessThan(NEAREST_CEILING_METRES);
      }
    }
    expect(outside).toBeGreaterThan((10 / 12) * PLANS);
  });

  it('tells the largest share, direct and mirrored, within 0.05 % of the frame', () => {
    const wrong: string[] = [];
    for (const { seed, reading, truth } of comparisons()) {
      for (const { id, item } of wished(reading)) {
        for (const peak of ['share', 'mirrored'] as const) {
          const [told, real] = [reading.tallies[item][peak], truth[item][peak]];
          if (Math.abs(told.value - real.value) > CEILING)
            wrong.push(
              `plan ${seed}, ${id}, ${peak}: ${told.value} in frame ${told.frame}, truly ${real.value} in frame ${real.frame}`,
            );
        }
      }
    }
    expect(wrong).toEqual([]);
  });
});

describe('a whip pan', () => {
  const FRAME_SECONDS = 1 / 24;
  const base = smallRoofDocument();
  /** A stand straight ahead, 6 m away; from 1 s on, the camera pans over it, 60 degrees to each side, in 14 frames. */
  const plan = planFrom({
    ...base,
    pieces: base.pieces.slice(0, 1),
    cast: [],
    gear: [{ ...base.gear[0], id: 'crossed', at: [0, 0, -6] }],
    setups: [
      {
        ...base.setups[1],
        span: { from: 'start', to: 'end' },
        move: {
          ease: 'linear',
          keys: [
            { atSeconds: 1, headingDegrees: -60 },
            { atSeconds: 1 + 14 * FRAME_SECONDS, headingDegrees: 60 },
          ].map((key) => ({ ...key, position: [0, 1.6, 0], tiltDegrees: 0, rollDegrees: 0 })),
        },
      },
    ],
  });

  it('over a stand that is in frame for two frames or three finds it, and says when to the frame', () => {
    const [setup] = reportOf(plan).setups;
    const crossed = setup.items.find(({ id }) => id === 'crossed');
    const reading = readingOf(plan);
    const [truth] = bruteForce(plan, reading.instants).slice(reading.stage.forms.length - 1);
    const runs = runsOf(truth.states.map((state) => state & SHOWS));
    expect(runs).toHaveLength(1);
    const [[from, to]] = runs;
    expect(to - from + 1).toBeLessThanOrEqual(3);
    // Not at a quarter of a second: at none of those is the stand in frame.
    expect(
      [...truth.states.keys()].some((frame) => frame % QUARTER === 0 && truth.states[frame] & SHOWS),
    ).toBe(false);
    expect(crossed?.verdict).toBe('showing');
    expect(crossed?.spans).toEqual([[reading.instants[from], reading.instants[to]]]);
    expect(crossed?.share).toBeGreaterThan(0);
  });
});
