import { describe, expect, test } from 'vitest';
import { levelOf, levelRows, levels } from '../../../src/core/light/levels';
import { keyedFace, keyOn } from '../../plans/keyedFace';

describe('a level', () => {
  test('of 470.4 lx is 43.7 fc, and two stops over the 117.6 lx that T2.8 at ISO 800 asks for', () => {
    const { footcandles, stops } = levelOf(470.4, 117.6);
    expect(footcandles).toBeCloseTo(43.7, 1);
    expect(stops).toBeCloseTo(2, 9);
  });

  test('has no stops in the dark, or where nothing is set', () => {
    expect(levelOf(0, 117.6).stops).toBeNull();
    expect(levelOf(100, null).stops).toBeNull();
  });
});

describe('levels through a setup', () => {
  const plan = keyedFace({
    gear: [...keyOn('key', [2.5, 2.5], [0, 0]), ...keyOn('back', [0, -4], [0, 0], 0.02)],
    cameras: [{ id: 'wide', label: 'Wide', at: [0, 6], headingDegrees: 0 }],
  });
  const [setup] = plan.setups;
  const found = levels(plan, setup, [{ at: [0, 1, 0], normal: [0, 1, 0] }]);

  test('are there for each performer at each beat of its span, and for each probe', () => {
    expect(found.askedLux).toBeCloseTo(117.6, 1);
    expect(found.beats.map(({ seconds }) => seconds)).toEqual(
      plan.beats
        .map(({ atSeconds }) => atSeconds)
        .filter(
          (seconds) =>
            seconds >= found.beats[0].seconds && seconds <= found.beats[found.beats.length - 1].seconds,
        ),
    );
    for (const beat of found.beats) {
      expect(beat.faces.map(({ performerId }) => performerId)).toEqual(['vera']);
      expect(beat.probes).toHaveLength(1);
    }
  });

  test('give key, fill, back and ratio: 3,000 cd at 3.6 m and 1,200 cd at 4 m by hand', () => {
    const [{ key, back, fill, ratio, ratioStops }] = found.beats[0].faces;
    expect([key?.itemId, back?.itemId]).toEqual(['key', 'back']);
    // √(2.5² + 2.5²) = 3.54 m on the level, less the 0.2 m to the lens; square to the three-quarter plane but for the rise.
    expect(key?.lux ?? 0).toBeGreaterThan(0.95 * (3000 / (3.5 * 3.5)));
    expect(key?.lux ?? 0).toBeLessThan(3000 / (3.3 * 3.3));
    expect(key?.stops).toBeCloseTo(Math.log2((key?.lux ?? 0) / (found.askedLux ?? 0)), 9);
    // 75 lx from behind, at some 50° to the edge.
    expect(back?.lux ?? 0).toBeGreaterThan(40);
    expect(back?.lux ?? 0).toBeLessThan(70);
    expect(ratio).toBeCloseTo(((key?.lux ?? 0) + fill.lux) / fill.lux, 9);
    expect(2 ** ratioStops).toBeCloseTo(ratio, 9);
  });

  test('are rows of plain numbers that survive JSON', () => {
    const rows = levelRows(found);
    expect(rows).toHaveLength(found.beats.length);
    expect(JSON.parse(JSON.stringify(rows))).toEqual(rows);
    expect(rows[0]).toMatchObject({ setup: 'wide', performer: 'vera', key: 'key', back: 'back' });
  });

  test('on the roof are at every beat, against no stop', () => {
    const roof = levels(plan, null);
    expect(roof.beats).toHaveLength(plan.beats.length);
    expect(roof.beats[0].faces[0].key?.stops).toBeNull();
    expect(roof.beats[0].faces[0].key?.lux).toBeCloseTo(found.beats[0].faces[0].key?.lux ?? 0, 9);
  });
});
