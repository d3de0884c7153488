import { describe, expect, test } from 'vitest';
import { codeOutline } from '../../../src/desk/share/codeOutline';
import { heaviest } from '../../../src/desk/share/heaviest';
import { linkAnswer } from '../../../src/desk/share/linkAnswer';
import { planOfLink } from '../../../src/exchange/link/link';
import { qrOf } from '../../../src/exchange/link/qr';
import { lengthSentence, noCodeSentence, nowhereSentence } from '../../../src/screens/sheet/crew/words';
import { smallRoof } from '../smallRoof';

/** The squares that an outline of whole rectangles fills. */
function filled(path: string): Set<string> {
  const squares = new Set<string>();
  for (const [, x, y, width] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g))
    for (let k = 0; k < Number(width); k += 1) squares.add(`${Number(x) + k} ${y}`);
  return squares;
}

test('the outline of a code fills its dark squares and no other', () => {
  const squares = qrOf('standclear');
  if (!squares) throw new Error('no code of a word');
  const dark = new Set<string>();
  for (let y = 0; y < squares.size; y += 1)
    for (let x = 0; x < squares.size; x += 1) if (squares.isDark(x, y)) dark.add(`${x} ${y}`);
  expect(filled(codeOutline(squares).path)).toEqual(dark);
});

test('a link is the page’s address with the plan behind it', () => {
  const plan = smallRoof();
  const { address, code } = linkAnswer(plan, 'https://example.org/night/');
  const [page, fragment] = address.split('#');
  expect(page).toBe('https://example.org/night/');
  expect(planOfLink(fragment)).toMatchObject({ ok: true, plan });
  expect(code).not.toBeNull();
});

describe('words', () => {
  test('what takes the most room is named, the most first', () => {
    const plan = smallRoof();
    expect(heaviest({ ...plan, notes: 'x'.repeat(90_000) })[0]).toBe('notes');
    expect(noCodeSentence({ heaviest: ['notes', 'gear'] })).toContain('The most room goes to notes and gear');
  });

  test('up to 2,000 characters chats carry a link, from there on the code or a file is named', () => {
    const code = { size: 21, path: '' };
    expect(lengthSentence({ address: 'x'.repeat(2000), code })).toContain(
      '2,000 characters: chats and mails',
    );
    expect(lengthSentence({ address: 'x'.repeat(2001), code })).toContain(
      'Send the code, the pack or the one file',
    );
    expect(lengthSentence({ address: 'x'.repeat(9000), code: null })).not.toContain('code');
  });

  test('a link to this computer alone says so', () => {
    for (const address of ['http://localhost:5173/#1a', 'http://127.0.0.1/#1a', 'http://[::1]:80/#1a'])
      expect(nowhereSentence(address)).toContain('opens here alone');
    expect(nowhereSentence('file:///home/index.html#1a')).toContain('on this device alone');
    expect(nowhereSentence('https://example.org/#1a')).toBeNull();
  });
});
