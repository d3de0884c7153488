import { expect, test } from 'vitest';
import { formatLength } from '../../../../../src/core/units/lengths';
import {
  heightFault,
  highFault,
  lowFault,
  rangeFault,
} from '../../../../../src/screens/sheet/ground/heightFaults';

test('a height is above nothing, and no taller than anybody puts up', () => {
  expect(heightFault(2.4, 'm')).toBeNull();
  expect(heightFault(0, 'm')).toBe('Found 0.00\u00a0m, expected more than 0.00\u00a0m.');
  expect(heightFault(31, 'm')).toBe('Found 31.00\u00a0m, expected at most 30.00\u00a0m.');
  expect(heightFault(30.48, 'ft-in')).toBe('Found 100′\u00a00″, expected at most 98′\u00a05″.');
});

test('what hangs begins below its end', () => {
  expect(lowFault(2.6, 3, 'm')).toBeNull();
  expect(lowFault(-0.1, 3, 'm')).toBe('Found −0.10\u00a0m, expected 0.00\u00a0m or more.');
  expect(lowFault(3, 3, 'm')).toBe('Found 3.00\u00a0m, expected less than 3.00\u00a0m, where it ends.');
  expect(highFault(3, 2.6, 'm')).toBeNull();
  expect(highFault(2, 2.6, 'm')).toBe('Found 2.00\u00a0m, expected more than 2.60\u00a0m, where it begins.');
  expect(highFault(31, 2.6, 'm')).toBe('Found 31.00\u00a0m, expected at most 30.00\u00a0m.');
});

test('a range is told in the lengths that are typed', () => {
  const inFeet = (metres: number): string => formatLength(metres, 'ft-in');
  expect(rangeFault([1, 4], [0.1, 100], inFeet)).toBeNull();
  expect(rangeFault([121.92, 130], [0.1, 100], inFeet)).toBe(
    'Found 400′\u00a00″, expected 4″ to 328′\u00a01″.',
  );
  expect(rangeFault([4.8768, 3.048], [0.1, 100], inFeet)).toBe(
    'Found 16′\u00a00″ to 10′\u00a00″, expected the lower end first.',
  );
});
