import { expect, test } from 'vitest';
import { nightHours } from '../../../../../src/core/power/nightHours';
import { isDark } from '../../../../../src/core/power/types';
import { powerReport } from '../../../../../src/core/report/power/powerReport';
import { wireText } from '../../../../../src/screens/sheet/fields/wireText';
import {
  cableText,
  circuitText,
  clockAfter,
  drawText,
  fedText,
  fuelText,
  mendDone,
  mendWord,
  sourceDetail,
  sourceText,
} from '../../../../../src/screens/sheet/night/power/words';
import { cable, drawing, generator, lamp, wired } from '../../../../plans/wired';

const plain = (text: string | null): string => (text ?? '').replaceAll('\u00a0', ' ');

const PLAN = wired([
  generator('Genny'),
  drawing('kettle', 1200, 1),
  lamp('Head'),
  cable('Cable-1', 'Genny', 'kettle', 30),
]);
const report = powerReport(PLAN, 10);
const [source] = report.sources;

test('a wire is told in the units that lengths are read in', () => {
  expect(plain(wireText({ awg: 12 }, 'm'))).toBe('3.3 mm² (12 AWG)');
  expect(plain(wireText({ awg: 12 }, 'ft-in'))).toBe('12 AWG');
  expect(plain(wireText({ mm2: 2.5 }, 'm'))).toBe('2.5 mm²');
  expect(plain(wireText({ mm2: 16 }, 'ft-in'))).toBe('16 mm²');
});

test('a source says what it gives of what it gives for long, and where it goes', () => {
  // 120 V through 0.39 ohms of cord: 10.2 A, 4 V lost.
  expect(plain(sourceText(source))).toMatch(/^124\d VA of 5\.5 kW, 23 %$/);
  expect(plain(sourceDetail(source))).toMatch(/^124\d W, 10\.\d A at 120\.0 V, 4\d W of it heats cords$/);
});

test('fuel is told by the clock where the night has a call, else by hours', () => {
  const hours = nightHours(PLAN, 20);
  const long = powerReport(PLAN, 20).sources[0];
  expect(plain(fuelText(long, hours, null))).toMatch(/an hour, .* in 20 h: fill it after 1\d h/);
  expect(plain(fuelText(long, hours, '18:00'))).toMatch(/: fill it at 10:\d\d/);
  expect(plain(fuelText({ ...source, litWatts: 0 }, hours, null))).toBe('');
  expect(clockAfter('23:30', 1.25)).toBe('00:45');
  // What is reckoned from dusk does not begin at call.
  const fromDusk = { hours: 20, from: 'dusk to dawn' } as const;
  expect(plain(fuelText(long, fromDusk, '18:00'))).toMatch(/: fill it after 1\d h/);
});

test('a circuit, a load and a cable in a line each', () => {
  expect(plain(circuitText(PLAN, report.circuits[0]))).toMatch(
    /^10\.\d A of 30 A, leg 1, 3 sockets free: kettle$/,
  );
  const [kettle, head] = report.loads;
  expect(plain(drawText(kettle))).toBe('1200 W, 1200 VA');
  expect(plain(fedText(kettle))).toMatch(/^10\.\d A, 11\d\.\d V, 3\.\d % lost$/);
  expect([fedText(head), isDark(head), isDark(kettle)]).toEqual(['no cord', true, false]);
  expect(plain(cableText(PLAN, report.cables[0], 'm'))).toMatch(
    /^Genny, circuit 1, to kettle; 30\.0 m of 3\.3 mm² \(12 AWG\), 10\.\d A of 25 A, 41 %; loses \d\.\d V, 4\d W of heat$/,
  );
});

test('a mend is a verb on its button and a sentence once it is done', () => {
  expect(mendWord(PLAN, { act: 'pull', cableId: 'Cable-1' })).toBe('Pull Cable-1');
  expect(mendDone(PLAN, { act: 'pull', cableId: 'Cable-1' }, 'm')).toBe('Cable-1 is pulled at both ends.');
  expect(mendDone(PLAN, { act: 'own', itemIds: ['Head', 'kettle'] }, 'm')).toBe(
    'Head and kettle have power of their own.',
  );
  const thicker = {
    act: 'thicker',
    cables: [{ id: 'Cable-1', wire: { awg: 8 }, diameterMetres: 0.02 }],
  } as const;
  expect(mendWord(PLAN, thicker)).toBe('Take a thicker cord');
  expect(plain(mendDone(PLAN, thicker, 'ft-in'))).toBe('Cable-1 has 8 AWG.');
});
