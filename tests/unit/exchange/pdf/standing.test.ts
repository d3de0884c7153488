import { expect, test } from 'vitest';
import type { Gear } from '../../../../src/core/plan/schema/gear';
import { standingOf } from '../../../../src/exchange/pdf/standing';
import { EVEN_NIGHT, nightRoof } from '../../../plans/nightRoof';

const roof = nightRoof(EVEN_NIGHT);

test('gear that is hidden from the eye that builds stands on the roof all the same', () => {
  const hidden = { ...roof, gear: roof.gear.map((each) => ({ ...each, hidden: true })) };
  expect(standingOf(roof, 'm').map(({ id }) => id)).toContain('stand-in');
  expect(standingOf(hidden, 'm')).toEqual(standingOf(roof, 'm'));
});

test('a heading is told as a bearing, whichever way round it was set', () => {
  const words = (headingDegrees: number): string | undefined => {
    const ladder: Gear = {
      id: 'ladder',
      label: 'Ladder',
      kind: 'ladder',
      at: [2, 0, 2],
      headingDegrees,
      heightMetres: 2,
    };
    return standingOf({ ...roof, gear: [ladder] }, 'm').find(({ id }) => id === 'ladder')?.aim;
  };
  expect([words(-90), words(359.8)]).toEqual(['270°', '0°']);
});
