import { expect, test } from 'vitest';
import { BUILT_IN_KIT } from '../../../src/core/kit/builtInKit';
import { removeKitBody } from '../../../src/core/plan/edits/removeKitBody';
import { removeKitLens } from '../../../src/core/plan/edits/removeKitLens';
import { setKitBody } from '../../../src/core/plan/edits/setKitBody';
import { setKitLens } from '../../../src/core/plan/edits/setKitLens';
import { parsePlan } from '../../../src/core/plan/parse';
import {
  giveBody,
  giveLens,
  giveMode,
  lensesOffered,
  modesOffered,
} from '../../../src/desk/kit/glassChoices';
import { readKitText } from '../../../src/desk/kit/kitFiles';
import { smallRoof } from '../smallRoof';

const NOTHING = { bodies: [], lenses: [] };
const plan = smallRoof();
const [setup] = plan.setups;

test('a lens from elsewhere comes into the plan with one press, and the stop to what it has', () => {
  const lens = { ...BUILT_IN_KIT.lenses[0], id: 'slow', widestStop: 4 };
  const after = giveLens({ ...plan, setups: [{ ...setup, stop: 2.8 }] }, setup.id, lens);
  expect(after.kit.lenses).toContain(lens);
  expect(after.setups[0]).toMatchObject({ lens: 'slow', stop: 4 });
  expect(parsePlan(after).ok).toBe(true);
  expect(lensesOffered(after, { bodies: [], lenses: [lens] }).kept).toEqual([]);
});

test('a body comes with its first mode, and a mode that the plan lacks is added to its body', () => {
  const [film] = BUILT_IN_KIT.bodies;
  const first = { ...film, modes: [film.modes[0]] };
  const after = giveBody(plan, setup.id, first);
  expect(after.setups[0]).toMatchObject({ body: film.id, mode: film.modes[0].id });
  expect(modesOffered(after, NOTHING, film.id)).toEqual(film.modes);
  const other = giveMode(after, setup.id, film.modes[2]);
  expect(other.setups[0].mode).toBe(film.modes[2].id);
  expect(other.kit.bodies.find(({ id }) => id === film.id)?.modes).toHaveLength(2);
  expect(parsePlan(other).ok).toBe(true);
});

test('what a setup uses stays in the plan, and so does a mode that it uses', () => {
  expect(removeKitLens(plan, { id: setup.lens })).toBe(plan);
  expect(removeKitBody(plan, { id: setup.body })).toBe(plan);
  const [body] = plan.kit.bodies;
  const without = { ...body, modes: [{ ...body.modes[0], id: 'another' }] };
  expect(setKitBody(plan, { body: without })).toBe(plan);
  const [lens] = plan.kit.lenses;
  const more = setKitLens(plan, { lens: { ...lens, id: 'spare' } });
  expect(removeKitLens(more, { id: 'spare' }).kit.lenses).toEqual(plan.kit.lenses);
});

test('a file is known by what it holds', () => {
  expect(readKitText('a.json', '{"standclearKit":1,"bodies":[],"lenses":[]}').faults).toEqual([]);
  expect(readKitText('a.csv', 'body,mode,gateWidthMm,gateHeightMm\nA,full,36,24').kit.bodies).toHaveLength(1);
  expect(readKitText('a.csv', 'what').faults[0]).toContain(
    'Line 1, "what": found a column that is not known',
  );
  expect(readKitText('a.json', 'what').faults).toEqual([
    'The file: found something that is not JSON, expected a kit in JSON.',
  ]);
});
