import fc from 'fast-check';
import { expect, test } from 'vitest';
import { csvOf } from '../../../src/exchange/csv';

/** Reads RFC 4180 back, character by character. */
function cellsOf(csv: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = '';
  let quoted = false;
  for (let k = 0; k < csv.length; k += 1) {
    const character = csv[k];
    if (quoted && character === '"' && csv[k + 1] === '"') {
      cell += '"';
      k += 1;
    } else if (character === '"') quoted = !quoted;
    else if (!quoted && character === ',') {
      row.push(cell);
      cell = '';
    } else if (!quoted && character === '\r') {
      row.push(cell);
      rows.push(row);
      [row, cell] = [[], ''];
      k += 1;
    } else cell += character;
  }
  return rows;
}

test('writes lines that end in CR LF, numbers as they are, nothing for null', () => {
  expect(
    csvOf([
      ['a', 'b', 'c'],
      [0.1 + 0.2, null, -1],
    ]),
  ).toBe('a,b,c\r\n0.30000000000000004,,-1\r\n');
});

test('quotes what would break the line', () => {
  expect(csvOf([['say "when"', 'one, two', 'two\nlines', ' edge']])).toBe(
    '"say ""when""","one, two","two\nlines"," edge"\r\n',
  );
});

test.each(['=1+1', '+1', '-1', '@sum', '\tx', '\rx'])('keeps %j from being run as a formula', (text) => {
  expect(cellsOf(csvOf([[text]]))[0][0]).toBe(`'${text}`);
});

test('reads back as it went in', () => {
  const text = fc.string().filter((each) => !/^[=+\-@\t\r]/.test(each));
  fc.assert(
    fc.property(fc.array(fc.array(text, { minLength: 2, maxLength: 4 }), { maxLength: 5 }), (rows) => {
      expect(cellsOf(csvOf(rows))).toEqual(rows);
    }),
  );
});
