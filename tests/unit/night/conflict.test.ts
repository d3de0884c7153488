import { expect, test } from 'vitest';
import { nightOf } from '../../../src/core/night/nightOf';
import { suggestSteps } from '../../../src/core/night/suggest/suggest';
import { conflictSentence } from '../../../src/core/night/words/demandWords';
import type { NightPlan } from '../../../src/core/plan/schema/night';
import { inOneGo } from '../../../src/core/units/steps';
import { EVEN_NIGHT, nightRoof } from '../../plans/nightRoof';

function conflictOf(night: NightPlan): string {
  const plan = nightRoof({ ...EVEN_NIGHT, ...night });
  const { work, clock } = nightOf(plan);
  return conflictSentence(plan, clock, inOneGo(suggestSteps(work)).conflict);
}

test('what cannot be kept together is told with its times, and nothing that has no part in it', () => {
  const both: NightPlan = {
    cast: [{ performer: 'ana', until: '23:00' }],
    setups: [
      { setup: 'master', until: '19:10' },
      { setup: 'single', until: '19:30', cast: ['ana'] },
      { setup: 'still', from: '20:00' },
    ],
  };
  expect(conflictOf(both)).toBe(
    'No order keeps these together: Master from the stairs by 19:10; Single on Ana by 19:30. Give up one of them.',
  );
  expect(conflictOf({ setups: [{ setup: 'master', until: '18:30' }] })).toBe(
    'No order keeps this: Master from the stairs by 18:30.',
  );
  expect(conflictOf({ setups: [{ setup: 'master', until: '19:10' }] })).toBe('');
});

test('dark, people and wet ground can be in the way of each other', () => {
  // Nautical dusk is after Ana has gone.
  expect(
    conflictOf({
      call: '15:00',
      cast: [{ performer: 'ana', until: '18:00' }],
      setups: [
        { setup: 'single', when: 'after dark', cast: ['ana'] },
        { setup: 'master', cast: [] },
      ],
    }),
  ).toMatch(
    /^No order keeps these together: Single on Ana after dark, from \d\d:\d\d, until 0\d:\d\d; Single on Ana with Ana, who is out by 18:00\. Give up one of them\.$/,
  );
  expect(
    conflictOf({
      wetOnce: true,
      setups: [
        { setup: 'master', ground: 'wet', until: '19:10' },
        { setup: 'single', until: '20:20' },
        { setup: 'still', ground: 'wet' },
      ],
    }),
  ).toBe(
    'No order keeps these together: Master from the stairs by 19:10; Single on Ana by 20:20; the ground wetted once. Give up one of them.',
  );
});
