import fc from 'fast-check';
import { expect } from 'vitest';
import { BUILT_IN_KIT } from '../../src/core/kit/builtInKit';
import { MOST_OWN, ownKitText, readOwnKit } from '../../src/core/kit/ownKit';
import { bodiesCsv, lensesCsv, readBodiesCsv, readLensesCsv } from '../../src/exchange/kitFileCsv';
import { fuzzed } from './fuzzed';
import { changesTo, textChanges } from './mutation';

const { bodies, lenses } = BUILT_IN_KIT;
const TABLES = [lensesCsv(lenses), bodiesCsv(bodies)];
const cell = fc.constantFrom(
  '',
  '-1',
  '0',
  '1e9',
  '1e999',
  'NaN',
  '1,5',
  ',',
  ';',
  '\t',
  '"',
  '""',
  '\r',
  '\n',
  '\u0000',
  '=1+1',
  "'",
  '__proto__',
  'label',
  '9'.repeat(400),
);

/** Entries that a kit takes, and a sentence for each row that has a fault; both readers are asked. */
function holds(text: string): string {
  const [ofLenses, ofBodies] = [readLensesCsv(text), readBodiesCsv(text)];
  for (const { line, sentence } of [...ofLenses.faults, ...ofBodies.faults]) {
    if (line < 1 || sentence.length > 1000) throw new Error(sentence);
    expect(sentence).toMatch(
      /^Line \d+[^\n]*: found [^\p{Cc}\u2028\u2029]*, expected [^\p{Cc}\u2028\u2029]*\.$/u,
    );
  }
  const [own, bodyList] = [
    ofLenses.entries.slice(0, MOST_OWN.lenses),
    ofBodies.entries.slice(0, MOST_OWN.bodies),
  ];
  expect(readOwnKit(ownKitText({ lenses: own, bodies: bodyList })).ok).toBe(true);
  return own.length + bodyList.length > 0 ? 'read in part or whole' : 'refused';
}

fuzzed('a kit as a table: some cells changed', textChanges(TABLES, cell), holds);

fuzzed(
  'a kit as a table: any text',
  fc
    .tuple(
      fc.constantFrom(
        '',
        'label,focalMm,squeeze,widestStop,narrowestStop,closeFocusMetres\n',
        `${TABLES[1].split('\r\n')[0]}\r\n`,
      ),
      fc.string({ unit: 'binary', maxLength: 500 }),
    )
    .map(([header, text]) => header + text),
  (text) => (text.trim() === '' ? 'nothing' : holds(text)),
);

/** A table that says the same again and again, with and without ends of lines: whatever looks back at each row gets slow. */
fuzzed(
  'a kit as a table: the same again and again',
  fc
    .tuple(
      fc.constantFrom(...TABLES.map((table) => table.split('\r\n'))),
      fc.constantFrom('row', ',', '"', 'a,', 'lens,50,1,2,16,1\n', '\n'),
      fc.nat({ max: 20_000 }),
    )
    .map(
      ([[header, row], piece, times]) =>
        `${header}\r\n${(piece === 'row' ? `${row}\r\n` : piece).repeat(times)}`,
    ),
  holds,
);

fuzzed(
  'a kit as JSON: one thing changed',
  changesTo(JSON.parse(ownKitText({ bodies, lenses }))),
  (document) => {
    const read = readOwnKit(JSON.stringify(document));
    if (read.ok) return 'read';
    for (const { sentence } of read.faults)
      expect(sentence).toMatch(/^[^\n]+: found [^\n]+, expected [^\n]+\.$/);
    return 'refused';
  },
);
