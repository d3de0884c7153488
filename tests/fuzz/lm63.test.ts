import fc from 'fast-check';
import * as v from 'valibot';
import { expect } from 'vitest';
import { candelaTable } from '../../src/core/form/photometry/candelaTable';
import { HEADS } from '../../src/core/kit/heads';
import { lightFaults } from '../../src/core/plan/lightChecks';
import { distribution } from '../../src/core/plan/schema/distribution';
import { readLm63 } from '../../src/exchange/lm63/readLm63';
import { AXIAL_LM63, lm63Of, steps } from '../outside/exchange/lm63/axial';
import { brokenNumbers } from '../plans/brokenNumbers';
import { fuzzed } from './fuzzed';
import { share } from './mutation';

/** One sentence, or a table that a plan takes and whose numbers are numbers. */
function holds(text: string): string {
  const read = readLm63(text, 'lamp.ies');
  if (!read.ok) {
    expect(read.faults[0].sentence).toMatch(/^(Line \d+|The file): found .+, expected .+\.$/);
    expect(read.faults[0].sentence).not.toMatch(/[\p{Cc}\u2028\u2029]/u);
    return 'refused';
  }
  const { distribution: table } = read.value;
  expect(v.safeParse(distribution, table).success).toBe(true);
  expect(lightFaults([{ ...HEADS[0], distribution: table }])).toEqual([]);
  const { lumens, peakCandela, beamDegrees, fieldDegrees, candelaAt } = candelaTable(table);
  expect(brokenNumbers({ lumens, peakCandela, beamDegrees, fieldDegrees })).toEqual([]);
  for (const [off, round] of [
    [0, 0],
    [33, 271],
    [180, -90],
  ])
    expect(Number.isFinite(candelaAt(off, round))).toBe(true);
  return 'read';
}

const WHOLES = [
  AXIAL_LM63,
  lm63Of(steps(0, 90, 15), steps(0, 360, 45), (off, round) => 90 - off + round / 100),
  lm63Of(steps(-90, 90, 15), steps(-90, 90, 15), (up, right) => 200 - Math.abs(up) - Math.abs(right), 2),
  `A lamp\nTILT=INCLUDE\n1\n2\n0 90\n1 1\n1 800 1 2 1 1 1 0 0 0\n1 1 9\n0 90\n0\n100 5\n`,
];
const word = fc.constantFrom(
  '',
  '-1',
  '0',
  '1',
  '2',
  '361',
  '1e9',
  '1e999',
  'NaN',
  '-',
  '.',
  '\u0000',
  'TILT=NONE',
  '\n',
  '\r',
  '90',
  '9'.repeat(400),
);

fuzzed(
  'a lamp: some words changed',
  fc
    .record({
      whole: fc.constantFrom(...WHOLES),
      words: fc.array(fc.record({ at: share, to: word }), { minLength: 1, maxLength: 3 }),
    })
    .map(({ whole, words }) => {
      const parts = whole.split(/(\s+)/);
      for (const { at, to } of words) parts[Math.floor(at * parts.length)] = to;
      return parts.join('');
    }),
  holds,
);

fuzzed(
  'a lamp: cut short',
  fc.tuple(fc.constantFrom(...WHOLES), share).map(([whole, at]) => whole.slice(0, at * whole.length)),
  holds,
);

fuzzed(
  'a lamp: any text',
  fc
    .tuple(
      fc.constantFrom('', 'IESNA:LM-63-2002\n', 'IESNA:LM-63-2002\nTILT=NONE\n1 -1 1 '),
      fc.oneof(
        fc.string({ unit: 'binary', maxLength: 800 }),
        fc
          .tuple(fc.constantFrom(' ', '1 ', '\n', '9', '[A', 'TILT='), fc.nat({ max: 50_000 }))
          .map(([piece, times]) => piece.repeat(times)),
      ),
    )
    .map(([header, text]) => header + text),
  (text) => {
    expect(holds(text)).toBe('refused');
    return 'refused';
  },
);
