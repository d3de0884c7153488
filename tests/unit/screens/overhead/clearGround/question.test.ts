import { expect, test } from 'vitest';
import { wishFor } from '../../../../../src/desk/ground/groundStore';
import {
  groundQuestion,
  lampChosen,
  usefulQuestion,
} from '../../../../../src/screens/overhead/clearGround/question';
import { smallRoof } from '../../../smallRoof';

const plan = smallRoof();
const ids = plan.setups.map(({ id }) => id);
const state = { of: 'height', heightMetres: 2.4, lowMetres: 2.6, highMetres: 3, without: [] } as const;

test('asks for all setups but those that were left out, for what was chosen', () => {
  expect(groundQuestion(plan, state, null)).toEqual({ setupIds: ids, of: { heightMetres: 2.4 } });
  expect(groundQuestion(plan, { ...state, without: [ids[0]] }, null)).toMatchObject({
    setupIds: ids.slice(1),
  });
  expect(groundQuestion(plan, { ...state, of: 'chosen' }, 'stand-in')).toMatchObject({
    of: { itemId: 'stand-in' },
  });
  expect(groundQuestion(plan, { ...state, of: 'hanging' }, null)).toMatchObject({
    of: { lowMetres: 2.6, highMetres: 3 },
  });
});

test('says what is missing', () => {
  expect(groundQuestion({ ...plan, setups: [] }, state, null)).toMatch(/no setup yet/);
  expect(groundQuestion(plan, { ...state, without: ids }, null)).toMatch(/tick at least one/);
  expect(groundQuestion(plan, { ...state, of: 'chosen' }, null)).toMatch(/Choose a stand or a lamp/);
  const about = { chosenId: 'head-in', setupId: ids[0], seconds: 1 };
  const wish = wishFor('back');
  expect(usefulQuestion(plan, { wish, without: [] }, { ...about, chosenId: null })).toMatch(/Choose a lamp/);
  expect(usefulQuestion({ ...plan, cast: [] }, { wish, without: [] }, about)).toMatch(/Nobody is cast/);
  expect(usefulQuestion(plan, { wish, without: ids }, about)).toMatch(/tick at least one/);
  expect(usefulQuestion(plan, { wish: null, without: [] }, about)).toBeNull();
});

test('a stand stands for the lamp that it carries', () => {
  expect(lampChosen(plan, 'stand-in')).toBe('head-in');
  expect(lampChosen(plan, 'head-in')).toBe('head-in');
  expect(lampChosen(plan, 'fence')).toBeNull();
  expect(lampChosen(plan, null)).toBeNull();
  const about = { chosenId: 'stand-in', setupId: null, seconds: 1 };
  expect(usefulQuestion(plan, { wish: wishFor('key'), without: [] }, about)).toMatchObject({
    lampId: 'head-in',
    performerId: plan.cast[0].id,
    setupId: ids[0],
    clearOf: ids,
    role: 'key',
  });
});
