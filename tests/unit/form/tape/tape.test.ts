import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { windOf } from '../../../../src/core/form/tape/compassWords';
import { anchorsOf, tapedSets, tapesOf } from '../../../../src/core/form/tape/tape';
import { tapedSentence } from '../../../../src/core/form/tape/words';
import { planFrom } from '../../../plans/bare';
import { stairHouseAt, standAt, tapedRoof } from '../../../plans/taped';

/** With plain spaces, to be read here. */
const plainly = (text: string): string => text.replaceAll('\u00a0', ' ');

const labels = (plan: Parameters<typeof anchorsOf>[0]): readonly string[] =>
  anchorsOf(plan).map(({ label }) => label);

const postAt = (id: string, label: string, [x, z]: readonly [number, number]) => ({
  id,
  label,
  kind: 'post',
  at: [x, 0, z],
  headingDegrees: 0,
  heightMetres: 2.2,
  diameterMetres: 0.06,
  armMetres: 0,
});

describe('two tapes', () => {
  // Inner corners at (±9.5, ±5.5). From (−6.5, −1.5): 3 east and 4 south of the north-west one, so 5 m; 3 east and
  // 7 north of the south-west one, √58 = 7.616 m. They cross at atan(4/3) + atan(7/3) = 53.13° + 66.80° = 119.93°.
  test('are those of a triangle worked by hand', () => {
    const [set] = tapedSets(tapedRoof({ gear: [standAt('s', [-6.5, -1.5])] }), 's');
    expect(set.to).toBe('the column');
    expect(set.tapes.map(({ fromLabel }) => fromLabel)).toEqual([
      'the parapet’s north-west corner',
      'the parapet’s south-west corner',
    ]);
    expect(set.tapes[0].metres).toBeCloseTo(5, 9);
    expect(set.tapes[1].metres).toBeCloseTo(Math.sqrt(58), 9);
    expect(set.crossingDegrees).toBeCloseTo(119.93, 2);
    // Worst where one reads a centimetre long and the other short or as long: 1 cm / sin(119.93° / 2), or / cos of it.
    expect(set.withinMetres).toBeCloseTo(0.01 / Math.cos((119.93 * Math.PI) / 360), 5);
    expect(set.mirror).toBe('off the deck');
    expect(plainly(tapedSentence(set, 'm'))).toBe(
      '5.00 m from the parapet’s north-west corner, 7.62 m from the parapet’s south-west corner.',
    );
    expect(plainly(tapedSentence(set, 'ft-in'))).toContain('16′ 4¾″ from');
  });

  test('name corners by the true north of the place', () => {
    const plan = tapedRoof({ northDegrees: 90, gear: [standAt('s', [-6.5, -1.5])] });
    expect(tapesOf(plan, 's').map(({ fromLabel }) => fromLabel)).toEqual([
      'the parapet’s south-west corner',
      'the parapet’s south-east corner',
    ]);
    expect(windOf(0, 0)).toBe('north');
    expect(windOf(-46, 0)).toBe('north-west');
    expect(windOf(10, 100)).toBe('west');
    expect(windOf(725, 0)).toBe('north');
  });

  test('go round what stands in their way', () => {
    const open = tapedRoof({ gear: [standAt('s', [-6.5, -1.5])] });
    const walled = tapedRoof({
      pieces: [stairHouseAt('house', [-8.2, -3.5], { width: 1.4, depth: 1 })],
      gear: [standAt('s', [-6.5, -1.5])],
    });
    expect(tapesOf(open, 's')[0].fromLabel).toBe('the parapet’s north-west corner');
    const used = tapesOf(walled, 's').map(({ fromLabel }) => fromLabel);
    expect(used).not.toContain('the parapet’s north-west corner');
    expect(used.some((label) => label.startsWith('the stair house’s'))).toBe(true);
  });

  test('tell the side where both meet again on the roof', () => {
    const plan = tapedRoof({
      width: 60,
      depth: 60,
      pieces: [
        postAt('a', 'Post 1', [-3, 0]),
        postAt('b', 'Post 2', [3, 0]),
        postAt('c', 'Flagpole', [0, -9]),
      ],
      gear: [standAt('s', [0, -4])],
    });
    const [set] = tapedSets(plan, 's');
    expect(set.tapes.map(({ metres }) => metres)).toEqual([5, 5]);
    expect(set.mirror).toBe('possible');
    expect(plainly(tapedSentence(set, 'm'))).toBe(
      '5.00 m from the middle of post 1, 5.00 m from the middle of post 2, on the side of the flagpole.',
    );
  });

  test('measure on the floor that a thing stands on', () => {
    const plan = tapedRoof({
      pieces: [
        { id: 'riser', label: 'Riser', kind: 'riser', at: [2, 0, 1], headingDegrees: 0, size: [2, 0.8, 2] },
      ],
      gear: [standAt('high', [2.2, 1.2], 0.8), standAt('low', [4.5, 1])],
    });
    expect(tapesOf(plan, 'high').every(({ fromLabel }) => fromLabel.startsWith('the riser’s'))).toBe(true);
    expect(tapesOf(plan, 'low').every(({ fromLabel }) => fromLabel.startsWith('the parapet’s'))).toBe(true);
  });

  test('are two for each end of a track and for each mark, and none for what a stand carries', () => {
    const plan = planFrom(JSON.parse(readFileSync('assets/loft-night.plan.json', 'utf8')));
    expect(tapedSets(plan, 'track').map(({ to }) => to)).toEqual([
      'the middle of its rear end',
      'the middle of its front end',
    ]);
    expect(tapesOf(plan, 'track')).toHaveLength(4);
    const performer = plan.cast[0];
    expect(tapedSets(plan, performer.id).map(({ key }) => key)).toEqual(performer.marks.map(({ id }) => id));
    expect(tapesOf(plan, 'head-1')).toEqual([]);
    expect(tapesOf(plan, 'cable-1')).toEqual([]);
    expect(tapesOf(plan, 'no such thing')).toEqual([]);
    expect(tapedSets(plan, 'high')[0].tapes.every(({ fromLabel }) => fromLabel.includes('roof corner'))).toBe(
      true,
    );
    // The camera of a move with a begin and an end.
    expect(tapedSets(plan, 'wide').map(({ to }) => to)).toEqual([
      'under the lens where it begins',
      'under the lens where it ends',
    ]);
  });

  test('are none where there is nothing to measure from', () => {
    expect(
      tapesOf(
        planFrom({ ...JSON.parse(JSON.stringify(tapedRoof({}))), pieces: [], gear: [standAt('s', [0, 0])] }),
        's',
      ),
    ).toEqual([]);
  });
});

describe('the corners', () => {
  test('of a parapet round a deck are its inner ones, and the deck has none of its own beside them', () => {
    expect(labels(tapedRoof({}))).toEqual([
      'the parapet’s north-west corner',
      'the parapet’s north-east corner',
      'the parapet’s south-east corner',
      'the parapet’s south-west corner',
    ]);
    expect(anchorsOf(tapedRoof({}))[0].at).toEqual([-9.5, -5.5]);
  });

  test('have words of their own, also where things are called the same', () => {
    const plan = tapedRoof({
      pieces: [
        stairHouseAt('one', [-5, 0]),
        stairHouseAt('two', [5, 0]),
        postAt('p', 'Bulb post', [-7, 3]),
        postAt('q', 'Post', [1, 1]),
        postAt('r', 'Post', [1, 2]),
      ],
    });
    const all = labels(plan);
    expect(new Set(all).size).toBe(all.length);
    expect(all).toContain('the stair house’s north-west corner, the one nearest to the bulb post');
    expect(all.filter((label) => label.startsWith('the middle of the post'))).toEqual([
      'the middle of the post, number 1 from the north',
      'the middle of the post, number 2 from the north',
    ]);
  });

  test('of the demo are all told apart', () => {
    for (const file of [
      'assets/loft-night.plan.json',
      'assets/starts/terrace-and-tower.plan.json',
      'tests/plans/crowded.plan.json',
    ]) {
      const all = labels(planFrom(JSON.parse(readFileSync(file, 'utf8'))));
      expect(new Set(all).size).toBe(all.length);
    }
  });
});
