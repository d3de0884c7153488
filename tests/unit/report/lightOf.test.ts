import { describe, expect, test } from 'vitest';
import { askedLux } from '../../../src/core/light/exposure';
import { levels } from '../../../src/core/light/levels';
import { readsInTheDark } from '../../../src/core/light/readsInTheDark';
import { highlightsAt } from '../../../src/core/light/wetFloor';
import { blackItems } from '../../../src/core/plan/edits/blackItems';
import { setDark } from '../../../src/core/plan/edits/setDark';
import { setMains } from '../../../src/core/plan/edits/setMains';
import type { Gear } from '../../../src/core/plan/schema/gear';
import type { Piece } from '../../../src/core/plan/schema/pieces';
import type { Plan } from '../../../src/core/plan/schema/plan';
import type { Setup } from '../../../src/core/plan/schema/setup';
import { darkened } from '../../../src/core/report/light/darkened';
import { lightOf } from '../../../src/core/report/light/lightOf';
import { lightSentences } from '../../../src/core/report/light/lightSentences';
import type { LightSubject } from '../../../src/core/report/light/types';
import { findingSentence } from '../../../src/core/report/sentences';
import { setupReport } from '../../../src/core/report/setupReport';
import { keyedFace, keyOn } from '../../plans/keyedFace';

const WIDE = {
  id: 'wide',
  label: 'Wide',
  at: [0, 6] as [number, number],
  headingDegrees: 0,
  lens: 'wide' as const,
};

/** A stand to the left of the frame, six metres off. */
const STAND: Gear = {
  id: 'stand',
  label: 'Lamp stand 1',
  kind: 'stand',
  stand: 'tall',
  at: [-1.2, 0, 0],
  headingDegrees: 0,
  heightMetres: 2,
};
const BACK = keyOn('back', [-6, -2.5], [-1.2, 0], 0.2, 3);
const KEY = keyOn('key', [2.5, 2.5], [0, 0]);

function roof(gear: readonly Gear[], change: Partial<Setup> = {}, pieces: readonly Piece[] = []): Plan {
  const plan = keyedFace({ gear, pieces, cameras: [WIDE] });
  return { ...plan, setups: plan.setups.map((setup) => ({ ...setup, ...change })) };
}

/** What is said of a plan's only setup on a subject, with plain spaces. */
function said(plan: Plan, about: LightSubject): readonly string[] {
  return lightOf(plan, plan.setups[0])
    .sentences.filter((sentence) => sentence.about === about)
    .map(({ name, colon, text, standing }) =>
      `${standing}: ${name}${colon ? ':' : ''} ${text}`.replaceAll('\u00a0', ' '),
    );
}
const verdictsIn = (plan: Plan): Readonly<Record<string, string>> => {
  const [setup] = plan.setups;
  const seen = setupReport(plan, setup);
  const { items } = darkened(plan, seen, lightOf(plan, setup, seen));
  return Object.fromEntries(items.map(({ id, verdict }) => [id, verdict]));
};

describe('the light of a setup', () => {
  const plan = roof([STAND, ...KEY, ...BACK], { iso: 400 });
  const [setup] = plan.setups;
  const light = lightOf(plan, setup);

  test('has the levels of its beats, and which faces it shows', () => {
    expect(light.askedLux).toBe(askedLux(setup));
    const { beats } = levels(plan, setup);
    expect(light.levels.map(({ beatId, seconds }) => [beatId, seconds])).toEqual(
      beats.map(({ beatId, seconds }) => [beatId, seconds]),
    );
    for (const [k, { faces }] of light.levels.entries()) {
      expect(faces[0]).toMatchObject(beats[k].faces[0]);
      expect(faces[0].isShown).toBe(true);
    }
  });

  test('at an instant is that of the instant', () => {
    const at = lightOf(plan, setup, setupReport(plan, setup, { at: 1 }));
    expect(at.levels.map(({ beatId, seconds }) => [beatId, seconds])).toEqual([['turn', 1]]);
    expect(new Set(at.reads.map(({ seconds }) => seconds))).toEqual(new Set([1]));
    expect(at.highlights.map(({ spans }) => spans)).toEqual(at.highlights.map(() => [[1, 1]]));
  });

  test('asks how all gear reads that shows, and of set pieces none without a wish', () => {
    expect(light.reads.map(({ itemId }) => itemId)).toContain('stand');
    expect(light.reads.map(({ itemId }) => itemId)).not.toContain('deck');
  });
});

describe('what is lost in the dark', () => {
  const lost = roof([STAND, ...keyOn('off', [9, 7], [9, 9])], { iso: 400 });

  test('has that verdict, and says so', () => {
    expect(verdictsIn(lost).stand).toBe('lost in the dark');
    expect(said(lost, 'dark')).toEqual([
      expect.stringMatching(
        /^holds: Lamp stand 1: the (column is|legs are) lost in the dark, [\d.]+ stops? from what is behind (it|them), [\d.]+ stops under grey\.$/,
      ),
    ]);
    const [setup] = lost.setups;
    const seen = darkened(lost, setupReport(lost, setup), lightOf(lost, setup));
    const stand = seen.items.find(({ id }) => id === 'stand');
    if (!stand) throw new Error('no stand');
    expect(findingSentence(stand, seen).text).toMatch(
      /^the column and legs are at the bottom of the frame all through, lost in the dark\.$/,
    );
    expect(darkened(lost, seen, lightOf(lost, setup, seen))).toEqual(seen);
  });

  test('is what the plan says it is', () => {
    const all = setDark(lost, { dark: { contrastStops: 0.01, stopsUnder: 14 } });
    expect(verdictsIn(all).stand).toBe('showing');
    expect(verdictsIn(setDark(all, { dark: null })).stand).toBe('lost in the dark');
  });

  test('is nothing where no lamp is lit', () => {
    const dark = { ...lost, gear: lost.gear.map((each) => ('dim' in each ? { ...each, dim: 0 } : each)) };
    expect(verdictsIn(dark).stand).toBe('showing');
    expect(said(dark, 'dark')).toEqual([]);
  });

  test('shows where it is seen in a pane besides', () => {
    const [setup] = lost.setups;
    const seen = setupReport(lost, setup);
    const mirrored = {
      ...seen,
      items: seen.items.map((item) => (item.id === 'stand' ? { ...item, mirroredShare: 0.01 } : item)),
    };
    const light = lightOf(lost, setup, seen);
    const verdictWith = (pieces: readonly Piece[]) =>
      darkened({ ...lost, pieces: [...lost.pieces, ...pieces] }, mirrored, light).items.find(
        ({ id }) => id === 'stand',
      )?.verdict;
    expect(verdictWith([])).toBe('lost in the dark');
    const pane = { id: 'pane', label: 'Pane', kind: 'pane' } as Piece;
    expect(verdictWith([pane])).toBe('showing');
  });

  test('breaks where it must show', () => {
    const must = {
      ...lost,
      gear: lost.gear.map((each) => (each.id === 'stand' ? { ...each, wish: 'must show' as const } : each)),
    };
    expect(said(must, 'dark')[0]).toMatch(/^breaks: Lamp stand 1: the /);
  });
});

describe('what reads', () => {
  const lit = roof([STAND, ...BACK], { iso: 400 });

  test('says how far it stands out, and what would lose it', () => {
    const [sentence] = said(lit, 'dark');
    expect(sentence).toMatch(
      /^said: Lamp stand 1: the (column|legs) reads?, [\d.]+ stops over what is behind (it|them), [\d.]+ stops (under|over) grey\./,
    );
    expect(sentence).toMatch(/ Black tape loses it, or a flag that takes Head back off it\.$/);
  });

  test('is lost under black tape as far as was foretold', () => {
    const [setup] = lit.setups;
    const [before] = readsInTheDark(lit, setup, 0, ['stand']);
    const black = blackItems(lit, { ids: ['stand'], blacked: true });
    const [after] = readsInTheDark(black, setup, 0, ['stand']);
    expect(after.verdict).toBe(before.blackedVerdict);
    for (const [k, part] of after.parts.entries())
      expect(part.luminance).toBeCloseTo(before.parts[k].blacked.luminance, 9);
    expect(said(black, 'dark').join()).not.toContain('tape');
  });
});

describe('sentences of light', () => {
  test('say the key, its side, the stop, the fill and the ratio', () => {
    const plan = roof(KEY);
    const [setup] = plan.setups;
    const light = lightOf(plan, setup);
    const [{ key, fill, ratio }] = light.levels[0].faces;
    const stops = key?.stops ?? 0;
    expect(said(plan, 'level')[0]).toBe(
      `${Math.abs(stops) <= 1 ? 'holds' : 'said'}: Vera: at 0.0 s the key, Head key, is ${Math.round(key?.lux ?? 0)} lx from camera right, ` +
        `${Math.abs(stops).toFixed(1)} stops ${stops < 0 ? 'under' : 'over'} T${setup.stop}; fill ${fill.lux.toFixed(2)} lx, ${Math.round(ratio)} : 1.`,
    );
    const inFeet = lightSentences(plan, setup, light, setupReport(plan, setup), { unit: 'fc' });
    expect(inFeet.find(({ about }) => about === 'level')?.text).toMatch(
      /is [\d.]+\u00a0fc from camera right/,
    );
  });

  test('say of a face in the dark what the sky gives', () => {
    expect(said(roof([]), 'level')[0]).toMatch(
      /^said: Vera: at 0\.0 s no lamp is a key; the face has 0\.\d+ lx, [\d.]+ stops under T/,
    );
  });

  test('say where a lamp shines in the floor, as long and as bright as it does', () => {
    const wet = roof(keyOn('back', [0, -5], [0, 0], 0.5, 2), {
      move: {
        ease: 'linear',
        keys: [
          {
            atSeconds: 0,
            position: [0.6, 1.55, 6],
            headingDegrees: 0,
            tiltDegrees: -8,
            rollDegrees: 0,
          },
        ],
      },
    });
    const plan: Plan = { ...wet, cast: [], ground: { ...wet.ground, wetness: 'wet down' } };
    const [highlight] = highlightsAt(plan, plan.setups[0], 0);
    expect(said(plan, 'highlight')).toEqual([
      `said: Head back: a highlight in the floor in the middle third all through, ${highlight.lengthMetres.toFixed(1)} m long, ${highlight.stops.toFixed(1)} stops over grey.`,
    ]);
  });

  test('say what the shutter does on the mains that the plan has', () => {
    const sign: Gear = {
      id: 'sign',
      label: 'Sign',
      kind: 'practical',
      head: 'globe',
      at: [0, 3, -6],
      headingDegrees: 180,
      dim: 1,
    };
    const plan = roof([sign], { shutterDegrees: 180, framesPerSecond: 24 });
    // 180° at 24 a second are 2.083 pulses n on 50 Hz: log2((1 + |sin πn| ÷ πn) ÷ (1 − |sin πn| ÷ πn)) is 0.11 stops.
    expect(said(plan, 'flicker')).toEqual([
      'breaks: Shutter: 180° at 24 fps may flicker by up to 0.1 stops under Sign. Safe on 50 Hz: 86.4°, 172.8° (nearest), 259.2°, 345.6°.',
    ]);
    expect(said(setMains(plan, { hertz: 60 }), 'flicker')).toEqual([
      'holds: Shutter: 24 fps keeps step with 60 Hz mains at any angle.',
    ]);
    const safe = { ...plan, setups: plan.setups.map((setup) => ({ ...setup, shutterDegrees: 172.8 })) };
    expect(said(safe, 'flicker')).toEqual([
      'holds: Shutter: 172.8° at 24 fps takes in whole pulses of 50 Hz mains.',
    ]);
    expect(said(roof([]), 'flicker')).toEqual([]);
  });

  test('keep to 24 words', () => {
    const plan = roof([STAND, ...KEY, ...BACK], { iso: 400 });
    const { sentences } = lightOf(plan, plan.setups[0]);
    expect(sentences.length).toBeGreaterThan(3);
    for (const { name, text } of sentences)
      expect(`${name} ${text}`.split(' ').length, text).toBeLessThanOrEqual(24);
  });
});
