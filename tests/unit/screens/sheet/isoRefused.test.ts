import { expect, test } from 'vitest';
import { parsePlan } from '../../../../src/core/plan/parse';
import { SETUP_LIMITS } from '../../../../src/core/plan/schema/setup';
import { readLegal } from '../../../../src/screens/sheet/camera/legal';
import { smallRoofDocument } from '../../smallRoof';

test.each([
  ['0', 'ISO numbers run from '],
  ['-100', 'ISO numbers run from '],
  ['fast', '"fast" is not a number. ISO numbers run from '],
])('an ISO of %j is refused in words, with what would do', (text, begin) => {
  const [lowest, highest] = SETUP_LIMITS.iso;
  const read = readLegal(text, { what: 'ISO numbers', limits: SETUP_LIMITS.iso });
  expect(lowest).toBeGreaterThan(0);
  expect(read.ok ? '' : read.sentence.replaceAll(',', '')).toBe(`${begin}${lowest} to ${highest}.`);
  const document = smallRoofDocument();
  const [setup] = document.setups;
  const parsed = parsePlan({ ...document, setups: [{ ...setup, iso: Number(text) || 0 }] });
  expect(parsed.ok ? [] : parsed.faults.map(({ sentence }) => sentence)).toEqual([
    expect.stringMatching(/^setups\[0\]\.iso of .*: found (0|-100), expected .*\d/),
  ]);
});
