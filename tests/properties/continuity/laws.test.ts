import { describe, expect, test } from 'vitest';
import type { ContinuityFinding } from '../../../src/core/continuity/continuity';
import { type EyelineFinding, eyelineFindings } from '../../../src/core/continuity/eyelines';
import { type LineFinding, lineFindings } from '../../../src/core/continuity/line';
import { neighbourFindings } from '../../../src/core/continuity/neighbours';
import {
  type ScreenDirectionFinding,
  screenDirectionFindings,
} from '../../../src/core/continuity/screenDirection';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { dice } from '../../plans/draw';
import { staged } from '../../plans/staged';

const PLANS = 8;

/** Three people with two marks each, looking about, and five cameras that go somewhere. */
function randomPlan(seed: number): Plan {
  const roll = dice(seed);
  const spot = (reach: number) => [roll(-reach, reach), roll(-reach, reach)] as const;
  const mark = (beat: string) => ({ beat, at: spot(3), heading: roll(0, 360), holdSeconds: roll(0, 1) });
  return staged({
    beats: { start: 0, middle: 2, end: 4 },
    cast: Object.fromEntries(['ana', 'bea', 'cyd'].map((id) => [id, [mark('start'), mark('end')]] as const)),
    lines: [
      { id: 'l1', pair: ['ana', 'bea'] },
      { id: 'l2', pair: ['bea', 'cyd'] },
    ],
    setups: ['a', 'b', 'c', 'd', 'e'].map((id, k) => ({
      id,
      from: k % 2 === 0 ? 'start' : 'middle',
      to: 'end',
      keys: [
        { atSeconds: 0, at: spot(8), lookAt: spot(1) },
        { atSeconds: 4, at: spot(8), lookAt: spot(1) },
      ],
    })),
  });
}

type Place = readonly [number, number];

/** The plan with everything that matters here moved over the roof, and headings turned with it. */
function moved(plan: Plan, place: (at: Place) => Place, heading: (degrees: number) => number): Plan {
  const spot = ([x, z]: Place): [number, number] => {
    const [nx, nz] = place([x, z]);
    return [nx, nz];
  };
  return {
    ...plan,
    cast: plan.cast.map((performer) => ({
      ...performer,
      marks: performer.marks.map((mark) => ({
        ...mark,
        at: spot(mark.at),
        headingDegrees: heading(mark.headingDegrees),
      })),
    })),
    setups: plan.setups.map((setup) => ({
      ...setup,
      move: {
        ...setup.move,
        keys: setup.move.keys.map((key) => {
          const [x, z] = spot([key.position[0], key.position[2]]);
          return { ...key, position: [x, key.position[1], z], headingDegrees: heading(key.headingDegrees) };
        }),
      },
    })),
  };
}

const mirrored = (plan: Plan): Plan =>
  moved(
    plan,
    ([x, z]) => [-x, z],
    (degrees) => -degrees,
  );

/** A quarter turn clockwise, seen from above, and a shift. */
const turnedAndShifted = (plan: Plan): Plan =>
  moved(
    plan,
    ([x, z]) => [-z + 4, x - 7],
    (degrees) => degrees + 90,
  );

const OTHER = { left: 'right', right: 'left' } as const;
const across = (side: 'left' | 'right' | null) => side && OTHER[side];

const basics = ({ setupId, againstId, standing, kind }: ContinuityFinding) => [
  setupId,
  againstId,
  standing,
  kind,
];
const lineFacts =
  (swap: boolean, numbers = true) =>
  (finding: LineFinding) => [
    ...basics(finding),
    finding.what,
    swap ? across(finding.side) : finding.side,
    finding.by,
    finding.reestablishes,
    // A stride begins on the right foot in a mirror too, so at the frame line somebody may be seen a look sooner or later.
    ...(numbers ? [finding.metres?.toFixed(6), finding.angleDegrees?.toFixed(6)] : []),
  ];
const TURNED = {
  'left to right': 'right to left',
  'right to left': 'left to right',
  towards: 'towards',
  away: 'away',
} as const;
const directionFacts = (swap: boolean) => (finding: ScreenDirectionFinding) => [
  ...basics(finding),
  swap ? TURNED[finding.direction] : finding.direction,
];
const eyelineFacts = (finding: EyelineFinding) => [
  ...basics(finding),
  finding.what,
  finding.word,
  finding.side,
  finding.atId,
  finding.offDegrees.toFixed(6),
];

describe(`over ${PLANS} random plans`, () => {
  const seeds = Array.from({ length: PLANS }, (_, k) => k + 1);

  test('a mirror swaps the sides of the line and the directions across the frame, and nothing else', () => {
    let sides = 0;
    for (const seed of seeds) {
      const plan = randomPlan(seed);
      const other = mirrored(plan);
      expect(lineFindings(other).map(lineFacts(true, false)), `seed ${seed}`).toEqual(
        lineFindings(plan).map(lineFacts(false, false)),
      );
      expect(screenDirectionFindings(other).map(directionFacts(true)), `seed ${seed}`).toEqual(
        screenDirectionFindings(plan).map(directionFacts(false)),
      );
      sides += lineFindings(plan).filter(({ side }) => side !== null).length;
    }
    expect(sides).toBeGreaterThan(2 * PLANS);
  });

  test('turning and shifting the whole plan changes nothing', () => {
    for (const seed of seeds) {
      const plan = randomPlan(seed);
      const other = turnedAndShifted(plan);
      expect(lineFindings(other).map(lineFacts(false)), `seed ${seed}`).toEqual(
        lineFindings(plan).map(lineFacts(false)),
      );
      expect(screenDirectionFindings(other).map(directionFacts(false)), `seed ${seed}`).toEqual(
        screenDirectionFindings(plan).map(directionFacts(false)),
      );
      expect(eyelineFindings(other).map(eyelineFacts), `seed ${seed}`).toEqual(
        eyelineFindings(plan).map(eyelineFacts),
      );
      expect(neighbourFindings(other).map(basics), `seed ${seed}`).toEqual(
        neighbourFindings(plan).map(basics),
      );
    }
  });

  test('the same plan read again has the same findings, in the same order', () => {
    for (const seed of seeds) {
      const read = (plan: Plan): string =>
        JSON.stringify([
          lineFindings(plan),
          eyelineFindings(plan),
          screenDirectionFindings(plan),
          neighbourFindings(plan),
        ]);
      expect(read(randomPlan(seed))).toBe(read(randomPlan(seed)));
    }
  });
});
