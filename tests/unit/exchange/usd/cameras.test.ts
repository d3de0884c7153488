import { expect, test } from 'vitest';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import type { Setup } from '../../../../src/core/plan/schema/setup';
import { cameraLines } from '../../../../src/exchange/usd/cameras';
import { quoted } from '../../../../src/exchange/usd/text';
import { planToUsda } from '../../../../src/exchange/usd/usda';
import { smallRoof } from '../../smallRoof';

const roof = smallRoof();
const [still] = roof.setups;
const fixed: Setup = {
  ...still,
  operator: undefined,
  track: undefined,
  focus: { metres: 3 },
  move: { ...still.move, keys: [still.move.keys[0]] },
};
/** The roof with its span an hour long and as many setups as asked for. */
const long = (setup: Setup, count: number): Plan => ({
  ...roof,
  beats: roof.beats.map((beat) => (beat.id === setup.span.to ? { ...beat, atSeconds: 3600 } : beat)),
  setups: Array.from({ length: count }, (_, k) => ({ ...setup, id: `setup-${k}` })),
});

test('a camera that nobody moves is written once, whatever its span', () => {
  const lines = cameraLines('fixed', long(fixed, 1), fixed, 1);
  expect(lines.filter((line) => line.includes('timeSamples'))).toEqual([]);
  expect(lines.some((line) => line.includes('float focusDistance = '))).toBe(true);
});

test('cameras that move for longer than a stage holds are refused in a sentence', () => {
  const [first] = fixed.move.keys;
  const last = { ...first, atSeconds: 3600, headingDegrees: first.headingDegrees + 40 };
  const moving: Setup = { ...fixed, move: { ...fixed.move, keys: [first, last] } };
  expect(() => planToUsda(long(moving, 6), 1)).toThrow(
    /^The cameras move for \d+ time codes in all, a stage holds at most 500000\. /,
  );
});

test('joiners that scripts need stay in a text, what turns its direction or ends its line does not', () => {
  const joined = 'می\u200cخواهم क्\u200dष';
  expect(quoted(joined)).toBe(`"${joined}"`);
  expect(quoted('a\u202eb\nc"')).toBe('"a b c\\""');
});
