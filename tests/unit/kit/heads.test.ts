import { expect, test } from 'vitest';
import { ownLumens } from '../../../src/core/form/photometry/ownBeam';
import { HEADS } from '../../../src/core/kit/heads';

/** Lumens that leave the lamp for each watt that it draws, as its kind commonly gives. Source: common practice, no source */
const LUMENS_PER_WATT: Readonly<Record<string, readonly [least: number, most: number]>> = {
  'led-bare-300': [70, 110],
  'led-bare-600': [70, 110],
  'led-spot-300': [45, 80],
  'led-spot-600': [45, 80],
  'led-fresnel-300': [25, 50],
  'led-fresnel-600': [25, 50],
  'led-panel': [50, 100],
  'led-tube': [50, 100],
  'battery-lamp': [50, 100],
  'work-light': [80, 130],
  'string-bulb': [80, 130],
  'bulkhead-lamp': [60, 110],
  fluorescent: [35, 70],
  'sodium-street-lamp': [60, 110],
  'led-street-lamp': [100, 160],
  'shop-sign': [15, 60],
};

test('every class of head has a range', () => {
  expect(HEADS.map(({ id }) => id).toSorted()).toEqual(Object.keys(LUMENS_PER_WATT).toSorted());
});

test.each(HEADS)('$label gives as many lumens for its watts as its kind does', (head) => {
  const [least, most] = LUMENS_PER_WATT[head.id] ?? [0, 0];
  const perWatt = ownLumens(head) / head.watts;
  expect(perWatt).toBeGreaterThan(least);
  expect(perWatt).toBeLessThan(most);
});

test.each(['300', '600'])(
  'at %s W a reflector takes lumens and gives candela, a Fresnel lens more so',
  (watts) => {
    const [bare, reflector, fresnel] = ['bare', 'spot', 'fresnel'].map((kind) => {
      const head = HEADS.find(({ id }) => id === `led-${kind}-${watts}`);
      if (!head) throw new Error(`found no ${kind} of ${watts} W`);
      return head;
    });
    expect(ownLumens(bare)).toBeGreaterThan(ownLumens(reflector));
    expect(ownLumens(reflector)).toBeGreaterThan(ownLumens(fresnel));
    expect(bare.peakCandela).toBeLessThan(reflector.peakCandela);
    expect(reflector.peakCandela).toBeLessThan(fresnel.peakCandela);
  },
);
