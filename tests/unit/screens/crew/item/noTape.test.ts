import { expect, test } from 'vitest';
import { LONGEST_TAPE_METRES } from '../../../../../src/core/form/tape/nearAnchors';
import { noTape } from '../../../../../src/screens/crew/item/facts';

test('a place without tapes says how long the longest is', () => {
  expect(LONGEST_TAPE_METRES).toBe(60);
  expect(noTape('m')).toBe('No two fixed corners of the roof can be reached from it by a tape of 60\u00a0m.');
  expect(noTape('ft-in')).toContain('by a tape of 196′');
});
