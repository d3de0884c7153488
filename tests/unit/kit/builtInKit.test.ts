import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { fluxLumens } from '../../../src/core/form/beam';
import { BUILT_IN_KIT } from '../../../src/core/kit/builtInKit';
import { DELIVERIES, deliveryOf, GATE_FORMATS, gateFormat, SQUEEZES } from '../../../src/core/kit/formats';
import { bodyOf, gateMmOf, headOf, lensOf, standOf } from '../../../src/core/kit/inKit';
import { kit } from '../../../src/core/plan/schema/kit';
import { SOURCES } from '../../../src/core/sources';

const entries = [
  ...BUILT_IN_KIT.bodies,
  ...BUILT_IN_KIT.lenses,
  ...BUILT_IN_KIT.heads,
  ...BUILT_IN_KIT.stands,
];

describe('the built-in kit', () => {
  test('is a kit by the schema, unchanged', () => {
    expect(v.parse(kit, BUILT_IN_KIT)).toEqual(BUILT_IN_KIT);
  });

  test.each(['bodies', 'lenses', 'heads', 'stands'] as const)('has no id twice among its %s', (list) => {
    const ids = BUILT_IN_KIT[list].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('says of each entry where its numbers come from', () => {
    for (const { source } of entries) {
      expect(source).toBeTruthy();
      for (const key of source?.split(', ') ?? []) expect(Object.keys(SOURCES)).toContain(key);
    }
  });

  test('has a mode for each gate asked for', () => {
    expect(BUILT_IN_KIT.bodies.map(({ modes }) => modes.length)).toEqual([5, 1, 3, 2, 1, 1]);
    const used = new Set(BUILT_IN_KIT.bodies.flatMap(({ modes }) => modes.map(({ id }) => id)));
    expect([...used].sort()).toEqual(GATE_FORMATS.map(({ id }) => id).sort());
  });

  test('finds entries by id, and null for none', () => {
    expect(bodyOf(BUILT_IN_KIT, 'film-35')?.label).toBe('35 mm film camera');
    expect(lensOf(BUILT_IN_KIT, 'anamorphic-50')?.squeeze).toBe(2);
    expect(headOf(BUILT_IN_KIT, 'led-panel')?.form).toBe('panel');
    expect(standOf(BUILT_IN_KIT, 'flag-stand')?.sections).toBe(3);
    expect(gateMmOf(BUILT_IN_KIT, 'film-35', 'academy-35')).toEqual([22.05, 16.03]);
    expect(standOf(BUILT_IN_KIT, 'none')).toBeNull();
    expect(gateMmOf(BUILT_IN_KIT, 'film-35', 'none')).toBeNull();
    expect(gateFormat('none')).toBeNull();
  });
});

describe('the classes hold together', () => {
  test.each(BUILT_IN_KIT.heads)('$label gives no more lumens than a lamp of its watts can', (head) => {
    const lumensPerWatt = fluxLumens(head) / head.watts;
    expect(lumensPerWatt).toBeGreaterThan(15);
    expect(lumensPerWatt).toBeLessThan(150);
    expect(head.fieldDegrees).toBeGreaterThanOrEqual(head.beamDegrees);
  });

  test.each(BUILT_IN_KIT.stands)('$label has tubes that nest and legs that fit under it', (stand) => {
    expect(stand.highestMetres).toBeGreaterThan(stand.lowestMetres);
    expect(stand.collarMetres).toBeLessThan(stand.lowestMetres);
    const thinnest = stand.baseTubeMetres - (stand.sections - 1) * stand.tubeStepMetres;
    expect(thinnest).toBeGreaterThan(0.015);
    expect(stand.sections * stand.lowestMetres).toBeGreaterThan(stand.highestMetres);
  });

  test.each(BUILT_IN_KIT.lenses)('$label opens, closes and focuses', (lens) => {
    expect(lens.widestStop).toBeLessThan(lens.narrowestStop);
    expect(lens.closeFocusMetres).toBeGreaterThan(0.1);
    expect(SQUEEZES).toContain(lens.squeeze);
  });
});

describe('deliveries', () => {
  test('are in order, from wide to tall', () => {
    const aspects = DELIVERIES.map(({ aspect }) => aspect);
    expect(aspects).toEqual([...aspects].sort((a, b) => b - a));
  });

  test('are told from a ratio', () => {
    expect(deliveryOf(2.39)?.id).toBe('scope');
    expect(deliveryOf(1.78)?.id).toBe('sixteen-nine');
    expect(deliveryOf(0.5625)?.id).toBe('nine-sixteen');
    expect(deliveryOf(2.2)).toBeNull();
  });
});
