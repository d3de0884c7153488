import { expect, test } from 'vitest';
import { packingOf } from '../../../src/core/night/packing/packingOf';
import type { PackingLine } from '../../../src/core/night/packing/types';
import { EVEN_NIGHT, nightRoof } from '../../plans/nightRoof';
import { smallRoofDocument } from '../smallRoof';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

/** Lines of the small roof with some gear more, as label, count and unit. */
const packed = (...gear: object[]): readonly PackingLine[] =>
  packingOf(nightRoof(EVEN_NIGHT, {}, { gear: [...smallRoofDocument().gear, ...gear] }));
const linesWith = (lines: readonly PackingLine[], part: string) =>
  lines
    .filter(({ label }) => plain(label).includes(part))
    .map(({ label, department, count, unit, itemIds }) => ({
      label: plain(label),
      department,
      count,
      unit,
      itemIds,
    }));

const head = (id: string, modifier?: string) => ({
  id,
  label: `Head ${id}`,
  kind: 'head',
  head: 'spot',
  place: { at: [3, 1, 3] },
  aim: [0, 1, 0],
  dim: 0.5,
  ...(modifier && { modifier }),
});
const cloth = (id: string, kind: string, size: readonly number[], more: object = {}) => ({
  id,
  label: `Cloth ${id}`,
  kind,
  place: { at: [4, 1, 2] },
  headingDegrees: 0,
  tiltDegrees: 0,
  size,
  ...more,
});
const track = (id: string, lengthMetres: number, more: object = {}) => ({
  id,
  label: `Track ${id}`,
  kind: 'track',
  at: [0, 0, 5],
  headingDegrees: 90,
  lengthMetres,
  gaugeMetres: 0.62,
  ...more,
});

test('each kind of modifier is counted by the lamp that it is for, and a bare lamp has none', () => {
  const lines = packed(head('one', 'softbox'), head('two', 'softbox'), head('three', 'snoot'), head('four'));
  expect(linesWith(lines, ' for Spot 1 kW')).toEqual([
    {
      label: 'Softbox for Spot 1 kW',
      department: 'light',
      count: 2,
      unit: 'pieces',
      itemIds: ['one', 'two'],
    },
    { label: 'Snoot for Spot 1 kW', department: 'light', count: 1, unit: 'pieces', itemIds: ['three'] },
  ]);
});

test('flags, nets, frames and bounces are counted by what they are and their size', () => {
  const lines = packed(
    cloth('a', 'flag', [0.6, 0.9]),
    cloth('b', 'flag', [0.6, 0.9]),
    cloth('c', 'flag', [1.2, 1.2]),
    cloth('d', 'flag', [0.6, 0.9], { transmission: 0.5 }),
    cloth('e', 'frame', [2.4, 2.4], { transmission: 0.4 }),
    cloth('f', 'bounce', [1, 2], { reflectance: 0.8 }),
  );
  expect(linesWith(lines, 'Flag,').map(({ label, count }) => [label, count])).toEqual([
    ['Flag, 0.60 × 0.90 m', 2],
    ['Flag, 1.20 × 1.20 m', 1],
  ]);
  expect(linesWith(lines, 'Net,')).toMatchObject([{ count: 1, itemIds: ['d'], department: 'grip' }]);
  expect(linesWith(lines, 'Frame,')).toMatchObject([{ count: 1, itemIds: ['e'] }]);
  expect(linesWith(lines, 'Bounce,')).toMatchObject([{ count: 1, itemIds: ['f'] }]);
});

test('track is counted in metres along its middle, straight and of each bend', () => {
  const lines = packed(
    track('a', 4),
    track('b', 2.5),
    track('c', 3.2, { bendMetres: -5 }),
    track('d', 1.8, { bendMetres: 5 }),
  );
  expect(linesWith(lines, 'Dolly track')).toEqual([
    { label: 'Dolly track, straight', department: 'camera', count: 6.5, unit: 'metres', itemIds: ['a', 'b'] },
    {
      label: 'Dolly track, curved to 5.0 m',
      department: 'camera',
      count: 5,
      unit: 'metres',
      itemIds: ['c', 'd'],
    },
  ]);
});
