import { describe, expect, test } from 'vitest';
import { escapedForJson, plainText } from '../../../src/cli/plainText';
import { progressOf } from '../../../src/cli/progress';
import { setInColumns } from '../../../src/cli/table/columns';
import { inkFor } from '../../../src/cli/table/ink';
import { whenOf } from '../../../src/cli/table/itemWords';
import { cutTo, padTo, textWidth } from '../../../src/cli/table/textWidth';
import { fakeTerminal } from './fakeTerminal';

describe('columns', () => {
  const rules = [{}, { side: 'right' as const }, { leastWidth: 6 }];

  test('are aligned and empty ones vanish', () => {
    expect(
      setInColumns(
        [...rules, {}],
        [
          ['a', '1', 'short', ''],
          ['bbb', '22', 'longer one', ''],
        ],
        80,
      ),
    ).toEqual(['a     1  short', 'bbb  22  longer one']);
  });

  test('give way where the line is too long, and say that they did', () => {
    const lines = setInColumns(rules, [['one', '1', 'a name that is too long']], 20);
    expect(lines).toEqual(['one  1  a name that…']);
    expect(textWidth(lines[0])).toBeLessThanOrEqual(20);
  });

  test('count wide characters as two', () => {
    expect(textWidth('屋上')).toBe(4);
    expect(textWidth('é')).toBe(1);
    expect(cutTo('屋上の夜', 5)).toBe('屋上…');
    expect(padTo('屋', 4)).toBe('屋  ');
    expect(padTo('7', 3, 'right')).toBe('  7');
  });
});

describe('what is printed', () => {
  test('holds nothing that drives a terminal or turns the writing', () => {
    expect(plainText('a\u001b[2Jb\u0007\u009bc\u202ed\u2066e\nf\u200f')).toBe('a[2Jbcdef');
  });

  test('is escaped in JSON so that the values stay', () => {
    const value = { label: 'a\u009b\u202e\u{e0001}\u001bé' };
    const json = escapedForJson(JSON.stringify(value, null, 2));
    expect(json).not.toMatch(/[\u0080-\u009f\u202e]/);
    expect(JSON.parse(json)).toEqual(value);
  });

  test('is stressed on a terminal only, and not with NO_COLOR', () => {
    expect(inkFor(fakeTerminal({ isTTY: true })).strong('x')).toBe('\u001b[1mx\u001b[22m');
    expect(inkFor(fakeTerminal({ isTTY: false })).strong('x')).toBe('x');
    expect(inkFor(fakeTerminal({ isTTY: true, environment: { NO_COLOR: '1' } })).strong('x')).toBe('x');
    expect(inkFor(fakeTerminal({ isTTY: true, environment: { NO_COLOR: '' } })).strong('x')).not.toBe('x');
    expect(inkFor(fakeTerminal({ isTTY: true, environment: { TERM: 'dumb' } })).faint('x')).toBe('x');
  });

  test.each([
    [[], [0, 8], ''],
    [[[0, 8]], [0, 8], 'throughout'],
    [[[1, 2]], [1, 1], ''],
    [[[3.2, 5]], [0, 8], '3.2 s to 5.0 s'],
    [[[3, 3]], [0, 8], 'at 3.0 s'],
    [
      [
        [0, 1],
        [2, 3],
        [4, 5],
        [6, 7],
      ],
      [0, 8],
      '0.0 s to 1.0 s, 2.0 s to 3.0 s, 2 more',
    ],
  ] as const)('says when: %j', (spans, span, text) => {
    expect(whenOf(spans, span).replaceAll('\u00a0', ' ')).toBe(text);
  });
});

describe('the progress line', () => {
  const run = (isTTY: boolean, times: number[]): string => {
    const terminal = fakeTerminal({ isTTY });
    const progress = progressOf(terminal, () => times.shift() ?? 0);
    progress.tell(1, 4);
    progress.tell(2, 4);
    progress.end();
    return terminal.errors();
  };
  test('comes after half a second and goes at the end', () => {
    expect(run(true, [0, 400, 600])).toBe('\r\u001b[KReading 4 setups: 50 %\r\u001b[K');
  });
  test('does not come for short work', () => expect(run(true, [0, 100, 200])).toBe(''));
  test('does not come in a file', () => expect(run(false, [0, 600, 900])).toBe(''));
});
