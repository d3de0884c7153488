import { expect, test } from 'vitest';
import { drawnName, markNames } from '../../../../src/screens/overhead/words';

const bare = (name: string): string => name.replace(/[\u2068\u2069]/g, '');

test('a long name is cut between what reads as one letter, and its ellipsis is at its own end', () => {
  expect(drawnName('Lamp stand 2')).toBe('Lamp stand 2');
  expect(bare(drawnName('👩🏽‍🚒'.repeat(33)))).toBe(`${'👩🏽‍🚒'.repeat(32)}…`);
  expect(bare(drawnName('e\u0301'.repeat(33)))).toBe(`${'e\u0301'.repeat(32)}…`);
  // Kept apart from what stands around it, an ellipsis after letters from right to left lies at their left.
  expect(drawnName('ה'.repeat(40))).toBe(`\u2068${'ה'.repeat(32)}…\u2069`);
});

test('marks are called by the first letter of whom they are for, whole', () => {
  expect(markNames('Vera', [2, 3])).toBe('V3, 4');
  expect(markNames('👩🏽‍🚒 Vera', [0])).toBe('👩🏽‍🚒1');
  expect(markNames('\u2800 ', [0])).toBe('\u28001');
});
