import type { Plan } from '../../core/plan/schema/plan';
import {
  hourWords,
  litreWords,
  nameIn,
  voltWords,
  wattWords,
  wireWords,
} from '../../core/report/power/powerWords';
import type { LoadReport, PowerReport } from '../../core/report/power/types';
import { formatLength } from '../../core/units/lengths';
import { formatNumber, NBSP } from '../../core/units/numbers';
import { formatShare } from '../../core/units/shares';
import { plainText } from '../plainText';
import { type ColumnRule, setInColumns } from './columns';
import type { Ink } from './ink';
import { cutTo, wrapTo } from './textWidth';

const INDENT = '  ';
const NAME: ColumnRule = { leastWidth: 8 };
const NUMBER: ColumnRule = { side: 'right' };
const SPARE: ColumnRule = { side: 'right', spare: true };

const amps = (value: number): string => `${formatNumber(value, 1)}${NBSP}A`;
const share = (value: number | null): string => (value === null ? '' : formatShare(value));

/** Rows under a heading; nothing where there is none. */
function block(
  heading: string,
  rules: readonly ColumnRule[],
  names: readonly string[],
  rows: readonly (readonly string[])[],
  width: number,
  ink: Ink,
): string[] {
  if (rows.length === 0) return [];
  const [first, ...rest] = setInColumns(rules, [names, ...rows], width - INDENT.length);
  return ['', ink.strong(heading), INDENT + ink.faint(first), ...rest.map((line) => INDENT + line)];
}

const FEEDING: Readonly<Record<LoadReport['feeding'], string>> = {
  fed: '',
  own: 'own',
  'no cord': 'no cord',
  'no source': 'no supply',
  'two sources': 'two supplies',
  ring: 'in a ring',
};

const HOURS_FROM: Readonly<Record<PowerReport['hours']['from'], string>> = {
  said: '',
  'call to wrap': ', from call to wrap',
  'dusk to dawn': ', from dusk to dawn',
  usual: ', a usual night',
};

/** The power of a plan as lines to read: supplies, circuits in use, cables that carry, loads, then what is said. */
export function powerTable(plan: Plan, power: PowerReport, width: number, ink: Ink): string[] {
  const name = (id: string | null): string => (id === null ? '' : plainText(nameIn(plan, id)));
  const { hours } = power.hours;
  const sources = block(
    'Supplies',
    [NAME, NUMBER, NUMBER, NUMBER, NUMBER, SPARE, SPARE, SPARE, SPARE],
    ['supply', 'gives', 'asked', 'VA', 'share', 'on legs', 'as lit', 'in all', 'lasts'],
    power.sources.map((source) => [
      plainText(source.label),
      source.continuousWatts === null ? voltWords(source.volts) : wattWords(source.continuousWatts),
      wattWords(source.watts),
      formatNumber(source.voltAmperes, 0),
      share(source.share),
      source.legAmps.map(amps).join(' + '),
      wattWords(source.litWatts),
      source.fuel ? litreWords(source.fuel.litres) : '',
      source.fuel?.tankHours != null
        ? hourWords(source.fuel.tankHours)
        : source.batteryHours !== null
          ? hourWords(source.batteryHours)
          : '',
    ]),
    width,
    ink,
  );
  const circuits = block(
    'Circuits in use',
    [NAME, NUMBER, NUMBER, NUMBER, NUMBER, NUMBER, { leastWidth: 8, spare: true }],
    ['at', 'no.', 'breaker', 'leg', 'carries', 'of 80 %', 'feeds'],
    power.circuits
      .filter(({ cableIds }) => cableIds.length > 0)
      .map((circuit) => [
        name(circuit.ownerId),
        String(circuit.number),
        amps(circuit.ratedAmps),
        circuit.legs.join('+'),
        circuit.legAmps.map(amps).join(' + '),
        share(circuit.continuousShare),
        circuit.loadIds.map(name).join('; '),
      ]),
    width,
    ink,
  );
  const cables = block(
    'Cables that carry',
    [NAME, NAME, NAME, { leastWidth: 6 }, NUMBER, NUMBER, NUMBER, SPARE],
    ['cable', 'from', 'to', 'size', 'length', 'carries', 'of it', 'loses'],
    power.cables
      .filter(({ sourceId }) => sourceId !== null)
      .map((cable) => [
        plainText(cable.label),
        name(cable.fromId),
        name(cable.toId),
        wireWords(cable.wire),
        formatLength(cable.lengthMetres, 'm', { decimals: 1 }),
        amps(cable.amps),
        share(cable.share),
        voltWords(cable.dropVolts),
      ]),
    width,
    ink,
  );
  const loads = block(
    'Loads',
    [NAME, NUMBER, SPARE, SPARE, NUMBER, NUMBER, NUMBER, NAME],
    ['load', 'watts', 'as lit', 'factor', 'amps', 'volts', 'drop', 'supply'],
    power.loads
      .filter(({ feeding }) => feeding !== 'own')
      .map((load) => [
        plainText(load.label),
        wattWords(load.watts),
        wattWords(load.litWatts),
        formatNumber(load.powerFactor, 2),
        load.amps === null ? '' : amps(load.amps),
        load.volts === null ? '' : voltWords(load.volts),
        load.dropShare === null ? '' : formatShare(load.dropShare),
        load.sourceId === null ? FEEDING[load.feeding] : name(load.sourceId),
      ]),
    width,
    ink,
  );
  const said = power.sentences.flatMap(({ standing, about, sentence }) => {
    const lines = wrapTo(
      `${about === 'caution' ? 'caution' : standing}: ${plainText(sentence)}`,
      width,
      INDENT,
    );
    return standing === 'breaks' ? lines.map(ink.strong) : about === 'caution' ? lines.map(ink.faint) : lines;
  });
  const own = power.loads.filter(({ feeding }) => feeding === 'own').map(({ id }) => name(id));
  return [
    ink.strong(cutTo(plainText(plan.title), width)),
    cutTo(
      `${power.mainsVolts}${NBSP}V, ${power.mainsHertz}${NBSP}Hz; everything on for ${hourWords(hours)}${HOURS_FROM[power.hours.from]}`,
      width,
    ),
    ...sources,
    ...circuits,
    ...cables,
    ...loads,
    ...(own.length > 0 ? ['', ...wrapTo(`On power of their own: ${own.join('; ')}`, width, INDENT)] : []),
    ...(said.length > 0 ? ['', ...said] : []),
  ];
}
