import { expect, test } from 'vitest';
import { SOURCES } from '../../../../src/core/sources';
import { breakingPieces } from '../../../../src/screens/parts/breakingAddresses';

test('an address may break after its signs, words and units only at their spaces', () => {
  expect(
    breakingPieces('Beaufort scale, wind in m/s and mph. wind.example/notes/msg-0679.html, read'),
  ).toEqual([
    'Beaufort scale, wind in m/s and mph. wind.',
    'example/',
    'notes/',
    'msg-',
    '0679.',
    'html, read',
  ]);
  expect(breakingPieces('4.12.0-release.1 of 2024')).toEqual(['4.12.0-release.1 of 2024']);
});

test('nothing of a source is lost, and no piece of an address is longer than a line of a narrow phone', () => {
  for (const { where } of Object.values(SOURCES)) {
    const pieces = breakingPieces(where);
    expect(pieces.join('')).toBe(where);
    for (const word of pieces.flatMap((piece) => piece.split(/\s/)))
      expect(word.length, word).toBeLessThan(40);
  }
});
