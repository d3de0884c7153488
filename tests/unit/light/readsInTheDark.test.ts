import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../../src/core/form/build/vector';
import { USUAL_AMBIENT } from '../../../src/core/light/ambient';
import { greyLuminance } from '../../../src/core/light/exposure';
import { FINISHES, type Finish, shareOfHex } from '../../../src/core/light/finishes';
import { illuminance } from '../../../src/core/light/illuminance';
import { lightScene } from '../../../src/core/light/lightScene';
import { partLuminance } from '../../../src/core/light/partLuminance';
import { DARK, type ItemReads, readsInTheDark } from '../../../src/core/light/readsInTheDark';
import { skyLuminance, throughHaze } from '../../../src/core/light/surroundings';
import { likeOf, UPRIGHTS } from '../../../src/core/light/uprights';
import { setDark } from '../../../src/core/plan/edits/setDark';
import type { Gear } from '../../../src/core/plan/schema/gear';
import type { Piece } from '../../../src/core/plan/schema/pieces';
import type { Plan, UprightLimits } from '../../../src/core/plan/schema/plan';
import { keyedFace, keyOn } from '../../plans/keyedFace';

/** A stand to the left of the frame, 6 m off, at an index of exposure; Vera is beside it. */
function roof(iso: number, gear: readonly Gear[], pieces: readonly Piece[] = []): Plan {
  const stand: Gear = {
    id: 'stand',
    label: 'Stand',
    kind: 'stand',
    stand: 'tall',
    at: [-1.2, 0, 0],
    headingDegrees: 0,
    heightMetres: 2,
  };
  const plan = keyedFace({
    gear: [stand, ...gear],
    pieces,
    cameras: [{ id: 'wide', label: 'Wide', at: [0, 6], headingDegrees: 0, lens: 'wide' }],
  });
  return { ...plan, setups: plan.setups.map((setup) => ({ ...setup, iso })) };
}
function readsOf(plan: Plan, id = 'stand'): ItemReads {
  const [found] = readsInTheDark(plan, plan.setups[0], 0, [id]);
  if (!found) throw new Error(`${id} does not show`);
  return found;
}
const column = ({ parts }: ItemReads) => {
  const found = parts.find(({ name }) => name === 'column');
  if (!found) throw new Error('no column shows');
  return found;
};

describe('the luminance of a part', () => {
  const box: Piece = {
    id: 'box',
    label: 'Box',
    kind: 'box',
    at: [0, 1.4, -3],
    headingDegrees: 0,
    size: [0.3, 0.3, 0.3],
    material: 'concrete',
  };
  const lamp: Gear = {
    id: 'lamp',
    label: 'Lamp',
    kind: 'head',
    head: 'spot',
    place: { at: [0, 2.4, 2] },
    aim: [0, 1.55, -2.85],
    dim: 0.02,
  };
  const scene = lightScene(roof(3200, [lamp], [box]), null, 0);
  const part = scene.blockers.stage.parts.find(({ item }) => scene.blockers.stage.forms[item].id === 'box');
  if (!part) throw new Error('no box');
  const ray = { origin: [0.2, 1.55, 0] as Vec3, direction: [-0.2, 0, -2.85] as Vec3 };
  const { lux } = illuminance(scene, [0, 1.55, -2.847], [0, 0, 1]);

  test('is ρE ÷ π: 160 lx on 18 % grey are 9.167 cd/m²', () => {
    const grey: Finish = { diffuse: 0.18, sheen: null, slope: null, source: 'common practice, no source' };
    const found = partLuminance(scene, part, ray, null, grey);
    expect(lux).toBeGreaterThan(30);
    expect((found?.total ?? 0) * (160 / lux)).toBeCloseTo(9.167, 1);
    expect(found?.lux).toBeCloseTo(lux, 0);
  });

  test('of concrete takes what was measured of pavements', () => {
    // Normal reflectance of dry concrete 0.294, of asphalt 0.082 and 0.074. Source: [pavement-reflectance]
    expect((Math.PI * (partLuminance(scene, part, ray)?.total ?? 0)) / lux).toBeCloseTo(0.294, 2);
    expect(FINISHES.asphalt.diffuse).toBeCloseTo((0.082 + 0.074) / 2, 9);
  });

  test('has the sheen of metal where lamp and eye are mirrored, and hardly anywhere else', () => {
    const from = (origin: Vec3) =>
      partLuminance(
        scene,
        part,
        { origin, direction: [-origin[0], 1.55 - origin[1], -2.85 - origin[2]] },
        null,
        FINISHES.silver,
      )?.total ?? 0;
    // The lamp is 0.85 m over the middle of the face, 4.6 m off: mirrored, as far below it.
    expect(from([0, 0.7, 1.75])).toBeGreaterThan(20 * from([3, 1.55, 0]));
  });

  test('is null past it', () => {
    expect(partLuminance(scene, part, { origin: [0, 1.55, 0], direction: [1, 0, 0] })).toBeNull();
  });
});

test('the night is brightest near the horizon and lies before what is far', () => {
  expect(skyLuminance(USUAL_AMBIENT, [0, 0.01, -1])).toBeGreaterThan(
    4 * skyLuminance(USUAL_AMBIENT, [0, 1, 0]),
  );
  expect(throughHaze(USUAL_AMBIENT, 0, 5)).toBeLessThan(0.001);
  expect(throughHaze(USUAL_AMBIENT, 0, 400)).toBeCloseTo(skyLuminance(USUAL_AMBIENT, [0, 0, -1]), 2);
  expect([shareOfHex('#ffffff'), shareOfHex('#000000')]).toEqual([expect.closeTo(1, 9), 0]);
  expect(shareOfHex('#808080')).toBeCloseTo(0.2159, 3);
});

describe('a stand in the dark', () => {
  test('reads before the glow over the town, and is lost with it once all is four stops under', () => {
    const open = readsOf(roof(3200, []));
    expect(open.verdict).toBe('reads');
    // A dark column before a horizon of 0.45 cd/m²: grey at T2.8, ISO 3,200 is 12.5 · 7.84 · 48 ÷ 3,200 = 1.47 cd/m².
    expect(column(open).contrastStops).toBeLessThan(-1);
    expect(column(open).stopsUnder).toBeCloseTo(Math.log2(1.47 / column(open).luminance), 6);
    const under = readsOf(roof(400, []));
    expect(under.verdict).toBe('lost in the dark');
    expect(column(under).stopsUnder - column(open).stopsUnder).toBeCloseTo(3, 6);
    expect(DARK.contrastStops).toBeCloseTo(0.0704, 3);
  });

  test('is drawn by a backlight, taken back by a flag on that lamp, dulled by black tape', () => {
    const plan = roof(400, keyOn('back', [-6, -2.5], [-1.2, 0], 0.2, 3));
    const found = readsOf(plan);
    expect(found.verdict).toBe('reads');
    expect(column(found).flagged?.itemId).toBe('back');
    expect(column(found).luminance).toBeGreaterThan(10 * (column(found).flagged?.luminance ?? 1));
    expect(found.flaggedVerdict).toBe('lost in the dark');
    expect(column(found).blacked.luminance).toBeLessThan(column(found).luminance / 2);
    expect(greyLuminance(plan.setups[0])).toBeCloseTo(11.76, 2);
  });

  test('reads or not by thresholds that are given', () => {
    const plan = roof(400, []);
    const [found] = readsInTheDark(plan, plan.setups[0], 0, ['stand'], {
      ...DARK,
      contrastStops: 0.07,
      stopsUnder: 12,
    });
    expect(found.verdict).toBe('reads');
    const [dull] = readsInTheDark(plan, plan.setups[0], 0, ['stand'], {
      ...DARK,
      contrastStops: 20,
      stopsUnder: 12,
    });
    expect(dull.verdict).toBe('lost in the dark');
  });

  test('is left out where it does not show', () => {
    const plan = roof(3200, keyOn('off', [9, 7], [0, 0]));
    expect(readsInTheDark(plan, plan.setups[0], 0, ['off', 'nothing'])).toEqual([]);
  });
});

describe('what passes for an upright of the set', () => {
  test('is as wide within two to one and as bright within a stop', () => {
    const own = { item: 1, part: 1, pixels: 10, luminance: 1 };
    const other = (pixels: number, luminance: number, item = 2) => ({ item, part: 2, pixels, luminance });
    expect(likeOf(own, [other(10, 1), other(5.1, 1.9), other(19.9, 0.51)], UPRIGHTS)).toBe(3);
    expect(
      likeOf(
        own,
        [other(4.9, 1), other(20.1, 1), other(10, 2.1), other(10, 0.49), other(10, 1, 1)],
        UPRIGHTS,
      ),
    ).toBe(0);
    const strict = { ...UPRIGHTS, likeWidth: 1.5, likeStops: 0.5 };
    expect(likeOf(own, [other(14.9, 1.4), other(15.1, 1), other(10, 1.43)], strict)).toBe(1);
  });

  test('is a post among others of its kind, and not one before an open sky', () => {
    const post = (k: number): Piece => ({
      id: `post-${k}`,
      label: `Post ${k}`,
      kind: 'post',
      at: [-2.5 + k * 0.8, 0, -1],
      headingDegrees: 0,
      heightMetres: 2.4,
      diameterMetres: 0.06,
      armMetres: 0,
    });
    const found = readsOf(roof(3200, [], [0, 1, 2].map(post)), 'post-1');
    expect(found.parts.map(({ name, likeUprights }) => [name, likeUprights])).toEqual([['post', 2]]);
    expect(found.verdict).toBe('passes for an upright');
    const alone = readsOf(roof(3200, [], [post(1)]), 'post-1');
    expect([alone.parts[0].likeUprights, alone.verdict]).toEqual([0, 'reads']);

    // A plan may want a longer row, or none that leans, is short, or is not quite of one width.
    const row = roof(3200, [], [0, 1, 2].map(post));
    const under = (limits: Partial<UprightLimits>) =>
      readsOf(setDark(row, { dark: { ...DARK, uprights: { ...UPRIGHTS, ...limits } } }), 'post-1');
    expect(under({}).verdict).toBe('passes for an upright');
    expect(under({ among: 3 }).verdict).toBe('reads');
    expect(under({ leastHeight: 0.9 }).parts[0].likeUprights).toBe(null);
    expect(under({ likeStops: 0, likeWidth: 1 }).verdict).toBe('reads');
    const raked = row.setups.map((setup) => ({
      ...setup,
      move: { ...setup.move, keys: setup.move.keys.map((key) => ({ ...key, rollDegrees: 6 })) },
    }));
    const rolled = (leanDegrees: number) =>
      readsOf(
        { ...setDark(row, { dark: { ...DARK, uprights: { ...UPRIGHTS, leanDegrees } } }), setups: raked },
        'post-1',
      );
    expect(rolled(8).parts[0].likeUprights).toBe(2);
    expect(rolled(3).parts[0].likeUprights).toBe(null);
  });
});
