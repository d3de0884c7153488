import { expect, test } from 'vitest';
import { DARK } from '../../../../src/core/light/readsInTheDark';
import { UPRIGHTS } from '../../../../src/core/light/uprights';
import { ownDark } from '../../../../src/screens/sheet/light/dark/ownDark';

const { contrastStops, stopsUnder } = DARK;

test('a plan says of the dark only what is not usual', () => {
  expect(ownDark({ contrastStops, stopsUnder })).toBeNull();
  const under = { contrastStops, stopsUnder: 5 };
  expect(ownDark(under)).toBe(under);
  const uprights = { contrastStops, stopsUnder, uprights: { ...UPRIGHTS, among: 3 } };
  expect(ownDark(uprights)).toBe(uprights);
});
