import { describe, expect, it } from 'vitest';
import { middleOf } from '../../../src/core/clearance/ground/squares';
import { bestSpot } from '../../../src/core/clearance/useful/bestSpot';
import { putLamp } from '../../../src/core/clearance/useful/putLamp';
import { type LampRole, ROLE_RANGES } from '../../../src/core/clearance/useful/roles';
import {
  USEFUL_STATES,
  type UsefulGround,
  type UsefulQuestion,
} from '../../../src/core/clearance/useful/types';
import { usefulGroundSteps } from '../../../src/core/clearance/useful/usefulGround';
import { faceAt, faceLight } from '../../../src/core/light/face';
import { lightScene } from '../../../src/core/light/lightScene';
import { anchorOf } from '../../../src/core/plan/edits/anchorOf';
import { played } from '../../../src/core/plan/played';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { lightNow } from '../../../src/core/report/light/lightNow';
import { setupReport } from '../../../src/core/report/setupReport';
import { inOneGo } from '../../../src/core/units/steps';
import { drawFrom } from '../../plans/draw';
import { keyedFace, keyOn } from '../../plans/keyedFace';
import { DEMO, readPlan } from '../../plans/readPlan';
import { cases } from '../../thorough';

const USEFUL = USEFUL_STATES.indexOf('useful');

const face = (): Plan =>
  keyedFace({
    gear: [...keyOn('1', [-2.5, 2.5], [0, 0]), ...keyOn('2', [1, -4], [0, 0], 0.2)],
    cameras: [{ id: 'close', label: 'Close', at: [0.6, 3], headingDegrees: 348, lens: 'long' }],
  });

const demo = (): Plan => readPlan(DEMO);

function usefulFor(plan: Plan, question: UsefulQuestion): UsefulGround {
  const answer = inOneGo(usefulGroundSteps(plan, question));
  if ('why' in answer) throw new Error(answer.why);
  return answer.useful;
}

interface Trial {
  readonly what: string;
  readonly made: () => Plan;
  readonly lampId: string;
  readonly performerId: string;
  readonly setupIds: readonly string[];
  readonly role: LampRole;
  readonly seconds: number;
  readonly more?: Partial<UsefulQuestion>;
}

const TRIALS: readonly Trial[] = [
  {
    what: 'a key',
    made: face,
    lampId: '1',
    performerId: 'vera',
    setupIds: ['close'],
    role: 'key',
    seconds: 0,
  },
  {
    what: 'an edge from the face’s left, at its dim',
    made: face,
    lampId: '2',
    performerId: 'vera',
    setupIds: ['close'],
    role: 'edge',
    seconds: 0,
    more: { mayDim: false, side: 'left', stops: 4, toleranceStops: 1 },
  },
  {
    what: 'a backlight in the demo',
    made: demo,
    lampId: 'head-2',
    performerId: 'nuno',
    setupIds: ['wide', 'alongside'],
    role: 'back',
    seconds: 2,
  },
  {
    what: 'a kicker in the demo',
    made: demo,
    lampId: 'head-4',
    performerId: 'vera',
    setupIds: ['over-nuno'],
    role: 'edge',
    seconds: 6,
  },
];

describe.each(TRIALS.slice(0, cases(TRIALS.length)))(
  '$what',
  ({ made, lampId, performerId, setupIds, role, seconds, more }) => {
    const plan = made();
    const [setupId] = setupIds;
    const setup = plan.setups.find(({ id }) => id === setupId);
    if (!setup) throw new Error('no setup');
    const question: UsefulQuestion = {
      lampId,
      performerId,
      setupId,
      seconds,
      role,
      range: ROLE_RANGES[role],
      side: 'either',
      stops: 0,
      toleranceStops: 0.5,
      mayDim: true,
      clearOf: setupIds,
      stepMetres: 0.5,
      ...more,
    };
    const useful = usefulFor(plan, question);
    const squares = [...useful.states.keys()].filter((square) => useful.states[square] === USEFUL);
    const ahead = role === 'key';

    /** What the light of the plan with the lamp on a square says. */
    const lit = (square: number, dim: number) => {
      const there = putLamp(plan, { lampId, to: middleOf(useful, square), aim: useful.aim, dim });
      const scene = lightScene(there, setup, seconds);
      const now = lightNow(there, setup, scene).faces.find((each) => each.performerId === performerId);
      const acted = played(there, setup);
      const performer = acted.cast.find(({ id }) => id === performerId);
      const own = performer && faceAt(performer, acted, seconds);
      const source = own && faceLight(scene, own).sources.find(({ itemId }) => itemId === lampId);
      return { there, level: ahead ? now?.key : now?.back, source };
    };

    it('the lamp on a useful square has its role and level by the report’s own levels, and is clear', () => {
      expect(squares.length).toBeGreaterThan(0);
      const draw = drawFrom(3);
      for (const [k, square] of Array.from({ length: 4 }, () => draw.pick(squares)).entries()) {
        const { there, level, source } = lit(square, useful.dims[square]);
        expect(level?.itemId, `square ${square}`).toBe(lampId);
        expect(level?.stops ?? Number.NaN).toBeCloseTo(useful.stops[square], 3);
        expect(Math.abs((level?.stops ?? Number.NaN) - question.stops)).toBeLessThanOrEqual(
          question.toleranceStops,
        );
        if (!source) throw new Error('no light');
        const { bearingDegrees, elevationDegrees } = source;
        const [from, to] = question.range.bearingDegrees;
        expect(Math.abs(bearingDegrees)).toBeGreaterThanOrEqual(from - 1e-6);
        expect(Math.abs(bearingDegrees)).toBeLessThanOrEqual(to + 1e-6);
        if (question.side === 'left') expect(bearingDegrees).toBeLessThanOrEqual(0);
        expect(elevationDegrees).toBeGreaterThanOrEqual(question.range.elevationDegrees[0] - 1e-6);
        expect(elevationDegrees).toBeLessThanOrEqual(question.range.elevationDegrees[1] + 1e-6);
        const carrier = there.gear.find(({ id }) => id === lampId);
        const standId = carrier && 'place' in carrier && 'on' in carrier.place ? carrier.place.on : lampId;
        // A report of a whole setup takes its time.
        for (const clearId of setupIds.slice(0, k === 0 ? 1 : 0)) {
          const seen = there.setups.find(({ id }) => id === clearId);
          if (!seen) throw new Error('no setup');
          for (const item of setupReport(there, seen).items)
            if (item.id === lampId || item.id === standId)
              expect(item.verdict, `${item.id} on ${square}`).toBe('clear');
        }
      }
    });

    it('on a square of the wrong level it has the wrong level', () => {
      const wrong = [...useful.states.keys()].filter((square) =>
        ['too weak', 'too strong'].includes(USEFUL_STATES[useful.states[square]]),
      );
      for (const square of wrong.slice(0, 3)) {
        const dim = question.mayDim
          ? 1
          : (plan.gear.flatMap((each) => ('dim' in each && each.id === lampId ? each.dim : []))[0] ?? 1);
        const { level } = lit(square, dim);
        if (level?.itemId === lampId && USEFUL_STATES[useful.states[square]] === 'too weak')
          expect(level.stops ?? -99).toBeLessThan(question.stops - question.toleranceStops + 1e-3);
      }
    });

    it('the best spot is the useful square that is nearest', () => {
      const best = bestSpot(useful);
      const foot = anchorOf(plan, lampId);
      if (!best || !foot) throw new Error('none');
      const away = squares.map((square) => {
        const [x, z] = middleOf(useful, square);
        return Math.hypot(x - foot[0], z - foot[1]);
      });
      expect(best.metres).toBeCloseTo(Math.min(...away), 9);
    });
  },
);
