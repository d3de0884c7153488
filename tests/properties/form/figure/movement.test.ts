import fc from 'fast-check';
import { expect, test } from 'vitest';
import { figureParts, whereabouts } from '../../../../src/core/form/figure';
import { carriedAt, propLanes } from '../../../../src/core/form/figure/carrying';
import { FASTEST_TURN_DEGREES_PER_SECOND } from '../../../../src/core/form/figure/turning';
import { walksOf } from '../../../../src/core/form/figure/walks';
import type { Performer } from '../../../../src/core/plan/schema/cast';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { drawFrom } from '../../../plans/draw';
import { withActing } from '../../../plans/someActing';
import { somePerformer } from '../../../plans/somePerformer';
import { smallRoof } from '../../../unit/smallRoof';

const seeds = fc.integer({ min: 0, max: 1e9 });
const shares = fc.double({ min: 0, max: 1, noNaN: true });

/** Three performers with a mark every 2 to 8 s, who face, look, walk round corners and hand things over. */
function actingPlan(seed: number): Plan {
  const draw = drawFrom(seed);
  let clock = 0;
  const beats = Array.from({ length: draw.whole(2, 5) }, (_, k) => {
    clock += k === 0 ? 0 : draw.between(2, 8);
    return { id: `beat-${k}`, label: `Beat ${k}`, atSeconds: clock };
  });
  const cast = ['a', 'b', 'c'].map((id) => somePerformer(id, { halfX: 7, halfZ: 5 }, beats, draw));
  return withActing({ ...smallRoof(), cast, beats }, draw);
}

const lastOf = ({ beats }: Plan): number => beats[beats.length - 1].atSeconds;
const turnBetween = (a: number, b: number): number => Math.abs(((((b - a + 180) % 360) + 360) % 360) - 180);

function at(plan: Plan, performer: Performer, seconds: number) {
  const found = whereabouts(performer, plan, seconds);
  if (!found) throw new Error('found nobody, expected the performer');
  return found;
}

const FRAME = 1 / 24;
/** A turn of 180 degrees in half a second, at the steepest of its ease, beside following somebody. */
const FASTEST_TURN = (1.5 * 180) / 0.5 + 2 * FASTEST_TURN_DEGREES_PER_SECOND;
/** The head goes with the body, and a take swings it from one side to the other in 0.4 s. */
const FASTEST_LOOK = FASTEST_TURN + (1.5 * 200) / 0.4;
/** Beside that, what comes past within 0.25 m of the eyes turns them by so many degrees for each metre. */
const LOOK_DEGREES_PER_METRE = 860;

const fastestOf = (plan: Plan, cast: readonly Performer[]): number =>
  Math.max(0, ...cast.flatMap((one) => walksOf(one, plan).map((walk) => walk.cruisingMetresPerSecond)));

test('from frame to frame nobody jumps, spins or snaps their head round', () => {
  fc.assert(
    fc.property(seeds, shares, (seed, share) => {
      const plan = actingPlan(seed);
      const start = share * lastOf(plan);
      const fastestLook = FASTEST_LOOK + 2 * fastestOf(plan, plan.cast) * LOOK_DEGREES_PER_METRE;
      for (const performer of plan.cast) {
        const fastest = fastestOf(plan, [performer]);
        let before = at(plan, performer, start);
        for (let frame = 1; frame <= 24; frame += 1) {
          const now = at(plan, performer, start + frame * FRAME);
          const gone = Math.hypot(now.at[0] - before.at[0], now.at[2] - before.at[2]);
          expect(gone).toBeLessThanOrEqual(fastest * FRAME + 1e-6);
          expect(turnBetween(before.headingDegrees, now.headingDegrees)).toBeLessThanOrEqual(
            FASTEST_TURN * FRAME,
          );
          const cosine = now.gaze.reduce((sum, value, axis) => sum + value * before.gaze[axis], 0);
          expect((Math.acos(Math.min(1, cosine)) * 180) / Math.PI).toBeLessThanOrEqual(fastestLook * FRAME);
          expect(Math.hypot(...now.gaze)).toBeCloseTo(1, 9);
          before = now;
        }
      }
    }),
    { numRuns: 60 },
  );
});

test('no part of a body jumps farther from frame to frame than a body moves and swings its limbs', () => {
  fc.assert(
    fc.property(seeds, shares, (seed, share) => {
      const plan = actingPlan(seed);
      const start = share * lastOf(plan);
      const fastest = fastestOf(plan, plan.cast);
      for (const performer of plan.cast) {
        const bodyAt = (seconds: number) =>
          figureParts(performer, plan, seconds).filter(({ name }) => name !== 'prop');
        let before = bodyAt(start);
        for (let frame = 1; frame <= 12; frame += 1) {
          const now = bodyAt(start + frame * FRAME);
          now.forEach(({ worldFromPart: m }, k) => {
            const was = before[k].worldFromPart;
            if (!m || !was) throw new Error('found a part without a place, expected one');
            const gone = Math.hypot(m[3] - was[3], m[7] - was[7], m[11] - was[11]);
            // A foot swings up to three times as fast as the body; hands rise and turn with the body meanwhile.
            expect(gone).toBeLessThanOrEqual((6 + 3 * fastest) * FRAME);
          });
          before = now;
        }
      }
    }),
    { numRuns: 25 },
  );
});

test('walks end exactly at their marks, at their beats', () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      const plan = actingPlan(seed);
      for (const performer of plan.cast) {
        for (const mark of performer.marks) {
          const seconds = plan.beats.find(({ id }) => id === mark.beat)?.atSeconds ?? Number.NaN;
          expect(at(plan, performer, seconds).at).toEqual([mark.at[0], mark.floorMetres ?? 0, mark.at[1]]);
        }
        for (const walk of walksOf(performer, plan)) {
          const through = performer.marks.find(({ id }) => id === walk.toMark)?.way?.through ?? [];
          for (const place of through) expect(walk.path).toContainEqual(place);
        }
      }
    }),
    { numRuns: 100 },
  );
});

test('an instant is the same whatever was asked before', () => {
  fc.assert(
    fc.property(seeds, fc.array(shares, { minLength: 1, maxLength: 4 }), shares, (seed, others, share) => {
      const plan = actingPlan(seed);
      const seconds = share * lastOf(plan);
      const fresh = structuredClone(plan);
      for (const other of others) for (const one of plan.cast) figureParts(one, plan, other * lastOf(plan));
      plan.cast.forEach((performer, k) => {
        expect(figureParts(performer, plan, seconds).map(({ worldFromPart }) => worldFromPart)).toEqual(
          figureParts(fresh.cast[k], fresh, seconds).map(({ worldFromPart }) => worldFromPart),
        );
      });
    }),
    { numRuns: 25 },
  );
});

test('every prop is in exactly one pair of hands, and nobody has two', () => {
  fc.assert(
    fc.property(seeds, shares, (seed, share) => {
      const plan = actingPlan(seed);
      const seconds = share * lastOf(plan);
      const held = plan.cast.flatMap(({ id }) => carriedAt(plan, id, seconds) ?? []);
      expect(held.sort()).toEqual(plan.cast.flatMap(({ prop }) => prop ?? []).sort());
      for (const { holds } of propLanes(plan)) {
        holds.slice(1).forEach((hold, k) => {
          expect(holds[k].untilSeconds).toBe(hold.fromSeconds);
        });
        expect(holds[holds.length - 1].untilSeconds).toBeNull();
      }
    }),
    { numRuns: 150 },
  );
});
