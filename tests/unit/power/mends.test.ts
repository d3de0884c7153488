import { expect, test } from 'vitest';
import type { Plan } from '../../../src/core/plan/schema/plan';
import type { Mend } from '../../../src/core/power/mend/types';
import { withMend } from '../../../src/core/power/mend/withMend';
import { powerOf } from '../../../src/core/power/powerOf';
import { DROP_SHARE } from '../../../src/core/power/ratings';
import { mendedSentences } from '../../../src/core/report/power/mending';
import { powerReport } from '../../../src/core/report/power/powerReport';
import { box, cable, drawing, generator, lamp, wired } from '../../plans/wired';

const TWO = {
  circuits: [
    { amps: 20, sockets: 4 },
    { amps: 20, sockets: 4 },
  ],
};

/** What is said of a plan with its mends, of those sentences alone that have some. */
const mended = (plan: Plan) =>
  mendedSentences(plan, powerReport(plan).sentences, powerOf(plan)).filter(({ mends }) => mends.length > 0);

function onlyMend(plan: Plan, about: string, act: Mend['act']): Mend {
  const found = mended(plan)
    .filter((told) => told.about === about)
    .flatMap(({ mends }) => mends)
    .filter((mend) => mend.act === act);
  expect(found.length).toBe(1);
  return found[0];
}

const breaksAbout = (plan: Plan, about: string): number =>
  powerReport(plan).sentences.filter((told) => told.about === about && told.standing === 'breaks').length;

test('a ring is mended by pulling its longest cable, and all of it is fed', () => {
  const plan = wired([
    generator('genny', TWO),
    box('box'),
    lamp('lamp'),
    cable('short', 'genny', 'box', 5),
    cable('long', 'genny', 'lamp', 30),
    cable('middle', 'box', 'lamp', 10),
  ]);
  const mend = onlyMend(plan, 'plugs', 'pull');
  expect(mend).toEqual({ act: 'pull', cableId: 'long' });
  const after = powerOf(withMend(plan, mend), 1);
  expect(after.network.feeding.get('lamp')).toBe('fed');
  expect(after.network.faults.map(({ kind }) => kind)).toEqual(['loose']);
});

test('of two supplies that are joined the cable between them is pulled, not one to a load', () => {
  const plan = wired([
    generator('one', TWO),
    generator('other', TWO),
    box('box'),
    lamp('lamp'),
    cable('to-box', 'one', 'box', 5),
    cable('between', 'box', 'other', 9),
    cable('to-lamp', 'box', 'lamp', 40),
  ]);
  const mend = onlyMend(plan, 'plugs', 'pull');
  expect(mend).toEqual({ act: 'pull', cableId: 'between' });
  const after = powerOf(withMend(plan, mend), 1);
  expect(after.flow.loads.get('lamp')?.sourceId).toBe('one');
});

test('what hangs on no cord is connected, or has power of its own', () => {
  const plan = wired([generator('genny', TWO), lamp('lamp')]);
  const told = mended(plan).find(({ about }) => about === 'plugs');
  expect(told?.mends.map(({ act }) => act)).toEqual(['connect', 'own']);
  const own = onlyMend(plan, 'plugs', 'own');
  expect(powerOf(withMend(plan, own), 1).network.feeding.get('lamp')).toBe('own');
  // Without a supply there is nothing to connect it to.
  expect(mended(wired([lamp('lamp')])).flatMap(({ mends }) => mends.map(({ act }) => act))).toEqual(['own']);
});

test('an end in the air and a circuit that is not there', () => {
  const plan = wired([
    generator('genny', TWO),
    lamp('lamp'),
    cable('c', 'genny', 'lamp', 10, { circuit: 9 }),
  ]);
  const any = onlyMend(plan, 'plugs', 'any circuit');
  expect(mended(withMend(plan, any))).toEqual([]);
  const open = wired([generator('genny', TWO), cable('c', 'genny', null)]);
  const pulled = withMend(open, onlyMend(open, 'plugs', 'pull'));
  expect(powerOf(pulled, 1).network.faults.map(({ kind }) => kind)).toEqual(['loose']);
});

test('a cord that carries too much is unwound where that is enough, or is as thick as it has to be and no thicker', () => {
  const plan = wired([
    generator('genny', { circuits: [{ amps: 30, sockets: 4 }] }),
    drawing('kettle', 1800),
    cable('c', 'genny', 'kettle', 5, { wire: { awg: 14 }, coiledShare: 0.5 }),
  ]);
  const unwound = withMend(plan, onlyMend(plan, 'cord', 'unwind'));
  expect(breaksAbout(unwound, 'cord')).toBe(0);
  const thicker = onlyMend(plan, 'cord', 'thicker');
  expect(thicker.act === 'thicker' ? thicker.cables.map(({ wire }) => wire) : null).toEqual([{ awg: 8 }]);
  expect(breaksAbout(withMend(plan, thicker), 'cord')).toBe(0);
  const oneThinner = {
    ...thicker,
    cables: [{ id: 'c', wire: { awg: 10 } as const, diameterMetres: 0.0165 }],
  };
  expect(breaksAbout(withMend(plan, { ...oneThinner, act: 'thicker' }), 'cord')).toBe(1);
});

test('a lamp that gets too little volts gets thicker cords until it has enough; none is offered where none does', () => {
  const far = (metres: number) =>
    wired([
      generator('genny', TWO),
      box('box'),
      drawing('kettle', 1500),
      cable('feeder', 'genny', 'box', metres, { wire: { awg: 14 } }),
      cable('c', 'box', 'kettle', metres, { wire: { awg: 14 } }),
    ]);
  const mend = onlyMend(far(40), 'drop', 'thicker');
  const after = powerOf(withMend(far(40), mend), 1);
  expect(after.flow.loads.get('kettle')?.dropShare).toBeLessThanOrEqual(DROP_SHARE);
  expect(mended(far(400)).filter(({ about }) => about === 'drop')).toEqual([]);
});

test('circuits are shared out anew only where that leaves no breaker over four fifths', () => {
  const on = (watts: number) =>
    wired([
      generator('genny', TWO),
      drawing('a', watts),
      drawing('b', watts),
      cable('ca', 'genny', 'a', 5, { circuit: 1 }),
      cable('cb', 'genny', 'b', 5, { circuit: 1 }),
    ]);
  const mend = onlyMend(on(1500), 'breaker', 'any circuit');
  expect(breaksAbout(withMend(on(1500), mend), 'breaker')).toBe(0);
  expect(mended(on(2300)).filter(({ about }) => about === 'breaker')).toEqual([]);
});

test('for an inlet that would still carry too much nothing is offered, though a breaker behind it is mended', () => {
  const plan = wired([
    generator('genny', { circuits: [{ amps: 50, sockets: 1 }] }),
    box('box', { inputAmps: 20 }),
    drawing('a', 1000),
    drawing('b', 1200),
    cable('feeder', 'genny', 'box', 1, { wire: { awg: 4 } }),
    cable('ca', 'box', 'a', 1, { circuit: 1 }),
    cable('cb', 'box', 'b', 1, { circuit: 1 }),
  ]);
  const told = mendedSentences(plan, powerReport(plan).sentences, powerOf(plan)).filter(
    ({ about }) => about === 'breaker',
  );
  expect(told.map(({ itemIds, mends }) => [itemIds, mends.map(({ act }) => act)])).toEqual([
    [['box', 'a', 'b'], ['any circuit']],
    [['box'], []],
  ]);
});

test('what draws nothing as the plan has it is told, and a person says what it draws', () => {
  const plan = wired([generator('genny', TWO), drawing('fan', 0), cable('c', 'genny', 'fan')]);
  const told = mended(plan);
  expect(told.map(({ sentence }) => sentence.replaceAll('\u00a0', ' '))).toEqual([
    'fan draws 0 W as the plan has it, so nothing is reckoned for it. Say what its plate says.',
  ]);
  expect(told[0].mends).toEqual([{ act: 'say', itemId: 'fan' }]);
  expect(mended(wired([drawing('fan', 0, 1, { supply: 'own' })]))).toEqual([]);
});
