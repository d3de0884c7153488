import { describe, expect, test } from 'vitest';
import { type ContinuityFinding, continuityOf } from '../../../src/core/continuity/continuity';
import { coverageOf } from '../../../src/core/continuity/coverage';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { setupLetter } from '../../../src/core/plan/setupLetter';
import { continuitySentence } from '../../../src/core/report/continuity/continuitySentence';
import { coverageSentence } from '../../../src/core/report/continuity/coverageSentence';
import { DEMO, readPlan } from '../../plans/readPlan';
import { FACE_TO_FACE, MASTER, staged } from '../../plans/staged';

/** The sentences of one setup and kind, with plain spaces. */
function told(plan: Plan, setupId: string, kind: ContinuityFinding['kind']): readonly string[] {
  const findings = continuityOf(plan).find((each) => each.setupId === setupId)?.findings ?? [];
  return findings
    .filter((finding) => finding.kind === kind)
    .map((finding) => continuitySentence(plan, finding).replaceAll('\u00a0', ' '));
}

const plan = staged({
  cast: FACE_TO_FACE,
  beats: { start: 0, later: 3, end: 4 },
  setups: [
    MASTER,
    { id: 'over', keys: [{ at: [3, -1] }] },
    { id: 'frontal', keys: [{ at: [5, 0.3], heading: 270 }] },
    {
      id: 'crossing',
      to: 'later',
      keys: [
        { atSeconds: 0, at: [5, 2], heading: 270 },
        { atSeconds: 3, at: [5, -1], heading: 270 },
      ],
    },
    { id: 'on-ana', keys: [{ at: [1.6, 0.5], lookAt: [-1, 0] }], lens: 'long', to: 'later' },
    { id: 'on-bea', keys: [{ at: [-1.6, -0.5], lookAt: [1, 0] }], lens: 'long', to: 'later' },
  ],
});

describe('sentences of continuity', () => {
  test('of the line', () => {
    expect(told(plan, 'master', 'line')).toEqual([
      'A sets the line between Ana and Bea: Ana is at frame left.',
    ]);
    expect(told(plan, 'over', 'line')).toEqual([
      'B stands over the line between Ana and Bea, 14° and 1.00 m past it: Ana is at frame right.',
    ]);
    expect(told(plan, 'frontal', 'line')).toEqual([
      'C is on the line between Ana and Bea, 3° off it: neutral, it cuts with both sides.',
    ]);
    expect(told(plan, 'crossing', 'line')).toEqual([
      'D crosses the line between Ana and Bea at 2.04 s; from then on Ana is at frame right, for later setups too.',
    ]);
    expect(told(plan, 'on-ana', 'line')).toEqual([
      'E keeps to A’s side of the line between Ana and Bea, 11° off it at the nearest.',
    ]);
  });

  test('of eyelines', () => {
    expect(told(plan, 'on-bea', 'eyeline')[0]).toBe(
      'F has Bea look camera right, as Ana does in E: their looks do not meet across the cut.',
    );
    expect(told(plan, 'on-ana', 'eyeline')[0]).toMatch(
      /^E: Ana looks at Bea, 1\d° off the lens to camera right, .*(a near eyeline|three-quarter)\.$/,
    );
  });

  test('of screen direction', () => {
    const walk = staged({
      cast: { ana: [{ at: [-2, 0] }, { at: [2, 0], beat: 'end' }] },
      setups: [
        { id: 'front', keys: [{ at: [0, 6] }] },
        { id: 'back', keys: [{ at: [0, -6] }] },
        { id: 'head-on', keys: [{ at: [8, 0.1], heading: 270 }] },
        { id: 'far', keys: [{ at: [0, -7] }] },
      ],
    });
    expect(told(walk, 'front', 'screen direction')).toEqual(['A: Ana goes left to right.']);
    expect(told(walk, 'back', 'screen direction')).toEqual([
      'B: Ana goes right to left, but left to right in A: the cut turns the walk round.',
    ]);
    expect(told(walk, 'head-on', 'screen direction')).toEqual(['C: Ana comes straight at the camera.']);
    expect(told(walk, 'far', 'screen direction')).toEqual([
      'D: Ana goes right to left, and left to right in A; C lies between, straight on or away.',
    ]);
  });

  test('of neighbouring setups', () => {
    const ana = { ana: [{ at: [0, 0], heading: 180 }] } as const;
    const pair = (at: readonly [number, number]) =>
      staged({
        cast: ana,
        setups: [
          { id: 'one', keys: [{ at: [0, 4] }] },
          { id: 'two', keys: [{ at }] },
        ],
      });
    expect(told(pair([0.7, 3.9]), 'two', 'thirty degrees')).toEqual([
      'B is only 10° round Ana from A and just as wide, a cowboy: the cut jumps.',
    ]);
    expect(told(pair([3, 3]), 'two', 'thirty degrees')[0]).toMatch(/^B is 4\d° round Ana from A\.$/);
    expect(told(pair([3, 3]), 'two', 'size change')).toHaveLength(1);
    expect(told(pair([0, 1.5]), 'two', 'thirty degrees')[0]).toMatch(
      /^B is \d° round Ana from A, but \w+ sizes tighter: a cut along the axis\.$/,
    );
  });

  test('of what nobody covers', () => {
    const { holes } = coverageOf(staged({ cast: FACE_TO_FACE, setups: [] }));
    expect(holes.map((hole) => coverageSentence(plan, hole).replaceAll('\u00a0', ' '))).toEqual([
      'No setup has Ana or Bea from “Start”, 0.0 s, to 4.0 s.',
    ]);
  });

  test('are short, begin with their setup’s letter and say no number without its unit, in the demo', () => {
    const demo = readPlan(DEMO);
    const all = continuityOf(demo).flatMap(({ setupId, findings }) =>
      findings.map((finding) => ({ setupId, words: continuitySentence(demo, finding) })),
    );
    expect(all.length).toBeGreaterThan(20);
    for (const { setupId, words } of all) {
      const letter = setupLetter(demo.setups.findIndex(({ id }) => id === setupId));
      expect(words).toMatch(new RegExp(`^${letter}[ :,].*\\.$`));
      expect(words.split(' ').length, words).toBeLessThanOrEqual(24);
      expect(words).not.toMatch(/NaN|undefined|null|-\d|—|·|\d (s|m)\b/);
    }
  });
});
