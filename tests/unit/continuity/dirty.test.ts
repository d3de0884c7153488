import { describe, expect, test } from 'vitest';
import { dirtyAt, dirtySingle } from '../../../src/core/continuity/dirty';
import { makeDirty } from '../../../src/core/continuity/makeDirty';
import { cameraAt } from '../../../src/core/optics/camera';
import { formsThrough } from '../../../src/core/optics/riding';
import { reposeCamera } from '../../../src/core/plan/edits/reposeCamera';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { dirtySentence } from '../../../src/core/report/continuity/dirtySentence';
import { stageOf } from '../../../src/core/sight/stage';
import { type FaceOff, faceOff, ON_BEA, OVER_ANA } from '../../plans/faceOff';
import { Tracer } from '../../properties/sight/tracer';

/** Focused on Bea, wide open. */
const over = (more: Partial<FaceOff> = {}, setup: Partial<FaceOff['setups'][number]> = {}): Plan =>
  faceOff({ setups: [{ keys: [OVER_ANA], focus: { follow: 'bea' }, stop: 2.8, ...setup }], ...more });

function read(plan: Plan) {
  const found = dirtyAt(plan, plan.setups[0], 0);
  if (!found) throw new Error('the setup is about nobody');
  return found;
}

/** The share of a performer by rays of another library, one to each cell of a raster. */
function traced(plan: Plan, performerId: string): number {
  const [setup] = plan.setups;
  const stage = stageOf(formsThrough(plan, setup, 0));
  const { direct, rays } = new Tracer(stage).raster(cameraAt(plan, setup, 0), 240, 100);
  const hits = stage.parts.reduce(
    (sum, part) => sum + (stage.forms[part.item].id === performerId ? direct[part.index] : 0),
    0,
  );
  return hits / rays;
}

describe('how dirty a single is', () => {
  test('is what rays of another library find', () => {
    const plan = over();
    const { subjectId, near, eyesBehindId } = read(plan);
    expect(subjectId).toBe('bea');
    expect(eyesBehindId).toBeNull();
    expect(near).toHaveLength(1);
    expect(near[0].performerId).toBe('ana');
    expect(near[0].share).toBeGreaterThan(0.05);
    expect(Math.abs(near[0].share - traced(plan, 'ana'))).toBeLessThan(0.002);
  });

  test('says which edge, what of her, and how soft', () => {
    const [ana] = read(over()).near;
    expect(ana.touches).toContain('left');
    expect(ana.touches).not.toContain('right');
    expect(ana.extent[0]).toBe(0);
    expect(ana.extent[2]).toBeLessThan(0.5);
    const parts = ana.parts.reduce((sum, { share }) => sum + share, 0);
    expect(parts).toBeCloseTo(ana.share, 9);
    expect(ana.parts.map(({ part }) => part)).toContain('head');
    // f/N · |d − s|/d · f/(s − f), focused 2.75 m off; her head is some 1.75 m off.
    expect(ana.metres).toBeGreaterThan(1.5);
    expect(ana.metres).toBeLessThan(2);
    const focus = Math.hypot(2.7, 0.6) * Math.cos(0);
    const blur = (85 / 2.8) * ((focus - ana.metres) / ana.metres) * (0.085 / (focus - 0.085));
    expect(ana.blurMm).toBeCloseTo(blur, 1);
    expect(ana.blurFrameWidths).toBeCloseTo((ana.blurMm ?? 0) / 24.89, 9);
    expect(ana.sharp).toBe(false);
  });

  test('through a squeeze the blur is narrower by its square on the sensor', () => {
    const [ana] = read(over({}, { lens: 'wide', keys: [{ ...OVER_ANA }] })).near;
    // 2.39 out of 24.89 × 18.66 through a squeeze of two uses 22.30 mm of the width.
    expect(ana.blurFrameWidths).toBeCloseTo((ana.blurMm ?? 0) / 4 / ((18.66 * 2.39) / 2), 6);
  });

  test('is nothing where nobody is in the way, and not asked in a two shot or of half a head', () => {
    const clean = over({}, { keys: [ON_BEA] });
    expect(read(clean).near).toEqual([]);
    const finding = dirtySingle(clean, clean.setups[0]);
    expect(finding?.standing).toBe('holds');
    expect(finding && dirtySentence(clean, finding)).toBe('A: the single on Bea is clean.');
    const cut = over({}, { keys: [{ ...OVER_ANA, tiltDegrees: -5 }] });
    expect(dirtyAt(cut, cut.setups[0], 0)).toBeNull();
  });

  test('as a sentence', () => {
    const plan = over();
    const finding = dirtySingle(plan, plan.setups[0]);
    expect(finding?.standing).toBe('said');
    expect(finding && dirtySentence(plan, finding)).toMatch(
      /^A: Ana’s (head|shoulder|head and shoulder|shoulder and head) takes? \d+(\.\d)?\u00a0% of the frame at frame left, soft by 0\.\d\u00a0mm on the sensor\.$/,
    );
  });

  test('breaks where the near one stands before the eyes', () => {
    const behind = over({}, { keys: [{ ...OVER_ANA, position: [-2.2, 1.62, 0.05], headingDegrees: 89 }] });
    const finding = dirtySingle(behind, behind.setups[0]);
    expect(finding?.standing).toBe('breaks');
    expect(finding && dirtySentence(behind, finding)).toBe('A: Ana stands before Bea’s eyes at 0.0\u00a0s.');
  });
});

describe('a single made dirty', () => {
  const made = (plan: Plan, share: number) => {
    const found = makeDirty(plan, plan.setups[0], { seconds: 0, share });
    if (!found) throw new Error('there is nobody in the way');
    return { found, after: reposeCamera(plan, found.change) };
  };

  test.each([0.03, 0.1, 0.2])('by a share of %s', (share) => {
    const plan = over();
    const { found, after } = made(plan, share);
    expect(found.why).toBeNull();
    expect([found.subjectId, found.nearId]).toEqual(['bea', 'ana']);
    const [before, then] = [read(plan), read(after)];
    expect(Math.abs((then.near[0]?.share ?? 0) - share)).toBeLessThan(0.005);
    if (share === 0.1) expect(Math.abs(traced(after, 'ana') - share)).toBeLessThan(0.005);
    expect(then.eyesBehindId).toBeNull();
    expect(before.subjectId).toBe(then.subjectId);
    // At the same height and distance, on the same side of the line.
    const [a, b] = [plan, after].map(({ setups }) => setups[0].move.keys[0].position);
    expect(b[1]).toBeCloseTo(a[1], 6);
    expect(b[2]).toBeGreaterThan(0);
    expect(Math.hypot(b[0] - 0.5, b[2])).toBeCloseTo(Math.hypot(a[0] - 0.5, a[2]), 1);
  });

  test('or clean, by the least way, and back again', () => {
    const { found, after } = made(over(), 0);
    expect(found.why).toBeNull();
    expect(read(after).near).toEqual([]);
    const again = made(after, 0.1);
    expect(again.found.why).toBeNull();
    expect(read(again.after).near[0].share).toBeCloseTo(0.1, 2);
    expect(Math.sign(again.found.arcDegrees)).toBe(-Math.sign(found.arcDegrees));
  });

  test('as it is, needs no change', () => {
    const plan = over();
    const { found, after } = made(plan, read(plan).near[0].share);
    expect(found.arcDegrees).toBe(0);
    expect(after).toBe(plan);
  });

  test('never before the eyes, and says how far it gets', () => {
    const { found } = made(over(), 0.9);
    expect(found.why).toMatch(
      /^Ana takes \d+(\.\d)?\u00a0% of the frame at most before the eyes are hidden\.$/,
    );
  });

  test('never across the line, even where nothing else is in the way of it', () => {
    // A girl over whose head the lens sees Bea's eyes from everywhere.
    const plan = over({ ana: { statureMetres: 1.4 } }, { lens: 'short' });
    const { found } = made(plan, 0.5);
    expect(found.why).toMatch(
      /^Ana takes \d+(\.\d)?\u00a0% of the frame at most before the camera crosses the line\.$/,
    );
  });

  test('not on a track that leads elsewhere, and not with nobody there', () => {
    const rails = {
      id: 'rails',
      label: 'Track 1',
      kind: 'track',
      gaugeMetres: 0.62,
      at: [-2.2, 0, 0.6],
      headingDegrees: 77.5,
      lengthMetres: 3,
    };
    const key = { ...OVER_ANA, alongMetres: 1.5 };
    const onTrack = over({ plan: { gear: [rails] } }, { support: 'dolly', track: 'rails', keys: [key] });
    expect(made(onTrack, 0.02).found.why).toMatch(/off Track 1, and the dolly goes along it only\.$/);
    const alone = over();
    const without = { ...alone, cast: alone.cast.slice(1) };
    expect(makeDirty(without, without.setups[0], { seconds: 0, share: 0.1 })).toBeNull();
  });
});
