import { expect, test } from 'vitest';
import { setupLetter } from '../../../../src/core/plan/setupLetter';

test.each([
  [0, 'A'],
  [25, 'Z'],
  [26, 'AA'],
  [51, 'AZ'],
  [52, 'BA'],
  [399, 'OJ'],
])('the setup at place %d has the letter %s', (place, letter) => expect(setupLetter(place)).toBe(letter));
